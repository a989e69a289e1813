import type { WorkSeam, WorkStep } from '../../../core/form/index.ts';
import { CoreText } from '../parts/core-text.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';
import { BenchReadings } from './bench-readings.tsx';
import { StepChecks } from './making-step.tsx';

const NONE: readonly string[] = [];

interface BenchStepProps {
  readonly steps: readonly WorkStep[];
  readonly step: WorkStep;
  /** Address of its picture, once it is drawn. */
  readonly picture: string | undefined;
}

/** All of one step: picture, cautions, what to do, seams, pieces, checks, and what is measured in it. */
export function BenchStep({ steps, step, picture }: BenchStepProps) {
  const { making, bench: words } = useWords();
  const say = useSay();
  return (
    <>
      <div className="bench-title">
        <h2>
          <CoreText said={say(step.title)} />
          {step.isOptional && <span className="quiet"> {making.optional}</span>}
        </h2>
        <WaitsFor steps={steps} step={step} />
      </div>
      <figure className="bench-picture">
        {picture ? (
          <img src={picture} alt={words.pictureOf(say(step.title))} draggable={false} />
        ) : (
          <p>{words.drawing}</p>
        )}
      </figure>
      <div className="bench-words">
        {step.cautions.map((caution) => (
          <p className="step-caution" key={caution.id}>
            <strong>{say(caution.title)}.</strong> {say(caution.text)}
          </p>
        ))}
        {step.text.map((text) => (
          <p key={say(text)}>
            <CoreText said={say(text)} />
          </p>
        ))}
        <BenchSeams seams={step.seams} />
        <BenchPieces step={step} />
        <StepChecks step={step} className="bench-checks" />
        <BenchReadings step={step} />
      </div>
    </>
  );
}

/** Steps to be done before that are not, unless this one is done all the same. */
function WaitsFor({ steps, step }: Omit<BenchStepProps, 'picture'>) {
  const done = useApp((state) => state.project?.making?.done ?? NONE);
  const { making, core } = useWords();
  const say = useSay();
  const open = steps.filter(({ id }) => step.needs.includes(id) && !done.includes(id));
  if (open.length === 0 || done.includes(step.id)) return null;
  return (
    <p className="step-waits">
      {making.first(open.map(({ title }) => core.inSentence(say(title))).join('; '))}
    </p>
  );
}

function BenchSeams({ seams }: { readonly seams: readonly WorkSeam[] }) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const { making: words } = useWords();
  const say = useSay();
  const numbers = useNumbers();
  if (seams.length === 0) return null;
  return (
    <ol className="bench-seams" aria-label={words.seams}>
      {seams.map((seam) => (
        <li key={seam.id}>
          <b>{seam.letter}</b>
          <span>
            {say(seam.name)}
            {(seam.closesRing || seam.note) && (
              <span className="measure-how">{seam.note ? say(seam.note) : words.closesRing}</span>
            )}
          </span>
          <span className="number quiet">
            {words.range([...new Set(seam.lengths.map((mm) => numbers.length(mm, unit)))])}
            {seam.marks > 0 && `, ${words.marks(seam.marks)}`}
          </span>
        </li>
      ))}
    </ol>
  );
}

function BenchPieces({ step }: { readonly step: WorkStep }) {
  const { making: words } = useWords();
  const say = useSay();
  if (step.pieces.length === 0) return null;
  return (
    <details className="bench-pieces" open={step.phase === 'cut'}>
      <summary>{words.pieces}</summary>
      <p>{step.pieces.map(({ name }) => say(name)).join(', ')}</p>
    </details>
  );
}
