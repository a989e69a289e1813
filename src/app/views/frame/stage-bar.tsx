import { issuesOfStage, STAGES, type Stage, stageOf } from '../../store/index.ts';
import { Icon } from '../parts/icon.tsx';
import { useOpening } from '../parts/use-opening.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { PartList } from './part-list.tsx';

/** The stages along one bar, in the order of the work, free to jump. Each says how it stands. */
export function StageBar() {
  const stage = useApp((state) => state.stage);
  const actions = useActions();
  const { stages: words, top } = useWords();
  const parts = useOpening();
  return (
    <>
      <nav className="stage-bar" aria-label={words.list}>
        <ol>
          {STAGES.map(({ id }) => (
            <li key={id}>
              <button
                type="button"
                aria-current={id === stage ? 'step' : undefined}
                onClick={() => actions.goTo(id)}
              >
                <span className="knot" aria-hidden="true" />
                <span className="stage-name">
                  {words.names[id]}
                  <DoubtCount stage={id} />
                </span>
                <StageStanding stage={id} />
              </button>
            </li>
          ))}
        </ol>
        <button type="button" className="to-parts" aria-label={top.toPart} onClick={parts.open}>
          <Icon name="parts" />
          <span>{top.short.toPart}</span>
        </button>
      </nav>
      {/* Outside the bar, whose style is not for what stands in a dialog. */}
      {parts.isOpen && <PartList key={parts.number} onClose={parts.close} />}
    </>
  );
}

/** How many warnings wait in a stage. */
function DoubtCount({ stage }: { readonly stage: Stage }) {
  const count = useApp((state) => issuesOfStage(state, stage).length);
  const { doubts } = useWords().stages;
  if (count === 0) return null;
  return (
    <span className="doubt-count" title={doubts(count)}>
      <span aria-hidden="true">{count}</span>
      <span className="visually-hidden">, {doubts(count)}</span>
    </span>
  );
}

function StageStanding({ stage }: { readonly stage: Stage }) {
  const text = useApp((state) => stageOf(stage).standing(state));
  return <span className="stage-standing">{text}</span>;
}
