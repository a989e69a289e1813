import { bridgeHollows, measureDeviations } from './measure-deviation.ts';
import { sampleSection } from './sample-section.ts';
import { heldPoints, type SectionTarget } from './section-target.ts';
import { type SectionBalance, type SectionTie, solveSection } from './solve-section.ts';

/** One row of the body, ready to be balanced again and again with other ties. */
export interface LevelCase {
  readonly target: SectionTarget;
  /** What a tape takes round the target. */
  readonly bridged: Float64Array;
  readonly held: Float64Array;
}

export function makeLevelCase(target: SectionTarget): LevelCase {
  return { target, bridged: bridgeHollows(target.outline), held: heldPoints(target) };
}

/**
 * Balances the row's cloth with the given ties and tells the deviation of every outline point (parallel to the
 * target's): positive outside what a tape takes, negative inside the body, 0 between (cloth over a hollow bridges it).
 */
export function balanceLevel(
  { target, bridged, held }: LevelCase,
  ties: readonly SectionTie[],
  deviations: Float64Array,
  from?: SectionBalance,
): { balance: SectionBalance; ring: Float64Array } {
  const balance = solveSection({
    spans: target.spans,
    start: from?.points ?? held,
    ties,
    ...(from === undefined ? {} : { pulls: from.ties.map((tie) => tie.pull) }),
  });
  const ring = sampleSection(balance, target.pieces);
  measureDeviations(ring, target.outline, deviations);
  const outside = new Float64Array(deviations.length);
  measureDeviations(ring, bridged, outside);
  for (let i = 0; i < deviations.length; i++) {
    if (deviations[i] > 0) deviations[i] = Math.max(0, Math.min(outside[i], deviations[i]));
  }
  return { balance, ring };
}
