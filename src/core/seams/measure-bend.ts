import { cross, dot } from '../math/index.ts';

/**
 * How sharply a line of mesh vertices turns within the surface at each of its points, 1/mm, left positive seen from
 * outside: what it bends by as a cut edge on the flat cloth. The turn between neighbouring chords, seen along the
 * normal, over half their length; 0 at both ends. `positions`, `normals`: #V × 3; O(points).
 */
export function measureBend(
  positions: Float64Array,
  normals: Float64Array,
  vertices: ArrayLike<number>,
): Float64Array {
  const bend = new Float64Array(vertices.length);
  for (let i = 1; i + 1 < vertices.length; i++) {
    const [a, b, c] = [3 * vertices[i - 1], 3 * vertices[i], 3 * vertices[i + 1]];
    const n = normals.subarray(b, b + 3);
    const before = along(positions, a, b, n);
    const after = along(positions, b, c, n);
    const turn = dot(cross(before.flat, after.flat), n);
    bend[i] = (2 * Math.atan2(turn, dot(before.flat, after.flat))) / (before.length + after.length);
  }
  return bend;
}

/** A chord's length in space, and its part in the plane across the normal. */
function along(positions: Float64Array, from: number, to: number, normal: ArrayLike<number>) {
  const chord = [0, 1, 2].map((k) => positions[to + k] - positions[from + k]);
  const rise = dot(chord, normal);
  return { length: Math.hypot(...chord), flat: chord.map((x, k) => x - rise * normal[k]) };
}
