import type { Links, ShellProblem } from './types.ts';

/** Most points a link takes hold of: three at each end. */
export const MOST_HELD = 6;

/** The points a link takes hold of, and their shares in the vector from its first end to its second. */
export interface Hold {
  readonly points: Int32Array;
  readonly shares: Float64Array;
  /** How many of them count. */
  count: number;
}

export function emptyHold(): Hold {
  return { points: new Int32Array(MOST_HELD), shares: new Float64Array(MOST_HELD), count: 0 };
}

/** Reads link k into `hold`, every point once; those without a share are left out. */
export function readHold(problem: ShellProblem, { ends }: Links, k: number, hold: Hold): void {
  hold.count = 0;
  addEnd(problem, ends[2 * k], -1, hold);
  addEnd(problem, ends[2 * k + 1], 1, hold);
}

/** The points of one end, whatever their share. */
export function pointsOfEnd({ start, places }: ShellProblem, end: number): ArrayLike<number> {
  const place = end - start.length / 3;
  return place < 0 || !places ? [end] : places.corners.subarray(3 * place, 3 * place + 3);
}

function addEnd({ start, places }: ShellProblem, end: number, sign: number, hold: Hold): void {
  const place = end - start.length / 3;
  if (place < 0 || !places) {
    addShare(end, sign, hold);
    return;
  }
  for (let k = 3 * place; k < 3 * place + 3; k++) addShare(places.corners[k], sign * places.weights[k], hold);
}

function addShare(point: number, share: number, hold: Hold): void {
  if (share === 0) return;
  const { points, shares } = hold;
  for (let i = 0; i < hold.count; i++) {
    if (points[i] !== point) continue;
    shares[i] += share;
    return;
  }
  points[hold.count] = point;
  shares[hold.count++] = share;
}

/** From first end to second into `along`; returns how long that is, mm. */
export function spanHold({ points, shares, count }: Hold, x: Float64Array, along: Float64Array): number {
  along.fill(0);
  for (let i = 0; i < count; i++)
    for (let axis = 0; axis < 3; axis++) along[axis] += shares[i] * x[3 * points[i] + axis];
  return Math.hypot(along[0], along[1], along[2]);
}
