import { type PointerEvent, type RefObject, useRef, useState } from 'react';
import type { LaidPiece } from '../../../core/laying/index.ts';
import { type LaySeen, moveBy } from '../../store/index.ts';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** Less than this is a click, not a drag, mm. */
const LEAST = 0.5;

/**
 * Drags pieces over the cloth. A mouse takes a piece at once; a finger, which also scrolls the page, only the chosen one. A locked
 * piece stays.
 */
export function usePieceDrag(
  svg: RefObject<SVGSVGElement | null>,
  { rules }: LaySeen,
  onPut: (place: LaidPiece, step: string) => void,
) {
  const from = useRef<{ readonly x: number; readonly y: number; readonly place: LaidPiece } | null>(null);
  const [held, setHeld] = useState<LaidPiece | null>(null);
  const chosen = useApp((state) => state.layWork.chosen);
  const { steps } = useWords().laying;
  const say = useSay();
  const actions = useActions();
  const startDrag = (event: PointerEvent, place: LaidPiece) => {
    event.stopPropagation();
    actions.choosePiece(place.piece);
    (event.currentTarget as SVGElement).focus({ preventScroll: true });
    if (place.isHeld || (event.pointerType === 'touch' && chosen !== place.piece)) return;
    svg.current?.setPointerCapture(event.pointerId);
    from.current = { ...pointUnder(svg.current, event), place };
    setHeld(place);
  };
  const letGo = () => {
    from.current = null;
    setHeld(null);
  };
  const dragging = {
    onPointerMove(event: PointerEvent) {
      const start = from.current;
      if (!start) return;
      const { x, y } = pointUnder(svg.current, event);
      setHeld(moveBy(rules, start.place, x - start.x, start.y - y));
    },
    onPointerUp(_event: PointerEvent) {
      const start = from.current;
      if (start && held && Math.hypot(held.x - start.place.x, held.y - start.place.y) > LEAST) {
        const piece = rules.pieces.find(({ id }) => id === held.piece);
        onPut(held, steps.move(piece ? say(piece.name) : held.piece));
      }
      letGo();
    },
    onPointerCancel: (_event: PointerEvent) => letGo(),
  };
  return { held, startDrag, dragging };
}

/** In the units of the drawing, y down. */
export function pointUnder(
  svg: SVGSVGElement | null,
  event: { readonly clientX: number; readonly clientY: number },
): { readonly x: number; readonly y: number } {
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg?.getScreenCTM()?.inverse());
  return { x, y };
}
