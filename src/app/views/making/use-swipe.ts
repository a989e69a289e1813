import { type PointerEvent, useRef } from 'react';

/** A swipe goes so far across, px, twice as far as up or down, and takes no longer, ms. */
const FAR = 60;
const LONGEST_MS = 700;

interface Begun {
  readonly x: number;
  readonly y: number;
  readonly at: number;
}

/** Handlers of what is swiped by a finger: `turn(1)` to the left, as one turns to the next page, `turn(-1)` to the right. */
export function useSwipe(turn: (by: 1 | -1) => void) {
  const begun = useRef<Begun | null>(null);
  const forget = (): void => {
    begun.current = null;
  };
  return {
    onPointerDown({ pointerType, isPrimary, clientX, clientY, timeStamp }: PointerEvent) {
      // A second finger is no swipe any more.
      begun.current = pointerType === 'touch' && isPrimary ? { x: clientX, y: clientY, at: timeStamp } : null;
    },
    onPointerUp({ clientX, clientY, timeStamp }: PointerEvent) {
      const from = begun.current;
      forget();
      if (!from || timeStamp - from.at > LONGEST_MS) return;
      const [across, along] = [clientX - from.x, clientY - from.y];
      if (Math.abs(across) >= FAR && Math.abs(across) > 2 * Math.abs(along)) turn(across < 0 ? 1 : -1);
    },
    onPointerCancel: forget,
  };
}
