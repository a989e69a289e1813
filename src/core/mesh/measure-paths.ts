import { distanceInPlane, distanceInSpace } from '../math/index.ts';
import type { Mesh } from './mesh.ts';

/** Length of the polyline through the vertices of `path`, mm; `isClosed` adds the way back to the start. */
export function measurePath(
  mesh: Pick<Mesh, 'positions'>,
  path: ArrayLike<number>,
  isClosed = false,
): number {
  const { positions } = mesh;
  let sum = 0;
  const count = isClosed ? path.length : path.length - 1;
  for (let i = 0; i < count; i++) {
    sum += distanceInSpace(positions, path[i], path[i + 1 === path.length ? 0 : i + 1]);
  }
  return sum;
}

/** Running length at every vertex of `path`, starting at 0, mm. */
export function measureAlongPath(mesh: Pick<Mesh, 'positions'>, path: ArrayLike<number>): Float64Array {
  const { positions } = mesh;
  const out = new Float64Array(path.length);
  for (let i = 1; i < path.length; i++)
    out[i] = out[i - 1] + distanceInSpace(positions, path[i - 1], path[i]);
  return out;
}

/** Length on the flat panel of the polyline through the vertices of `path`, mm. `flat`: #V × 2. */
export function measureFlatPath(flat: Float64Array, path: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 1; i < path.length; i++) sum += distanceInPlane(flat, path[i - 1], path[i]);
  return sum;
}

/** Running length on the flat panel at every vertex of `path`, starting at 0, mm. `flat`: #V × 2. */
export function measureAlongFlatPath(flat: Float64Array, path: ArrayLike<number>): Float64Array {
  const along = new Float64Array(path.length);
  for (let i = 1; i < path.length; i++) along[i] = along[i - 1] + distanceInPlane(flat, path[i - 1], path[i]);
  return along;
}
