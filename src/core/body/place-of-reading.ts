import { ShapeEvaluator } from './rails.ts';
import { STANCE_RULES } from './stance-tapes.ts';
import type { Body } from './types.ts';

/** No picture is looked at. */
const STILL = { shift: 0, rise: 0, yaw: 0, scale: 0 };

/** The place (x, y, z in mm) that a distance from the wall or the floor is read to on this body; null for any other measure. */
export function placeOfReading(
  { shape, landmarks, armholes }: Pick<Body, 'shape' | 'landmarks' | 'armholes'>,
  id: string,
): Float64Array | null {
  const rule = STANCE_RULES[id];
  if (!rule) return null;
  const context = {
    evaluator: new ShapeEvaluator(shape),
    bust: { right: landmarks.bustPointRight, left: landmarks.bustPointLeft },
    armholes,
    stance: { wall: 0, floor: 0 },
    poses: { front: STILL, side: STILL, cloth: 0 },
    rows: new Map(),
  };
  return rule.trace(context, 'right').subarray(3);
}
