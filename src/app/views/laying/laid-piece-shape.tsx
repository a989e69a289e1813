import type { KeyboardEvent, PointerEvent } from 'react';
import { innermostPoint, type LaidPiece, type LayFault, placePiece } from '../../../core/laying/index.ts';
import type { Piece } from '../../../core/pattern/index.ts';
import { boxOf, type LaySeen, stepBy, turnOn } from '../../store/index.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { pathOnSheet } from './lay-sheets.ts';

const KEYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
/** Letters in the picture, CSS pixels; the arrow no longer than this. */
const LETTERS = 12;
const ARROW = 46;

interface LaidPieceShapeProps {
  readonly seen: LaySeen;
  readonly piece: Piece;
  readonly place: LaidPiece;
  readonly bottom: number;
  /** Pixels per mm. */
  readonly scale: number;
  /** Fill of the cloth's print. */
  readonly print: string | null;
  readonly hatch: string;
  readonly fault: LayFault | null;
  readonly isChosen: boolean;
  readonly onDown: (event: PointerEvent, place: LaidPiece) => void;
  readonly onPut: (place: LaidPiece, step: string) => void;
}

/** A piece where it lies, with its name and an arrow to its top. */
export function LaidPieceShape(props: LaidPieceShapeProps) {
  const { seen, piece, place, bottom, scale, print, hatch, fault, isChosen, onDown, onPut } = props;
  const { rules } = seen;
  const { laying: words } = useWords();
  const say = useSay();
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const actions = useActions();
  const name = say(piece.name);
  const outline = pathOnSheet(placePiece(piece.cutLine, place), bottom);
  const onKeyDown = (event: KeyboardEvent) => {
    const step = KEYS[event.key];
    if (step && !place.isHeld)
      onPut(stepBy(rules, place, ...step, event.shiftKey ? 10 : 1), words.steps.move(name));
    else if (event.key === 'r' || event.key === 'R') onPut(turnOn(rules, place), words.steps.turn(name));
    else if (event.key === 'l' || event.key === 'L')
      onPut(
        { ...place, isHeld: !place.isHeld },
        place.isHeld ? words.steps.unlock(name) : words.steps.lock(name),
      );
    else if (event.key === 'Escape') actions.choosePiece(null);
    else if (!step) return;
    event.preventDefault();
    event.stopPropagation();
  };
  const { minX, minY } = boxOf(rules, place);
  const isTurned = Math.sin(place.angle) > 0.5;
  const notes = [
    place.isHeld ? words.plan.locked : '',
    isTurned ? words.plan.upsideDown : '',
    fault ? `, ${words.faults.mark[fault.kind]}` : '',
  ].join('');
  const label = words.plan.piece(name, numbers.length(minX, unit), numbers.length(minY, unit), notes);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button cannot stand in a drawing
    <g
      className="laid-piece"
      role="button"
      tabIndex={0}
      aria-label={label}
      aria-pressed={isChosen}
      data-laid={piece.id}
      data-held={place.isHeld || undefined}
      data-fault={fault?.kind}
      style={isChosen ? { touchAction: 'none' } : undefined}
      onFocus={() => actions.choosePiece(piece.id)}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => onDown(event, place)}
    >
      <title>{name}</title>
      <path className="laid-cloth" d={outline} style={print ? { fill: print } : undefined} />
      {fault && <path d={outline} fill={hatch} className="laid-fault" />}
      {(piece.cutouts ?? []).map(({ id, points }) => (
        <path key={id} className="laid-hole" d={pathOnSheet(placePiece(points, place), bottom)} />
      ))}
      <path className="laid-edge" d={outline} />
      <Lettering
        piece={piece}
        place={place}
        bottom={bottom}
        scale={scale}
        name={name}
        isMarked={fault !== null}
      />
    </g>
  );
}

/** Where a piece is widest, in its own plane; the same wherever it lies. */
const innermost = new WeakMap<Piece, ReturnType<typeof innermostPoint>>();

function innermostOf(piece: Piece): ReturnType<typeof innermostPoint> {
  const known = innermost.get(piece) ?? innermostPoint(piece.cutLine);
  innermost.set(piece, known);
  return known;
}

interface LetteringProps {
  readonly piece: Piece;
  readonly place: LaidPiece;
  readonly bottom: number;
  readonly scale: number;
  readonly name: string;
  readonly isMarked: boolean;
}

