import { nearestWeights, positionOnMesh, type SurfacePoint } from './locate-on-mesh.ts';
import type { Mesh } from './mesh.ts';

/** Cells are so many mean edges wide. */
const CELL = 1.5;

/** So much further off is further off however the figures are rounded. */
const ROUNDING = 1 + 1e-9;

/** Triangles by the cells their boxes reach. */
interface Cells {
  readonly size: number;
  readonly low: readonly number[];
  readonly counts: readonly number[];
  readonly firsts: Uint32Array;
  readonly triangles: Uint32Array;
}

/**
 * What `locateOnMesh` does, for many points: triangles are sorted into cells once, O(#F), then a point near the mesh looks at a few
 * dozen of them. The mesh has a triangle at least. mm.
 */
export function finderOnMesh(mesh: Mesh): (at: readonly number[]) => SurfacePoint {
  const cells = sortIntoCells(mesh);
  const boxes = boxesOfTriangles(mesh);
  return (at) => {
    const home = [0, 1, 2].map((axis) => Math.floor((at[axis] - cells.low[axis]) / cells.size));
    let best = Number.POSITIVE_INFINITY;
    let found: SurfacePoint = { triangle: 0, weights: [1, 0, 0] };
    // All that reaches no cell within `ring` of the home is further off than `ring` cells.
    const farthest = Math.max(...home.map((c, axis) => Math.max(c, cells.counts[axis] - 1 - c)));
    for (let ring = Math.max(0, ringOfBox(cells, home)); ring <= farthest; ring++) {
      forRing(cells, home, ring, (triangle) => {
        if (distanceToBox(boxes, triangle, at) > best * ROUNDING) return;
        const point: SurfacePoint = { triangle, weights: nearestWeights(mesh, triangle, at) };
        const [x, y, z] = positionOnMesh(mesh, point);
        const distance = (x - at[0]) ** 2 + (y - at[1]) ** 2 + (z - at[2]) ** 2;
        // Of equally near ones the first, whatever cell it is in.
        if (distance > best || (distance === best && triangle >= found.triangle)) return;
        best = distance;
        found = point;
      });
      if (best <= (ring * cells.size) ** 2) break;
    }
    return found;
  };
}

function sortIntoCells({ positions, triangles }: Mesh): Cells {
  const low = [0, 1, 2].map((axis) => extreme(positions, axis, -1));
  const high = [0, 1, 2].map((axis) => extreme(positions, axis, 1));
  let edges = 0;
  for (let e = 0; e < triangles.length; e++) {
    const [a, b] = [3 * triangles[e], 3 * triangles[e % 3 === 2 ? e - 2 : e + 1]];
    edges += Math.hypot(
      positions[b] - positions[a],
      positions[b + 1] - positions[a + 1],
      positions[b + 2] - positions[a + 2],
    );
  }
  const size = Math.max(1e-9, (CELL * edges) / triangles.length);
  const counts = [0, 1, 2].map((axis) => Math.floor((high[axis] - low[axis]) / size) + 1);
  const forCells = (visit: (cell: number, triangle: number) => void): void => {
    for (let t = 0; t < triangles.length / 3; t++) {
      const [from, to] = [-1, 1].map((sign) =>
        [0, 1, 2].map((axis) => {
          const [a, b, c] = [0, 1, 2].map((k) => sign * positions[3 * triangles[3 * t + k] + axis]);
          return Math.floor((sign * Math.max(a, b, c) - low[axis]) / size);
        }),
      );
      for (let i = from[0]; i <= to[0]; i++)
        for (let j = from[1]; j <= to[1]; j++)
          for (let k = from[2]; k <= to[2]; k++) visit((i * counts[1] + j) * counts[2] + k, t);
    }
  };
  const firsts = new Uint32Array(counts[0] * counts[1] * counts[2] + 1);
  forCells((cell) => {
    firsts[cell + 1]++;
  });
  for (let cell = 1; cell < firsts.length; cell++) firsts[cell] += firsts[cell - 1];
  const sorted = new Uint32Array(firsts[firsts.length - 1]);
  const next = firsts.slice();
  forCells((cell, triangle) => {
    sorted[next[cell]++] = triangle;
  });
  return { size, low, counts, firsts, triangles: sorted };
}

/** #F × 6: least x, y, z and most. */
function boxesOfTriangles({ positions, triangles }: Mesh): Float64Array {
  return Float64Array.from({ length: 2 * triangles.length }, (_, k) => {
    const [first, axis] = [3 * Math.floor(k / 6), k % 3];
    const [a, b, c] = [0, 1, 2].map((corner) => positions[3 * triangles[first + corner] + axis]);
    return k % 6 < 3 ? Math.min(a, b, c) : Math.max(a, b, c);
  });
}

/** Its square. */
function distanceToBox(boxes: Float64Array, triangle: number, at: readonly number[]): number {
  let sum = 0;
  for (let axis = 0; axis < 3; axis++) {
    const k = 6 * triangle + axis;
    const beyond = Math.max(boxes[k] - at[axis], at[axis] - boxes[k + 3], 0);
    sum += beyond * beyond;
  }
  return sum;
}

function extreme(positions: Float64Array, axis: number, sign: 1 | -1): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = axis; i < positions.length; i += 3) most = Math.max(most, sign * positions[i]);
  return sign * most;
}

/** The first ring about a cell that has cells of the box. */
function ringOfBox({ counts }: Cells, home: readonly number[]): number {
  return Math.max(...home.map((c, axis) => Math.max(-c, c - (counts[axis] - 1))));
}

/** Triangles of the cells whose largest step from the home is `ring`. */
function forRing(
  { counts, firsts, triangles }: Cells,
  home: readonly number[],
  ring: number,
  visit: (triangle: number) => void,
): void {
  const from = home.map((c) => Math.max(0, c - ring));
  const to = home.map((c, axis) => Math.min(counts[axis] - 1, c + ring));
  for (let i = from[0]; i <= to[0]; i++) {
    for (let j = from[1]; j <= to[1]; j++) {
      const isOnWall = Math.abs(i - home[0]) === ring || Math.abs(j - home[1]) === ring;
      for (let k = from[2]; k <= to[2]; k++) {
        if (!isOnWall && Math.abs(k - home[2]) !== ring) continue;
        const cell = (i * counts[1] + j) * counts[2] + k;
        for (let n = firsts[cell]; n < firsts[cell + 1]; n++) visit(triangles[n]);
      }
    }
  }
}
