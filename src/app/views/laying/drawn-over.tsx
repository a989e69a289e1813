import { type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react';
import type { Stock, UseId } from '../../../core/laying/index.ts';
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
  const addFlaw = (drawn: Stretch) => {
    const made = flawOf(drawn, sheets);
    if (made) actions.setStock(use, withFlaw(seen.of.stock, made.flaw, made.sheet), steps.flaw);
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

type Flaw = readonly (readonly [number, number])[];

/** An oblong on the sheet it was begun on, whole mm; null when it is too small. */
function flawOf(
  { from: a, to: b }: Stretch,
  sheets: readonly SheetPlace[],
): { readonly flaw: Flaw; readonly sheet: number } | null {
  const sheet = sheets.find(({ bottom, width }) => a.y <= bottom && a.y >= bottom - width) ?? sheets[0];
  const ys = [a, b].map(({ y }) => Math.round(clamp(sheet.bottom - y, 0, sheet.width)));
  const xs = [a, b].map(({ x }) => Math.round(Math.max(0, x)));
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  if (right - left < LEAST_FLAW || high - low < LEAST_FLAW) return null;
  const flaw: Flaw = [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
  return { flaw, sheet: sheet.sheet };
}

/** On a roll, or on the piece of what one has. */
function withFlaw({ flaws = [], pieces }: Stock, flaw: Flaw, sheet: number): Pick<Stock, 'flaws' | 'pieces'> {
  if (!pieces) return { flaws: [...flaws, flaw] };
  return {
    pieces: pieces.map((piece, i) =>
      i === sheet ? { ...piece, flaws: [...(piece.flaws ?? []), flaw] } : piece,
    ),
  };
}
