import { BUMP_STRIDE, heightOf, LEAST_BREAST } from './bump-reaches.ts';
import type { BumpUnknown } from './fair-unknowns.ts';

import type { BodyShape } from './types.ts';

/** The side of a breast lies so far towards the arm, radians, and reaches so far. */
const SIDE_TURN = 0.38;
const SIDE_REACH = 0.8;
const BREAST_STIFFNESS = 1;
const SIDE_STIFFNESS = 0.08;

/**
 * Adds a bump beside each breast, of no height yet: fairing may raise it, where a long bust tape would otherwise draw a
 * ring round the trunk.
 */
export function addSideBreasts(shape: BodyShape): BodyShape {
  if (heightOf(shape, 0) < LEAST_BREAST) return shape;
  const n = shape.bumps.length;
  const bumps = new Float64Array(n + 2 * BUMP_STRIDE);
  bumps.set(shape.bumps);
  for (const side of [0, 1]) {
    const [u, z, , , down, up] = shape.bumps.subarray(side * BUMP_STRIDE);
    const at = side === 0 ? u - SIDE_TURN : u + SIDE_TURN;
    const bump = [at, z, SIDE_REACH, SIDE_REACH, down, up, 0, Math.cos(at), Math.sin(at), 1.5, 0, 1.5, 1, 0];
    bumps.set(bump, n + side * BUMP_STRIDE);
  }
  return { ...shape, bumps };
}

/** Heights that fairing may change; those of both sides are one where the body is symmetric. */
export function listBreastHeights(shape: BodyShape): BumpUnknown[] {
  const { bumps, isMirrorSymmetric } = shape;
  const count = bumps.length / BUMP_STRIDE;
  const isWithSides = heightOf(shape, 0) >= LEAST_BREAST;
  const pairs = [{ right: 0, stiffness: BREAST_STIFFNESS }];
  if (isWithSides) pairs.push({ right: count - 2, stiffness: SIDE_STIFFNESS });
  return pairs.flatMap(({ right, stiffness }) =>
    isMirrorSymmetric
      ? [{ bumps: [right, right + 1], stiffness }]
      : [right, right + 1].map((bump) => ({ bumps: [bump], stiffness })),
  );
}

/** Takes the height of the bumps named. */
export function flattenBumps(shape: BodyShape, which: readonly number[]): BodyShape {
  const bumps = shape.bumps.slice();
  for (const bump of which) bumps[bump * BUMP_STRIDE + 6] = 0;
  return { ...shape, bumps };
}
