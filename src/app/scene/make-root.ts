import { createRoot, type ReconcilerRoot } from '@react-three/fiber';
import { getConsoleFunction, setConsoleFunction } from 'three';

const GIVEN_UP = 'THREE.Clock: This module has been deprecated';

/**
 * A root for a scene, made without the one complaint that nobody here can mend: the renderer (@react-three/fiber 9.8.2, the
 * latest) gives every root a clock of the kind three.js gave up with 183. Nothing here asks it for the time. What else three
 * has to say goes where it went.
 */
export function makeRoot(canvas: HTMLCanvasElement): ReconcilerRoot<HTMLCanvasElement> {
  const before = getConsoleFunction();
  setConsoleFunction((kind, message, ...more) => {
    if (message.startsWith(GIVEN_UP)) return;
    if (before) before(kind, message, ...more);
    else console[kind](message, ...more);
  });
  try {
    return createRoot(canvas);
  } finally {
    setConsoleFunction(before);
  }
}
