import { assertInvariant, type Result, success } from '../base/index.ts';
import { measureTriangleAreas, measureTriangleNormals } from '../mesh/index.ts';
import { type Equilibrium, respondToChanges } from '../statics/index.ts';
import type { FilledShell } from './types.ts';

/** How a filled form gives way under a garment. */
export interface GarmentSag {
  /** How far the shoulders sink where they sink farthest, mm. */
  readonly shoulders: number;
  /** How far the neck's board with all that is held to it goes down the pole, mm. */
  readonly top: number;
  /** Of all points, #P × 3 mm. */
  readonly moves: Float64Array;
}

/** N per kg. */
const GRAVITY = 9.81;
/** Cloth lies on what slopes by less than 45° (ours). */
const LEAST_UPWARDS = Math.SQRT1_2;

/**
 * How far a form in balance gives way under a garment of `mass` kg that hangs on its shoulders: on the cloth over the uppermost
 * level that looks upwards, by its area. To the first order: twice the mass, twice the sag. The neck's board is taken to slide
 * on the pole, and the filling to press as before wherever it is pushed to; a block pinned to the pole, friction and a filling
 * that sets make it less.
 *
 * Fails as `respondToChanges` does: where `balance` is none. Cost: one factor and one solve.
 * Source: implicit function theorem, as there.
 */
export function weighGarment(filled: FilledShell, balance: Equilibrium, mass: number): Result<GarmentSag> {
  const { problem } = filled;
  const { forces, points } = weightOnShoulders(filled, mass);
  const found = respondToChanges({ ...problem, start: balance.positions }, [{ forces }]);
  if (!found.ok) return found;
  const [moves] = found.value;
  const sunk = (p: number): number => -moves[3 * p + 2];
  const board = problem.bodies?.find(({ motion }) => motion.kind === 'slide')?.points[0];
  return success({
    shoulders: points.reduce((most, p) => Math.max(most, sunk(p)), 0),
    top: board === undefined ? 0 : sunk(board),
    moves,
  });
}

/** #P × 3 N, and the points that bear it: a third of a triangle's share at each of its corners. */
function weightOnShoulders({ given: { shell }, problem }: FilledShell, mass: number) {
  const { mesh, chart, levels } = shell;
  const { triangles } = mesh;
  const top = Math.max(...levels.map(({ vertices }) => chart[2 * vertices[0] + 1]));
  const normals = measureTriangleNormals(mesh);
  const areas = measureTriangleAreas(mesh);
  const cornersOf = (t: number): Uint32Array => triangles.subarray(3 * t, 3 * t + 3);
  const bearing = Array.from(areas, (_, t) => t).filter(
    (t) => normals[3 * t + 2] > LEAST_UPWARDS && cornersOf(t).every((p) => chart[2 * p + 1] >= top - 1e-9),
  );
  const area = bearing.reduce((sum, t) => sum + areas[t], 0);
  assertInvariant(area > 0, 'filled', 'a shell has shoulders', bearing.length);
  const forces = new Float64Array(problem.start.length);
  for (const t of bearing)
    for (const p of cornersOf(t)) forces[3 * p + 2] -= (mass * GRAVITY * areas[t]) / (3 * area);
  return { forces, points: [...new Set(bearing.flatMap((t) => [...cornersOf(t)]))] };
}
