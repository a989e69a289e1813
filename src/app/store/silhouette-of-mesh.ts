import { clamp } from '../../core/math/index.ts';
import { type Mesh, nextHalfedge } from '../../core/mesh/index.ts';
import type { PhotoSide } from './types.ts';

/** How wide a mesh is at each height, seen straight from one side; no perspective. mm. */
export interface Silhouette {
  /** Rising. */
  readonly heights: Float64Array;
  /** Parallel to `heights`: leftmost and rightmost as seen. */
  readonly left: Float64Array;
  readonly right: Float64Array;
}

const STEP = 4;

/**
 * Cuts every edge at every row between its ends. From the front the wearer's right is on the left; from the side, which is
 * the wearer's right, the front is on the right. O(triangles × rows they cross).
 */
export function silhouetteOfMesh({ positions, triangles }: Mesh, side: PhotoSide): Silhouette {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 2; i < positions.length; i += 3) {
    low = Math.min(low, positions[i]);
    high = Math.max(high, positions[i]);
  }
  const count = Math.max(2, Math.round((high - low) / STEP) + 1);
  const step = (high - low) / (count - 1);
  const heights = Float64Array.from({ length: count }, (_, k) => low + k * step);
  const left = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  const right = new Float64Array(count).fill(Number.NEGATIVE_INFINITY);
  const across = (v: number) => (side === 'front' ? -positions[3 * v] : positions[3 * v + 1]);
  const offer = (row: number, x: number) => {
    left[row] = Math.min(left[row], x);
    right[row] = Math.max(right[row], x);
  };
  for (let t = 0; t < triangles.length; t++) {
    const a = triangles[t];
    const b = triangles[nextHalfedge(t)];
    const [za, zb] = [positions[3 * a + 2], positions[3 * b + 2]];
    const first = Math.ceil((Math.min(za, zb) - low) / step - 1e-9);
    const last = Math.floor((Math.max(za, zb) - low) / step + 1e-9);
    for (let row = first; row <= last; row++) {
      const f = za === zb ? 0 : clamp((heights[row] - za) / (zb - za), 0, 1);
      offer(row, across(a) + f * (across(b) - across(a)));
      if (za === zb) offer(row, across(b));
    }
  }
  return { heights, left, right };
}
