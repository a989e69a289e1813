import { failure, type Phrase, type Result, success } from '../base/index.ts';
import { findTwins, nextHalfedge } from '../mesh/index.ts';
import { nameOfLine } from './name-lines.ts';
import { phrase } from './phrases.ts';
import type { PanelEdge, SeamedShell, SeamLayout, ShellPanel } from './types.ts';

/**
 * The layout without one line: the panels on its two sides become one. Lines that end on it are cut short and would end
 * inside a panel, so they are named and refused; level lines and centres never depend on it.
 */
export function removeLine(layout: SeamLayout, lineId: string): Result<SeamLayout> {
  const line = layout.lines.find((candidate) => candidate.id === lineId);
  const fault = (code: string, message: Phrase): Result<SeamLayout> =>
    failure([{ code, path: `lines.${lineId}`, message, severity: 'error' }]);
  if (!line) return fault('line-unknown', phrase('seams.no-such-line', { line: lineId }));
  const leaning = layout.lines.filter((other) => other.through.some((anchor) => anchor.onLine === lineId));
  if (leaning.length > 0) {
    const names = leaning.map((other) => nameOfLine(other.name));
    const message = phrase('seams.line-carries-lines', { line: nameOfLine(line.name), leaning: names });
    return fault('line-carries-line', message);
  }
  return success({ ...layout, lines: layout.lines.filter((other) => other !== line) });
}

/** A region made of whole panels, as one piece. */
export type Region = Pick<ShellPanel, 'mesh' | 'sourceVertex' | 'chart' | 'edges'>;

/**
 * Several panels of a shell as one disk, for unrolling in one piece: seams between them vanish, the rest of their borders
 * is the region's. Issues: unknown panels, a region in several parts, a ring or a handle. O(#F).
 */
export function joinPanels(shell: SeamedShell, panelIds: readonly string[]): Result<Region> {
  const fault = (code: string, message: Phrase): Result<Region> =>
    failure([{ code, path: 'panels', message, severity: 'error' }]);
  const unknown = panelIds.filter((id) => !shell.panels.some((panel) => panel.id === id));
  if (unknown.length > 0) return fault('panel-unknown', phrase('seams.no-such-panels', { panels: unknown }));
  const panels = shell.panels.filter((panel) => panelIds.includes(panel.id));
  if (panels.length === 0) return fault('region-empty', phrase('seams.no-panels-chosen'));
  // 1. Shell vertices used, in rising order, and triangles in them.
  const source = Uint32Array.from(new Set(panels.flatMap((panel) => Array.from(panel.sourceVertex)))).sort();
  const numberOf = new Map(Array.from(source, (v, i): [number, number] => [v, i]));
  const triangles = Uint32Array.from(
    panels.flatMap((panel) =>
      Array.from(panel.mesh.triangles, (v) => numberOf.get(panel.sourceVertex[v]) as number),
    ),
  );
  const positions = new Float64Array(3 * source.length);
  const chart = new Float64Array(2 * source.length);
  source.forEach((v, i) => {
    positions.set(shell.mesh.positions.subarray(3 * v, 3 * v + 3), 3 * i);
    chart.set(shell.chart.subarray(2 * v, 2 * v + 2), 2 * i);
  });
  // 2. A disk? One loop, one part, V − E + F = 1.
  const twins = findTwins(triangles, source.length);
  const loops = walkBorder(triangles, twins);
  const borderCount = twins.filter((twin) => twin === -1).length;
  const euler = source.length - (triangles.length + borderCount) / 2 + triangles.length / 3;
  if (loops.length !== 1 || loops[0].length !== borderCount || euler !== 1) {
    const isApart = euler > 1 || loops.length === 0;
    const message = phrase(isApart ? 'seams.panels-apart' : 'seams.panels-make-ring');
    return fault('region-not-a-disk', message);
  }
  const edges = labelBorder(panels, loops[0], triangles, source);
  return success({ mesh: { positions, triangles }, sourceVertex: source, chart, edges });
}

/** Border halfedges in order, per loop; loops that touch in a vertex are told apart wrongly, which the counts reveal. */
function walkBorder(triangles: Uint32Array, twins: Int32Array): number[][] {
  const following = new Map<number, number>();
  for (let e = 0; e < twins.length; e++) if (twins[e] === -1) following.set(triangles[e], e);
  const loops: number[][] = [];
  const isSeen = new Set<number>();
  for (const start of following.values()) {
    if (isSeen.has(start)) continue;
    const loop: number[] = [];
    for (let e: number | undefined = start; e !== undefined && !isSeen.has(e); ) {
      isSeen.add(e);
      loop.push(e);
      e = following.get(triangles[nextHalfedge(e)]);
    }
    loops.push(loop);
  }
  return loops;
}

/** Stretches of the border by the seam or opening they belong to, starting at a corner. */
function labelBorder(
  panels: readonly ShellPanel[],
  loop: readonly number[],
  triangles: Uint32Array,
  source: Uint32Array,
): PanelEdge[] {
  const owner = new Map<string, PanelEdge>();
  for (const panel of panels) {
    for (const edge of panel.edges) {
      for (let k = 0; k + 1 < edge.vertices.length; k++) {
        owner.set(
          `${panel.sourceVertex[edge.vertices[k]]}-${panel.sourceVertex[edge.vertices[k + 1]]}`,
          edge,
        );
      }
    }
  }
  const ownerOf = (e: number): PanelEdge =>
    owner.get(`${source[triangles[e]]}-${source[triangles[nextHalfedge(e)]]}`) as PanelEdge;
  const isSame = (a: PanelEdge, b: PanelEdge): boolean => a.id === b.id && a.reversed === b.reversed;
  const n = loop.length;
  const corner = Math.max(
    0,
    loop.findIndex((e, i) => !isSame(ownerOf(e), ownerOf(loop[(i + n - 1) % n]))),
  );
  const edges: { kind: PanelEdge['kind']; id: string; reversed: boolean; vertices: number[] }[] = [];
  for (let i = 0; i < n; i++) {
    const e = loop[(corner + i) % n];
    const { kind, id, reversed } = ownerOf(e);
    const last = edges[edges.length - 1];
    const to = triangles[nextHalfedge(e)];
    if (last && last.id === id && last.reversed === reversed) last.vertices.push(to);
    else edges.push({ kind, id, reversed, vertices: [triangles[e], to] });
  }
  return edges.map((edge) => ({ ...edge, vertices: Uint32Array.from(edge.vertices) }));
}
