import {
  assertInvariant,
  failure,
  type Issue,
  isPhrase,
  type Phrase,
  type Result,
  success,
} from '../base/index.ts';
import { analyseLdlt, findSlot, Ldlt, patternFromPairs, type SparsePattern } from '../math/index.ts';
import { type Mesh, nextHalfedge, validateMesh } from '../mesh/index.ts';
import { phrase } from './phrases.ts';

/**
 * A mesh made ready for flattening: its metric (not its place in space), and the sparse system of two
 * unknowns per vertex, x and y of vertex v at 2v and 2v + 1.
 */
export interface PreparedDisk {
  readonly mesh: Mesh;
  readonly vertexCount: number;
  readonly triangleCount: number;
  /** #F × 3 vertices, rising within each triangle (so that element blocks fall into one half). */
  readonly corners: Int32Array;
  /** #F × 6 gradient of each corner's hat function in the triangle's own plane, 1/mm, order of `corners`. */
  readonly gradients: Float64Array;
  /** #F mm². */
  readonly areas: Float64Array;
  readonly totalArea: number;
  /** Boundary vertices counter-clockwise. */
  readonly boundary: Int32Array;
  readonly pattern: SparsePattern;
  /** #F × 6 slots of the blocks of `SLOT_CORNERS`. */
  readonly slots: Int32Array;
  /** Matrix values, 4 per slot; scratch of the solver. */
  readonly values: Float64Array;
  readonly solver: Ldlt;
  /** Two far apart boundary vertices: rigid motion is fixed by both coordinates of `pinA` and y of `pinB`. */
  readonly pinA: number;
  readonly pinB: number;
}

/** Row and column corner of each of a triangle's six slots. */
export const SLOT_CORNERS = [0, 0, 1, 1, 2, 2, 1, 0, 2, 0, 2, 1] as const;

/** Triangles with less area than this share of the mean are as good as degenerate. */
const degenerateShare = 1e-7;

/**
 * Checks that the mesh is a connected manifold disk with one boundary loop and sets up everything the
 * flattening reuses. `path` prefixes the issues. Cost: a few ms for 2500 triangles, mostly ordering.
 */
export function prepareDisk(mesh: Mesh, path = 'mesh'): Result<PreparedDisk> {
  const issues = checkArrays(mesh, path);
  if (issues.length > 0) return failure(issues);
  const vertexCount = mesh.positions.length / 3;
  const triangleCount = mesh.triangles.length / 3;
  const metric = measureMetric(mesh);
  const degenerate = metric.areas.findIndex(
    (a) => !(a > (degenerateShare * metric.totalArea) / triangleCount),
  );
  if (degenerate >= 0) {
    return failure([
      issue('flatten-degenerate-triangle', `${path}.triangles.${degenerate}`, phrase('disk.no-area'), {
        measured: metric.areas[degenerate],
        limit: (degenerateShare * metric.totalArea) / triangleCount,
      }),
    ]);
  }
  const topology = traceBoundary(mesh);
  if (isPhrase(topology)) {
    const detailed = validateMesh(mesh).map((found) => ({
      ...found,
      path: found.path.replace('mesh', path),
    }));
    return failure([...detailed, issue('flatten-not-a-disk', path, topology)]);
  }
  const boundary = topology;
  const pattern = patternFromPairs(vertexCount, coupledPairs(metric.corners, boundary));
  const slots = new Int32Array(triangleCount * 6);
  for (let f = 0; f < triangleCount; f++) {
    const a = metric.corners[3 * f];
    const b = metric.corners[3 * f + 1];
    const c = metric.corners[3 * f + 2];
    slots[6 * f] = findSlot(pattern, a, a);
    slots[6 * f + 1] = findSlot(pattern, b, b);
    slots[6 * f + 2] = findSlot(pattern, c, c);
    slots[6 * f + 3] = findSlot(pattern, b, a);
    slots[6 * f + 4] = findSlot(pattern, c, a);
    slots[6 * f + 5] = findSlot(pattern, c, b);
  }
  const [pinA, pinB] = chooseFarPins(mesh, boundary);
  return success({
    mesh,
    vertexCount,
    triangleCount,
    ...metric,
    boundary,
    pattern,
    slots,
    values: new Float64Array(4 * pattern.rowIndex.length),
    solver: new Ldlt(analyseLdlt(pattern, 2)),
    pinA,
    pinB,
  });
}

