import type { ControlPoint } from '../../core/seams/index.ts';
import { sayCaught } from '../store/index.ts';
import { LineTools } from './line-tools.tsx';
import { percent } from './say-numbers.ts';
import { useActions, useApp } from './workroom-context.tsx';

/** Pulling the lines by hand: every point as a button that arrow keys move, and what it does to the strain. */
export function PullLines() {
  const preview = useApp((state) => state.seamWork.preview);
  const isReady = useApp((state) => state.seamWork.base !== null && state.seamWork.base === state.project);
  const refusal = useApp((state) => state.seamWork.refusal);
  if (!preview) return null;
  const lines = preview.lines.filter(({ id }) => preview.points.some(({ lineId }) => lineId === id));
  return (
    <section className="pull-lines" aria-labelledby="pull-title">
      <h3 id="pull-title">Pull the lines</h3>
      <p className="measure-how" id="pull-how">
        Drag a bead on the body; both halves follow, and it catches on landmarks and levels unless Alt is
        held. By keyboard: choose a point, then arrow keys move it 1 mm, with Shift 10 mm.
      </p>
      <StrainChange />
      <ul className="pull-list" data-behind={!isReady || undefined}>
        {lines.map((line) => (
          <li key={line.id}>
            <span className="measure-name">{line.name}</span>
            <span className="pull-points">
              {preview.points
                .filter(({ lineId }) => lineId === line.id)
                .map((point) => (
                  <GripButton key={point.anchor} point={point} lineName={line.name} />
                ))}
            </span>
          </li>
        ))}
      </ul>
      {preview.snapped && preview.snapped.kind !== 'none' && (
        <p className="quiet" role="status">
          Caught on {sayCaught(preview.snapped.kind, preview.snapped.id)}.
        </p>
      )}
      {refusal && (
        <p className="field-message" role="alert">
          {refusal}
        </p>
      )}
      <LineTools />
    </section>
  );
}

function StrainChange() {
  const before = useApp((state) => state.seamWork.before);
  const now = useApp((state) => state.seamWork.preview?.strain);
  if (!before || !now) return null;
  const hasChanged = Math.abs(before.rms - now.rms) > 5e-6;
  return (
    <dl className="numbers">
      <div>
        <dt>Typical strain, roughly</dt>
        <dd>{percent(now.rms, 2)}</dd>
      </div>
      <div>
        <dt>95 of 100 below</dt>
        <dd>{percent(now.p95)}</dd>
      </div>
      {hasChanged && (
        <div>
          <dt>Before</dt>
          <dd className="before">{percent(before.rms, 2)}</dd>
        </div>
      )}
    </dl>
  );
}

const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

interface GripButtonProps {
  readonly point: ControlPoint;
  readonly lineName: string;
}

function GripButton({ point, lineName }: GripButtonProps) {
  const { lineId, anchor } = point;
  const isChosen = useApp(
    ({ seamWork: { chosen } }) => chosen?.lineId === lineId && chosen.anchor === anchor,
  );
  const isFree = useApp(({ seamWork, project }) => seamWork.base === project && seamWork.pull === null);
  const actions = useActions();
  const nudge = (step: readonly [number, number], mm: number) => {
    // One millimetre round the body is a larger angle where the body is narrower.
    const radius = Math.max(40, Math.hypot(point.position[0], point.position[1]));
    const to = { u: point.u + (step[0] * mm) / radius, v: point.v + step[1] * mm };
    actions.pullGrip({ lineId, anchor, to, snapWithin: 0, isLast: true });
  };
  return (
    <button
      type="button"
      className="grip"
      aria-pressed={isChosen}
      aria-label={`${lineName}, point ${anchor + 1}`}
      aria-describedby="pull-how"
      onClick={() => actions.chooseGrip({ lineId, anchor })}
      onFocus={() => {
        actions.chooseGrip({ lineId, anchor });
        actions.beginEdit();
      }}
      onBlur={actions.endEdit}
      onKeyDown={(event) => {
        const step = STEPS[event.key];
        if (!step) return;
        event.preventDefault();
        if (isFree) nudge(step, event.shiftKey ? 10 : 1);
      }}
    >
      {anchor + 1}
    </button>
  );
}
