import { type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react';
import type { UseId } from '../../../core/laying/index.ts';
import { clamp } from '../../../core/math/index.ts';
import { type LayDrag, type LaySeen, repeatShift } from '../../store/index.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions } from '../parts/workroom-context.tsx';
import type { SheetPlace } from './lay-sheets.ts';
import { pointUnder } from './use-piece-drag.ts';

/** A flaw smaller than this is none, mm. */
const LEAST_FLAW = 3;

interface DrawnOverProps {
  readonly use: UseId;
  readonly seen: LaySeen;
  readonly svg: RefObject<SVGSVGElement | null>;
  readonly sheets: readonly SheetPlace[];
  readonly box: readonly [number, number, number, number];
  readonly drag: LayDrag;
  /** How far the print is dragged so far: along and across, mm. */
  readonly onShift: (shift: readonly [number, number]) => void;
}

interface Stretch {
  readonly from: { readonly x: number; readonly y: number };
  readonly to: { readonly x: number; readonly y: number };
}

/** Lies over the plan while a flaw is dragged out, or the print is dragged. */
export function DrawnOver({ use, seen, svg, sheets, box, drag, onShift }: DrawnOverProps) {
  const actions = useActions();
  const { steps } = useWords().laying;
  const from = useRef<Stretch['from'] | null>(null);
  const [stretch, setStretch] = useState<Stretch | null>(null);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key === 'Escape') actions.dragWith('pieces');
    };
    window.addEventListener('keydown', onKey);
    return () => {
      window.removeEventListener('keydown', onKey);
      onShift([0, 0]);
    };
  }, [actions, onShift]);
  const onPointerDown = (event: PointerEvent<SVGRectElement>) => {
    event.stopPropagation();
    event.currentTarget.setPointerCapture(event.pointerId);
    from.current = pointUnder(svg.current, event);
  };
  const onPointerMove = (event: PointerEvent) => {
    if (!from.current) return;
    event.stopPropagation();
    const to = pointUnder(svg.current, event);
    setStretch({ from: from.current, to });
    if (drag === 'print') onShift([to.x - from.current.x, from.current.y - to.y]);
  };
  const onPointerUp = () => {
    from.current = null;
    if (stretch && drag === 'flaw') addFlaw(stretch);
    if (stretch && drag === 'print') shiftPrint(stretch);
    setStretch(null);
    onShift([0, 0]);
    if (stretch) actions.dragWith('pieces');
  };
  const addFlaw = ({ from: a, to: b }: Stretch) => {
    const sheet = sheets.find(({ bottom, width }) => a.y <= bottom && a.y >= bottom - width) ?? sheets[0];
    const ys = [sheet.bottom - a.y, sheet.bottom - b.y].map((y) => clamp(y, 0, sheet.width));
    const xs = [a.x, b.x].map((x) => Math.max(0, x));
    const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
    if (right - left < LEAST_FLAW || high - low < LEAST_FLAW) return;
    const flaw = [
      [left, low],
      [right, low],
      [right, high],
      [left, high],
    ].map(([x, y]) => [Math.round(x), Math.round(y)] as const);
    const { flaws = [], pieces } = seen.of.stock;
    if (!pieces) return actions.setStock(use, { flaws: [...flaws, flaw] }, steps.flaw);
    const changed = pieces.map((piece, i) =>
      i === sheet.sheet ? { ...piece, flaws: [...(piece.flaws ?? []), flaw] } : piece,
    );
    actions.setStock(use, { pieces: changed }, steps.flaw);
  };
  const shiftPrint = ({ from: a, to: b }: Stretch) => {
    const print = seen.of.stock.print ?? {};
    actions.setClothPrint(use, repeatShift(print, b.x - a.x, a.y - b.y), steps.print);
  };
  const corner = stretch && {
    x: Math.min(stretch.from.x, stretch.to.x),
    y: Math.min(stretch.from.y, stretch.to.y),
    width: Math.abs(stretch.to.x - stretch.from.x),
    height: Math.abs(stretch.to.y - stretch.from.y),
  };
  return (
    <>
      <rect
        className="lay-over"
        x={box[0] - box[2]}
        y={box[1] - box[3]}
        width={3 * box[2]}
        height={3 * box[3]}
        onPointerDown={onPointerDown}
        onPointerMove={onPointerMove}
        onPointerUp={onPointerUp}
        onPointerCancel={() => {
          from.current = null;
          setStretch(null);
          onShift([0, 0]);
        }}
      />
      {drag === 'flaw' && corner && <rect className="lay-flaw-drawn" {...corner} />}
    </>
  );
}
