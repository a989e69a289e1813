import { assertInvariant } from '../base/index.ts';
import type { Seam, SeamedShell } from './types.ts';

/** One panel's copy of a seam. */
export interface SeamSide {
  /** Index into `shell.panels`. */
  readonly panel: number;
  /** Panel vertices in the seam's own direction, one per point of the seam. */
  readonly vertices: Uint32Array;
}

/**
 * The two copies of a seam, in the order of `seam.panels`. Where one panel meets itself, the copy that runs with the
 * seam comes first. Throws when the shell does not hold exactly two copies of the right length.
 */
export function seamSides(shell: SeamedShell, seam: Seam): readonly [SeamSide, SeamSide] {
  const sides = shell.panels.flatMap((panel, index) =>
    panel.edges
      .filter((edge) => edge.kind === 'seam' && edge.id === seam.id)
      .map((edge) => ({
        panel: index,
        reversed: edge.reversed,
        vertices: edge.reversed ? edge.vertices.slice().reverse() : edge.vertices,
      })),
  );
  assertInvariant(sides.length === 2, 'seams', `seam ${seam.id} has two sides`, sides.length);
  for (const side of sides) {
    const rightLength = side.vertices.length === seam.points.length;
    assertInvariant(rightLength, 'seams', `both sides of ${seam.id} hold its points`, side.vertices.length);
  }
  const [a, b] = sides;
  const isSwapped = a.panel === b.panel ? a.reversed : shell.panels[a.panel].id !== seam.panels[0];
  return isSwapped ? [b, a] : [a, b];
}
