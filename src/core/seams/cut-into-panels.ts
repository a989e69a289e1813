import { failure, type Issue, type Result, success } from '../base/index.ts';
import { clamp } from '../math/index.ts';
import {
  type ChartSurface,
  findTwins,
  measurePath,
  measureTriangleAreas,
  nextHalfedge,
} from '../mesh/index.ts';
import { buildNetwork } from './build-network.ts';
import { checkCrossings } from './check-crossings.ts';
import { checkPieces } from './check-pieces.ts';
import { gatherPanels } from './gather-panels.ts';
import { type FindHalfedge, gatherSeams } from './gather-seams.ts';
import { meshRightHalf } from './mesh-right-half.ts';
import { mirrorHalf, type WholeMesh } from './mirror-half.ts';
import { nameOfLine } from './name-lines.ts';
import { namePanels, type PanelPlace } from './name-panels.ts';
import { phrase } from './phrases.ts';
import { CENTRE_BACK, CENTRE_FRONT, resolveLines } from './resolve-lines.ts';
import { sampleNetwork } from './sample-network.ts';
import { type PanelSplit, splitPanels } from './split-panels.ts';
import { estimateHalfArea, sampleSurfaceGrid } from './surface-grid.ts';
import { traceCells } from './trace-cells.ts';
import type { SeamedShell, SeamForm, SeamLayout, SeamLine, ShellLevel, ShellOpening } from './types.ts';
import { chainStretches, type ShellStretch, unfoldStretches } from './unfold-stretches.ts';

export interface CutOptions {
  /** Triangles of the whole shell, met within about a tenth. */
  readonly targetTriangles: number;
}

/**
 * Draws a layout's seam lines on a body and cuts its surface into panels along them.
 * Right half first, then its mirror image; mesh edges follow every seam and every level line, and seam points are
 * shared by both sides. Issues name lines that cross, end loose, or leave a panel that is not a disk; their paths
 * start at the layout (`lines.<id>`) or the body (`levels.<id>`).
 * Cost: about 7,000 surface evaluations and 2 more per vertex, and O(n log n).
 */
export function cutIntoPanels(
  surface: ChartSurface,
  form: SeamForm,
  layout: SeamLayout,
  options: CutOptions,
): Result<SeamedShell> {
  const issues: Issue[] = [];
  // 1. Lines as curves in the chart, cut at every crossing.
  const resolved = resolveLines(layout, form, surface, issues);
  if (issues.length > 0) return failure(issues);
  const network = buildNetwork(resolved, form, surface.vRange, issues);
  if (issues.length > 0) return failure(issues);
  // 2. Points on them.
  const grid = sampleSurfaceGrid(surface);
  const armhole = Float64Array.from(
    { length: 144 },
    (_, i) => resolved.armhole.at(Math.floor(i / 2) / 72)[i % 2],
  );
  const spacing = findSpacing(2 * estimateHalfArea(grid, armhole), options.targetTriangles);
  const sampled = sampleNetwork(network, surface, spacing);
  const crossings = checkCrossings(sampled, layout);
  if (crossings.length > 0) return failure(crossings);
  // 3. Regions, triangles, the other half.
  const half = meshRightHalf(traceCells(sampled), sampled.chart, surface, grid, spacing);
  const whole = mirrorHalf(half, surface);
  // 4. Panels and what belongs to them.
  const stretches = unfoldStretches(sampled.stretches, whole.mirrorVertex);
  const twins = findTwins(whole.mesh.triangles, whole.mesh.positions.length / 3);
  const findHalfedge = indexHalfedges(whole, stretches);
  const isSeam = markSeams(stretches, findHalfedge, twins);
  const split = splitPanels(whole, twins, isSeam);
  const faults = checkPanels(whole, split, stretches, layout, findHalfedge);
  if (faults.some((issue) => issue.severity === 'error')) return failure(faults);
  const places = placePanels(whole, split);
  const names = namePanels(places, resolved.lines, {
    sideU: form.landmarks.armpitRight?.u ?? 0,
    neckV: form.landmarks.neckSideRight?.v ?? surface.vRange[1],
  });
  const levels = gatherLevels(whole, form, stretches);
  const levelAt = new Map(
    levels.flatMap((level) => Array.from(level.vertices, (v): [number, string] => [v, level.id])),
  );
  const panelIds = names.map((name) => name.id);
  const seams = gatherSeams(layout, stretches, whole.mesh, split, panelIds, findHalfedge, levelAt);
  const openings = gatherOpenings(stretches);
  const { isMirrorSymmetric } = surface;
  const panels = gatherPanels({
    whole,
    twins,
    isSeam,
    split,
    places,
    names,
    seams,
    openings,
    stretches,
    form,
    findHalfedge,
    isMirrorSymmetric,
  });
  const warnings = [...faults, ...checkPieces(panels, seams, levels)];
  return success({ mesh: whole.mesh, chart: whole.chart, panels, seams, levels, openings }, warnings);
}

/** Side of the equilateral triangle of which `count` fill the area. */
function findSpacing(area: number, count: number): number {
  return Math.sqrt((4 * area) / (Math.sqrt(3) * count));
}

