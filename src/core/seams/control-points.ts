import { failure, type Issue, type Phrase, type Result, success, verbatim } from '../base/index.ts';
import type { ChartSurface } from '../mesh/index.ts';
import { nameOfLine } from './name-lines.ts';
import { phrase } from './phrases.ts';
import { resolveLines } from './resolve-lines.ts';
import { type SnapKind, type SnapOptions, type SnappedPlace, snapPoint } from './snap-point.ts';
import type { ChartPlace, SeamAnchor, SeamedShell, SeamForm, SeamLayout, SeamLine } from './types.ts';

/** A point that pulls a line, to be shown on the body. */
export interface ControlPoint extends ChartPlace {
  readonly lineId: string;
  /** Index into the line's `through`. */
  readonly anchor: number;
  /** mm, right half. Its mirror image on the left moves with it. */
  readonly position: readonly [number, number, number];
  /** Ends may lie on other lines or on the armhole; points between may not. */
  readonly isEnd: boolean;
}

/** A control point dragged. */
export interface SeamEdit {
  readonly lineId: string;
  readonly anchor: number;
  /** Where to, on either half. */
  readonly to: ChartPlace;
  /** mm; see `SnapOptions`. */
  readonly snapWithin?: number;
}

export interface EditedLayout {
  readonly layout: SeamLayout;
  readonly snapped: SnappedPlace;
}

/**
 * Every point of a layout's upright lines off the centre, where it lies on this body. Level lines and centres have none:
 * they follow their level or the middle. Issues as of cutting. Cost: that of placing the lines, some ms.
 */
export function listControlPoints(
  surface: ChartSurface,
  form: SeamForm,
  layout: SeamLayout,
): Result<ControlPoint[]> {
  const issues: Issue[] = [];
  const { lines } = resolveLines(layout, form, surface, issues);
  if (issues.length > 0) return failure(issues);
  return success(
    lines.flatMap((resolved) => {
      if (resolved.kind !== 'upright') return [];
      const { line, points } = resolved;
      const chart = Float64Array.from(points.flat());
      const places = surface.evaluate(chart);
      return points.map(([u, v], anchor) => ({
        lineId: line.id,
        anchor,
        u,
        v,
        position: [places[3 * anchor], places[3 * anchor + 1], places[3 * anchor + 2]] as const,
        isEnd: anchor === 0 || anchor === points.length - 1,
      }));
    }),
  );
}

const INSIDE: readonly SnapKind[] = ['landmark', 'level'];
const AT_ENDS: readonly SnapKind[] = ['landmark', 'armhole', 'line', 'level'];

/**
 * The layout with one point of one line elsewhere, snapped and tied to landmarks; both halves follow. The ends at base and
 * neck stay on their edge. `shell`: the last cut, for snapping to other lines. Issues: no such point, a line that cannot
 * be pulled. Whether the line can be cut is told when it is. O(points).
 */
export function moveControlPoint(
  surface: ChartSurface,
  form: SeamForm,
  layout: SeamLayout,
  edit: SeamEdit,
  shell?: SeamedShell,
): Result<EditedLayout> {
  const line = layout.lines.find((candidate) => candidate.id === edit.lineId);
  const old = line?.through[edit.anchor];
  const isStill = !line || line.side === 'centre' || line.alongLevel !== undefined || line.alongHeight;
  if (!old || isStill) {
    const message = line
      ? phrase('seams.no-point-to-pull', { line: nameOfLine(line.name) })
      : phrase('seams.no-such-line', { line: edit.lineId });
    return failure([{ code: 'point-unknown', path: `lines.${edit.lineId}`, message, severity: 'error' }]);
  }
  const isEnd = edit.anchor === 0 || edit.anchor === line.through.length - 1;
  const options: SnapOptions & { shell?: SeamedShell } = {
    ...(edit.snapWithin === undefined ? {} : { within: edit.snapWithin }),
    kinds: isEnd ? AT_ENDS : INSIDE,
    lineId: line.id,
    ...(shell ? { shell } : {}),
  };
  const snapped = stayOnEdge(surface, snapPoint(surface, form, edit.to, options), old, form);
  return success({
    layout: replaceAnchor(layout, line, edit.anchor, holdEnd(old, snapped, form, surface)),
    snapped,
  });
}

