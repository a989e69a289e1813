import { type ControlPoint, nameOfLine } from '../../../core/seams/index.ts';
import { sayCaught } from '../../store/index.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { LineTools } from './line-tools.tsx';

/** Pulling the lines by hand: every point as a button that arrow keys move, and what it does to the strain. */
export function PullLines() {
  const preview = useApp((state) => state.seamWork.preview);
  const isReady = useApp((state) => state.seamWork.base !== null && state.seamWork.base === state.project);
  const refusal = useApp((state) => state.seamWork.refusal);
  const all = useWords();
  const words = all.pull;
  const say = useSay();
  if (!preview) return null;
  const lines = preview.lines.filter(({ id }) => preview.points.some(({ lineId }) => lineId === id));
  return (
    <section className="pull-lines" aria-labelledby="pull-title">
      <h3 id="pull-title">{words.title}</h3>
      <p className="measure-how" id="pull-how">
        {words.how}
      </p>
      <StrainChange />
      <ul className="pull-list" data-behind={!isReady || undefined}>
        {lines.map((line) => (
          <li key={line.id}>
            <span className="measure-name">{say(nameOfLine(line.name))}</span>
            <span className="pull-points">
              {preview.points
                .filter(({ lineId }) => lineId === line.id)
                .map((point) => (
                  <ControlPointButton
                    key={point.anchor}
                    point={point}
                    lineName={say(nameOfLine(line.name))}
                  />
                ))}
            </span>
          </li>
        ))}
      </ul>
      {preview.snapped && preview.snapped.kind !== 'none' && (
        <p className="quiet" role="status">
          {words.caught(sayCaught(preview.snapped.kind, preview.snapped.id, all, say))}
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
  const words = useWords().pull;
  const { percent } = useNumbers();
  if (!before || !now) return null;
  // As far as the figures show it.
  const hasChanged = percent(before.p95, 2) !== percent(now.p95, 2);
  return (
    <dl className="numbers">
      <div>
        <dt>{words.strain}</dt>
        <dd>{percent(now.p95, 2)}</dd>
      </div>
      {hasChanged && (
        <div>
          <dt>{words.before}</dt>
          <dd className="before">{percent(before.p95, 2)}</dd>
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

interface ControlPointButtonProps {
  readonly point: ControlPoint;
  readonly lineName: string;
}

function ControlPointButton({ point, lineName }: ControlPointButtonProps) {
  const { lineId, anchor } = point;
  const isChosen = useApp(
    ({ seamWork: { chosen } }) => chosen?.lineId === lineId && chosen.anchor === anchor,
  );
  const isFree = useApp(({ seamWork, project }) => seamWork.base === project && seamWork.pull === null);
  const actions = useActions();
  const words = useWords().pull;
  const nudge = (step: readonly [number, number], mm: number) => {
    // One millimetre round the body is a larger angle where the body is narrower.
    const radius = Math.max(40, Math.hypot(point.position[0], point.position[1]));
    const to = { u: point.u + (step[0] * mm) / radius, v: point.v + step[1] * mm };
    actions.pullControlPoint({ lineId, anchor, to, snapWithin: 0, isLast: true });
  };
  return (
    <button
      type="button"
      className="point-button"
      aria-pressed={isChosen}
      aria-label={words.point(lineName, anchor + 1)}
      aria-describedby="pull-how"
      onClick={() => actions.chooseControlPoint({ lineId, anchor })}
      onFocus={() => {
        actions.chooseControlPoint({ lineId, anchor });
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
