import { isThirdReadingWanted, type MeasureDefinition } from '../../../core/body/index.ts';
import { LengthInput } from '../parts/length-input.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { useLimits } from './use-limits.ts';

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth'] as const;

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
  const limits = useLimits(measure);
  const actions = useActions();
  const { measure: words, core } = useWords();
  const say = useSay();
  const name = say(measure.name);
  const wantsMore = readings.length < 2 || isThirdReadingWanted(measure, figure, readings);
  const fields: readonly (number | null)[] = wantsMore ? [...readings, null] : readings;
  const set = (index: number, mm: number | null) => {
    const next = [...readings];
    if (mm === null) next.splice(index, 1);
    else next[index] = mm;
    if (next.length < 2) onSingle();
    if (next.length > 0) actions.setReadings(measure.id, next, core.inSentence(name));
  };
  return (
    <div className="readings">
      {fields.map((reading, index) => (
        <LengthInput
          key={ORDINALS[index]}
          fieldId={index === 0 ? measure.id : `${measure.id}.${ORDINALS[index]}`}
          label={index === 0 ? name : words.reading(name, words.ordinals[index])}
          value={reading}
          limits={limits}
          isOptional={index > 0 || readings.length > 1}
          onValue={(mm) => (mm !== null || reading !== null) && set(index, mm)}
          onFocus={onFocus}
          describedBy={howId}
        >
          <span className="side-name" aria-hidden="true">
            {words.shortOrdinals[index]}
          </span>
        </LengthInput>
      ))}
      <ReadingsVerdict measure={measure} readings={readings} />
    </div>
  );
}

function ReadingsVerdict({ measure, readings }: Pick<ReadingInputsProps, 'measure' | 'readings'>) {
  const figure = useApp((state) => state.project?.body.figure ?? 'bust');
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const words = useWords().measure;
  const numbers = useNumbers();
  if (readings.length < 2) return null;
  const difference = Math.max(...readings) - Math.min(...readings);
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
  const apart = numbers.length(difference, unit);
  return isThirdReadingWanted(measure, figure, readings) ? (
    <p className="readings-differ" role="status">
      {words.apartOnceMore(apart)}
    </p>
  ) : (
    <p className="sided-difference">{words.apartMean(apart, numbers.length(mean, unit))}</p>
  );
}