/** A point let go of at the base or the top stays there: only its angle moves. */
function stayOnEdge(
  surface: ChartSurface,
  snapped: SnappedPlace,
  old: SeamAnchor,
  form: SeamForm,
): SnappedPlace {
  const edge = edgeOf(surface, old, form);
  return edge === undefined ? snapped : { ...snapped, v: edge };
}

function edgeOf(surface: ChartSurface, anchor: SeamAnchor, form: SeamForm): number | undefined {
  if (anchor.armhole !== undefined || anchor.onLine !== undefined || anchor.level !== undefined)
    return undefined;
  const v = (form.landmarks[anchor.landmark ?? '']?.v ?? 0) + (anchor.v ?? 0);
  return surface.vRange.find((end) => Math.abs(end - v) < 1e-6);
}

/** An end keeps to what it lay on, unless it snapped to something else an end can lie on. */
function holdEnd(old: SeamAnchor, snapped: SnappedPlace, form: SeamForm, surface: ChartSurface): SeamAnchor {
  const { u, v, kind, anchor } = snapped;
  if (kind === 'armhole' || kind === 'line') return anchor;
  const edge = edgeOf(surface, old, form);
  if (edge !== undefined) {
    const base = edge === surface.vRange[0] ? 'baseSideRight' : undefined;
    const from = base ? form.landmarks[base] : undefined;
    return base && from ? { landmark: base, u: u - from.u, v: edge - from.v } : { u, v: edge };
  }
  if (old.onLine !== undefined) return { ...(kind === 'landmark' ? anchor : { u, v }), onLine: old.onLine };
  return anchor;
}

function replaceAnchor(layout: SeamLayout, line: SeamLine, index: number, anchor: SeamAnchor): SeamLayout {
  const through = line.through.map((old, i) => (i === index ? anchor : old));
  return { ...layout, lines: layout.lines.map((old) => (old === line ? { ...line, through } : old)) };
}

/**
 * The layout with one more point to pull, on line `lineId` at `at` (which should lie on it): between the two points whose
 * heights enclose it. Issues: no such line, a place above or below all of it.
 */
export function addControlPoint(
  surface: ChartSurface,
  form: SeamForm,
  layout: SeamLayout,
  lineId: string,
  at: ChartPlace,
): Result<SeamLayout> {
  const points = listControlPoints(surface, form, layout);
  if (!points.ok) return points;
  const own = points.value.filter((point) => point.lineId === lineId);
  const next = own.findIndex((point) => point.v > at.v);
  const line = layout.lines.find((candidate) => candidate.id === lineId);
  if (!line || next < 1) {
    const message = phrase('seams.no-place-for-point', { line: nameOrId(line, lineId) });
    return failure([{ code: 'point-outside-line', path: `lines.${lineId}`, message, severity: 'error' }]);
  }
  const { anchor } = snapPoint(surface, form, at, { within: 0 });
  const through = [...line.through.slice(0, next), anchor, ...line.through.slice(next)];
  return success({
    ...layout,
    lines: layout.lines.map((old) => (old === line ? { ...line, through } : old)),
  });
}

/** The layout without one point of a line; its two ends stay. Issues: no such point. */
export function removeControlPoint(layout: SeamLayout, lineId: string, anchor: number): Result<SeamLayout> {
  const line = layout.lines.find((candidate) => candidate.id === lineId);
  if (!line || anchor < 1 || anchor > line.through.length - 2) {
    const message = phrase('seams.no-point-to-leave-out', { line: nameOrId(line, lineId) });
    return failure([{ code: 'point-unknown', path: `lines.${lineId}`, message, severity: 'error' }]);
  }
  const through = line.through.filter((_, i) => i !== anchor);
  return success({
    ...layout,
    lines: layout.lines.map((old) => (old === line ? { ...line, through } : old)),
  });
}

function nameOrId(line: SeamLine | undefined, id: string): Phrase {
  return line ? nameOfLine(line.name) : verbatim(id);
}