function issue(code: string, path: string, message: Phrase, numbers: Partial<Issue> = {}): Issue {
  return { code, path, message, severity: 'error', ...numbers };
}

function checkArrays(mesh: Mesh, path: string): Issue[] {
  const { positions, triangles } = mesh;
  if (triangles.length < 3) return [issue('flatten-not-a-disk', path, phrase('disk.no-triangles'))];
  const isWhole = positions.length % 3 === 0 && triangles.length % 3 === 0;
  const isInRange = isWhole && triangles.every((v) => v < positions.length / 3);
  if (isInRange && positions.every(Number.isFinite)) return [];
  return validateMesh(mesh).map((found) => ({ ...found, path: found.path.replace('mesh', path) }));
}

interface Metric {
  readonly corners: Int32Array;
  readonly gradients: Float64Array;
  readonly areas: Float64Array;
  readonly totalArea: number;
}

/** Lays each triangle into its own plane: first edge along +x, counter-clockwise. */
function measureMetric(mesh: Mesh): Metric {
  const { positions: p, triangles } = mesh;
  const count = triangles.length / 3;
  const corners = new Int32Array(3 * count);
  const gradients = new Float64Array(6 * count);
  const areas = new Float64Array(count);
  let totalArea = 0;
  for (let f = 0; f < count; f++) {
    const a = triangles[3 * f];
    const b = triangles[3 * f + 1];
    const c = triangles[3 * f + 2];
    const ux = p[3 * b] - p[3 * a];
    const uy = p[3 * b + 1] - p[3 * a + 1];
    const uz = p[3 * b + 2] - p[3 * a + 2];
    const vx = p[3 * c] - p[3 * a];
    const vy = p[3 * c + 1] - p[3 * a + 1];
    const vz = p[3 * c + 2] - p[3 * a + 2];
    const length = Math.sqrt(ux * ux + uy * uy + uz * uz);
    const along = (ux * vx + uy * vy + uz * vz) / length;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const double = Math.sqrt(nx * nx + ny * ny + nz * nz);
    const height = double / length;
    areas[f] = double / 2;
    totalArea += double / 2;
    // ∇φ = left normal of the opposite edge / 2A.
    setCorner(f, rankOf(a, b, c), a, -height / double, (along - length) / double);
    setCorner(f, rankOf(b, a, c), b, height / double, -along / double);
    setCorner(f, rankOf(c, a, b), c, 0, length / double);
  }
  return { corners, gradients, areas, totalArea };

  function setCorner(f: number, rank: number, vertex: number, x: number, y: number): void {
    corners[3 * f + rank] = vertex;
    gradients[6 * f + 2 * rank] = x;
    gradients[6 * f + 2 * rank + 1] = y;
  }
}

/** How many of the others come before v. */
function rankOf(v: number, other: number, another: number): number {
  return (other < v ? 1 : 0) + (another < v ? 1 : 0);
}

/** Boundary vertices of a sound disk, in the order `prepareDisk` gives them. O(#F). */
export function traceOutline(mesh: Mesh): Int32Array {
  const boundary = traceBoundary(mesh);
  const fault = isPhrase(boundary) ? boundary.id : '';
  assertInvariant(!isPhrase(boundary), 'flatten', 'a disk that was laid out is sound', fault);
  return boundary;
}

