import type { Issue, Phrase } from '../base/index.ts';
import { CHART_RADIUS, type ChartCurve, findHeights } from './fair-curve.ts';
import { nameOfLine } from './name-lines.ts';
import { nameOfOpening } from './name-opening.ts';
import { phrase } from './phrases.ts';
import {
  CENTRE_BACK,
  CENTRE_FRONT,
  type LineEnd,
  type ResolvedLayout,
  type ResolvedLine,
} from './resolve-lines.ts';
import type { SeamForm } from './types.ts';

export type CurveKind = 'row' | 'centre' | 'armhole' | 'line';

/** A piece of a curve between two neighbouring crossings. */
export interface Stretch {
  readonly kind: CurveKind;
  /** Row: level id, `base` or `neck`; centre: `front` or `back`; line: line id. */
  readonly curveId: string;
  /** The seam line that runs here, if any. */
  readonly lineId?: string;
  readonly curve: ChartCurve;
  readonly from: number;
  readonly to: number;
  /** Curve parameters at `from` and `to`, rising. */
  readonly tFrom: number;
  readonly tTo: number;
}

/** Everything drawn on the right half of the chart, cut at every crossing. Row and upright stretches rise in u and v. */
export interface Network {
  /** #N × 2 (u, v). */
  readonly nodes: readonly (readonly [number, number])[];
  readonly stretches: readonly Stretch[];
}

interface NetworkCurve {
  readonly kind: CurveKind;
  readonly curveId: string;
  readonly curve: ChartCurve;
  readonly stops: { t: number; node: number }[];
  readonly lineId?: string;
}

interface NetworkRow extends NetworkCurve {
  readonly name: Phrase;
}

/** Chart distance below which two crossings are the same point, mm. */
const SAME_POINT = 1e-6;

/**
 * Crosses rows, centre lines, armhole and seam lines of the right half. Rows cross uprights once, since uprights rise;
 * ends on other lines or the armhole are known from the anchors. Loose ends and rows that run into the armhole are
 * issues. O(lines × rows) root searches.
 */
export function buildNetwork(
  layout: ResolvedLayout,
  form: SeamForm,
  vRange: readonly [number, number],
  issues: Issue[],
): Network {
  const nodes: [number, number][] = [];
  const addNode = (u: number, v: number): number => {
    const known = nodes.findIndex(
      (node) => Math.hypot(CHART_RADIUS * (node[0] - u), node[1] - v) < SAME_POINT,
    );
    if (known >= 0) return known;
    nodes.push([u, v]);
    return nodes.length - 1;
  };
  const rows = [...buildRows(layout, form, vRange, issues), ...buildFreeRows(layout)];
  const centres = buildCentres(vRange);
  const armhole: NetworkCurve = {
    kind: 'armhole',
    curveId: 'armhole',
    curve: layout.armhole,
    stops: [],
  };
  for (const row of rows) {
    const v = row.curve.at(0)[1];
    for (const centre of centres) {
      const u = centre.curve.at(v)[0];
      if (!isInside(row, u)) continue;
      const node = addNode(u, v);
      row.stops.push({ t: u, node });
      centre.stops.push({ t: v, node });
    }
  }
  const uprights = new Map<string, NetworkCurve>();
  for (const line of layout.lines)
    if (line.kind === 'upright') uprights.set(line.line.id, crossRows(line, rows, addNode, issues));
  for (const line of layout.lines) {
    if (line.kind === 'upright') joinEnds(line, uprights, centres, armhole, addNode, issues);
  }
  if (armhole.stops.length === 0) {
    issues.push({
      code: 'armhole-not-reached',
      path: 'lines',
      message: phrase('seams.armhole-not-reached'),
      severity: 'error',
    });
  }
  const levelLines = layout.lines.filter((line) => line.kind === 'level');
  for (const line of levelLines) {
    joinLevelEnds(line, rows, armhole, addNode);
    checkLevelEnds(line, rows, issues);
  }
  const centreLines = layout.lines.filter((line) => line.kind === 'centre');
  for (const line of centreLines) joinCentreEnds(line, centres, vRange, issues);
  const stretches = [...rows, ...centres, ...uprights.values(), armhole].flatMap(cutCurve);
  return {
    nodes,
    stretches: stretches.map((stretch) => markCentreSeam(markLevelSeam(stretch, levelLines), centreLines)),
  };
}

