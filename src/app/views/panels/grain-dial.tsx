import { type PointerEvent, useId, useMemo, useRef } from 'react';
import type { Piece } from '../../../core/pattern/index.ts';
import { useSay, useWords } from '../parts/use-words.ts';
import { pathOf } from './piece-path.ts';
import { MOST_TURN, turnByKey, turnTowards } from './turn-of-grain.ts';
import { useTurn } from './use-turn.ts';

interface GrainDialProps {
  readonly piece: Piece;
  /** Degrees. */
  readonly turn: number;
  /** Degrees by which the piece was turned when it was made. */
  readonly madeTurn: number;
  readonly bestTurn: number;
  readonly onTurn: (turn: number) => void;
  /** The pointer let go. */
  readonly onDone: () => void;
  /** A key turned it at once. */
  readonly onKeyTurn: (turn: number) => void;
  readonly onFocus: () => void;
  readonly onBlur: () => void;
}

const TICKS = Array.from({ length: 13 }, (_, k) => 15 * (k - 6));

/** The piece upright as on the body, its threads, and a dial round its middle to turn them. */
export function GrainDial(props: GrainDialProps) {
  const { piece, turn, madeTurn, bestTurn, onTurn, onDone } = props;
  const { grain: words } = useWords();
  const say = useSay();
  const sayTurn = useTurn();
  const dial = useRef<SVGCircleElement>(null);
  const threads = useId();
  const { outline, centre, box, radius } = useMemo(() => placeDial(piece, madeTurn), [piece, madeTurn]);
  const follow = (event: PointerEvent) => {
    const rect = dial.current?.getBoundingClientRect();
    if (!rect) return;
    const [dx, dy] = [event.clientX - rect.left - rect.width / 2, event.clientY - rect.top - rect.height / 2];
    if (Math.hypot(dx, dy) > 4) onTurn(turnTowards(dx, dy, event.shiftKey));
  };
  const end = (event: PointerEvent) => {
    if (event.currentTarget.hasPointerCapture(event.pointerId)) onDone();
  };
  return (
    <div className="grain-dial">
      <input
        type="range"
        className="visually-hidden"
        aria-label={words.of(say(piece.name))}
        aria-valuetext={sayTurn(turn)}
        min={-MOST_TURN}
        max={MOST_TURN}
        step="any"
        value={turn}
        onFocus={props.onFocus}
        onBlur={props.onBlur}
        onChange={(event) => props.onKeyTurn(Number(event.target.value))}
        onKeyDown={(event) => {
          const next = turnByKey(turn, event.key, event.shiftKey);
          if (next === null) return;
          event.preventDefault();
          props.onKeyTurn(next);
        }}
      />
      <svg
        viewBox={box.join(' ')}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          follow(event);
        }}
        onPointerMove={(event) => {
          if (event.currentTarget.hasPointerCapture(event.pointerId)) follow(event);
        }}
        onPointerUp={end}
        onPointerCancel={end}
      >
        <title>{words.picture}</title>
        <defs>
          <pattern
            id={threads}
            width={12}
            height={12}
            patternUnits="userSpaceOnUse"
            patternTransform={`rotate(${madeTurn - turn})`}
          >
            <path className="grain-weft" d="M0 6H12" />
            <path className="grain-warp" d="M3 0V12M9 0V12" />
          </pattern>
        </defs>
        <g transform={`rotate(${-madeTurn})`}>
          <path className="piece-cloth" d={outline} />
          <path className="grain-threads" d={outline} fill={`url(#${threads})`} />
        </g>
        <g transform={`translate(${centre[0]} ${centre[1]})`}>
          <circle ref={dial} className="grain-band" r={radius} style={{ strokeWidth: 0.2 * radius }} />
          <DialMarks r={radius} turn={turn} bestTurn={bestTurn} />
        </g>
      </svg>
    </div>
  );
}

interface DialMarksProps {
  /** Radius of the dial, mm. */
  readonly r: number;
  readonly turn: number;
  readonly bestTurn: number;
}

/** Ticks, the best turn, and the arrow that is turned. */
function DialMarks({ r, turn, bestTurn }: DialMarksProps) {
  return (
    <>
      {TICKS.map((at) => (
        <path
          key={at}
          className="grain-tick"
          data-strong={at % 45 === 0 || undefined}
          d={`M0 ${-0.93 * r}V${(at % 45 === 0 ? -1.08 : -1.03) * r}`}
          transform={`rotate(${-at})`}
        />
      ))}
      <path
        className="grain-best"
        d={`M0 ${-0.9 * r}l${-0.055 * r} ${0.11 * r}h${0.11 * r}Z`}
        transform={`rotate(${-bestTurn})`}
      />
      <g className="grain-arrow" transform={`rotate(${-turn})`}>
        <path className="grain-halo" d={arrowOf(r)} />
        <path d={arrowOf(r)} />
        <circle cy={-r} r={0.1 * r} />
      </g>
    </>
  );
}

/** A grain line with a head at either end. */
function arrowOf(r: number): string {
  const [w, h, e] = [0.07 * r, 0.13 * r, 0.86 * r];
  return `M0 ${-e}V${e}M${-w} ${h - e}L0 ${-e}L${w} ${h - e}M${-w} ${e - h}L0 ${e}L${w} ${e - h}`;
}

const MARGIN = 12;

/** Where the dial lies on the piece, upright as on the body; y down, mm. */
function placeDial({ cutLine }: Piece, madeTurn: number) {
  const angle = (-madeTurn * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < cutLine.length; i += 2) {
    const [x, y] = [cutLine[i], -cutLine[i + 1]];
    const [tx, ty] = [c * x - s * y, s * x + c * y];
    left = Math.min(left, tx);
    right = Math.max(right, tx);
    top = Math.min(top, ty);
    bottom = Math.max(bottom, ty);
  }
  const centre = [(left + right) / 2, (top + bottom) / 2] as const;
  const radius = Math.max(0.26 * (bottom - top), 60);
  const halfWidth = Math.max((right - left) / 2, 1.15 * radius) + MARGIN;
  const halfHeight = Math.max((bottom - top) / 2, 1.15 * radius) + MARGIN;
  const box = [centre[0] - halfWidth, centre[1] - halfHeight, 2 * halfWidth, 2 * halfHeight] as const;
  return { outline: pathOf(cutLine, true), centre, box, radius };
}
