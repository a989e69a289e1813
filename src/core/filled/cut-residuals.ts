import { convexHull } from '../math/index.ts';
import { finderOnMesh, measureVertexAreas, measureVertexNormals, positionOnMesh } from '../mesh/index.ts';
import { sizeOfLevel } from './size-of-level.ts';
import type { FilledShell } from './types.ts';

/** A girth is aimed so far over what was asked, mm: the middle of what is allowed, −0 to +5. */
export const GIRTH_OVER = 2.5;
/** Weights of a girth, a width or a depth 1 mm off, where the whole surface 1 mm off counts 1. */
const GIRTH_WEIGHT = 0.5;
const SIZE_WEIGHT = 0.5;
/** Distances beyond this count more, in proportion, mm. */
const FAR = 6;

/** What is off, weighted, and how that changes with moves, to the first order. */
export interface CutResiduals<Moves> {
  readonly values: Float64Array;
  readonly changeOf: (moves: Moves, out: Float64Array) => void;
}

/** Of a filled shell, by the places of its points and their moves (#P × 3); prepared once, asked for each shape. */
export function residualsOfCut(filled: FilledShell): (positions: Float64Array) => CutResiduals<Float64Array> {
  const { shell } = filled.given;
  const { mesh } = shell;
  const find = finderOnMesh(mesh);
  const normals = measureVertexNormals(mesh);
  const areas = measureVertexAreas(mesh);
  const total = areas.reduce((sum, area) => sum + area, 0);
  const count = areas.length;
  const asked = shell.levels.map(({ vertices }) => sizeOfLevel(mesh.positions, vertices, 0));
  return (positions) => {
    const values = new Float64Array(count + 3 * shell.levels.length);
    const ways = new Float64Array(3 * count);
    for (let p = 0; p < count; p++) {
      const at = [positions[3 * p], positions[3 * p + 1], positions[3 * p + 2]];
      const nearest = find(at);
      const on = positionOnMesh(mesh, nearest);
      const normal = [0, 0, 0];
      nearest.weights.forEach((weight, k) => {
        const corner = mesh.triangles[3 * nearest.triangle + k];
        for (let axis = 0; axis < 3; axis++) normal[axis] += weight * normals[3 * corner + axis];
      });
      const size = Math.hypot(...normal);
      let outwards = 0;
      for (let axis = 0; axis < 3; axis++) outwards += (normal[axis] / size) * (at[axis] - on[axis]);
      const off = outwards + filled.outside;
      const weight = Math.sqrt(areas[p] / total);
      const beyond = Math.abs(off) / FAR;
      values[p] = weight * Math.max(1, beyond) * off;
      const slope = weight * (beyond > 1 ? 2 * beyond : 1);
      for (let axis = 0; axis < 3; axis++) ways[3 * p + axis] = (slope * normal[axis]) / size;
    }
    const sizes = shell.levels.map(({ vertices }, l) => {
      const found = sizeOfLevel(positions, vertices, filled.outside);
      const k = count + 3 * l;
      values[k] = GIRTH_WEIGHT * (found.girth - asked[l].girth - GIRTH_OVER);
      values[k + 1] = SIZE_WEIGHT * (found.width - asked[l].width);
      values[k + 2] = SIZE_WEIGHT * (found.depth - asked[l].depth);
      return waysOfLevel(positions, vertices);
    });
    return {
      values,
      changeOf(moves, out) {
        for (let p = 0; p < count; p++)
          out[p] =
            ways[3 * p] * moves[3 * p] +
            ways[3 * p + 1] * moves[3 * p + 1] +
            ways[3 * p + 2] * moves[3 * p + 2];
        sizes.forEach(({ hull, slopes, ends }, l) => {
          const k = count + 3 * l;
          let girth = 0;
          hull.forEach((p, i) => {
            girth += slopes[2 * i] * moves[3 * p] + slopes[2 * i + 1] * moves[3 * p + 1];
          });
          out[k] = GIRTH_WEIGHT * girth;
          out[k + 1] = SIZE_WEIGHT * (moves[3 * ends[1]] - moves[3 * ends[0]]);
          out[k + 2] = SIZE_WEIGHT * (moves[3 * ends[3] + 1] - moves[3 * ends[2] + 1]);
        });
      },
    };
  };
}

/** Points a tape touches with the slopes of its length, and the outermost ones: least and most x, least and most y. */
function waysOfLevel(positions: Float64Array, loop: Uint32Array) {
  const plan = Float64Array.from(
    { length: 2 * loop.length },
    (_, i) => positions[3 * loop[i >> 1] + (i % 2)],
  );
  const hull = Array.from(convexHull(plan), (i) => loop[i]);
  const slopes = new Float64Array(2 * hull.length);
  hull.forEach((p, i) => {
    const next = (i + 1) % hull.length;
    const q = hull[next];
    const [x, y] = [positions[3 * q] - positions[3 * p], positions[3 * q + 1] - positions[3 * p + 1]];
    const long = Math.hypot(x, y);
    slopes[2 * i] -= x / long;
    slopes[2 * i + 1] -= y / long;
    slopes[2 * next] += x / long;
    slopes[2 * next + 1] += y / long;
  });
  const outermost = (axis: 0 | 1, sign: 1 | -1): number =>
    loop.reduce((best, p) => (sign * positions[3 * p + axis] > sign * positions[3 * best + axis] ? p : best));
  return { hull, slopes, ends: [outermost(0, -1), outermost(0, 1), outermost(1, -1), outermost(1, 1)] };
}
