import { dot, normalise, type Vector } from '../math/index.ts';
import { measureVertexNormals } from '../mesh/index.ts';
import { type Seam, type SeamedShell, seamSides } from '../seams/index.ts';
import type { SceneLine, Surface } from './types.ts';

/** Panels sewn along all seams but the open ones. */
export interface WeldedPanels {
  readonly surface: Surface;
  readonly lines: readonly SceneLine[];
}

/** Seams that are still open, and how far their edges are drawn apart, mm. */
export interface OpenSeams {
  readonly seams: readonly string[];
  readonly gape: number;
}

/** So far from an open seam the cloth follows it, mm. */
const FOLLOWS = 150;
/** Of the way its edges go apart, they also stand out. */
const STANDS_OUT = 0.35;

/**
 * Panels of a shell as one surface, sheet k being panel k, with its seams and level lines. Edges of an open seam are apart:
 * they are drawn sideways and outwards, and the cloth about them less and less. `positions`: other places of the shell's
 * vertices, as filled for example. O(#F + #V × points of open seams).
 */
export function weldPanels(
  shell: SeamedShell,
  open: OpenSeams = { seams: [], gape: 0 },
  positions: Float64Array = shell.mesh.positions,
): WeldedPanels {
  const isOpen = new Set(open.seams);
  const corners = glueCorners(shell, isOpen);
  const triangles: number[] = [];
  const sheetOf: number[] = [];
  shell.panels.forEach(({ mesh }, panel) => {
    for (const vertex of mesh.triangles) triangles.push(corners.vertexOf[corners.first[panel] + vertex]);
    for (let f = 0; f < mesh.triangles.length; f += 3) sheetOf.push(panel);
  });
  const closed = new Float64Array(3 * corners.sources.length);
  corners.sources.forEach((source, v) => {
    for (let k = 0; k < 3; k++) closed[3 * v + k] = positions[3 * source + k];
  });
  const faces = Uint32Array.from(triangles);
  const apart = drawApart(closed, faces, shell, positions, open);
  const surface: Surface = {
    positions: apart,
    triangles: faces,
    normals: measureVertexNormals({ positions: apart, triangles: faces }),
    sheetOf: Uint16Array.from(sheetOf),
  };
  return { surface, lines: linesOnPanels(shell, corners, surface, isOpen) };
}

/** Vertices of all panels, numbered through, and which vertex of the surface each is. */
interface Corners {
  /** Number of a panel's first vertex. */
  readonly first: readonly number[];
  readonly vertexOf: Uint32Array;
  /** Of every vertex of the surface, the shell's. */
  readonly sources: readonly number[];
}

function glueCorners(shell: SeamedShell, isOpen: ReadonlySet<string>): Corners {
  const first: number[] = [];
  let count = 0;
  for (const { sourceVertex } of shell.panels) {
    first.push(count);
    count += sourceVertex.length;
  }
  const parent = Uint32Array.from({ length: count }, (_, i) => i);
  const rootOf = (i: number): number => {
    while (parent[i] !== i) i = parent[i];
    return i;
  };
  for (const seam of shell.seams.filter(({ id }) => !isOpen.has(id))) {
    const [a, b] = seamSides(shell, seam);
    a.vertices.forEach((own, i) => {
      const [one, other] = [rootOf(first[a.panel] + own), rootOf(first[b.panel] + b.vertices[i])];
      parent[Math.max(one, other)] = Math.min(one, other);
    });
  }
  const vertexOf = new Uint32Array(count);
  const sources: number[] = [];
  const known = new Map<number, number>();
  shell.panels.forEach(({ sourceVertex }, panel) => {
    sourceVertex.forEach((source, own) => {
      const root = rootOf(first[panel] + own);
      if (!known.has(root)) {
        known.set(root, sources.length);
        sources.push(source);
      }
      vertexOf[first[panel] + own] = known.get(root) ?? 0;
    });
  });
  return { first, vertexOf, sources };
}

