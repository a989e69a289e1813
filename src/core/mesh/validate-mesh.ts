import type { Issue } from '../base/index.ts';
import { nextHalfedge } from './halfedges.ts';
import { measureTriangleAreas } from './measure-areas.ts';
import type { Mesh } from './mesh.ts';
import { type MeshPhrases, phrase } from './phrases.ts';

export interface MeshExpectations {
  /** Border edges are an issue too. */
  readonly isClosed?: boolean;
  /** Triangles of less area are degenerate, mm². Default 1e-9. */
  readonly minArea?: number;
}

/**
 * Every way in which a mesh is unfit: array lengths, not-a-number positions, indices out of range, repeated corners,
 * triangles without area, edges with more than two triangles, neighbours running the same way along an edge,
 * vertices whose triangles do not form one fan, and open borders when `isClosed`.
 * One issue per kind, naming the first place; `measured` counts them. Paths start at `mesh`. O(#F).
 */
export function validateMesh(mesh: Mesh, expectations: MeshExpectations = {}): Issue[] {
  const issues: Issue[] = [];
  const report = (id: keyof MeshPhrases, path: string, count: number): void => {
    if (count > 0) {
      issues.push({
        code: id.replace('.', '-'),
        path: `mesh.${path}`,
        message: phrase(id),
        severity: 'error',
        measured: count,
        limit: 0,
      });
    }
  };
  const { positions, triangles } = mesh;
  if (positions.length % 3 !== 0 || triangles.length % 3 !== 0) {
    report('mesh.array-length', 'positions', 1);
    return issues;
  }
  const vertexCount = positions.length / 3;
  const bad = collect(positions.length, (i) => !Number.isFinite(positions[i]));
  report('mesh.not-a-number', `positions.${bad.first}`, bad.count);
  const stray = collect(triangles.length, (e) => triangles[e] >= vertexCount);
  report('mesh.index-range', `triangles.${stray.first}`, stray.count);
  if (stray.count > 0) return issues;

  const repeated = collect(triangles.length, (e) => triangles[e] === triangles[nextHalfedge(e)]);
  report('mesh.repeated-corner', `triangles.${repeated.first}`, repeated.count);
  const areas = measureTriangleAreas(mesh);
  const minArea = expectations.minArea ?? 1e-9;
  const flat = collect(areas.length, (f) => !(areas[f] > minArea));
  report('mesh.degenerate', `triangles.${3 * flat.first}`, flat.count);

  const edges = sortEdges(triangles, vertexCount);
  report('mesh.not-manifold', `triangles.${edges.crowded.first}`, edges.crowded.count);
  report('mesh.orientation', `triangles.${edges.turned.first}`, edges.turned.count);
  if (expectations.isClosed) {
    report('mesh.open', `triangles.${edges.open.first}`, edges.open.count);
  }
  if (edges.crowded.count === 0 && repeated.count === 0) {
    const pinched = findPinchedVertices(triangles, vertexCount);
    report('mesh.pinched-vertex', `positions.${3 * pinched.first}`, pinched.count);
  }
  return issues;
}

interface Found {
  readonly count: number;
  /** −1 when none. */
  readonly first: number;
}

function collect(length: number, test: (i: number) => boolean): Found {
  let count = 0;
  let first = -1;
  for (let i = 0; i < length; i++) {
    if (!test(i)) continue;
    if (count++ === 0) first = i;
  }
  return { count, first };
}

function sortEdges(
  triangles: Uint32Array,
  vertexCount: number,
): { crowded: Found; turned: Found; open: Found } {
  // Key = low·V + high stays exact below 2^53 for up to 94 million vertices.
  const seen = new Map<number, { first: number; up: number; down: number }>();
  for (let e = 0; e < triangles.length; e++) {
    const from = triangles[e];
    const to = triangles[nextHalfedge(e)];
    const key = Math.min(from, to) * vertexCount + Math.max(from, to);
    const entry = seen.get(key) ?? { first: e, up: 0, down: 0 };
    if (from < to) entry.up++;
    else entry.down++;
    seen.set(key, entry);
  }
  const all = [...seen.values()];
  const pick = (test: (edge: { first: number; up: number; down: number }) => boolean): Found => {
    const found = all.filter(test);
    return { count: found.length, first: found.length ? found[0].first : -1 };
  };
  return {
    crowded: pick((edge) => edge.up + edge.down > 2),
    turned: pick((edge) => edge.up + edge.down === 2 && edge.up !== 1),
    open: pick((edge) => edge.up + edge.down === 1),
  };
}

/** Vertices whose corners fall into several groups connected by edges at that vertex. */
function findPinchedVertices(triangles: Uint32Array, vertexCount: number): Found {
  const parent = Int32Array.from({ length: triangles.length }, (_, i) => i);
  const find = (i: number): number => {
    let root = i;
    while (parent[root] !== root) root = parent[root];
    while (parent[i] !== root) [parent[i], i] = [root, parent[i]];
    return root;
  };
  const firstAt = new Map<number, number>();
  for (let e = 0; e < triangles.length; e++) {
    const ends = [e, nextHalfedge(e)];
    for (const corner of ends) {
      const other = ends[0] === corner ? ends[1] : ends[0];
      const key = triangles[corner] * vertexCount + triangles[other];
      const known = firstAt.get(key);
      if (known === undefined) firstAt.set(key, corner);
      else parent[find(corner)] = find(known);
    }
  }
  const fan = new Int32Array(vertexCount).fill(-1);
  return collect(triangles.length, (e) => {
    const root = find(e);
    const v = triangles[e];
    if (fan[v] === -1) fan[v] = root;
    return fan[v] !== root;
  });
}
