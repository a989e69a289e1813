import { add, cross, dot, scale, subtract, type Vector } from '../math/index.ts';

/** Triangles of one sheet, 9 numbers each: three corners. mm. */
export type Corners = readonly Float64Array[];

/**
 * Where two sheets pass through each other: stretches of 6 numbers, an end each. Straps cross webs, and without this line
 * the nearer one would seem to float. O(#F × #F) box tests.
 */
export function crossSheets(one: Corners, other: Corners): Float64Array[] {
  const boxes = other.map(boxOf);
  return one.flatMap((triangle) => {
    const box = boxOf(triangle);
    return other.flatMap((second, i) => {
      const stretch = doBoxesMeet(box, boxes[i]) ? crossTriangles(triangle, second) : null;
      return stretch ? [stretch] : [];
    });
  });
}

function boxOf(triangle: Float64Array): number[] {
  return [0, 1, 2].flatMap((k) => {
    const values = [triangle[k], triangle[3 + k], triangle[6 + k]];
    return [Math.min(...values), Math.max(...values)];
  });
}

function doBoxesMeet(a: readonly number[], b: readonly number[]): boolean {
  return [0, 2, 4].every((k) => a[k] <= b[k + 1] && b[k] <= a[k + 1]);
}

/** The stretch two triangles share, along the line in which their planes meet (Möller, A fast triangle-triangle intersection test, 1997). */
function crossTriangles(a: Float64Array, b: Float64Array): Float64Array | null {
  const [cutOfA, cutOfB] = [cutByPlane(a, planeOf(b)), cutByPlane(b, planeOf(a))];
  if (!cutOfA || !cutOfB) return null;
  const along = subtract(cutOfA[1], cutOfA[0]);
  const length = dot(along, along);
  if (length < 1e-9) return null;
  const shares = cutOfB.map((point) => dot(along, subtract(point, cutOfA[0])) / length);
  const from = Math.max(0, Math.min(...shares));
  const to = Math.min(1, Math.max(...shares));
  if (to - from < 1e-6) return null;
  return Float64Array.of(...add(cutOfA[0], scale(along, from)), ...add(cutOfA[0], scale(along, to)));
}

interface Plane {
  readonly normal: Vector;
  readonly offset: number;
}

function planeOf(triangle: Float64Array): Plane {
  const [a, b, c] = cornersOf(triangle);
  const normal = cross(subtract(b, a), subtract(c, a));
  return { normal, offset: dot(normal, a) };
}

function cornersOf(triangle: Float64Array): Float64Array[] {
  return [triangle.subarray(0, 3), triangle.subarray(3, 6), triangle.subarray(6, 9)];
}

function cutByPlane(triangle: Float64Array, { normal, offset }: Plane): [Vector, Vector] | null {
  const corners = cornersOf(triangle);
  const heights = corners.map((corner) => dot(normal, corner) - offset);
  const cuts: Vector[] = [];
  for (let k = 0; k < 3; k++) {
    const next = (k + 1) % 3;
    if (heights[k] > 0 === heights[next] > 0) continue;
    const t = heights[k] / (heights[k] - heights[next]);
    cuts.push(add(scale(corners[k], 1 - t), scale(corners[next], t)));
  }
  return cuts.length === 2 ? [cuts[0], cuts[1]] : null;
}
