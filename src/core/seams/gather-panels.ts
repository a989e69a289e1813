import { assertInvariant } from '../base/index.ts';
import { nextHalfedge } from '../mesh/index.ts';
import type { FindHalfedge } from './gather-seams.ts';
import type { WholeMesh } from './mirror-half.ts';
import type { PanelName, PanelPlace } from './name-panels.ts';
import type { PanelSplit } from './split-panels.ts';
import type { PanelEdge, PanelLevel, Seam, SeamForm, ShellOpening, ShellPanel } from './types.ts';
import type { ShellStretch } from './unfold-stretches.ts';

interface Border {
  readonly kind: 'seam' | 'opening';
  readonly id: string;
}

export interface PanelParts {
  readonly whole: WholeMesh;
  readonly twins: Int32Array;
  readonly isSeam: Uint8Array;
  readonly split: PanelSplit;
  readonly places: readonly PanelPlace[];
  readonly names: readonly PanelName[];
  readonly seams: readonly Seam[];
  readonly openings: readonly ShellOpening[];
  readonly stretches: readonly ShellStretch[];
  readonly form: SeamForm;
  readonly findHalfedge: FindHalfedge;
  readonly isMirrorSymmetric: boolean;
}

/** Meshes, back-maps, borders and level lines of all panels. O(#F). */
export function gatherPanels(parts: PanelParts): ShellPanel[] {
  const { split, names, places, whole } = parts;
  const triangles = listTriangles(split);
  const edges = traceBorders(parts, labelBorders(parts));
  const levels = traceLevels(parts);
  return split.sourceVertices.map((source, panel) => {
    const positions = new Float64Array(3 * source.length);
    for (let i = 0; i < source.length; i++) {
      positions.set(whole.mesh.positions.subarray(3 * source[i], 3 * source[i] + 3), 3 * i);
    }
    const image = split.mirrorOf[panel];
    return {
      id: names[panel].id,
      name: names[panel].name,
      side: places[panel].side,
      ...(image >= 0 && parts.isMirrorSymmetric ? { mirrorOf: names[image].id } : {}),
      mesh: { positions, triangles: triangles[panel] },
      sourceVertex: source,
      chart: panelChart(whole, split, panel),
      edges: edges[panel],
      levels: levels[panel],
    };
  });
}

function listTriangles(split: PanelSplit): Uint32Array[] {
  const lists = split.sourceVertices.map((): number[] => []);
  for (let f = 0; f < split.panelOf.length; f++) {
    for (let e = 3 * f; e < 3 * f + 3; e++) lists[split.panelOf[f]].push(split.cornerVertex[e]);
  }
  return lists.map((list) => Uint32Array.from(list));
}

/** Chart of a panel; seen from the left half the centre back is at 3π/2, so that every panel's chart is whole. */
function panelChart(whole: WholeMesh, split: PanelSplit, panel: number): Float64Array {
  const source = split.sourceVertices[panel];
  const chart = new Float64Array(2 * source.length);
  source.forEach((v, i) => {
    const u = whole.chart[2 * v];
    const isLeft = split.sampleCorners[panel][i] >= 3 * whole.halfTriangleCount;
    chart[2 * i] = isLeft && u < 0 && whole.mirrorVertex[v] === v ? Math.PI - u : u;
    chart[2 * i + 1] = whole.chart[2 * v + 1];
  });
  return chart;
}

/** Per halfedge on a panel's border: 2 · index into the list of borders, +1 when it runs against the seam. */
function labelBorders(parts: PanelParts): { labels: Int32Array; borders: Border[] } {
  const labels = new Int32Array(parts.twins.length).fill(-1);
  const borders: Border[] = [];
  const mark = (vertices: Uint32Array, label: number): void => {
    for (let i = 0; i + 1 < vertices.length; i++) {
      const along = parts.findHalfedge(vertices[i], vertices[i + 1]);
      const against = parts.findHalfedge(vertices[i + 1], vertices[i]);
      if (along >= 0) labels[along] = label;
      if (against >= 0) labels[against] = label + 1;
    }
  };
  for (const seam of parts.seams) {
    mark(seam.points, 2 * borders.length);
    borders.push({ kind: 'seam', id: seam.id });
  }
  for (const opening of parts.openings) {
    // The shell runs against its openings, which is their plain direction for a panel.
    mark(Uint32Array.of(...opening.vertices, opening.vertices[0]).reverse(), 2 * borders.length);
    borders.push({ kind: 'opening', id: opening.id });
  }
  return { labels, borders };
}

function traceBorders(
  parts: PanelParts,
  { labels, borders }: { labels: Int32Array; borders: Border[] },
): PanelEdge[][] {
  const { split, twins, isSeam } = parts;
  const following = split.sourceVertices.map((source) => new Int32Array(source.length).fill(-1));
  for (let e = 0; e < twins.length; e++) {
    if (twins[e] !== -1 && !isSeam[e]) continue;
    assertInvariant(labels[e] >= 0, 'seams', 'every border edge belongs to a seam or an opening', e);
    following[split.panelOf[Math.floor(e / 3)]][split.cornerVertex[e]] = e;
  }
  return following.map((next) => {
    const start = next.findIndex((e) => e !== -1);
    const walk: number[] = [];
    for (let v = start; walk.length === 0 || v !== start; ) {
      walk.push(next[v]);
      v = split.cornerVertex[nextHalfedge(next[v])];
    }
    const corner = Math.max(
      0,
      walk.findIndex((e, i) => labels[e] !== labels[walk[(i + walk.length - 1) % walk.length]]),
    );
    return cutWalk([...walk.slice(corner), ...walk.slice(0, corner)], split, labels, borders);
  });
}

function cutWalk(
  walk: readonly number[],
  split: PanelSplit,
  labels: Int32Array,
  borders: readonly Border[],
): PanelEdge[] {
  const out: PanelEdge[] = [];
  for (let i = 0; i < walk.length; ) {
    const label = labels[walk[i]];
    const vertices: number[] = [split.cornerVertex[walk[i]]];
    for (; i < walk.length && labels[walk[i]] === label; i++) {
      vertices.push(split.cornerVertex[nextHalfedge(walk[i])]);
    }
    out.push({ ...borders[label >> 1], vertices: Uint32Array.from(vertices), reversed: (label & 1) === 1 });
  }
  return out;
}

/** Level lines inside panels (where no seam runs along them). */
function traceLevels(parts: PanelParts): PanelLevel[][] {
  const { split, findHalfedge } = parts;
  const out = split.sourceVertices.map((): { id: string; vertices: number[] }[] => []);
  for (const level of parts.form.levels) {
    for (const stretch of parts.stretches) {
      if (stretch.kind !== 'row' || stretch.curveId !== level.id || stretch.lineId !== undefined) continue;
      const halfedges = Array.from(stretch.vertices.subarray(1), (to, i) =>
        findHalfedge(stretch.vertices[i], to),
      );
      const list = out[split.panelOf[Math.floor(halfedges[0] / 3)]];
      const first = split.cornerVertex[halfedges[0]];
      let entry = list[list.length - 1];
      if (entry?.id !== level.id || entry.vertices[entry.vertices.length - 1] !== first) {
        entry = { id: level.id, vertices: [first] };
        list.push(entry);
      }
      for (const e of halfedges) entry.vertices.push(split.cornerVertex[nextHalfedge(e)]);
    }
  }
  return out.map((list) => list.map(({ id, vertices }) => ({ id, vertices: Uint32Array.from(vertices) })));
}
