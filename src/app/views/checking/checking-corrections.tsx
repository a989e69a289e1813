import { useMemo } from 'react';
import { verbatim } from '../../../core/base/index.ts';
import type { CheckingEntry } from '../../../core/project/index.ts';
import {
  type Correction,
  type FillingContext,
  judgeFilling,
  wordCorrection,
} from '../../../core/simulate/index.ts';
import { useNumbers, useSayInUnits, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

interface CorrectionsProps {
  readonly entry: CheckingEntry;
  readonly stuffing: FillingContext;
}

/** What the readings say, and what to do: worked out anew with every reading. */
export function CheckingCorrections({ entry, stuffing }: CorrectionsProps) {
  const corrections = useMemo(() => judgeFilling(entry.levels, entry.state, stuffing), [entry, stuffing]);
  const { checking: words } = useWords();
  const say = useSayInUnits();
  const count = Object.values(entry.levels).filter((reading) => Object.keys(reading).length > 0).length;
  const named = new Map([...stuffing.targets, ...stuffing.zones].map(({ id, name }) => [id, name]));
  return (
    <section className="corrections" aria-labelledby="corrections-title">
      <h3 id="corrections-title">{words.whatToDo}</h3>
      <div aria-live="polite">
        {count === 0 ? (
          <p className="quiet">{words.enter}</p>
        ) : corrections.length === 0 ? (
          <p className="all-good">{words.allGood}</p>
        ) : (
          <ul>
            {corrections.map((correction) => {
              const { title, text } = wordCorrection(correction, (id) => named.get(id) ?? verbatim(id));
              return (
                <li key={keyOf(correction)}>
                  <strong>{say(title)}</strong>
                  <p>{say(text)}</p>
                  {correction.kind === 'growth' && <UseGrowth growth={correction.growth} />}
                </li>
              );
            })}
          </ul>
        )}
      </div>
    </section>
  );
}

function keyOf(correction: Correction): string {
  return `${correction.kind} ${'levelId' in correction ? correction.levelId : ''}`;
}

/** Takes the growth into the project, so that the next panels are cut for it. */
function UseGrowth({ growth }: { readonly growth: number }) {
  const actions = useActions();
  const { checking, steps } = useWords();
  const numbers = useNumbers();
  const used = useApp((state) => state.project?.inside.measuredGrowth);
  const rounded = Math.round(growth * 1e4) / 1e4;
  if (used === rounded) return <p className="quiet">{checking.taken}</p>;
  return (
    <button
      type="button"
      className="plain"
      onClick={() => actions.setInside('measuredGrowth', rounded, steps.things.growth)}
    >
      {checking.takeGrowth(numbers.percent(rounded, 2))}
    </button>
  );
}
