import { cross, dot, normalise, subtract } from '../math/index.ts';
import type { Equilibrium } from '../statics/index.ts';
import type { FilledSeam, FilledShell } from './types.ts';

const PER_CM = 10;

/**
 * Tension of the cloth across every seam: of the two triangles at each of its edges in the mean, along the seam by length. Tension
 * in a direction lies between the two principal ones (Mohr).
 */
export function measureSeamLoads(
  { given: { shell }, problem }: FilledShell,
  balance: Equilibrium,
): FilledSeam[] {
  const { triangles } = problem.membrane;
  const size = balance.positions.length / 3;
  const keyOf = (a: number, b: number): number => Math.min(a, b) * size + Math.max(a, b);
  const beside = new Map<number, number[]>();
  for (const { points } of shell.seams)
    for (let i = 1; i < points.length; i++) beside.set(keyOf(points[i - 1], points[i]), []);
  for (let e = 0; e < triangles.length; e++)
    beside.get(keyOf(triangles[e], triangles[e % 3 === 2 ? e - 2 : e + 1]))?.push(Math.floor(e / 3));
  return shell.seams.map(({ id, points }) => {
    let [load, length, peak] = [0, 0, 0];
    for (let i = 1; i < points.length; i++) {
      const [a, b] = [points[i - 1], points[i]].map((p) => balance.positions.subarray(3 * p, 3 * p + 3));
      const edge = subtract(b, a);
      const long = Math.hypot(...edge);
      const own = beside.get(keyOf(points[i - 1], points[i])) ?? [];
      const across = own.reduce((sum, t) => sum + tensionAcross(problem, balance, t, edge), 0) / own.length;
      load += across * long;
      length += long;
      peak = Math.max(peak, across);
    }
    return { id, mean: (PER_CM * load) / length, peak: PER_CM * peak };
  });
}

/** N per mm that triangle t pulls with across an edge of it. */
function tensionAcross(
  { membrane: { triangles, restEdges } }: FilledShell['problem'],
  { positions, tensions, directions }: Equilibrium,
  t: number,
  edge: readonly number[],
): number {
  const [a, b, c] = [0, 1, 2].map((k) =>
    positions.subarray(3 * triangles[3 * t + k], 3 * triangles[3 * t + k] + 3),
  );
  const [u, v] = [subtract(b, a), subtract(c, a)];
  const [x1, y1, x2, y2] = restEdges.subarray(4 * t, 4 * t + 4);
  const [warp, weft] = [Math.cos(directions[t]), Math.sin(directions[t])];
  // The direction at rest by the two edges, and so in space.
  const area = x1 * y2 - x2 * y1;
  const alongU = (warp * y2 - weft * x2) / area;
  const alongV = (weft * x1 - warp * y1) / area;
  const larger = normalise([0, 1, 2].map((k) => alongU * u[k] + alongV * v[k]));
  const across = normalise(cross(cross(u, v), edge));
  const share = dot(larger, across) ** 2;
  return share * tensions[2 * t] + (1 - share) * tensions[2 * t + 1];
}