function indexHalfedges(whole: WholeMesh, stretches: readonly ShellStretch[]): FindHalfedge {
  const { triangles, positions } = whole.mesh;
  const vertexCount = positions.length / 3;
  const isOnLine = new Uint8Array(vertexCount);
  for (const { vertices } of stretches) for (const v of vertices) isOnLine[v] = 1;
  const index = new Map<number, number>();
  for (let e = 0; e < triangles.length; e++) {
    const to = triangles[nextHalfedge(e)];
    if (isOnLine[triangles[e]] && isOnLine[to]) index.set(triangles[e] * vertexCount + to, e);
  }
  return (from, to) => index.get(from * vertexCount + to) ?? -1;
}

function markSeams(
  stretches: readonly ShellStretch[],
  findHalfedge: FindHalfedge,
  twins: Int32Array,
): Uint8Array {
  const isSeam = new Uint8Array(twins.length);
  for (const { lineId, vertices } of stretches) {
    if (lineId === undefined) continue;
    for (let i = 1; i < vertices.length; i++) {
      const e = findHalfedge(vertices[i - 1], vertices[i]);
      isSeam[e] = 1;
      isSeam[twins[e]] = 1;
    }
  }
  return isSeam;
}

/** Panels of less area are hardly worth sewing, mm². */
const SMALL_PANEL = 2000;

/** Every panel must be a disk: a ring or a piece with a handle cannot be unrolled. Tiny pieces are warned of. */
function checkPanels(
  whole: WholeMesh,
  split: PanelSplit,
  stretches: readonly ShellStretch[],
  layout: SeamLayout,
  findHalfedge: FindHalfedge,
): Issue[] {
  const issues: Issue[] = [];
  const areas = new Float64Array(split.panelCount);
  measureTriangleAreas(whole.mesh).forEach((area, f) => {
    areas[split.panelOf[f]] += area;
  });
  split.euler.forEach((euler, panel) => {
    const isSmall = areas[panel] < SMALL_PANEL;
    if (euler === 1 && !isSmall) return;
    const lines = findBorderLines(panel, split, stretches, layout, findHalfedge);
    const names = lines.map((line) => nameOfLine(line.name));
    const path = lines.length > 0 ? `lines.${lines[0].id}` : 'lines';
    if (euler !== 1) {
      issues.push({
        code: 'panel-not-a-disk',
        path,
        message: phrase('seams.panel-not-a-disk', { lines: names }),
        severity: 'error',
        measured: euler,
        limit: 1,
      });
    } else {
      issues.push({
        code: 'panel-small',
        path,
        message: phrase('seams.panel-small', { lines: names, area: areas[panel] }),
        severity: 'warning',
        measured: areas[panel],
        limit: SMALL_PANEL,
      });
    }
  });
  return issues;
}

function findBorderLines(
  panel: number,
  split: PanelSplit,
  stretches: readonly ShellStretch[],
  layout: SeamLayout,
  findHalfedge: FindHalfedge,
): SeamLine[] {
  const ids = new Set<string>();
  for (const { lineId, vertices } of stretches) {
    if (lineId === undefined) continue;
    for (const e of [findHalfedge(vertices[0], vertices[1]), findHalfedge(vertices[1], vertices[0])]) {
      if (e >= 0 && split.panelOf[Math.floor(e / 3)] === panel) ids.add(lineId);
    }
  }
  return layout.lines.filter((line) => ids.has(line.id));
}

function placePanels(whole: WholeMesh, split: PanelSplit): PanelPlace[] {
  const sums = split.sourceVertices.map(() => ({ u: 0, v: 0, count: 0, hasRight: false, hasLeft: false }));
  for (let e = 0; e < whole.mesh.triangles.length; e++) {
    const v = whole.mesh.triangles[e];
    const sum = sums[split.panelOf[Math.floor(e / 3)]];
    const isLeft = e >= 3 * whole.halfTriangleCount;
    const u = whole.chart[2 * v];
    sum.u += isLeft && whole.mirrorVertex[v] !== v ? Math.PI - u : u;
    sum.v += whole.chart[2 * v + 1];
    sum.count++;
    if (isLeft) sum.hasLeft = true;
    else sum.hasRight = true;
  }
  return sums.map(({ u, v, count, hasRight, hasLeft }) => ({
    side: hasRight && hasLeft ? 'centre' : hasRight ? 'right' : 'left',
    u: clamp(u / count, CENTRE_BACK, CENTRE_FRONT),
    v: v / count,
  }));
}

function gatherLevels(whole: WholeMesh, form: SeamForm, stretches: readonly ShellStretch[]): ShellLevel[] {
  return form.levels.map(({ id, name }) => {
    const row = stretches.filter((stretch) => stretch.kind === 'row' && stretch.curveId === id);
    const vertices = chainStretches(row).slice(0, -1);
    return { id, name, vertices, length3d: measurePath(whole.mesh, vertices, true) };
  });
}

function gatherOpenings(stretches: readonly ShellStretch[]): ShellOpening[] {
  const loop = (test: (stretch: ShellStretch) => boolean): Uint32Array =>
    chainStretches(stretches.filter(test)).slice(0, -1);
  return [
    // Seen from below, u runs clockwise.
    { id: 'base', vertices: loop((s) => s.kind === 'row' && s.curveId === 'base').reverse() },
    { id: 'neck', vertices: loop((s) => s.kind === 'row' && s.curveId === 'neck') },
    { id: 'armholeRight', vertices: loop((s) => s.kind === 'armhole' && s.side === 'right') },
    { id: 'armholeLeft', vertices: loop((s) => s.kind === 'armhole' && s.side === 'left') },
  ];
}
