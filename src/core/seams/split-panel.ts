import { failure, type Result, success } from '../base/index.ts';
import { CHART_RADIUS } from './fair-curve.ts';
import { keyOfMiddle } from './line-keys.ts';
import { nearestOnArmhole } from './nearest-on-armhole.ts';
import { keyOfPanelId } from './panel-key.ts';
import { phrase } from './phrases.ts';
import type { ChartPlace, SeamAnchor, SeamForm, SeamLayout, SeamLine, ShellPanel } from './types.ts';

const HEIGHTS = [0.25, 0.5, 0.75];
/** mm below the armhole at which a line turns to it. */
const TURN = 40;

/**
 * The layout with one more line that divides a panel (and its mirror image) lengthwise, half way between its borders. It
 * starts and ends on what borders the panel below and above; on an armhole, in the middle of the panel's part of it.
 * `panel`: of the right half of a shell on `form`. Issues when the panel has no such middle; whether the
 * line is sound is told when it is cut.
 */
export function splitPanel(
  layout: SeamLayout,
  panel: ShellPanel,
  lineOfSeam: (seamId: string) => string | undefined,
  form: SeamForm,
): Result<{ readonly layout: SeamLayout; readonly line: SeamLine }> {
  const [low, high] = heightsOf(panel.chart);
  const through: SeamAnchor[] = [];
  for (const share of [0.02, ...HEIGHTS, 0.98]) {
    const v = low + share * (high - low);
    const u = middleAt(panel, v);
    if (u !== undefined) through.push({ u, v });
  }
  const ends = through.length < 3 ? [] : [through[0], through[through.length - 1]];
  const first = ends.length > 0 ? landOn(panel, lineOfSeam, form, ends[0].u ?? 0, false) : undefined;
  const last = ends.length > 0 ? landOn(panel, lineOfSeam, form, ends[1].u ?? 0, true) : undefined;
  if (panel.side !== 'right' || !first || !last) {
    return failure([
      {
        code: 'panel-not-split',
        path: 'lines',
        message: phrase('seams.panel-not-split', { panel: panel.name }),
        severity: 'error',
      },
    ]);
  }
  const line: SeamLine = {
    id: freeId(layout, `split${panel.id[0].toUpperCase()}${panel.id.slice(1)}`),
    name: keyOfMiddle(keyOfPanelId(panel.id).replace(/ right$/, '')),
    side: 'right',
    through: [first.anchor, ...through.slice(1, -1).filter(({ v = 0 }) => v < last.top), last.anchor],
  };
  return success({ layout: { ...layout, lines: [...layout.lines, line] }, line });
}

function heightsOf(chart: Float64Array): [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 1; i < chart.length; i += 2) {
    low = Math.min(low, chart[i]);
    high = Math.max(high, chart[i]);
  }
  return [low, high];
}

/** Middle between the outermost border crossings at a height. */
function middleAt(panel: ShellPanel, v: number): number | undefined {
  const crossings: number[] = [];
  for (const { vertices } of panel.edges) {
    for (let k = 0; k + 1 < vertices.length; k++) {
      const [a, b] = [2 * vertices[k], 2 * vertices[k + 1]];
      const [va, vb] = [panel.chart[a + 1], panel.chart[b + 1]];
      if (va > v === vb > v) continue;
      crossings.push(panel.chart[a] + ((v - va) / (vb - va)) * (panel.chart[b] - panel.chart[a]));
    }
  }
  if (crossings.length !== 2) return undefined;
  return (crossings[0] + crossings[1]) / 2;
}

interface Landing {
  readonly anchor: SeamAnchor;
  /** Points in between keep below it: beside an armhole the middle of a panel may lie in the hole. */
  readonly top: number;
}

/** An anchor where the panel's border at angle u is met from inside, upwards or downwards. */
function landOn(
  panel: ShellPanel,
  lineOfSeam: (seamId: string) => string | undefined,
  form: SeamForm,
  u: number,
  isUp: boolean,
): Landing | undefined {
  let best: { v: number; edge: ShellPanel['edges'][number] } | undefined;
  for (const edge of panel.edges) {
    for (let k = 0; k + 1 < edge.vertices.length; k++) {
      const [a, b] = [2 * edge.vertices[k], 2 * edge.vertices[k + 1]];
      const [ua, ub] = [panel.chart[a], panel.chart[b]];
      if (ua > u === ub > u) continue;
      const v = panel.chart[a + 1] + ((u - ua) / (ub - ua)) * (panel.chart[b + 1] - panel.chart[a + 1]);
      if (!best || (isUp ? v > best.v : v < best.v)) best = { v, edge };
    }
  }
  if (!best) return undefined;
  const { v, edge } = best;
  if (edge.kind === 'opening') {
    if (!edge.id.startsWith('armhole')) return { anchor: { u, v }, top: v };
    const vertex = 2 * edge.vertices[edge.vertices.length >> 1];
    const lowest = edge.vertices.reduce((least, i) => Math.min(least, panel.chart[2 * i + 1]), v);
    const [middleU, middleV] = [panel.chart[vertex], panel.chart[vertex + 1]];
    // The place lies on the loop, so any measure of distance finds it.
    const costOf = (on: ChartPlace) => Math.hypot(CHART_RADIUS * (on.u - middleU), on.v - middleV);
    return {
      anchor: { armhole: nearestOnArmhole(form, costOf).position },
      top: Math.min(middleV - TURN, lowest),
    };
  }
  const onLine = lineOfSeam(edge.id);
  return onLine === undefined ? undefined : { anchor: { u, v, onLine }, top: v };
}

function freeId(layout: SeamLayout, wanted: string): string {
  let id = wanted;
  for (let k = 2; layout.lines.some((line) => line.id === id); k++) id = `${wanted}${k}`;
  return id;
}
