import { formatLength } from '../../core/base/index.ts';
import type { MeasureDefinition } from '../../core/body/index.ts';
import { LengthInput } from './length-input.tsx';
import { limitsOfMeasure } from './limits-of-measure.ts';
import { useActions, useApp } from './workroom-context.tsx';

/** Readings this far apart ask for another one, mm. */
const AGREEMENT = 10;
const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth'] as const;
const SHORT = { first: '1st', second: '2nd', third: '3rd', fourth: '4th', fifth: '5th' } as const;

interface ReadingInputsProps {
  readonly measure: MeasureDefinition;
  /** At least one, mm. */
  readonly readings: readonly number[];
  readonly howId: string;
  readonly onFocus: () => void;
  /** Called when no second reading is left or wanted. */
  readonly onSingle: () => void;
}

/** The readings of one measure one below the other, with a free field when more are needed; their mean is used. */
export function ReadingInputs({ measure, readings, howId, onFocus, onSingle }: ReadingInputsProps) {
  const figure = useApp((state) => state.project?.body.figure ?? 'bust');
  const actions = useActions();
  const difference = Math.max(...readings) - Math.min(...readings);
  const wantsMore = readings.length < 2 || (difference > AGREEMENT && readings.length < ORDINALS.length);
  const fields: readonly (number | null)[] = wantsMore ? [...readings, null] : readings;
  const set = (index: number, mm: number | null) => {
    const next = [...readings];
    if (mm === null) next.splice(index, 1);
    else next[index] = mm;
    if (next.length < 2) onSingle();
    if (next.length > 0) actions.setReadings(measure.id, next, measure.name.toLowerCase());
  };
  return (
    <div className="readings">
      {fields.map((reading, index) => (
        <LengthInput
          key={ORDINALS[index]}
          fieldId={index === 0 ? measure.id : `${measure.id}.${ORDINALS[index]}`}
          label={index === 0 ? measure.name : `${measure.name}, ${ORDINALS[index]} reading`}
          value={reading}
          limits={limitsOfMeasure(measure, figure)}
          isOptional={index > 0 || readings.length > 1}
          onValue={(mm) => (mm !== null || reading !== null) && set(index, mm)}
          onFocus={onFocus}
          describedBy={howId}
        >
          <span className="side-name" aria-hidden="true">
            {SHORT[ORDINALS[index]]}
          </span>
        </LengthInput>
      ))}
      <ReadingsVerdict readings={readings} />
    </div>
  );
}

function ReadingsVerdict({ readings }: { readonly readings: readonly number[] }) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  if (readings.length < 2) return null;
  const difference = Math.max(...readings) - Math.min(...readings);
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
  const apart = formatLength(difference, unit);
  return difference > AGREEMENT ? (
    <p className="readings-differ" role="status">
      {apart} apart: measure once more.
    </p>
  ) : (
    <p className="sided-difference">
      {apart} apart, mean {formatLength(mean, unit)} is used
    </p>
  );
}
