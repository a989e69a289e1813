import type { Equilibrium } from '../statics/index.ts';
import type { FilledPull, FilledShell } from './types.ts';

const PER_CM = 10;

/** What each brace carries. Its lowest and uppermost threads stand for half as much cloth as others. */
export function measurePulls({ braces }: FilledShell, { strandForces }: Equilibrium): FilledPull[] {
  return braces.map(({ brace: { id }, first, heights }) => {
    const forces = strandForces.subarray(first, first + heights.length);
    const pull = forces.reduce((sum, force) => sum + force, 0);
    const height = heights.reduce((sum, one) => sum + one, 0);
    const peak = forces.reduce((most, force, k) => Math.max(most, force / heights[k]), 0);
    return { id, pull, peak: PER_CM * peak, mean: (PER_CM * pull) / height };
  });
}
