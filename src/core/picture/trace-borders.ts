import { findTwins, nextHalfedge } from '../mesh/index.ts';
import type { SurfaceLine } from './trace-contours.ts';
import type { Surface } from './types.ts';

/** A border that turns by more has a corner there, radians. */
const CORNER = (40 * Math.PI) / 180;

/**
 * Edges of the cloth that `faces` make up: openings, open seams, cuts. Divided at corners, so that smoothing keeps these.
 * O(#F).
 */
export function traceBorders(surface: Surface, faces: ArrayLike<number>): SurfaceLine[] {
  const { triangles, positions } = surface;
  const own = new Uint32Array(3 * faces.length);
  for (let i = 0; i < faces.length; i++) {
    for (let k = 0; k < 3; k++) own[3 * i + k] = triangles[3 * faces[i] + k];
  }
  const twins = findTwins(own, positions.length / 3);
  const following = new Map<number, number[]>();
  for (let e = 0; e < own.length; e++) {
    if (twins[e] !== -1) continue;
    const [from, to] = [own[e], own[nextHalfedge(e)]];
    following.set(from, [...(following.get(from) ?? []), to]);
  }
  return loopsOf(following).flatMap((loop) => divideAtCorners(surface, loop));
}

function loopsOf(following: Map<number, number[]>): number[][] {
  const loops: number[][] = [];
  for (const start of following.keys()) {
    while ((following.get(start)?.length ?? 0) > 0) {
      const loop: number[] = [];
      for (let at: number | undefined = start; at !== undefined; ) {
        loop.push(at);
        at = following.get(at)?.pop();
        if (at === start) break;
      }
      loops.push(loop);
    }
  }
  return loops;
}

function divideAtCorners(surface: Surface, loop: readonly number[]): SurfaceLine[] {
  const { positions: p } = surface;
  const count = loop.length;
  const way = (i: number): number[] => {
    const [a, b] = [loop[i % count], loop[(i + 1) % count]];
    const d = [0, 1, 2].map((k) => p[3 * b + k] - p[3 * a + k]);
    const length = Math.hypot(...d);
    return d.map((value) => value / length);
  };
  const corners = loop.flatMap((_, i) => {
    const [before, after] = [way((i + count - 1) % count), way(i)];
    const cos = before.reduce((sum, value, k) => sum + value * after[k], 0);
    return cos < Math.cos(CORNER) ? [i] : [];
  });
  const stretch = (from: number, to: number): number[] => {
    return Array.from({ length: to - from + 1 }, (_, i) => loop[(from + i) % count]);
  };
  if (corners.length === 0) return [lineOf(surface, stretch(0, count - 1), true)];
  return corners.map((from, k) => {
    const to = corners[(k + 1) % corners.length];
    return lineOf(surface, stretch(from, to > from ? to : to + count), false);
  });
}

function lineOf({ positions, normals }: Surface, vertices: readonly number[], closed: boolean): SurfaceLine {
  const rows = (from: Float64Array): Float64Array => {
    const taken = new Float64Array(3 * vertices.length);
    vertices.forEach((vertex, i) => {
      for (let k = 0; k < 3; k++) taken[3 * i + k] = from[3 * vertex + k];
    });
    return taken;
  };
  return { points: rows(positions), normals: rows(normals), closed };
}