/** Every vertex near an open seam moved to its own side of it, and outwards. */
function drawApart(
  points: Float64Array,
  triangles: Uint32Array,
  shell: SeamedShell,
  positions: Float64Array,
  { seams, gape }: OpenSeams,
): Float64Array {
  const opened = shell.seams.filter(({ id }) => seams.includes(id));
  if (opened.length === 0 || gape === 0) return points;
  const normalsOfShell = measureVertexNormals({ positions, triangles: shell.mesh.triangles });
  const ways = opened.flatMap((seam) => waysAcross(positions, normalsOfShell, seam));
  const middles = middlesAround(points, triangles);
  const normals = measureVertexNormals({ positions: points, triangles });
  const moved = points.slice();
  for (let i = 0; i < points.length; i += 3) {
    const [x, y, z] = [points[i], points[i + 1], points[i + 2]];
    let nearest = ways[0];
    let least = FOLLOWS;
    for (const way of ways) {
      const [wx, wy, wz] = way.at;
      if (Math.abs(x - wx) >= least || Math.abs(z - wz) >= least) continue;
      const far = Math.hypot(x - wx, y - wy, z - wz);
      if (far < least) {
        least = far;
        nearest = way;
      }
    }
    if (least >= FOLLOWS) continue;
    const { at, across, out } = nearest;
    const middle = middles.subarray(i, i + 3);
    const side = Math.sign(dot(across, [middle[0] - at[0], middle[1] - at[1], middle[2] - at[2]]));
    // Across a narrow neck the front is near too, but faces the other way.
    const faces = Math.max(0, dot(out, normals.subarray(i, i + 3)));
    const by = (gape / 2) * faces * (1 - least / FOLLOWS) ** 2;
    for (let k = 0; k < 3; k++) moved[i + k] += by * (side * across[k] + 2 * STANDS_OUT * out[k]);
  }
  return moved;
}

/** At every point of a seam the ways across it (to its left, seen from outside) and out of the shell. */
function waysAcross(
  positions: Float64Array,
  normals: Float64Array,
  seam: Seam,
): { at: Vector; across: Vector; out: Vector }[] {
  return Array.from(seam.points, (vertex, i) => {
    const [a, b] = [seam.points[Math.max(0, i - 1)], seam.points[Math.min(seam.points.length - 1, i + 1)]];
    const along = [0, 1, 2].map((k) => positions[3 * b + k] - positions[3 * a + k]);
    const out = [normals[3 * vertex], normals[3 * vertex + 1], normals[3 * vertex + 2]] as const;
    const across = normalise([
      out[1] * along[2] - out[2] * along[1],
      out[2] * along[0] - out[0] * along[2],
      out[0] * along[1] - out[1] * along[0],
    ]);
    const at = [positions[3 * vertex], positions[3 * vertex + 1], positions[3 * vertex + 2]] as const;
    return { at, across, out };
  });
}

/** Of every vertex, the mean of its triangles' corners: inside its own cloth, also on an edge. */
function middlesAround(points: Float64Array, triangles: Uint32Array): Float64Array {
  const sums = new Float64Array(points.length);
  const counts = new Float64Array(points.length / 3);
  for (let f = 0; f < triangles.length; f += 3) {
    for (let corner = 0; corner < 3; corner++) {
      const v = triangles[f + corner];
      counts[v] += 3;
      for (let other = 0; other < 3; other++)
        for (let k = 0; k < 3; k++) sums[3 * v + k] += points[3 * triangles[f + other] + k];
    }
  }
  for (let i = 0; i < sums.length; i++) sums[i] /= Math.max(1, counts[Math.floor(i / 3)]);
  return sums;
}

function linesOnPanels(
  shell: SeamedShell,
  { first, vertexOf }: Corners,
  surface: Surface,
  isOpen: ReadonlySet<string>,
): SceneLine[] {
  const line = (
    what: Pick<SceneLine, 'id' | 'kind' | 'letter' | 'sheets'>,
    panel: number,
    own: Uint32Array,
  ): SceneLine => {
    const vertices = Array.from(own, (vertex) => vertexOf[first[panel] + vertex]);
    return { ...what, points: take(surface.positions, vertices), normals: take(surface.normals, vertices) };
  };
  const seams = shell.seams.flatMap((seam) => {
    const sides = seamSides(shell, seam);
    const what = { id: seam.id, letter: seam.letter, kind: 'seam' } as const;
    if (isOpen.has(seam.id))
      return sides.map(({ panel, vertices }) => line({ ...what, sheets: [panel] }, panel, vertices));
    const [{ panel, vertices }] = sides;
    return [line({ ...what, sheets: sides.map((side) => side.panel) }, panel, vertices)];
  });
  const levels = shell.panels.flatMap((panel, k) =>
    panel.levels.map(({ id, vertices }) => line({ id, kind: 'level', sheets: [k] }, k, vertices)),
  );
  return [...seams, ...levels];
}

/** Rows of three of these vertices. */
function take(rows: Float64Array, vertices: readonly number[]): Float64Array {
  const taken = new Float64Array(3 * vertices.length);
  vertices.forEach((vertex, i) => {
    taken.set(rows.subarray(3 * vertex, 3 * vertex + 3), 3 * i);
  });
  return taken;
}
