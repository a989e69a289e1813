import type { CheckingEntry } from '../../../core/project/index.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { rowOfLevel, type WordedCorrection } from './use-corrections.ts';

interface CorrectionsProps {
  readonly entry: CheckingEntry;
  readonly corrections: readonly WordedCorrection[];
}

/** What is wrong, all of it; what to do about one level stands beside its fields, to which its line leads. */
export function CheckingCorrections({ entry, corrections }: CorrectionsProps) {
  const { checking: words } = useWords();
  const count = Object.values(entry.levels).filter((reading) => Object.keys(reading).length > 0).length;
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
            {corrections.map((one) => (
              <li key={`${one.correction.kind} ${one.levelId}`}>
                <CorrectionLine {...one} />
              </li>
            ))}
          </ul>
        )}
      </div>
    </section>
  );
}

function CorrectionLine({ correction, levelId, title, text }: WordedCorrection) {
  if (levelId !== null)
    return (
      <button type="button" className="as-text" onClick={() => goToLevel(levelId)}>
        {title}
      </button>
    );
  return (
    <>
      <strong>{title}</strong>
      <p>{text}</p>
      {correction.kind === 'growth' && <UseGrowth growth={correction.growth} />}
    </>
  );
}

function goToLevel(levelId: string): void {
  const row = document.getElementById(rowOfLevel(levelId));
  row?.scrollIntoView({ block: 'center' });
  row?.querySelector('input')?.focus({ preventScroll: true });
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
