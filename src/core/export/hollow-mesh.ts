import { assertInvariant } from '../base/index.ts';
import { type Mesh, measureCornerAngles } from '../mesh/index.ts';

/** A corner where faces meet sharply is moved at most this many walls, so that the wall keeps its thickness on the faces. */
const LONGEST_SHIFT = 2;

/**
 * A surface with one border, made a hollow solid open at that border: the surface, an inner one a wall inside it, and a strip
 * between the two borders. The border must lie level (one z), and the strip does too, so the solid stands flat. Inner
 * vertices move against the mean normal by `wall` ÷ its mean cosine to the faces round them (exact on flat faces and on the
 * rim of a cylinder). The result is watertight; where the surface bends tighter than the wall, the inner one folds.
 * `wall` in the mesh's own mm. O(triangles). Throws when there is no border or it is not level.
 */
export function hollowMesh({ positions, triangles }: Mesh, wall: number): Mesh {
  const count = positions.length / 3;
  const border = borderEdges(triangles);
  assertInvariant(border.length > 0, 'export', 'a surface to hollow has a border', border.length);
  const floor = positions[3 * border[0][0] + 2];
  const isRim = new Uint8Array(count);
  for (const [a] of border) {
    const z = positions[3 * a + 2];
    assertInvariant(
      Math.abs(z - floor) < 0.01,
      'export',
      'the border of a surface to hollow is level',
      z - floor,
    );
    isRim[a] = 1;
  }
  const shift = shiftsOf(positions, triangles, isRim);
  const all = new Float64Array(2 * positions.length);
  all.set(positions);
  for (let i = 0; i < positions.length; i++) all[positions.length + i] = positions[i] - wall * shift[i];
  const faces: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]];
    faces.push(a, b, c, count + a, count + c, count + b);
  }
  for (const [a, b] of border) faces.push(b, a, count + a, b, count + a, count + b);
  return { positions: all, triangles: Uint32Array.from(faces) };
}

/** Edges a → b of triangles that no triangle runs through the other way. */
function borderEdges(triangles: Uint32Array): [number, number][] {
  const seen = new Map<string, [number, number]>();
  for (let t = 0; t < triangles.length; t += 3) {
    for (let k = 0; k < 3; k++) {
      const [a, b] = [triangles[t + k], triangles[t + ((k + 1) % 3)]];
      if (!seen.delete(`${b} ${a}`)) seen.set(`${a} ${b}`, [a, b]);
    }
  }
  return [...seen.values()];
}

/** Per vertex the outward way along which one unit moves every face round it by one, on the whole. Level at the rim. */
function shiftsOf(p: Float64Array, triangles: Uint32Array, isRim: Uint8Array): Float64Array {
  const sum = new Float64Array(p.length);
  const faceNormals = new Float64Array(triangles.length);
  const angles = measureCornerAngles({ positions: p, triangles });
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]];
    const [ux, uy, uz] = [p[b] - p[a], p[b + 1] - p[a + 1], p[b + 2] - p[a + 2]];
    const [vx, vy, vz] = [p[c] - p[a], p[c + 1] - p[a + 1], p[c + 2] - p[a + 2]];
    const normal = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const length = Math.hypot(normal[0], normal[1], normal[2]);
    if (length === 0) continue;
    for (let k = 0; k < 3; k++) faceNormals[t + k] = normal[k] / length;
    [a, b, c].forEach((vertex, corner) => {
      // Weighed by the angle at the corner, so that the way a face is divided does not matter (Thürmer and Wüthrich 1998).
      for (let k = 0; k < 3; k++) sum[vertex + k] += (angles[t + corner] * normal[k]) / length;
    });
  }
  for (let v = 0; v < p.length; v += 3) {
    if (isRim[v / 3]) sum[v + 2] = 0;
    const length = Math.hypot(sum[v], sum[v + 1], sum[v + 2]);
    if (length > 0) for (let k = 0; k < 3; k++) sum[v + k] /= length;
  }
  const cosines = new Float64Array(p.length / 3);
  const weights = new Float64Array(p.length / 3);
  for (let t = 0; t < triangles.length; t += 3) {
    for (let k = 0; k < 3; k++) {
      const v = triangles[t + k];
      const weight = angles[t + k];
      const cosine =
        sum[3 * v] * faceNormals[t] +
        sum[3 * v + 1] * faceNormals[t + 1] +
        sum[3 * v + 2] * faceNormals[t + 2];
      cosines[v] += weight * cosine;
      weights[v] += weight;
    }
  }
  return sum.map((value, i) => {
    const v = Math.floor(i / 3);
    const cosine = weights[v] > 0 ? cosines[v] / weights[v] : 1;
    return value / Math.max(1 / LONGEST_SHIFT, cosine);
  });
}
