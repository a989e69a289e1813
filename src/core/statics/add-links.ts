import type { ShellShape } from './pose-bodies.ts';
import type { ShellSums } from './shell-sums.ts';
import type { Links } from './types.ts';

/** Pull in each link, N: stiffness times what it is longer than at rest. Strands that are shorter hang: 0. */
export function pullOfLinks(
  { ends, lengths, stiffness }: Links,
  x: Float64Array,
  pullsOnly: boolean,
): Float64Array {
  return lengths.map((rest, k) => {
    const p = 3 * ends[2 * k];
    const q = 3 * ends[2 * k + 1];
    const length = Math.hypot(x[q] - x[p], x[q + 1] - x[p + 1], x[q + 2] - x[p + 2]);
    const pull = stiffness[k] * (length - rest);
    return pullsOnly ? Math.max(0, pull) : pull;
  });
}

/** Adds gradient and, if asked, exact tangent of links; returns their energy, N mm. */
export function addLinks(
  sums: ShellSums,
  { ends, lengths, stiffness }: Links,
  shape: ShellShape,
  pullsOnly: boolean,
  withTangent: boolean,
): number {
  const x = shape.positions;
  const { atPoints } = sums;
  const along = new Float64Array(3);
  const block = new Float64Array(9);
  const minus = new Float64Array(9);
  let energy = 0;
  for (let k = 0; k < lengths.length; k++) {
    const p = ends[2 * k];
    const q = ends[2 * k + 1];
    for (let i = 0; i < 3; i++) along[i] = x[3 * q + i] - x[3 * p + i];
    const length = Math.hypot(along[0], along[1], along[2]);
    const longer = length - lengths[k];
    if ((pullsOnly && longer <= 0) || length === 0) continue;
    const pull = stiffness[k] * longer;
    energy += (pull * longer) / 2;
    for (let i = 0; i < 3; i++) {
      along[i] /= length;
      atPoints[3 * q + i] += pull * along[i];
      atPoints[3 * p + i] -= pull * along[i];
    }
    if (!withTangent) continue;
    const across = pull / length;
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) {
        const value = (stiffness[k] - across) * along[i] * along[j] + (i === j ? across : 0);
        block[3 * i + j] = value;
        minus[3 * i + j] = -value;
      }
    }
    sums.addBlock(shape, p, p, block, 0);
    sums.addBlock(shape, q, q, block, 0);
    sums.addBlock(shape, q, p, minus, 0);
  }
  return energy;
}
