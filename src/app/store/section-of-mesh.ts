import { convexHull } from '../../core/math/index.ts';
import type { Mesh } from '../../core/mesh/index.ts';

/** The body cut level at one height. mm. */
export interface Section {
  /** Stretches of the outline, each two points x, y: 4 numbers a stretch, in no order. */
  readonly stretches: Float64Array;
  /** As a taut tape takes it: round the hull. */
  readonly girth: number;
  readonly width: number;
  readonly depth: number;
}

/** The last answer for each mesh: the page and the scene ask for the same. */
const lastCuts = new WeakMap<Mesh, { readonly z: number; readonly section: Section | null }>();

/** The mesh cut by the plane z; null where it misses the mesh. O(triangles). */
export function sectionOfMesh(mesh: Mesh, z: number): Section | null {
  const last = lastCuts.get(mesh);
  if (last?.z === z) return last.section;
  const section = cutMesh(mesh, z);
  lastCuts.set(mesh, { z, section });
  return section;
}

function cutMesh({ positions, triangles }: Mesh, z: number): Section | null {
  const found: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const ends: number[] = [];
    for (let k = 0; k < 3; k++) {
      const a = 3 * triangles[t + k];
      const b = 3 * triangles[t + ((k + 1) % 3)];
      const [za, zb] = [positions[a + 2] - z, positions[b + 2] - z];
      // A vertex on the plane counts as above it, so that each triangle is cut at two edges or none.
      if (za < 0 === zb < 0) continue;
      const f = za / (za - zb);
      ends.push(
        positions[a] + f * (positions[b] - positions[a]),
        positions[a + 1] + f * (positions[b + 1] - positions[a + 1]),
      );
    }
    if (ends.length === 4) found.push(...ends);
  }
  if (found.length < 12) return null;
  const stretches = Float64Array.from(found);
  const hull = convexHull(stretches);
  let girth = 0;
  let [left, right, back, front] = [Infinity, -Infinity, Infinity, -Infinity];
  hull.forEach((point, i) => {
    const next = hull[(i + 1) % hull.length];
    const [x, y] = [stretches[2 * point], stretches[2 * point + 1]];
    girth += Math.hypot(stretches[2 * next] - x, stretches[2 * next + 1] - y);
    left = Math.min(left, x);
    right = Math.max(right, x);
    back = Math.min(back, y);
    front = Math.max(front, y);
  });
  return { stretches, girth, width: right - left, depth: front - back };
}
