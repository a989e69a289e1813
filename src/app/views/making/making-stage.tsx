import { phrasesOf } from '../../../core/base/index.ts';
import type { WorkPhase, WorkStep } from '../../../core/form/index.ts';
import type { MakingPhrases } from '../../../core/making/index.ts';
import { isFormBehind, placeAtBench } from '../../store/index.ts';
import { StageTitle } from '../guide/stage-title.tsx';
import { FillingAwaited } from '../parts/filling-awaited.tsx';
import { StageDoubts } from '../parts/stage-doubts.tsx';
import { usePrinting } from '../parts/use-printing.ts';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { BenchDialog } from './bench-dialog.tsx';
import { BookletMaker } from './booklet-maker.tsx';
import { MakingStep } from './making-step.tsx';

const NONE: readonly string[] = [];

const phrase = phrasesOf<MakingPhrases>();

/** From measured paper to a form on its stand: what to do next, with its pieces, seams and numbers. */
export function MakingStage() {
  const steps = useApp((state) => state.form?.making?.steps);
  const hours = useApp((state) => state.form?.making?.hours);
  const say = useSay();
  const name = useApp((state) => state.project?.name ?? '');
  const isBehind = useApp(isFormBehind);
  const isAtBench = useApp(({ bench, bodyId }) => bench?.isOpen === true && bench.bodyId === bodyId);
  const stepAtBench = useApp((state) => placeAtBench(state));
  const actions = useActions();
  const { making: words, bench } = useWords();
  return (
    <div className="stage making-stage" data-behind={isBehind || undefined}>
      <header className="stage-head">
        <StageTitle stage="making" />
        <p className="print-only">{name}</p>
        <p>{words.about}</p>
        {hours !== undefined && <p className="quiet">{say(phrase('work.hours', { hours }))}</p>}
        {steps && (
          <p className="making-files">
            <button type="button" className="main" onClick={() => actions.workAtStep(steps[stepAtBench].id)}>
              {bench.open}
            </button>
            <button type="button" className="plain" onClick={() => window.print()}>
              {words.print}
            </button>
          </p>
        )}
        {steps && <BookletMaker />}
      </header>
      <FillingAwaited />
      <StageDoubts stage="making" />
      {steps && isAtBench && <BenchDialog steps={steps} index={stepAtBench} />}
      {steps ? <StepList steps={steps} /> : <p className="quiet">{words.working}</p>}
    </div>
  );
}

function StepList({ steps }: { readonly steps: readonly WorkStep[] }) {
  const done = useApp((state) => state.project?.making?.done ?? NONE);
  const isPrinting = usePrinting();
  const say = useSay();
  const next = steps.find(({ id, isOptional }) => !isOptional && !done.includes(id));
  const groups = groupByPhase(steps);
  const numberOf = new Map(steps.map(({ id }, i) => [id, i + 1]));
  return (
    <>
      {groups.map(({ phase, own }) => (
        <section key={own[0].id} aria-labelledby={`phase-${own[0].id}`}>
          <h3 id={`phase-${own[0].id}`}>{say(phrase(`phase.${phase}`))}</h3>
          <ol className="work-steps" start={numberOf.get(own[0].id)}>
            {own.map((step) => (
              <MakingStep
                key={step.id}
                step={step}
                number={numberOf.get(step.id) ?? 0}
                isDone={done.includes(step.id)}
                isNext={step === next}
                isShown={isPrinting}
                waitsFor={steps.filter(({ id }) => step.needs.includes(id) && !done.includes(id))}
              />
            ))}
          </ol>
        </section>
      ))}
    </>
  );
}

/** Neighbouring steps of one phase together, in the order of the work. */
function groupByPhase(steps: readonly WorkStep[]): { phase: WorkPhase; own: WorkStep[] }[] {
  const groups: { phase: WorkPhase; own: WorkStep[] }[] = [];
  for (const step of steps) {
    const last = groups[groups.length - 1];
    if (last?.phase === step.phase) last.own.push(step);
    else groups.push({ phase: step.phase, own: [step] });
  }
  return groups;
}
