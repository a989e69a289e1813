import { useState } from 'react';
import { measuresFromPins } from '../../../core/body/index.ts';
import { LengthInput } from '../parts/length-input.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** Most that can be pinned off a girth, mm: more is another body. Ours. */
const MOST_PINNED = { min: 0, max: 200 } as const;

/** What was pinned off the trial shell goes back into the measures: a field for each level whose girth was typed. */
export function TrialPins() {
  const levels = useApp((state) => state.form?.body.levels) ?? [];
  const measures = useApp((state) => state.project?.body.measures) ?? {};
  const words = useWords().checking.pins;
  const say = useSay();
  return (
    <details className="printer">
      <summary>{words.title}</summary>
      <p className="quiet">{words.how}</p>
      {levels.map(({ id, name }) => {
        const girth = measures[`${id}Girth`];
        if (typeof girth !== 'number') return null;
        return <PinnedLevel key={id} measureId={`${id}Girth`} girth={girth} name={say(name)} />;
      })}
    </details>
  );
}

interface PinnedLevelProps {
  readonly measureId: string;
  /** mm. */
  readonly girth: number;
  readonly name: string;
}

function PinnedLevel({ measureId, girth, name }: PinnedLevelProps) {
  const [takenIn, setTakenIn] = useState<number | null>(null);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const numbers = useNumbers();
  const actions = useActions();
  const words = useWords().checking.pins;
  const after = measuresFromPins({ girth, takenIn: takenIn ?? 0 });
  const take = () => {
    actions.setMeasure(measureId, after, words.takenIn(name));
    setTakenIn(null);
  };
  return (
    <div className="field-row">
      <span className="measure-name">{name}</span>
      <LengthInput
        fieldId={`pins.${measureId}`}
        label={words.off(name)}
        value={takenIn}
        limits={MOST_PINNED}
        isOptional
        onValue={setTakenIn}
      />
      {takenIn !== null && takenIn > 0 && (
        <>
          <span role="status">
            {words.change(name, numbers.length(girth, unit), numbers.length(after, unit))}
          </span>
          <button type="button" className="plain" onClick={take}>
            {words.take}
          </button>
        </>
      )}
    </div>
  );
}
