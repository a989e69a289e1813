import { useEffect, useRef } from 'react';
import { type AppState, STAGES, type Stage } from '../store/index.ts';
import { percent } from './say-numbers.ts';
import { typicalStrain } from './typical-strain.ts';
import { useActions, useApp } from './workroom-context.tsx';

const NAMES: Readonly<Record<Stage, string>> = {
  tape: 'Tape',
  body: 'Body',
  seams: 'Seams',
  panels: 'Panels',
  inside: 'Inside',
  cutting: 'Cutting',
  making: 'Making',
  checking: 'Checking',
};

/** The stages along one thread, in the order of the work, free to jump. Each says how it stands. */
export function StageThread() {
  const stage = useApp((state) => state.stage);
  const actions = useActions();
  const list = useRef<HTMLOListElement>(null);
  // On a phone the thread is longer than the page is wide.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another stage is to be seen
  useEffect(() => {
    const current = list.current?.querySelector('[aria-current]');
    current?.scrollIntoView({ inline: 'center', block: 'nearest' });
  }, [stage]);
  return (
    <nav className="stage-thread" aria-label="Stages">
      <ol ref={list}>
        {STAGES.map((id) => (
          <li key={id}>
            <button
              type="button"
              aria-current={id === stage ? 'step' : undefined}
              onClick={() => actions.goTo(id)}
            >
              <span className="knot" aria-hidden="true" />
              <span className="stage-name">{NAMES[id]}</span>
              <StageStanding stage={id} />
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}

function StageStanding({ stage }: { readonly stage: Stage }) {
  const text = useApp((state) => STANDINGS[stage](state));
  return <span className="stage-standing">{text}</span>;
}

const STANDINGS: Readonly<Record<Stage, (state: AppState) => string>> = {
  tape: (state) => {
    const count = Object.keys(state.project?.body.measures ?? {}).length;
    const doubtful = Object.values(state.drafts).filter((draft) => draft.message !== '').length;
    return doubtful > 0 ? `${doubtful} to mend` : `${count} measured`;
  },
  body: (state) => {
    const tapes = state.form?.report.tapes ?? [];
    const conflicts = tapes.filter((tape) => tape.status === 'conflict').length;
    if (!state.form) return '';
    return conflicts === 0 ? 'every tape met' : `${conflicts} in conflict`;
  },
  seams: (state) => (state.form ? `${state.form.shell.seams.length} seams` : ''),
  panels: (state) => {
    const panels = state.form?.report.panels ?? [];
    if (panels.length === 0) return '';
    return `${panels.length} pieces, ${percent(typicalStrain(panels))}`;
  },
  inside: (state) => (state.form?.inside ? `${state.form.inside.pieces.length} parts` : ''),
  cutting: ({ form }) => (form ? `${form.pieces.length + (form.inside?.pieces.length ?? 0)} to cut` : ''),
  making: ({ form, project }) => {
    const steps = form?.workshop?.steps ?? [];
    const done = steps.filter(({ id }) => project?.making?.done.includes(id)).length;
    return steps.length === 0 ? '' : `${done} of ${steps.length} done`;
  },
  checking: ({ project }) => {
    const count = project?.checking?.entries.length ?? 0;
    return count === 0 ? 'not measured' : `measured ${count === 1 ? 'once' : `${count} times`}`;
  },
};
