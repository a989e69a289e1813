import { failure, type Result, success } from '../base/index.ts';
import { type FlatDisk, findSelfCrossings, flattenFree } from '../flatten/index.ts';
import type { ChartSurface } from '../mesh/index.ts';
import { type CutRegion, cutRegion, type SeamForm } from '../seams/index.ts';
import { prefixIssues } from './prefix-issues.ts';

export interface FlatRegion extends CutRegion {
  readonly flat: FlatDisk;
  /** mm round the region, on the body and on the flat piece. */
  readonly length3d: number;
  readonly lengthFlat: number;
}

export interface RegionOptions {
  /** mm, sides of the triangles; default 6. */
  readonly spacing?: number;
}

/**
 * A freely drawn region of the body as one flat piece, with the least strain there is: no partner or level holds it.
 * `loop`: see `cutRegion`. Issues: the loop crosses itself, runs over an armhole, leaves the body or goes round it; the
 * piece does not settle or overlaps itself when flat. Cost: some 50 ms for a piece of a quarter of a body.
 */
export function unrollRegion(
  surface: ChartSurface,
  form: SeamForm,
  loop: ArrayLike<number>,
  { spacing = 6 }: RegionOptions = {},
): Result<FlatRegion> {
  const cut = cutRegion(surface, form, loop, spacing);
  if (!cut.ok) return cut;
  const { mesh, borderCount } = cut.value;
  const flat = flattenFree(mesh);
  if (!flat.ok) return failure(prefixIssues(flat.issues, 'loop'));
  const border = Int32Array.from({ length: borderCount }, (_, i) => i);
  if (findSelfCrossings(flat.value.positions, border).length > 0) {
    const message = 'Laid flat the region would overlap itself; make it smaller, or divide it.';
    return failure([{ code: 'region-overlaps-flat', path: 'loop', message, severity: 'error' }]);
  }
  return success({
    ...cut.value,
    flat: flat.value,
    length3d: lengthRound(mesh.positions, 3, borderCount),
    lengthFlat: lengthRound(flat.value.positions, 2, borderCount),
  });
}

function lengthRound(positions: Float64Array, dimension: 2 | 3, count: number): number {
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const [a, b] = [dimension * i, dimension * ((i + 1) % count)];
    let square = 0;
    for (let k = 0; k < dimension; k++) square += (positions[b + k] - positions[a + k]) ** 2;
    sum += Math.sqrt(square);
  }
  return sum;
}
