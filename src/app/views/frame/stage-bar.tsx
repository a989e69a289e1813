import { useEffect, useRef } from 'react';
import { issuesOfStage, STAGES, type Stage, stageOf } from '../../store/index.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** The stages along one bar, in the order of the work, free to jump. Each says how it stands. */
export function StageBar() {
  const stage = useApp((state) => state.stage);
  const actions = useActions();
  const words = useWords().stages;
  const list = useRef<HTMLOListElement>(null);
  // On a phone the bar is longer than the page is wide.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another stage is to be seen
  useEffect(() => {
    const current = list.current?.querySelector('[aria-current]');
    current?.scrollIntoView({ inline: 'center', block: 'nearest' });
  }, [stage]);
  return (
    <nav className="stage-bar" aria-label={words.list}>
      <ol ref={list}>
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
    </nav>
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
