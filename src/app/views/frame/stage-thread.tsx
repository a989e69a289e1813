import { useEffect, useRef } from 'react';
import { type AppState, STAGES, type Stage } from '../../store/index.ts';
import { typicalStrain } from '../parts/typical-strain.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** The stages along one thread, in the order of the work, free to jump. Each says how it stands. */
export function StageThread() {
  const stage = useApp((state) => state.stage);
  const actions = useActions();
  const words = useWords().stages;
  const list = useRef<HTMLOListElement>(null);
  // On a phone the thread is longer than the page is wide.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another stage is to be seen
  useEffect(() => {
    const current = list.current?.querySelector('[aria-current]');
    current?.scrollIntoView({ inline: 'center', block: 'nearest' });
  }, [stage]);
  return (
    <nav className="stage-thread" aria-label={words.list}>
      <ol ref={list}>
        {STAGES.map((id) => (
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
    </nav>
  );
}

function StageStanding({ stage }: { readonly stage: Stage }) {
  const text = useApp((state) => STANDINGS[stage](state));
  return <span className="stage-standing">{text}</span>;
}

const STANDINGS: Readonly<Record<Stage, (state: AppState) => string>> = {
  tape: (state) => {
    const { toMend, measured } = state.words.stages;
    const count = Object.keys(state.project?.body.measures ?? {}).length;
    const doubtful = Object.values(state.drafts).filter((draft) => draft.message !== '').length;
    return doubtful > 0 ? toMend(doubtful) : measured(count);
  },
  body: (state) => {
    const tapes = state.form?.report.tapes ?? [];
    const conflicts = tapes.filter((tape) => tape.status === 'conflict').length;
    if (!state.form) return '';
    return conflicts === 0 ? state.words.stages.everyTapeMet : state.words.stages.inConflict(conflicts);
  },
  seams: ({ form, words }) => (form ? words.stages.seams(form.shell.seams.length) : ''),
  panels: (state) => {
    const panels = state.form?.report.panels ?? [];
    if (panels.length === 0) return '';
    return state.words.stages.panels(panels.length, state.numbers.percent(typicalStrain(panels)));
  },
  inside: ({ form, words }) => (form?.inside ? words.stages.pieces(form.inside.pieces.length) : ''),
  cutting: ({ form, words }) =>
    form?.inside ? words.stages.toCut(form.pieces.length + form.inside.pieces.length) : '',
  making: ({ form, project, words }) => {
    const steps = form?.workshop?.steps ?? [];
    const done = steps.filter(({ id }) => project?.making?.done.includes(id)).length;
    return steps.length === 0 ? '' : words.stages.done(done, steps.length);
  },
  checking: ({ project, words }) => {
    const count = project?.checking?.entries.length ?? 0;
    return count === 0 ? words.stages.notMeasured : words.stages.measuredTimes(count);
  },
};
