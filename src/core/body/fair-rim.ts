import { add, cross, dot, normalise, scale, subtract, type Vector } from '../math/index.ts';
import type { TapeContext } from './tapes.ts';

/** How far from the fitted loop to the oval the rim is asked to go. */
const EVENNESS = 0.5;

/**
 * Where an even armhole has its rim, n × 3: points of the fitted loop moved towards an oval in the same plane, which is as
 * long and reaches as far to the front and back.
 */
export function evenRim({ evaluator, armholes }: TapeContext, side: 'right' | 'left'): Float64Array {
  const loop = armholes[side];
  const n = loop.length / 2;
  const at = (i: number): Vector => {
    const p = new Float64Array(3);
    evaluator.point(loop[2 * i], loop[2 * i + 1], p);
    return [p[0], p[1], p[2]];
  };
  const [armpit, shoulder] = [at(0), at(n / 2)];
  // Loops run counter-clockwise from the armpit: to the front on the right, to the back on the left.
  const [ahead, behind] = [at(n / 4), at((3 * n) / 4)];
  const middle = scale(add(armpit, shoulder), 0.5);
  const halfHeight = scale(subtract(shoulder, armpit), 0.5);
  const normal = cross(subtract(ahead, behind), halfHeight);
  const level = normalise(cross(halfHeight, normal));
  const [front, back] = [dot(subtract(ahead, middle), level), -dot(subtract(behind, middle), level)];
  const rim = new Float64Array(3 * n);
  for (let i = 0; i < n; i++) {
    const angle = (2 * Math.PI * i) / n - Math.PI / 2;
    const up = Math.sin(angle);
    const across = 0.5 * (front + back) * Math.cos(angle) + 0.5 * (front - back) * (1 - up * up);
    const oval = add(add(middle, scale(halfHeight, up)), scale(level, across));
    rim.set(add(scale(oval, EVENNESS), scale(at(i), 1 - EVENNESS)), 3 * i);
  }
  return rim;
}
