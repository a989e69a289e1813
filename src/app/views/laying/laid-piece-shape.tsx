import type { KeyboardEvent, PointerEvent } from 'react';
import { type LaidPiece, type LayFault, placePiece } from '../../../core/laying/index.ts';
import type { Piece } from '../../../core/pattern/index.ts';
import { boxOf, type LaySeen, stepBy, turnOn } from '../../store/index.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { pathOnSheet } from './lay-sheets.ts';
import { halfWidthOf, placeName, ROW } from './place-name.ts';

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
  const twin = rules.under.get(piece.id);
  const name = twin ? `${say(piece.name)} + ${say(twin.name)}` : say(piece.name);
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
    rules.under.has(piece.id) ? words.plan.doubled : '',
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
      <path className="laid-edge-halo" d={outline} />
      <path className="laid-edge" d={outline} />
      <Lettering
        outline={rules.outlines.get(piece.id) ?? piece.cutLine}
        place={place}
        bottom={bottom}
        scale={scale}
        name={name}
        isMarked={fault !== null}
      />
    </g>
  );
}

interface LetteringProps {
  readonly outline: Float64Array;
  readonly place: LaidPiece;
  readonly bottom: number;
  readonly scale: number;
  readonly name: string;
  readonly isMarked: boolean;
}

/** The name in rows where it has room, with an arrow under it; the arrow alone where it has none. */
function Lettering({ outline, place, bottom, scale, name, isMarked }: LetteringProps) {
  const {
    rows: fitted,
    x,
    y,
    room,
    size,
    isBeside,
  } = placeName(placePiece(outline, place), name, LETTERS / scale);
  const rows = isMarked ? [`! ${fitted[0] ?? ''}`.trim(), ...fitted.slice(1)] : fitted;
  const half = Math.min(isBeside ? 2 * size : ARROW / scale, room) / 2;
  const aside = isBeside ? halfWidthOf(rows[0], size) + half + size * 0.3 : 0;
  const [ux, uy] = [-Math.sin(place.angle), -Math.cos(place.angle)];
  // Name and arrow together stand in the middle.
  const textX = isBeside ? x - half - size * 0.15 : x;
  // Under the rows, or after the only one.
  const down = rows.length > 0 && !isBeside ? (rows.length * size * ROW) / 2 + size * 0.15 : 0;
  const [cx, cy] = [textX + aside, bottom - y + (Math.abs(ux) > 0.7 || isBeside ? down : down + half)];
  const [tx, ty] = [cx + half * ux, cy + half * uy];
  const head = 5 / scale;
  const barb = (side: 1 | -1) =>
    `${tx - head * ux + side * head * 0.7 * uy} ${ty - head * uy - side * head * 0.7 * ux}`;
  const arrow = `M${cx - half * ux} ${cy - half * uy}L${tx} ${ty}M${barb(1)}L${tx} ${ty}L${barb(-1)}`;
  return (
    <g className="laid-lettering">
      <path className="laid-arrow-halo" d={arrow} />
      <path className="laid-arrow" d={arrow} />
      {rows.map((row, i) => (
        <text
          // biome-ignore lint/suspicious/noArrayIndexKey: rows of a name go by their place
          key={i}
          x={textX}
          y={bottom - y + size * ROW * (i - (rows.length - 1) / 2) + size * (isBeside ? 0.35 : -0.1)}
          fontSize={size}
          className={isMarked ? 'laid-warning' : undefined}
        >
          {row}
        </text>
      ))}
      {place.isHeld && <Pin x={cx - half - 12 / scale} y={cy - 6 / scale} scale={scale} />}
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
