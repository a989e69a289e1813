import { type ArmholeOval, fromOval, radiusTowards } from './armhole-oval.ts';
import { ARMHOLE_MIDDLE, ARMHOLE_REACH } from './rails.ts';

/** Points of a loop; index 0 is the armpit. */
const ARMHOLE_POINTS = 64;

/**
 * The armhole in the chart, counter-clockwise from the armpit: an oval, or what a faired trunk
 * makes of it. On the right it runs armpit, front break, shoulder point, back break; the left one mirrors it.
 * The surface there lies in a plane (see `ShapeEvaluator`), so the armhole plate is flat.
 */
export function makeArmholes(armhole: ArmholeOval): { right: Float64Array; left: Float64Array } {
  const right = new Float64Array(2 * ARMHOLE_POINTS);
  for (let i = 0; i < ARMHOLE_POINTS; i++) {
    const angle = -Math.PI / 2 + (2 * Math.PI * i) / ARMHOLE_POINTS;
    const [across, upwards] = [Math.cos(angle), Math.sin(angle)];
    const radius = radiusTowards(armhole, across, upwards);
    const up = radius * upwards;
    right[2 * i] = fromOval(armhole, radius * across, up);
    right[2 * i + 1] = ARMHOLE_MIDDLE + ARMHOLE_REACH * up;
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
