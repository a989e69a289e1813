import type { Result } from '../../../src/core/base/index.ts';
import type { FlattenProblem } from '../../../src/core/flatten/index.ts';
import { inEnglish } from '../../in-english.ts';
import { makePair, scaleMesh } from './disk-meshes.ts';

/** A bump in two halves, 20 by 34 cells. */
const pair = makePair('bump', 20, 34);

/** Both halves sewn together in the middle, with one row across the first kept as long as it is. */
export const problem: FlattenProblem = {
  disks: [scaleMesh(pair.a, 10), scaleMesh(pair.b, 10)],
  mirrorOf: Int32Array.of(-1, -1),
  joins: [
    {
      id: 'middle',
      a: { disk: 0, vertices: pair.seamA },
      b: { disk: 1, vertices: pair.seamB },
      keepsLength: false,
    },
  ],
  keptPaths: [{ disk: 0, vertices: Uint32Array.from({ length: 21 }, (_, i) => i + 21 * 12) }],
};

/** What was solved; throws what stopped it, in English. */
export function solvedOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(inEnglish(result.issues[0].message));
  return result.value;
}
