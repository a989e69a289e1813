import { prefixIssues } from '../assembly/index.ts';
import { failure, type Result, success } from '../base/index.ts';
import { type FlatDisk, findSelfCrossings, flattenFree } from '../flatten/index.ts';
import type { ChartSurface, Mesh } from '../mesh/index.ts';
import { type CutRegion, cutRegion, type Region, type SeamForm } from '../seams/index.ts';
import { phrase } from './phrases.ts';

/** A disk of the body laid flat. */
export interface FlatPatch {
  readonly mesh: Mesh;
  readonly flat: FlatDisk;
  /** Border vertices in order, counter-clockwise. */
  readonly border: Uint32Array;
  /** mm round it, on the body and on the flat piece. */
  readonly length3d: number;
  readonly lengthFlat: number;
}

export type FlatRegion = CutRegion & FlatPatch;

export interface RegionOptions {
  /** mm, sides of the triangles; default 6. */
  readonly spacing?: number;
}

/**
 * A freely drawn region of the body as one flat piece, with the least strain there is: no partner or level holds it.
 * `loop`: see `cutRegion`. Issues: the loop crosses itself, runs over an armhole, leaves the body or goes round it; the
 * piece does not settle or overlaps itself when flat. Cost: some 50 ms for a piece of a quarter of a body.
 */
export function flattenRegion(
  surface: ChartSurface,
  form: SeamForm,
  loop: ArrayLike<number>,
  { spacing = 6 }: RegionOptions = {},
): Result<FlatRegion> {
  const cut = cutRegion(surface, form, loop, spacing);
  if (!cut.ok) return cut;
  const { mesh, borderCount } = cut.value;
  const patch = unrollPatch(
    mesh,
    Uint32Array.from({ length: borderCount }, (_, i) => i),
    'loop',
  );
  return patch.ok ? success({ ...cut.value, ...patch.value }) : patch;
}

/**
 * Several panels joined (see `joinPanels`) as one flat piece, with the least strain there is. Issues, path `panels`: the
 * piece does not settle or overlaps itself when flat. Cost: about 10 ms per 1000 triangles.
 */
export function flattenJoined({ mesh, edges }: Pick<Region, 'mesh' | 'edges'>): Result<FlatPatch> {
  const border = Uint32Array.from(edges.flatMap(({ vertices }) => Array.from(vertices.subarray(0, -1))));
  return unrollPatch(mesh, border, 'panels');
}

function unrollPatch(mesh: Mesh, border: Uint32Array, path: string): Result<FlatPatch> {
  const flat = flattenFree(mesh);
  if (!flat.ok) return failure(prefixIssues(flat.issues, path));
  if (findSelfCrossings(flat.value.positions, Int32Array.from(border)).length > 0) {
    const message = phrase('advice.region-overlaps-flat');
    return failure([{ code: 'region-overlaps-flat', path, message, severity: 'error' }]);
  }
  return success({
    mesh,
    flat: flat.value,
    border,
    length3d: lengthRound(mesh.positions, 3, border),
    lengthFlat: lengthRound(flat.value.positions, 2, border),
  });
}

function lengthRound(positions: Float64Array, dimension: 2 | 3, border: Uint32Array): number {
  let sum = 0;
  for (let i = 0; i < border.length; i++) {
    const [a, b] = [dimension * border[i], dimension * border[(i + 1) % border.length]];
    let square = 0;
    for (let k = 0; k < dimension; k++) square += (positions[b + k] - positions[a + k]) ** 2;
    sum += Math.sqrt(square);
  }
  return sum;
}
