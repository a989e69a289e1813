import type { Issue } from '../base/index.ts';
import type { ChartSurface } from '../mesh/index.ts';
import { CHART_RADIUS } from './fair-curve.ts';
import { resolveLines } from './resolve-lines.ts';
import type { SeamForm, SeamLine } from './types.ts';

/** mm in the chart, roughly, from point to point. */
const STEP = 2;

/**
 * Where a line of a layout would be cut, as chart points n × 2 of the right half; null when it cannot be placed. Only the
 * lines it ends on are placed besides. Cost: that of placing those, a few ms.
 */
export function traceLine(
  surface: ChartSurface,
  form: SeamForm,
  lines: readonly SeamLine[],
  lineId: string,
): Float64Array | null {
  const issues: Issue[] = [];
  const needed = withLinesEndedOn(lines, lineId);
  const placed = resolveLines({ lines: needed }, form, surface, issues);
  const found = placed.lines.find(({ line }) => line.id === lineId);
  if (!found || issues.length > 0) return null;
  const [from, to] =
    found.kind === 'upright' ? found.curve.range : found.kind === 'level' ? found.u : found.v;
  const at = (t: number): readonly [number, number] =>
    found.kind === 'upright' ? found.curve.at(t) : found.kind === 'level' ? [t, found.v] : [found.u, t];
  // The parameter is a length but for level lines, where it is an angle.
  const length = (found.kind === 'level' ? CHART_RADIUS : 1) * (to - from);
  const count = Math.max(2, Math.ceil(length / STEP)) + 1;
  const chart = new Float64Array(2 * count);
  for (let i = 0; i < count; i++) chart.set(at(from + ((to - from) * i) / (count - 1)), 2 * i);
  return chart;
}

function withLinesEndedOn(lines: readonly SeamLine[], lineId: string): SeamLine[] {
  const wanted = new Set([lineId]);
  // Ids found on the way join the set while it is gone through.
  for (const id of wanted) {
    for (const { onLine } of lines.find((line) => line.id === id)?.through ?? []) {
      if (onLine !== undefined) wanted.add(onLine);
    }
  }
  return lines.filter(({ id }) => wanted.has(id));
}
