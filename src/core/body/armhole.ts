import { ARMHOLE_MIDDLE, ARMHOLE_REACH } from './rails.ts';

/** Points of a loop; index 0 is the armpit. */
const ARMHOLE_POINTS = 64;

/**
 * The armhole in the chart, counter-clockwise from the armpit: an oval `front` radians wide before the side line and
 * `back` behind it. On the right it runs armpit, front break, shoulder point, back break; the left one mirrors it.
 * The surface there lies in a plane (see `ShapeEvaluator`), so the armhole plate is flat.
 */
export function makeArmholes(front: number, back: number): { right: Float64Array; left: Float64Array } {
  const right = new Float64Array(2 * ARMHOLE_POINTS);
  const half = 0.5 * (front + back);
  const shift = 0.5 * (front - back);
  for (let i = 0; i < ARMHOLE_POINTS; i++) {
    const angle = -Math.PI / 2 + (2 * Math.PI * i) / ARMHOLE_POINTS;
    const t = Math.sin(angle);
    right[2 * i] = shift * (1 - t * t) + half * Math.cos(angle);
    right[2 * i + 1] = ARMHOLE_MIDDLE + ARMHOLE_REACH * t;
  }
  return { right, left: mirrorLoop(right) };
}

/** u → π − u; reversed so that it stays counter-clockwise from the armpit. */
function mirrorLoop(loop: Float64Array): Float64Array {
  const n = loop.length / 2;
  const out = new Float64Array(loop.length);
  for (let i = 0; i < n; i++) {
    const from = (n - i) % n;
    out[2 * i] = Math.PI - loop[2 * from];
    out[2 * i + 1] = loop[2 * from + 1];
  }
  return out;
}
