import { dot, normalise } from '../math/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import type { FilledBoard } from './types.ts';

/** How the boards over the openings stand to where they were drawn. */
export function measureBoards({ mesh, openings }: SeamedShell, positions: Float64Array): FilledBoard[] {
  return openings.map(({ id, vertices }) => {
    const before = planeOf(mesh.positions, vertices);
    const after = planeOf(positions, vertices);
    const turned = Math.acos(Math.min(1, dot(before.normal, after.normal)));
    return { id, moved: Math.hypot(...after.middle.map((x, k) => x - before.middle[k])), turned };
  });
}

/** Middle of a loop's points and the normal of the area it encloses (Newell). */
function planeOf(positions: Float64Array, loop: Uint32Array) {
  const middle = [0, 0, 0];
  const area = [0, 0, 0];
  loop.forEach((p, i) => {
    const q = loop[(i + 1) % loop.length];
    for (let axis = 0; axis < 3; axis++) {
      const [d, e] = [(axis + 1) % 3, (axis + 2) % 3];
      middle[axis] += positions[3 * p + axis] / loop.length;
      area[axis] +=
        (positions[3 * p + d] - positions[3 * q + d]) * (positions[3 * p + e] + positions[3 * q + e]);
    }
  });
  return { middle, normal: normalise(area) };
}
