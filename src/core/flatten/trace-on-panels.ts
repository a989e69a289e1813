import type { SeamedShell, ShellPanel } from '../seams/index.ts';
import type { FlatDisk } from './types.ts';

/** A straight stretch of a line on one flat panel. */
export interface PanelStretch {
  readonly panel: number;
  readonly a: readonly [number, number];
  readonly b: readonly [number, number];
}

/** How far outside a triangle a point still counts as on it (barycentric): a line may run along a panel's edge. */
const SLACK = 1;
/** Triangles further above or below than this are not looked at, mm of chart height. */
const REACH = 15;

/** Height of one shelf of triangles, mm of chart height. */
const SHELF = 10;

/** The triangles of a panel that may hold a point, by the shelf of its height; each shelf keeps their order. */
interface PanelShelves {
  readonly first: number;
  readonly triangles: readonly (readonly number[])[];
}

/**
 * Traces lines given by chart points (n × 2), stretch by stretch on the flat panels: each stretch lies on the panel its
 * middle is on. Null when a middle is on no panel. O(triangles) once, then O(stretches × triangles about as high).
 */
export function tracerOfPanels(
  shell: SeamedShell,
  flat: readonly FlatDisk[],
): (chart: Float64Array) => PanelStretch[] | null {
  const shelves = shell.panels.map(shelvesOfPanel);
  const locateOn = (panel: number, u: number, v: number) =>
    locate(shell.panels[panel], flat[panel], shelves[panel], u, v);
  return (chart) => {
    const stretches: PanelStretch[] = [];
    let last = 0;
    for (let k = 0; k + 3 < chart.length; k += 2) {
      const [u0, v0, u1, v1] = chart.subarray(k, k + 4);
      const depthOn = (panel: number): number =>
        locateOn(panel, 0.5 * (u0 + u1), 0.5 * (v0 + v1))?.depth ?? -1;
      let found = { panel: last, depth: depthOn(last) };
      for (let panel = 0; panel < shell.panels.length && found.depth < 0; panel++) {
        const depth = depthOn(panel);
        if (depth > found.depth) found = { panel, depth };
      }
      if (found.depth < -1e-3) return null;
      last = found.panel;
      const a = locateOn(last, u0, v0);
      const b = locateOn(last, u1, v1);
      if (!a || !b) return null;
      stretches.push({ panel: last, a: a.point, b: b.point });
    }
    return stretches;
  };
}

function shelvesOfPanel({ chart, mesh }: ShellPanel): PanelShelves {
  const { triangles } = mesh;
  let first = Number.POSITIVE_INFINITY;
  for (let i = 1; i < chart.length; i += 2) first = Math.min(first, chart[i] - REACH);
  const shelves: number[][] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const vs = [0, 1, 2].map((k) => chart[2 * triangles[t + k] + 1]);
    const end = Math.floor((Math.max(...vs) + REACH - first) / SHELF);
    for (let s = Math.floor((Math.min(...vs) - REACH - first) / SHELF); s <= end; s++) {
      shelves[s] ??= [];
      shelves[s].push(t);
    }
  }
  return { first, triangles: shelves };
}

/** The flat place of a chart point, in the triangle it lies deepest in; `depth` is its least barycentric coordinate. */
function locate(
  panel: ShellPanel,
  flat: FlatDisk,
  shelves: PanelShelves,
  u: number,
  v: number,
): { point: [number, number]; depth: number } | null {
  const { chart, mesh } = panel;
  const { triangles } = mesh;
  let best: { point: [number, number]; depth: number } | null = null;
  for (const t of shelves.triangles[Math.floor((v - shelves.first) / SHELF)] ?? []) {
    const [a, b, c] = [2 * triangles[t], 2 * triangles[t + 1], 2 * triangles[t + 2]];
    const [va, vb, vc] = [chart[a + 1], chart[b + 1], chart[c + 1]];
    if (v < Math.min(va, vb, vc) - REACH || v > Math.max(va, vb, vc) + REACH) continue;
    // Panels may lie a whole turn away in the chart.
    const turn = 2 * Math.PI * Math.round((chart[a] - u) / (2 * Math.PI));
    const [x, y] = [u + turn - chart[a], v - chart[a + 1]];
    const [bx, by] = [chart[b] - chart[a], chart[b + 1] - chart[a + 1]];
    const [cx, cy] = [chart[c] - chart[a], chart[c + 1] - chart[a + 1]];
    const area = bx * cy - by * cx;
    const wb = (x * cy - y * cx) / area;
    const wc = (bx * y - by * x) / area;
    const depth = Math.min(wb, wc, 1 - wb - wc);
    if (depth < -SLACK || (best && depth <= best.depth)) continue;
    const p = flat.positions;
    const at = (axis: 0 | 1): number => (1 - wb - wc) * p[a + axis] + wb * p[b + axis] + wc * p[c + axis];
    best = { point: [at(0), at(1)], depth };
    if (depth >= 0) return best;
  }
  return best;
}
