import { assertInvariant } from '../base/index.ts';
import { bodyLength } from './kept-lengths.ts';
import { sourceOf } from './sewn-edges.ts';
import type { FlattenProblem } from './types.ts';

/**
 * Throws unless disk d is the mirror image of its source: same counts, and edge by edge the same lengths
 * (two edges per triangle are compared, to 1e-6). O(#F).
 */
export function checkMirror(problem: FlattenProblem, d: number): void {
  const source = sourceOf(problem, d);
  const [image, original] = [problem.disks[d], problem.disks[source]];
  assertInvariant(
    problem.mirrorOf[source] < 0,
    'flatten',
    'a mirror image names a disk that is none itself',
    source,
  );
  assertInvariant(
    image.positions.length === original.positions.length &&
      image.triangles.length === original.triangles.length,
    'flatten',
    `disk ${d} has as many vertices and triangles as disk ${source}`,
    image.positions.length,
  );
  for (let f = 0; f < original.triangles.length; f += 3) {
    for (let k = 0; k < 2; k++) {
      const [a, b] = [original.triangles[f + k], original.triangles[f + k + 1]];
      const length = bodyLength(problem, source, a, b);
      assertInvariant(
        Math.abs(bodyLength(problem, d, a, b) - length) <= 1e-6 * (1 + length),
        'flatten',
        `disk ${d} mirrors disk ${source} vertex by vertex`,
        `edge ${a}–${b}`,
      );
    }
  }
}

/** A layout turned over: x → −x. */
export function mirrorFlat(flat: Float64Array): Float64Array {
  return flat.map((x, i) => (i % 2 === 0 ? -x : x));
}
