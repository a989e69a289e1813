import type { Mesh } from './mesh.ts';

/** Length of the polyline through the vertices of `path`, mm; `isClosed` adds the way back to the start. */
export function measurePath(
  mesh: Pick<Mesh, 'positions'>,
  path: ArrayLike<number>,
  isClosed = false,
): number {
  const { positions: p } = mesh;
  let sum = 0;
  const count = isClosed ? path.length : path.length - 1;
  for (let i = 0; i < count; i++) {
    const a = 3 * path[i];
    const b = 3 * path[i + 1 === path.length ? 0 : i + 1];
    sum += Math.hypot(p[b] - p[a], p[b + 1] - p[a + 1], p[b + 2] - p[a + 2]);
  }
  return sum;
}

/** Running length at every vertex of `path`, starting at 0, mm. */
export function measureAlongPath(mesh: Pick<Mesh, 'positions'>, path: ArrayLike<number>): Float64Array {
  const { positions: p } = mesh;
  const out = new Float64Array(path.length);
  for (let i = 1; i < path.length; i++) {
    const a = 3 * path[i - 1];
    const b = 3 * path[i];
    out[i] = out[i - 1] + Math.hypot(p[b] - p[a], p[b + 1] - p[a + 1], p[b + 2] - p[a + 2]);
  }
  return out;
}
