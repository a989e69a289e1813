import { useEffect, useState } from 'react';
import { formatLength } from '../../core/base/index.ts';
import type { WorkSeam, WorkStep } from '../../core/pipeline/index.ts';
import { wordCheck } from '../../core/simulate/index.ts';
import { type Highlight, threadColour } from '../store/index.ts';
import { useActions, useApp } from './workroom-context.tsx';

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
  const [isOpen, setIsOpen] = useState(isNext);
  useEffect(() => setIsOpen(isNext), [isNext]);
  return (
    <li className="work-step" data-done={isDone || undefined} data-next={isNext || undefined}>
      <input
        type="checkbox"
        aria-label={`Done: ${step.title}`}
        checked={isDone}
        onChange={(event) => actions.setDone(step.id, event.target.checked, step.title.toLowerCase())}
      />
      <details open={isOpen || isShown} onToggle={(event) => setIsOpen(event.currentTarget.open)}>
        <summary>
          <span className="step-number">{number}</span>
          <span className="step-title">
            {step.title}
            {step.isOptional && <span className="quiet"> (may be left out)</span>}
          </span>
        </summary>
        {(isOpen || isShown) && <StepBody step={step} waitsFor={isDone ? [] : waitsFor} isShown={isShown} />}
      </details>
    </li>
  );
}

function StepBody({ step, waitsFor, isShown }: Pick<MakingStepProps, 'step' | 'waitsFor' | 'isShown'>) {
  return (
    <div className="step-body">
      {waitsFor.length > 0 && (
        <p className="step-waits">First: {waitsFor.map(({ title }) => title.toLowerCase()).join('; ')}.</p>
      )}
      {step.text.map((text) => (
        <p key={text}>{text}</p>
      ))}
      <Pieces step={step} showsAll={isShown} />
      <Seams seams={step.seams} />
      <Checks step={step} />
      {step.cautions.map(({ id, title, text }) => (
        <p className="step-caution" key={id}>
          <strong>{title}.</strong> {text}
        </p>
      ))}
    </div>
  );
}

/** Lights what it names on the body while pointed at or focused. */
function usePointing(points: Highlight | null) {
  const actions = useActions();
  const isLit = useApp(
    ({ highlight }) => points !== null && highlight?.kind === points.kind && highlight.id === points.id,
  );
  const on = () => points && actions.pointAt(points);
  const off = () => points && actions.pointAt(null);
  return {
    'data-lit': isLit || undefined,
    onPointerEnter: on,
    onPointerLeave: off,
    onFocus: on,
    onBlur: off,
  };
}

function Pieces({ step, showsAll }: { readonly step: WorkStep; readonly showsAll: boolean }) {
  const [isWhole, setIsWhole] = useState(false);
  const most = 12;
  if (step.pieces.length === 0) return null;
  const shown = isWhole || showsAll ? step.pieces : step.pieces.slice(0, most);
  const rest = step.pieces.length - shown.length;
  return (
    <ul className="step-pieces" aria-label="Pieces">
      {shown.map(({ id, name }) => (
        <Piece key={id} id={id} name={name} />
      ))}
      {rest > 0 && (
        <li>
          <button type="button" className="plain" onClick={() => setIsWhole(true)}>
            and {rest} more
          </button>
        </li>
      )}
    </ul>
  );
}

function Piece({ id, name }: { readonly id: string; readonly name: string }) {
  const isPanel = useApp((state) => state.form?.shell.panels.some((panel) => panel.id === id) ?? false);
  const pointing = usePointing(isPanel ? { kind: 'panel', id } : null);
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
  if (seams.length === 0) return null;
  return (
    <ol className="step-seams" aria-label="Seams, in this order">
      {seams.map((seam) => (
        <SeamLine key={seam.id} seam={seam} />
      ))}
    </ol>
  );
}

function SeamLine({ seam }: { readonly seam: WorkSeam }) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const index = useApp((state) => state.form?.shell.seams.findIndex(({ id }) => id === seam.id) ?? -1);
  const pointing = usePointing(seam.kind === 'shell' ? { kind: 'seam', id: seam.id } : null);
  const marks = seam.marks === 1 ? '1 mark' : `${seam.marks} marks`;
  const lengths = [...new Set(seam.lengths.map((mm) => formatLength(mm, unit)))].join(' to ');
  const line = (
    <>
      <span className="seam-tag" style={index >= 0 ? { color: threadColour(index) } : undefined}>
        <span>{seam.letter}</span>
      </span>
      <span className="step-seam-name">
        {seam.name}
        {(seam.closesRing || seam.note) && (
          <span className="measure-how">{seam.note ?? 'closes a ring: no longer flat'}</span>
        )}
      </span>
      <span className="number quiet">
        {lengths}
        {seam.marks > 0 && `, ${marks}`}
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

function Checks({ step }: { readonly step: WorkStep }) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  if (step.checks.length === 0) return null;
  return (
    <dl className="step-checks">
      {step.checks.map((check) => (
        <div key={check.id}>
          <dt>{check.name}</dt>
          <dd>{wordCheck(check, unit)}</dd>
        </div>
      ))}
    </dl>
  );
}