function buildRows(
  layout: ResolvedLayout,
  form: SeamForm,
  vRange: readonly [number, number],
  issues: Issue[],
): NetworkRow[] {
  let armpit = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 360; i++) armpit = Math.min(armpit, layout.armhole.at(i / 360)[1]);
  const rows = [
    { id: 'base', name: nameOfOpening('base'), v: vRange[0] },
    ...form.levels.toSorted((a, b) => a.v - b.v),
    { id: 'neck', name: nameOfOpening('neck'), v: vRange[1] },
  ];
  for (const level of form.levels) {
    const range = level.v <= vRange[0] || level.v >= vRange[1];
    if (!range && level.v < armpit) continue;
    issues.push({
      code: range ? 'level-outside-body' : 'level-meets-armhole',
      path: `levels.${level.id}`,
      message: phrase(range ? 'seams.level-outside-form' : 'seams.level-meets-armhole', {
        level: level.name,
      }),
      severity: 'error',
      measured: level.v,
      limit: range ? vRange[level.v <= vRange[0] ? 0 : 1] : armpit,
    });
  }
  return rows.map(({ id, name, v }) => ({
    kind: 'row',
    curveId: id,
    name,
    curve: { range: [CENTRE_BACK, CENTRE_FRONT], at: (u) => [u, v] },
    stops: [],
  }));
}

/** Level seams off the level lines: rows that reach no further than the seam. */
function buildFreeRows(layout: ResolvedLayout): NetworkRow[] {
  return layout.lines.flatMap((line): NetworkRow[] => {
    if (line.kind !== 'level' || line.levelId !== undefined) return [];
    const { id, name } = line.line;
    const curve: ChartCurve = { range: line.u, at: (u) => [u, line.v] };
    return [{ kind: 'row', curveId: id, name: nameOfLine(name), curve, stops: [], lineId: id }];
  });
}

function isInside(row: NetworkCurve, u: number): boolean {
  return (
    CHART_RADIUS * (row.curve.range[0] - u) < SAME_POINT &&
    CHART_RADIUS * (u - row.curve.range[1]) < SAME_POINT
  );
}

function buildCentres(vRange: readonly [number, number]): NetworkCurve[] {
  return [
    { id: 'front', u: CENTRE_FRONT },
    { id: 'back', u: CENTRE_BACK },
  ].map(({ id, u }) => {
    return {
      kind: 'centre',
      curveId: id,
      curve: { range: vRange, at: (v) => [u, v] },
      stops: [],
    };
  });
}

function crossRows(
  line: ResolvedLine & { kind: 'upright' },
  rows: readonly NetworkRow[],
  addNode: (u: number, v: number) => number,
  issues: Issue[],
): NetworkCurve {
  const { curve } = line;
  const crossed: NetworkCurve = {
    kind: 'line',
    curveId: line.line.id,
    curve,
    stops: [],
    lineId: line.line.id,
  };
  for (const row of rows) {
    const v = row.curve.at(0)[1];
    const heights = findHeights(curve, v);
    if (heights.filter((t) => isInside(row, curve.at(t)[0])).length > 1) {
      issues.push({
        code: 'line-meets-level-twice',
        path: `lines.${line.line.id}`,
        message: phrase('seams.line-meets-level-often', {
          line: nameOfLine(line.line.name),
          level: row.name,
          times: heights.length,
        }),
        severity: 'error',
        measured: heights.length,
        limit: 1,
      });
    }
    for (const t of heights) {
      const u = curve.at(t)[0];
      if (!isInside(row, u)) continue;
      const node = addNode(u, v);
      row.stops.push({ t: u, node });
      crossed.stops.push({ t, node });
    }
  }
  return crossed;
}

function joinEnds(
  line: ResolvedLine & { kind: 'upright' },
  uprights: ReadonlyMap<string, NetworkCurve>,
  centres: readonly NetworkCurve[],
  armhole: NetworkCurve,
  addNode: (u: number, v: number) => number,
  issues: Issue[],
): void {
  const own = uprights.get(line.line.id)!;
  line.ends.forEach((end: LineEnd, k) => {
    const [u, v] = end.point;
    const t = own.curve.range[k];
    if (own.stops.some((stop) => Math.abs(stop.t - t) < SAME_POINT)) return;
    const node = addNode(u, v);
    const centre = centres.find((candidate) => Math.abs(candidate.curve.at(v)[0] - u) < 1e-9);
    const other = end.onLine === undefined ? undefined : uprights.get(end.onLine);
    if (end.armhole !== undefined) armhole.stops.push({ t: end.armhole, node });
    else if (other) other.stops.push({ t: findHeights(other.curve, v)[0] ?? other.curve.range[0], node });
    else if (centre) centre.stops.push({ t: v, node });
    else {
      issues.push({
        code: 'line-end-loose',
        path: `lines.${line.line.id}`,
        message: phrase('seams.line-end-loose', {
          line: nameOfLine(line.line.name),
          end: k === 0 ? 'start' : 'end',
        }),
        severity: 'error',
      });
    }
    own.stops.push({ t, node });
  });
}

