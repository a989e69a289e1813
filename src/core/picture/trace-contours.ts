import { dot, type Vector } from '../math/index.ts';
import type { Surface } from './types.ts';

/** A line on a surface with the surface's unit normals along it. */
export interface SurfaceLine {
  /** n × 3 mm. */
  readonly points: Float64Array;
  readonly normals: Float64Array;
  readonly closed: boolean;
}

/**
 * Where a smooth surface turns away from the viewer: n · v = 0 on its vertex normals, through the triangles of `faces`.
 * Points on edges are bulged as the normals say (the cubic edge of a PN triangle: Vlachos et al., Curved PN triangles,
 * I3D 2001), which keeps the contour of a coarse mesh from wobbling. O(#F).
 */
export function traceContours(surface: Surface, toViewer: Vector, faces: ArrayLike<number>): SurfaceLine[] {
  const { triangles, normals } = surface;
  const count = normals.length / 3;
  const [vx, vy, vz] = toViewer;
  const facing = new Float64Array(count);
  for (let v = 0; v < count; v++) {
    // A vertex right on the contour goes to the front, so that every edge is crossed or is not.
    facing[v] = normals[3 * v] * vx + normals[3 * v + 1] * vy + normals[3 * v + 2] * vz || Number.MIN_VALUE;
  }
  /** Per crossed edge, the edges next to it. */
  const next = new Map<number, number[]>();
  for (let i = 0; i < faces.length; i++) {
    const isFront = facing[triangles[3 * faces[i]]] > 0;
    if (
      facing[triangles[3 * faces[i] + 1]] > 0 === isFront &&
      facing[triangles[3 * faces[i] + 2]] > 0 === isFront
    )
      continue;
    const crossed: number[] = [];
    for (let k = 0; k < 3; k++) {
      const a = triangles[3 * faces[i] + k];
      const b = triangles[3 * faces[i] + ((k + 1) % 3)];
      if (facing[a] > 0 !== facing[b] > 0) crossed.push(Math.min(a, b) * count + Math.max(a, b));
    }
    if (crossed.length !== 2) continue;
    for (const [from, to] of [crossed, crossed.toReversed()]) {
      next.set(from, [...(next.get(from) ?? []), to]);
    }
  }
  return chainEdges(next).map(({ keys, closed }) => {
    const points = new Float64Array(3 * keys.length);
    const own = new Float64Array(3 * keys.length);
    keys.forEach((key, i) => {
      const [a, b] = [Math.floor(key / count), key % count];
      const t = facing[a] / (facing[a] - facing[b]);
      points.set(pointOnEdge(surface, a, b, t), 3 * i);
      own.set(normalOnEdge(surface, a, b, t), 3 * i);
    });
    return { points, normals: own, closed };
  });
}

/** Chains of neighbours, open ones first from their ends. */
function chainEdges(next: ReadonlyMap<number, readonly number[]>): { keys: number[]; closed: boolean }[] {
  const left = new Set(next.keys());
  const chains: { keys: number[]; closed: boolean }[] = [];
  const follow = (start: number): number[] => {
    const keys: number[] = [];
    for (let key: number | undefined = start; key !== undefined; ) {
      keys.push(key);
      left.delete(key);
      key = next.get(key)?.find((one) => left.has(one));
    }
    return keys;
  };
  for (const [key, ways] of next) {
    if (left.has(key) && ways.length === 1) chains.push({ keys: follow(key), closed: false });
  }
  for (const key of next.keys()) {
    if (left.has(key)) chains.push({ keys: follow(key), closed: true });
  }
  return chains.filter(({ keys }) => keys.length > 1);
}

function pointOnEdge({ positions: p, normals: n }: Surface, a: number, b: number, t: number): Vector {
  const way = [0, 1, 2].map((k) => p[3 * b + k] - p[3 * a + k]);
  const [atA, atB] = [a, b].map((v) => dot(way, n.subarray(3 * v, 3 * v + 3)));
  const s = 1 - t;
  const at = (k: number): number => {
    const [from, to] = [p[3 * a + k], p[3 * b + k]];
    const nearA = (2 * from + to - atA * n[3 * a + k]) / 3;
    const nearB = (2 * to + from + atB * n[3 * b + k]) / 3;
    return s * s * s * from + 3 * s * s * t * nearA + 3 * s * t * t * nearB + t * t * t * to;
  };
  return [at(0), at(1), at(2)];
}

function normalOnEdge({ normals: n }: Surface, a: number, b: number, t: number): Vector {
  const at = (k: number): number => (1 - t) * n[3 * a + k] + t * n[3 * b + k];
  const length = Math.hypot(at(0), at(1), at(2));
  return [at(0) / length, at(1) / length, at(2) / length];
}
