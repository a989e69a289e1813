import { STAGES, type Stage, stageOf } from '../../store/index.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { PartsOfPage } from './parts-of-page.tsx';

/** The stages along one bar, in the order of the work, free to jump. Each says how it stands. */
export function StageBar() {
  const stage = useApp((state) => state.stage);
  const actions = useActions();
  const words = useWords().stages;
  return (
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
              <span className="stage-name">{words.names[id]}</span>
              <StageStanding stage={id} />
            </button>
          </li>
        ))}
      </ol>
      <PartsOfPage />
    </nav>
  );
}

function StageStanding({ stage }: { readonly stage: Stage }) {
  const text = useApp((state) => stageOf(stage).standing(state));
  return <span className="stage-standing">{text}</span>;
}