/** Ends of a level line at the armhole become nodes of both. */
function joinLevelEnds(
  line: ResolvedLine & { kind: 'level' },
  rows: readonly NetworkCurve[],
  armhole: NetworkCurve,
  addNode: (u: number, v: number) => number,
): void {
  const row = rows.find((candidate) => candidate.curveId === (line.levelId ?? line.line.id));
  for (const { point, armhole: t } of line.ends) {
    if (t === undefined) continue;
    const node = addNode(point[0], line.v);
    row?.stops.push({ t: point[0], node });
    armhole.stops.push({ t, node });
  }
}

function checkLevelEnds(
  line: ResolvedLine & { kind: 'level' },
  rows: readonly NetworkCurve[],
  issues: Issue[],
): void {
  const row = rows.find((candidate) => candidate.curveId === (line.levelId ?? line.line.id));
  for (const u of line.u) {
    if (row?.stops.some((stop) => CHART_RADIUS * Math.abs(stop.t - u) < SAME_POINT)) continue;
    issues.push({
      code: 'line-end-loose',
      path: `lines.${line.line.id}`,
      message: phrase('seams.level-end-loose', { line: nameOfLine(line.line.name) }),
      severity: 'error',
    });
  }
}

function cutCurve(curve: NetworkCurve): Stretch[] {
  const stops = curve.stops
    .toSorted((a, b) => a.t - b.t)
    .filter((stop, i, all) => i === 0 || stop.node !== all[i - 1].node);
  // A closed curve goes on from the last stop to the first.
  if (curve.kind === 'armhole' && stops.length > 0) {
    if (stops.length > 1 && stops[0].node === stops[stops.length - 1].node) stops.pop();
    stops.push({ t: stops[0].t + 1, node: stops[0].node });
  }
  return stops.slice(1).map((stop, i) => ({
    kind: curve.kind,
    curveId: curve.curveId,
    curve: curve.curve,
    from: stops[i].node,
    to: stop.node,
    tFrom: stops[i].t,
    tTo: stop.t,
    ...(curve.lineId === undefined ? {} : { lineId: curve.lineId }),
  }));
}

function markLevelSeam(stretch: Stretch, lines: readonly (ResolvedLine & { kind: 'level' })[]): Stretch {
  if (stretch.kind !== 'row' || stretch.lineId !== undefined) return stretch;
  const middle = (stretch.tFrom + stretch.tTo) / 2;
  const line = lines.find(
    (candidate) =>
      candidate.levelId === stretch.curveId && middle > candidate.u[0] && middle < candidate.u[1],
  );
  return line ? { ...stretch, lineId: line.line.id } : stretch;
}

/** Ends of a centre line must lie on what crosses the centre, or they would end inside a panel. */
function joinCentreEnds(
  line: ResolvedLine & { kind: 'centre' },
  centres: readonly NetworkCurve[],
  vRange: readonly [number, number],
  issues: Issue[],
): void {
  const stops = centres.find((centre) => centre.curve.at(0)[0] === line.u)?.stops ?? [];
  for (const v of line.v) {
    if (v <= vRange[0] || v >= vRange[1] || stops.some((stop) => Math.abs(stop.t - v) < SAME_POINT)) continue;
    issues.push({
      code: 'line-end-loose',
      path: `lines.${line.line.id}`,
      message: phrase('seams.centre-end-loose', { line: nameOfLine(line.line.name) }),
      severity: 'error',
    });
  }
}

function markCentreSeam(stretch: Stretch, lines: readonly (ResolvedLine & { kind: 'centre' })[]): Stretch {
  if (stretch.kind !== 'centre') return stretch;
  const [u] = stretch.curve.at(0);
  const middle = (stretch.tFrom + stretch.tTo) / 2;
  const line = lines.find(
    (candidate) => candidate.u === u && middle > candidate.v[0] && middle < candidate.v[1],
  );
  return line ? { ...stretch, lineId: line.line.id } : stretch;
}