/** The name in rows where it has room, with an arrow under it; the arrow alone where it has none. */
function Lettering({ piece, place, bottom, scale, name, isMarked }: LetteringProps) {
  const widest = innermostOf(piece);
  const [x, y] = placePiece(Float64Array.of(widest.x, widest.y), place);
  const outline = placePiece(piece.cutLine, place);
  const size = LETTERS / scale;
  const fitted = rowsThatFit(name, size, (half) => roomAcross(outline, x, y, half));
  const rows = isMarked ? [`! ${fitted.rows[0] ?? ''}`.trim(), ...fitted.rows.slice(1)] : fitted.rows;
  const middle = fitted.middle ?? x;
  const half = Math.min(ARROW / scale, 1.6 * widest.radius) / 2;
  const [ux, uy] = [-Math.sin(place.angle), -Math.cos(place.angle)];
  // Under the rows.
  const down = rows.length > 0 ? (rows.length * size * ROW) / 2 + size * 0.35 : 0;
  const [cx, cy] = [middle, bottom - y + (Math.abs(ux) > 0.7 ? down : down + half)];
  const [tx, ty] = [cx + half * ux, cy + half * uy];
  const head = 5 / scale;
  const barb = (side: 1 | -1) =>
    `${tx - head * ux + side * head * 0.7 * uy} ${ty - head * uy - side * head * 0.7 * ux}`;
  return (
    <g className="laid-lettering">
      <path
        className="laid-arrow"
        d={`M${cx - half * ux} ${cy - half * uy}L${tx} ${ty}M${barb(1)}L${tx} ${ty}L${barb(-1)}`}
      />
      {rows.map((row, i) => (
        <text
          // biome-ignore lint/suspicious/noArrayIndexKey: rows of a name go by their place
          key={i}
          x={middle}
          y={bottom - y + size * ROW * (i - (rows.length - 1) / 2) + size * 0.2}
          fontSize={size}
          className={isMarked ? 'laid-warning' : undefined}
        >
          {row}
        </text>
      ))}
      {place.isHeld && <Pin x={middle - half - 12 / scale} y={cy - 6 / scale} scale={scale} />}
    </g>
  );
}

/** A pin's head and shaft: the piece is locked. */
function Pin({ x, y, scale }: { readonly x: number; readonly y: number; readonly scale: number }) {
  const r = 4 / scale;
  return (
    <g className="laid-pin">
      <path d={`M${x} ${y}L${x + 1.6 * r} ${y + 3 * r}`} />
      <circle cx={x} cy={y} r={r} />
    </g>
  );
}

/** From row to row, and how wide a letter is, both in heights of letters. */
const ROW = 1.15;
const LETTER_WIDTH = 0.56;

/** As few rows as have room in a band so high about the widest place; none where the name does not fit. */
function rowsThatFit(
  name: string,
  size: number,
  roomIn: (half: number) => readonly [number, number],
): { readonly rows: readonly string[]; readonly middle?: number } {
  for (const count of [1, 2, 3]) {
    const [left, right] = roomIn((count * ROW * size) / 2 + size * 0.3);
    const letters = Math.floor((right - left) / (LETTER_WIDTH * size));
    const rows = foldLetters(name, letters);
    if (letters > 0 && rows.length <= count && rows.every((row) => row.length <= letters))
      return { rows, middle: (left + right) / 2 };
  }
  return { rows: [] };
}

function foldLetters(name: string, most: number): string[] {
  const rows: string[] = [];
  for (const word of name.split(' ')) {
    const last = rows.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most)
      rows[rows.length - 1] = `${last} ${word}`;
    else rows.push(word);
  }
  return rows;
}

/** From where to where a band about a point is free from side to side, inside a closed outline; mm. */
function roomAcross(outline: Float64Array, x: number, y: number, half: number): readonly [number, number] {
  let [left, right] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const level of [y - half, y - half / 2, y, y + half / 2, y + half]) {
    let crossings = 0;
    for (let i = 0; i < outline.length; i += 2) {
      const k = (i + 2) % outline.length;
      const [ay, by] = [outline[i + 1], outline[k + 1]];
      if (ay > level === by > level) continue;
      const at = outline[i] + ((level - ay) / (by - ay)) * (outline[k] - outline[i]);
      if (at > x) crossings += 1;
      if (at <= x) left = Math.max(left, at);
      else right = Math.min(right, at);
    }
    // The point itself lies outside at this height.
    if (crossings % 2 === 0) return [x, x];
  }
  return [left, right];
}