/** The one boundary loop, or what is wrong with the mesh. */
function traceBoundary(mesh: Mesh): Int32Array | Phrase {
  const { triangles } = mesh;
  const vertexCount = mesh.positions.length / 3;
  // 1. Pair halfedges by bucketing them under their tail.
  const start = new Int32Array(vertexCount + 1);
  for (const v of triangles) start[v + 1]++;
  for (let v = 0; v < vertexCount; v++) {
    if (start[v + 1] === 0) return phrase('disk.loose-vertex');
    start[v + 1] += start[v];
  }
  const cursor = start.slice(0, vertexCount);
  const heads = new Int32Array(triangles.length);
  for (let e = 0; e < triangles.length; e++) {
    heads[cursor[triangles[e]]++] = triangles[nextHalfedge(e)];
  }
  const following = new Int32Array(vertexCount).fill(-1);
  const preceding = new Int32Array(vertexCount).fill(-1);
  let boundaryCount = 0;
  let entry = -1;
  for (let from = 0; from < vertexCount; from++) {
    for (let k = start[from]; k < start[from + 1]; k++) {
      const to = heads[k];
      for (let q = start[from]; q < k; q++) if (heads[q] === to) return phrase('disk.edge-used-twice');
      let hasTwin = false;
      for (let q = start[to]; q < start[to + 1]; q++) if (heads[q] === from) hasTwin = true;
      if (hasTwin) continue;
      if (following[from] >= 0) return phrase('disk.pinched');
      following[from] = to;
      preceding[to] = from;
      boundaryCount++;
      entry = from;
    }
  }
  if (entry < 0) return phrase('disk.no-boundary');
  // 2. Walk the loop; all boundary edges must be on it.
  const loop = new Int32Array(boundaryCount);
  let length = 0;
  for (let v = entry; length < boundaryCount; ) {
    loop[length++] = v;
    v = following[v];
    if (v < 0) return phrase('disk.broken-boundary');
    if (v === entry) break;
  }
  if (length < boundaryCount) return phrase('disk.more-boundaries');
  // 3. Connected, and no handle: V − E + F = 1.
  const reached = new Uint8Array(vertexCount);
  const queue = [entry];
  reached[entry] = 1;
  let reachedCount = 1;
  const visit = (v: number) => {
    if (reached[v]) return;
    reached[v] = 1;
    reachedCount++;
    queue.push(v);
  };
  for (let v = queue.pop(); v !== undefined; v = queue.pop()) {
    for (let k = start[v]; k < start[v + 1]; k++) visit(heads[k]);
    if (preceding[v] >= 0) visit(preceding[v]);
  }
  if (reachedCount < vertexCount) return phrase('disk.separate-parts');
  const edges = (triangles.length + boundaryCount) / 2;
  if (vertexCount - edges + triangles.length / 3 !== 1) return phrase('disk.handle');
  return loop;
}

/** Edges of triangles, and boundary vertices two apart (the bending of the outline couples them). */
function coupledPairs(corners: Int32Array, boundary: Int32Array): Int32Array {
  const n = boundary.length;
  const pairs = new Int32Array(2 * (corners.length + n));
  for (let e = 0; e < corners.length; e++) {
    pairs[2 * e] = corners[e];
    pairs[2 * e + 1] = corners[nextHalfedge(e)];
  }
  for (let k = 0; k < n; k++) {
    pairs[2 * (corners.length + k)] = boundary[k];
    pairs[2 * (corners.length + k) + 1] = boundary[(k + 2) % n];
  }
  return pairs;
}

/** A boundary vertex farthest from the middle, and the one farthest from it. */
function chooseFarPins(mesh: Mesh, boundary: Int32Array): [number, number] {
  const p = mesh.positions;
  const middle = [0, 0, 0];
  for (const v of boundary) for (let a = 0; a < 3; a++) middle[a] += p[3 * v + a] / boundary.length;
  const farthestFrom = (x: number, y: number, z: number): number => {
    let best = -1;
    let bestSquare = -1;
    for (const v of boundary) {
      const square = (p[3 * v] - x) ** 2 + (p[3 * v + 1] - y) ** 2 + (p[3 * v + 2] - z) ** 2;
      if (square > bestSquare) {
        bestSquare = square;
        best = v;
      }
    }
    return best;
  };
  const a = farthestFrom(middle[0], middle[1], middle[2]);
  return [a, farthestFrom(p[3 * a], p[3 * a + 1], p[3 * a + 2])];
}
