import { useEffect, useState } from 'react';
import type { WorkSeam, WorkStep } from '../../../core/form/index.ts';
import { wordCheck } from '../../../core/simulate/index.ts';
import { type Highlight, seamColour } from '../../store/index.ts';
import { CoreText } from '../parts/core-text.tsx';
import { usePointing } from '../parts/use-pointing.ts';
import { useNumbers, useSay, useSayInUnits, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

interface MakingStepProps {
  readonly step: WorkStep;
  readonly number: number;
  readonly isDone: boolean;
  readonly isNext: boolean;
  /** Open whatever the person chose, as on paper. */
  readonly isShown: boolean;
  /** Steps to be done before, that are not. */
  readonly waitsFor: readonly WorkStep[];
}

/** One step with its tick; the next one to do is open. */
export function MakingStep({ step, number, isDone, isNext, isShown, waitsFor }: MakingStepProps) {
  const actions = useActions();
  const { making: words, core } = useWords();
  const say = useSay();
  const title = say(step.title);
  const [isOpen, setIsOpen] = useState(isNext);
  useEffect(() => setIsOpen(isNext), [isNext]);
  return (
    <li className="work-step" data-done={isDone || undefined} data-next={isNext || undefined}>
      <input
        type="checkbox"
        aria-label={words.done(title)}
        checked={isDone}
        onChange={(event) => actions.setDone(step.id, event.target.checked, core.inSentence(title))}
      />
      <details open={isOpen || isShown} onToggle={(event) => setIsOpen(event.currentTarget.open)}>
        <summary>
          <span className="step-number">{number}</span>
          <span className="step-title">
            <CoreText said={title} />
            {step.isOptional && <span className="quiet"> {words.optional}</span>}
          </span>
        </summary>
        {(isOpen || isShown) && <StepBody step={step} waitsFor={isDone ? [] : waitsFor} isShown={isShown} />}
      </details>
    </li>
  );
}

function StepBody({ step, waitsFor, isShown }: Pick<MakingStepProps, 'step' | 'waitsFor' | 'isShown'>) {
  const { making: words, core } = useWords();
  const say = useSay();
  const waits = waitsFor.map(({ title }) => core.inSentence(say(title))).join('; ');
  return (
    <div className="step-body">
      {waitsFor.length > 0 && <p className="step-waits">{words.first(waits)}</p>}
      {step.text.map((text) => (
        <p key={say(text)}>
          <CoreText said={say(text)} />
        </p>
      ))}
      <Pieces step={step} showsAll={isShown} />
      <Seams seams={step.seams} />
      <StepChecks step={step} className="step-checks" />
      {step.cautions.map((caution) => {
        const [title, text] = [say(caution.title), say(caution.text)];
        return (
          <p className="step-caution" key={caution.id}>
            <strong>{title}.</strong> {text}
          </p>
        );
      })}
    </div>
  );
}

/** Lights what it names on the body while pointed at or focused, and is lit with it. */
function useLitPointing(points: Highlight | null) {
  const isLit = useApp(
    ({ highlight }) => points !== null && highlight?.kind === points.kind && highlight.id === points.id,
  );
  return { 'data-lit': isLit || undefined, ...usePointing(points) };
}

function Pieces({ step, showsAll }: { readonly step: WorkStep; readonly showsAll: boolean }) {
  const [isWhole, setIsWhole] = useState(false);
  const { making: words } = useWords();
  const say = useSay();
  const most = 12;
  if (step.pieces.length === 0) return null;
  const shown = isWhole || showsAll ? step.pieces : step.pieces.slice(0, most);
  const rest = step.pieces.length - shown.length;
  return (
    <ul className="step-pieces" aria-label={words.pieces}>
      {shown.map(({ id, name }) => (
        <Piece key={id} id={id} name={say(name)} />
      ))}
      {rest > 0 && (
        <li>
          <button type="button" className="plain" onClick={() => setIsWhole(true)}>
            {words.more(rest)}
          </button>
        </li>
      )}
    </ul>
  );
}

function Piece({ id, name }: { readonly id: string; readonly name: string }) {
  const isPanel = useApp((state) => state.form?.shell.panels.some((panel) => panel.id === id) ?? false);
  const pointing = useLitPointing(isPanel ? { kind: 'panel', id } : null);
  if (!isPanel) return <li>{name}</li>;
  return (
    <li>
      <button type="button" {...pointing}>
        {name}
      </button>
    </li>
  );
}

function Seams({ seams }: { readonly seams: readonly WorkSeam[] }) {
  const words = useWords().making;
  if (seams.length === 0) return null;
  return (
    <ol className="step-seams" aria-label={words.seams}>
      {seams.map((seam) => (
        <SeamLine key={seam.id} seam={seam} />
      ))}
    </ol>
  );
}

function SeamLine({ seam }: { readonly seam: WorkSeam }) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const index = useApp((state) => state.form?.shell.seams.findIndex(({ id }) => id === seam.id) ?? -1);
  const pointing = useLitPointing(seam.kind === 'shell' ? { kind: 'seam', id: seam.id } : null);
  const { making: words } = useWords();
  const say = useSay();
  const numbers = useNumbers();
  const lengths = words.range([...new Set(seam.lengths.map((mm) => numbers.length(mm, unit)))]);
  const line = (
    <>
      <span className="seam-tag" style={index >= 0 ? { color: seamColour(index) } : undefined}>
        <span>{seam.letter}</span>
      </span>
      <span className="step-seam-name">
        {say(seam.name)}
        {(seam.closesRing || seam.note) && (
          <span className="measure-how">{seam.note ? say(seam.note) : words.closesRing}</span>
        )}
      </span>
      <span className="number">
        {lengths}
        {seam.marks > 0 && `, ${words.marks(seam.marks)}`}
      </span>
    </>
  );
  return (
    <li>
      {seam.kind === 'shell' ? (
        <button type="button" {...pointing}>
          {line}
        </button>
      ) : (
        <span className="step-seam">{line}</span>
      )}
    </li>
  );
}

/** What is to be measured, and what it should come to. */
export function StepChecks({ step, className }: { readonly step: WorkStep; readonly className: string }) {
  const say = useSayInUnits();
  if (step.checks.length === 0) return null;
  return (
    <dl className={className}>
      {step.checks.map((check) => (
        <div key={check.id}>
          <dt>{say(check.name)}</dt>
          <dd>{say(wordCheck(check))}</dd>
        </div>
      ))}
    </dl>
  );
}
