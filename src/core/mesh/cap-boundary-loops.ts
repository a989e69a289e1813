import earcut from 'earcut';
import { assertInvariant } from '../base/index.ts';
import { cross, normalise } from '../math/index.ts';
import { findTwins, nextHalfedge } from './halfedges.ts';
import type { Mesh } from './mesh.ts';

export interface CappedMesh extends Mesh {
  /** Per loop: triangles [start, end) that close it. */
  readonly caps: readonly { readonly start: number; readonly end: number }[];
}

/**
 * Closes openings: each loop (vertices round one border, either direction) gets a triangulation of its outline seen
 * along its mean normal. No vertices are added, old triangles keep their places, the caps follow them and are
 * oriented like the mesh. O(Σ n log n).
 * The mean normal is Newell's (sum of cross products), the normal of the best plane for the enclosed area;
 * the outline must not overlap itself when seen along it. Throws when a loop is not a whole border.
 */
export function capBoundaryLoops(mesh: Mesh, loops: readonly Uint32Array[]): CappedMesh {
  const { positions, triangles } = mesh;
  const following = borderSuccessors(mesh);
  const caps: { start: number; end: number }[] = [];
  const added: number[] = [];
  for (const loop of loops) {
    const ring = orientAsHole(loop, following);
    const start = (triangles.length + added.length) / 3;
    const outline = projectLoop(positions, ring);
    const corners = restoreStraightCorners(turnLeft(earcut(outline), outline), ring.length);
    assertInvariant(
      corners.length === 3 * (ring.length - 2),
      'mesh',
      'an opening must not overlap itself seen along its normal',
      `${corners.length / 3} triangles for ${ring.length} vertices`,
    );
    for (const corner of corners) added.push(ring[corner]);
    caps.push({ start, end: (triangles.length + added.length) / 3 });
  }
  const all = new Uint32Array(triangles.length + added.length);
  all.set(triangles);
  all.set(added, triangles.length);
  return { positions, triangles: all, caps };
}

function borderSuccessors(mesh: Mesh): Int32Array {
  const { triangles } = mesh;
  const vertexCount = mesh.positions.length / 3;
  const twins = findTwins(triangles, vertexCount);
  const following = new Int32Array(vertexCount).fill(-1);
  for (let e = 0; e < triangles.length; e++) {
    if (twins[e] === -1) following[triangles[e]] = triangles[nextHalfedge(e)];
  }
  return following;
}

/** The loop against the border halfedges: that is counter-clockwise for the triangles that fill the hole. */
function orientAsHole(loop: Uint32Array, following: Int32Array): Uint32Array {
  const n = loop.length;
  assertInvariant(n >= 3, 'mesh', 'a border loop has three vertices or more', n);
  const runsAlong = following[loop[0]] === loop[1];
  const ring = runsAlong ? loop.slice().reverse() : loop;
  for (let i = 0; i < n; i++) {
    const next = ring[(i + 1) % n];
    assertInvariant(
      following[next] === ring[i],
      'mesh',
      'a loop follows one whole border',
      `vertex ${ring[i]}`,
    );
  }
  return ring;
}

/** n × 2 coordinates in the plane across the loop's Newell normal, in which the loop is counter-clockwise. */
function projectLoop(p: Float64Array, ring: Uint32Array): Float64Array {
  let nx = 0;
  let ny = 0;
  let nz = 0;
  const n = ring.length;
  const o = 3 * ring[0];
  for (let i = 0; i < n; i++) {
    const a = 3 * ring[i];
    const b = 3 * ring[(i + 1) % n];
    const ax = p[a] - p[o];
    const ay = p[a + 1] - p[o + 1];
    const az = p[a + 2] - p[o + 2];
    const bx = p[b] - p[o];
    const by = p[b + 1] - p[o + 1];
    const bz = p[b + 2] - p[o + 2];
    nx += ay * bz - az * by;
    ny += az * bx - ax * bz;
    nz += ax * by - ay * bx;
  }
  const length = Math.hypot(nx, ny, nz);
  assertInvariant(length > 0, 'mesh', 'an opening encloses some area', length);
  nx /= length;
  ny /= length;
  nz /= length;
  // First axis across the normal and the coordinate axis it leans on least.
  const least = Math.min(Math.abs(nx), Math.abs(ny), Math.abs(nz));
  const k = Math.abs(nx) === least ? 0 : Math.abs(ny) === least ? 1 : 2;
  let e1 = [0, nz, -ny];
  if (k === 1) e1 = [-nz, 0, nx];
  else if (k === 2) e1 = [ny, -nx, 0];
  e1 = normalise(e1);
  const e2 = cross([nx, ny, nz], e1);
  const out = new Float64Array(2 * n);
  for (let i = 0; i < n; i++) {
    const a = 3 * ring[i];
    for (let d = 0; d < 3; d++) {
      out[2 * i] += (p[a + d] - p[o + d]) * e1[d];
      out[2 * i + 1] += (p[a + d] - p[o + d]) * e2[d];
    }
  }
  return out;
}

/** Triangles as they are when counter-clockwise, else turned over: the library promises no direction. */
function turnLeft(corners: number[], outline: Float64Array): number[] {
  let twiceArea = 0;
  for (let i = 0; i < corners.length; i += 3) {
    const [a, b, c] = [2 * corners[i], 2 * corners[i + 1], 2 * corners[i + 2]];
    twiceArea +=
      (outline[b] - outline[a]) * (outline[c + 1] - outline[a + 1]) -
      (outline[b + 1] - outline[a + 1]) * (outline[c] - outline[a]);
  }
  return twiceArea < 0 ? corners.toReversed() : corners;
}

/**
 * The library leaves out corners on a straight stretch, which would leave slits: the triangle along such a stretch
 * is cut into a fan over it.
 */
function restoreStraightCorners(corners: number[], n: number): number[] {
  const isUsed = new Uint8Array(n);
  for (const corner of corners) isUsed[corner] = 1;
  const countSkipped = (from: number, to: number): number => {
    let count = 0;
    for (let k = (from + 1) % n; k !== to; k = (k + 1) % n) {
      if (isUsed[k] === 1) return 0;
      count++;
    }
    return count;
  };
  const out: number[] = [];
  const waiting: [number, number, number][] = [];
  for (let i = 0; i < corners.length; i += 3) waiting.push([corners[i], corners[i + 1], corners[i + 2]]);
  for (let triangle = waiting.pop(); triangle; triangle = waiting.pop()) {
    const [a, b, c] = triangle;
    if (countSkipped(a, b) > 0) {
      for (let k = a; k !== b; k = (k + 1) % n) waiting.push([k, (k + 1) % n, c]);
    } else if (countSkipped(b, c) > 0 || countSkipped(c, a) > 0) waiting.push([b, c, a]);
    else out.push(a, b, c);
  }
  return out;
}
