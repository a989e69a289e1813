import { useId, useState } from 'react';
import type { MeasureDefinition, MeasureValue, SidedValue } from '../../../core/body/index.ts';
import { isTapeLit } from '../../store/index.ts';
import { Icon } from '../parts/icon.tsx';
import { LengthInput } from '../parts/length-input.tsx';
import { usePointing } from '../parts/use-pointing.ts';
import { useReveal } from '../parts/use-reveal.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { MeasureGuide } from './measure-guide.tsx';
import { MeasureVerdict } from './measure-verdict.tsx';
import { ReadingInputs } from './reading-inputs.tsx';
import { useEstimate } from './use-estimate.ts';
import { useLimits } from './use-limits.ts';

interface MeasureFieldProps {
  readonly measure: MeasureDefinition;
  readonly isRequired: boolean;
}

/** One measure: name, where the tape lies, the field, left and right on demand, and how the body answers. */
export function MeasureField({ measure, isRequired }: MeasureFieldProps) {
  const value = useApp((state) => state.project?.body.measures[measure.id]);
  const hasReadings = useApp((state) => state.project?.body.readings?.[measure.id] !== undefined);
  const isLit = useApp((state) => isTapeLit(state.highlight, measure.id));
  const actions = useActions();
  const pointing = usePointing({ kind: 'tape', id: measure.id });
  const [wantsSides, setWantsSides] = useState(false);
  const [wantsAgain, setWantsAgain] = useState(false);
  const { measure: words, core } = useWords();
  const say = useSay();
  const [name, how] = [say(measure.name), say(measure.how)];
  const howId = useId();
  const isSplit = isSided(value) || (wantsSides && measure.sided);
  const isAgain = !isSplit && typeof value === 'number' && (wantsAgain || hasReadings);
  const set = (next: MeasureValue | null) => actions.setMeasure(measure.id, next, core.inSentence(name));
  const light = () => actions.pointAt({ kind: 'tape', id: measure.id });

  const toggleSides = () => {
    if (isSided(value)) set((value.left + value.right) / 2);
    else if (value !== undefined) set({ left: value, right: value });
    setWantsSides(!isSplit);
  };
  return (
    <li
      ref={useReveal(isLit)}
      className="measure"
      data-measure={measure.id}
      data-lit={isLit || undefined}
      {...pointing}
    >
      <div className="measure-text">
        <span className="measure-name">{name}</span>
        {/* Of the needed ones it is shown above the list; read out it is with every field. */}
        <span className="measure-how" id={howId} hidden={isRequired}>
          {how}
        </span>
      </div>
      <div className="measure-entry">
        <MeasureInputs
          measure={measure}
          value={value}
          isRequired={isRequired}
          isSplit={isSplit}
          isAgain={isAgain}
          howId={howId}
          onValue={set}
          onFocus={light}
          onSingle={() => setWantsAgain(false)}
        />
        {measure.sided && (
          <button
            type="button"
            className="icon-only sides"
            aria-pressed={isSplit}
            aria-label={words.apartOf(name)}
            title={isSplit ? words.together : words.apart}
            onClick={toggleSides}
          >
            <Icon name={isSplit ? 'join' : 'split'} />
          </button>
        )}
      </div>
      {!isRequired && <MeasureGuide measure={measure} />}
      <MeasureVerdict measure={measure} />
      {typeof value === 'number' && !isAgain && (
        <button
          type="button"
          className="measure-again"
          aria-label={words.againOf(name)}
          onClick={() => setWantsAgain(true)}
        >
          {words.again}
        </button>
      )}
    </li>
  );
}

interface MeasureInputsProps {
  readonly measure: MeasureDefinition;
  readonly value: MeasureValue | undefined;
  readonly isRequired: boolean;
  /** Left and right apart. */
  readonly isSplit: boolean;
  /** Read more than once. */
  readonly isAgain: boolean;
  readonly howId: string;
  readonly onValue: (value: MeasureValue | null) => void;
  readonly onFocus: () => void;
  readonly onSingle: () => void;
}

function MeasureInputs(props: MeasureInputsProps) {
  const { measure, value, isRequired, isSplit, isAgain, howId, onValue, onFocus } = props;
  const readings = useApp((state) => state.project?.body.readings?.[measure.id]);
  if (isSplit)
    return <SidedInputs measure={measure} value={value} howId={howId} onValue={onValue} onFocus={onFocus} />;
  const single = typeof value === 'number' ? value : null;
  if (isAgain && single !== null)
    return (
      <ReadingInputs
        measure={measure}
        readings={readings ?? [single]}
        howId={howId}
        onFocus={onFocus}
        onSingle={props.onSingle}
      />
    );
  return (
    <SingleInput
      measure={measure}
      value={single}
      isRequired={isRequired}
      howId={howId}
      onValue={onValue}
      onFocus={onFocus}
    />
  );
}

interface SingleInputProps {
  readonly measure: MeasureDefinition;
  readonly value: number | null;
  readonly isRequired: boolean;
  readonly howId: string;
  readonly onValue: (value: number | null) => void;
  readonly onFocus: () => void;
}

function SingleInput({ measure, value, isRequired, howId, onValue, onFocus }: SingleInputProps) {
  const limits = useLimits(measure);
  const estimate = useEstimate(measure.id);
  const say = useSay();
  return (
    <LengthInput
      fieldId={measure.id}
      label={say(measure.name)}
      value={value}
      limits={limits}
      isOptional={!isRequired}
      onValue={onValue}
      onFocus={onFocus}
      describedBy={howId}
      {...(estimate ? { placeholder: estimate } : {})}
    />
  );
}

interface SidedInputsProps {
  readonly measure: MeasureDefinition;
  readonly value: MeasureValue | undefined;
  readonly howId: string;
  readonly onValue: (value: MeasureValue | null) => void;
  readonly onFocus: () => void;
}

function SidedInputs({ measure, value, howId, onValue, onFocus }: SidedInputsProps) {
  const limits = useLimits(measure);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const estimate = useEstimate(measure.id);
  const { measure: words, tapeTable } = useWords();
  const say = useSay();
  const numbers = useNumbers();
  const both: SidedValue | null = isSided(value) ? value : null;
  return (
    <div className="sided">
      {(['left', 'right'] as const).map((side) => (
        <LengthInput
          key={side}
          fieldId={`${measure.id}.${side}`}
          label={tapeTable.sided[side](say(measure.name))}
          value={both?.[side] ?? null}
          limits={limits}
          isOptional
          onValue={(mm) => onValue(mm === null ? null : { ...(both ?? { left: mm, right: mm }), [side]: mm })}
          onFocus={onFocus}
          describedBy={howId}
          {...(estimate ? { placeholder: estimate } : {})}
        >
          <span className="side-name" aria-hidden="true">
            {words[side]}
          </span>
        </LengthInput>
      ))}
      {both && (
        <p className="sided-difference">
          {words.difference(numbers.length(Math.abs(both.left - both.right), unit))}
        </p>
      )}
    </div>
  );
}

function isSided(value: MeasureValue | undefined): value is SidedValue {
  return typeof value === 'object';
}
