import { emptyHold, readHold, spanHold } from './link-ends.ts';
import type { ShellShape } from './pose-bodies.ts';
import type { ShellSums } from './shell-sums.ts';
import type { Links, ShellProblem } from './types.ts';

/** Pull in each link, N: stiffness times what it is longer than at rest. Strands that are shorter hang: 0. */
export function pullOfLinks(
  problem: ShellProblem,
  links: Links,
  x: Float64Array,
  pullsOnly: boolean,
): Float64Array {
  const hold = emptyHold();
  const along = new Float64Array(3);
  return links.lengths.map((rest, k) => {
    readHold(problem, links, k, hold);
    const pull = links.stiffness[k] * (spanHold(hold, x, along) - rest);
    return pullsOnly ? Math.max(0, pull) : pull;
  });
}

/** Adds gradient and, if asked, exact tangent of links; returns their energy, N mm. */
export function addLinks(
  sums: ShellSums,
  problem: ShellProblem,
  links: Links,
  shape: ShellShape,
  pullsOnly: boolean,
  withTangent: boolean,
): number {
  const { lengths, stiffness } = links;
  const { atPoints } = sums;
  const hold = emptyHold();
  const { points, shares } = hold;
  const along = new Float64Array(3);
  const whole = new Float64Array(9);
  const block = new Float64Array(9);
  let energy = 0;
  for (let k = 0; k < lengths.length; k++) {
    readHold(problem, links, k, hold);
    const length = spanHold(hold, shape.positions, along);
    const longer = length - lengths[k];
    if ((pullsOnly && longer <= 0) || length === 0) continue;
    const pull = stiffness[k] * longer;
    energy += (pull * longer) / 2;
    for (let i = 0; i < 3; i++) along[i] /= length;
    for (let i = 0; i < hold.count; i++)
      for (let axis = 0; axis < 3; axis++) atPoints[3 * points[i] + axis] += pull * shares[i] * along[axis];
    if (!withTangent) continue;
    const across = pull / length;
    for (let i = 0; i < 9; i++) {
      const axis = Math.floor(i / 3);
      whole[i] = (stiffness[k] - across) * along[axis] * along[i % 3] + (i % 4 === 0 ? across : 0);
    }
    for (let i = 0; i < hold.count; i++) {
      for (let j = 0; j <= i; j++) {
        const share = shares[i] * shares[j];
        for (let n = 0; n < 9; n++) block[n] = share * whole[n];
        sums.addBlock(shape, points[i], points[j], block, 0);
      }
    }
  }
  return energy;
}
