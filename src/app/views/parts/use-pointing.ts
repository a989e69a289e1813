import { type PointerEvent, useRef } from 'react';
import type { Highlight } from '../../store/index.ts';
import { useActions } from './workroom-context.tsx';

interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * Lights what an element tells of while the pointer moves on it or the focus is in it. A page that scrolls beneath a
 * resting pointer lights nothing and puts nothing out: the browser then tells of an element left where the pointer
 * last moved. When the pointer goes, what has the focus is lit again.
 */
export function usePointing(points: Highlight | null) {
  const actions = useActions();
  const last = useRef<Place | null>(null);
  if (points === null) return {};
  const light = () => actions.pointAt(points);
  const leave = () => actions.pointAt(pointsOfFocus());
  return {
    'data-points': `${points.kind} ${points.id}`,
    onPointerDown: (event: PointerEvent) => {
      last.current = placeOf(event);
      light();
    },
    onPointerMove: (event: PointerEvent) => {
      last.current = placeOf(event);
      light();
    },
    onPointerLeave: (event: PointerEvent) => {
      const [before, now] = [last.current, placeOf(event)];
      last.current = null;
      // Never pointed at: the page brought it under the pointer and takes it away again.
      if (before === null) return;
      const isAtRest = before.x === now.x && before.y === now.y;
      if (isAtRest) window.addEventListener('pointermove', leave, { once: true, capture: true });
      else leave();
    },
    onFocus: light,
    onBlur: () => actions.pointAt(null),
  };
}

function placeOf({ clientX, clientY }: PointerEvent): Place {
  return { x: clientX, y: clientY };
}

/** What the element with the focus tells of, as `usePointing` wrote it there. */
function pointsOfFocus(): Highlight | null {
  const told = document.activeElement?.closest('[data-points]')?.getAttribute('data-points');
  if (!told) return null;
  const end = told.indexOf(' ');
  return { kind: told.slice(0, end) as Highlight['kind'], id: told.slice(end + 1) };
}
