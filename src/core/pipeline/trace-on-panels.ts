import type { FlatDisk } from '../flatten/index.ts';
import type { SeamedShell, ShellPanel } from '../seams/index.ts';

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

/**
 * A line given by chart points (n × 2), stretch by stretch on the flat panels: each stretch lies on the panel its middle
 * is on. Null when a middle is on no panel. O(stretches × triangles), with boxes first.
 */
export function traceOnPanels(
  shell: SeamedShell,
  flat: readonly FlatDisk[],
  chart: Float64Array,
): PanelStretch[] | null {
  const stretches: PanelStretch[] = [];
  let last = 0;
  for (let k = 0; k + 3 < chart.length; k += 2) {
    const [u0, v0, u1, v1] = chart.subarray(k, k + 4);
    const middle = [0.5 * (u0 + u1), 0.5 * (v0 + v1)] as const;
    const depthOn = (panel: number): number =>
      locate(shell.panels[panel], flat[panel], middle[0], middle[1])?.depth ?? -1;
    let found = { panel: last, depth: depthOn(last) };
    for (let panel = 0; panel < shell.panels.length && found.depth < 0; panel++) {
      const depth = depthOn(panel);
      if (depth > found.depth) found = { panel, depth };
    }
    if (found.depth < -1e-3) return null;
    last = found.panel;
    const a = locate(shell.panels[last], flat[last], u0, v0);
    const b = locate(shell.panels[last], flat[last], u1, v1);
    if (!a || !b) return null;
    stretches.push({ panel: last, a: a.point, b: b.point });
  }
  return stretches;
}

/** The flat place of a chart point, in the triangle it lies deepest in; `depth` is its least barycentric coordinate. */
function locate(
  panel: ShellPanel,
  flat: FlatDisk,
  u: number,
  v: number,
): { point: [number, number]; depth: number } | null {
  const { chart, mesh } = panel;
  const { triangles } = mesh;
  let best: { point: [number, number]; depth: number } | null = null;
  for (let t = 0; t < triangles.length; t += 3) {
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
