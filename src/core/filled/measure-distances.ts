import { placeOnSection } from '../inside/index.ts';
import { finderOnMesh, measureVertexAreas, measureVertexNormals, positionOnMesh } from '../mesh/index.ts';
import type { FilledMeasures, FilledPlace, FilledShell } from './types.ts';

/** What counts as near the body, mm. */
const NEAR = 8;
/** The throat lies within so much of the front, radians, over the uppermost level. */
const THROAT_HALF = Math.PI / 4;

/**
 * How far the outside of the filled form lies outside of the body's surface as the shell was drawn on it, at every point
 * of the shell, by the area there. O(points).
 */
export function measureDistances(
  { given: { shell }, outside }: FilledShell,
  positions: Float64Array,
): Pick<FilledMeasures, 'distance' | 'throat'> & { readonly placeAt: (point: number) => FilledPlace } {
  const { mesh, chart, levels } = shell;
  const find = finderOnMesh(mesh);
  const normals = measureVertexNormals(mesh);
  const areas = measureVertexAreas(mesh);
  const ofPoints = areas.map((_, p) => {
    const at = [0, 1, 2].map((axis) => positions[3 * p + axis]);
    const nearest = find(at);
    const on = positionOnMesh(mesh, nearest);
    let outwards = 0;
    for (let axis = 0; axis < 3; axis++) {
      const normal = nearest.weights.reduce(
        (sum, weight, k) => sum + weight * normals[3 * mesh.triangles[3 * nearest.triangle + k] + axis],
        0,
      );
      outwards += normal * (at[axis] - on[axis]);
    }
    const far = Math.hypot(at[0] - on[0], at[1] - on[1], at[2] - on[2]);
    return (outwards < 0 ? -far : far) + outside;
  });
  let [area, squares, near] = [0, 0, 0];
  let worst = 0;
  let throat = -1;
  const top = Math.max(...levels.map(({ vertices }) => chart[2 * vertices[0] + 1]));
  ofPoints.forEach((distance, p) => {
    area += areas[p];
    squares += areas[p] * distance ** 2;
    if (Math.abs(distance) <= NEAR) near += areas[p];
    if (Math.abs(distance) > Math.abs(ofPoints[worst])) worst = p;
    const isThroat = chart[2 * p + 1] > top && Math.sin(chart[2 * p]) > Math.cos(THROAT_HALF);
    if (isThroat && (throat < 0 || distance > ofPoints[throat])) throat = p;
  });
  const placeAt = (p: number): FilledPlace => placeOf(shell, p, ofPoints[p]);
  return {
    distance: { rms: Math.sqrt(squares / area), worst: placeAt(worst), within: near / area, ofPoints },
    throat: placeAt(throat),
    placeAt,
  };
}

/** A point of the shell that lies so far off. */
export function placeOf(
  { mesh, chart, levels }: FilledShell['given']['shell'],
  p: number,
  distance: number,
): FilledPlace {
  const heightOf = (vertex: number): number => chart[2 * vertex + 1];
  const under = levels
    .filter(({ vertices }) => heightOf(vertices[0]) <= heightOf(p) + 1e-9)
    .toSorted((a, b) => heightOf(b.vertices[0]) - heightOf(a.vertices[0]))[0];
  const nearest = under ?? levels[0];
  const [x, y, z] = mesh.positions.subarray(3 * p, 3 * p + 3);
  const plan = Float64Array.from({ length: 2 * nearest.vertices.length }, (_, i) => {
    return mesh.positions[3 * nearest.vertices[i >> 1] + (i % 2)];
  });
  return {
    distance,
    ...(under && { over: under.id }),
    where: placeOnSection(x, y, plan),
    at: [x, y, z],
  };
}
