import type { Issue, Phrase } from '../base/index.ts';
import type { ChartSurface } from '../mesh/index.ts';
import { type ChartCurve, fairCurve, fairLoop, findHeights } from './fair-curve.ts';
import { locateOnArmhole } from './locate-on-armhole.ts';
import { nameOfLine } from './name-lines.ts';
import { phrase } from './phrases.ts';
import { surfaceCurve } from './surface-curve.ts';
import type { SeamAnchor, SeamForm, SeamLayout, SeamLine } from './types.ts';

export const CENTRE_FRONT = Math.PI / 2;
export const CENTRE_BACK = -Math.PI / 2;

/** An end of an upright line and what it ends on. */
export interface LineEnd {
  readonly point: readonly [number, number];
  readonly armhole?: number;
  readonly onLine?: string;
}

export type ResolvedLine =
  | {
      readonly kind: 'upright';
      readonly line: SeamLine;
      readonly curve: ChartCurve;
      /** Where the line's anchors lie, in their order. */
      readonly points: readonly (readonly [number, number])[];
      readonly ends: readonly [LineEnd, LineEnd];
    }
  | {
      readonly kind: 'level';
      readonly line: SeamLine;
      /** Set when it runs along a level line; else it is a row of its own. */
      readonly levelId?: string;
      readonly v: number;
      readonly u: readonly [number, number];
      /** What it ends on, in the order of `u`. */
      readonly ends: readonly [LineEnd, LineEnd];
    }
  | {
      readonly kind: 'centre';
      readonly line: SeamLine;
      readonly u: number;
      readonly v: readonly [number, number];
    };

export interface ResolvedLayout {
  readonly lines: readonly ResolvedLine[];
  readonly armhole: ChartCurve;
}

/**
 * Places every line of a layout on a form: anchors become chart points of the right half; uprights
 * become straight lines of the chart where u stays the same, else lines that are fair on the surface.
 * Lines that end on others are placed after them. Every fault is an issue with the path `lines.<id>`.
 */
export function resolveLines(
  layout: Pick<SeamLayout, 'lines'>,
  form: SeamForm,
  surface: ChartSurface,
  issues: Issue[],
): ResolvedLayout {
  const armhole = fairLoop(toRightHalf(form.armholes.right));
  const findArmhole = locateOnArmhole(armhole, form);
  const placed = new Map<string, ResolvedLine>();
  let waiting = layout.lines.slice();
  const context: Context = { form, surface, armhole, findArmhole, placed, issues };
  while (waiting.length > 0) {
    const ready = waiting.filter((line) =>
      line.through.every(
        (anchor) => anchor.onLine === undefined || !waiting.some((other) => other.id === anchor.onLine),
      ),
    );
    if (ready.length === 0) {
      for (const line of waiting) fault(issues, 'line-waits-for-line', line);
      break;
    }
    for (const line of ready) {
      const resolved = resolveLine(line, context);
      if (resolved) placed.set(line.id, resolved);
    }
    waiting = waiting.filter((line) => !ready.includes(line));
  }
  return { lines: layout.lines.flatMap((line) => placed.get(line.id) ?? []), armhole };
}

interface Context {
  readonly form: SeamForm;
  readonly surface: ChartSurface;
  readonly armhole: ChartCurve;
  readonly findArmhole: (position: number) => number;
  readonly placed: Map<string, ResolvedLine>;
  readonly issues: Issue[];
}

/** Faults of which nothing more is told than the line. */
type PlainFault =
  | 'line-too-short'
  | 'line-waits-for-line'
  | 'ease-unsound'
  | 'line-leaves-half'
  | 'line-not-rising'
  | 'line-on-centre'
  | 'line-leaves-surface'
  | 'line-off-centre'
  | 'line-misses-armhole';

function fault(issues: Issue[], code: PlainFault, line: SeamLine): undefined {
  return tell(issues, code, line, phrase(`seams.${code}`, { line: nameOfLine(line.name) }));
}

function tell(issues: Issue[], code: string, line: SeamLine, message: Phrase): undefined {
  issues.push({ code, path: `lines.${line.id}`, message, severity: 'error' });
}

function resolveLine(line: SeamLine, context: Context): ResolvedLine | undefined {
  const { issues, form } = context;
  if (line.through.length < 2) return fault(issues, 'line-too-short', line);
  const level = form.levels.find((candidate) => candidate.id === line.alongLevel);
  if (line.alongLevel !== undefined && !level) {
    const message = phrase('seams.line-along-unknown', {
      line: nameOfLine(line.name),
      level: line.alongLevel,
    });
    return tell(issues, 'level-unknown', line, message);
  }
  const height = line.alongHeight === undefined ? undefined : resolveAnchor(line.alongHeight, line, context);
  if (line.alongHeight !== undefined && !height) return undefined;
  const ends: LineEnd[] = [];
  for (const anchor of line.through) {
    const end = resolveAnchor(
      level ? { ...anchor, level: level.id } : anchor,
      line,
      context,
      height?.point[1],
    );
    if (!end) return undefined;
    ends.push(end);
  }
  if (line.ease && !isEaseSound(line)) {
    return fault(issues, 'ease-unsound', line);
  }
  if (line.side === 'centre') return resolveCentre(line, ends, issues);
  const outside = ends.find((end) => end.point[0] > CENTRE_FRONT + 1e-9 || end.point[0] < CENTRE_BACK - 1e-9);
  if (outside) return fault(issues, 'line-leaves-half', line);
  if (level) return resolveLevel(line, level.v, ends, { levelId: level.id });
  if (height) {
    const near = form.levels.find((candidate) => Math.abs(candidate.v - height.point[1]) < 1e-6);
    return resolveLevel(line, near?.v ?? height.point[1], ends, near ? { levelId: near.id } : {});
  }
  for (let i = 1; i < ends.length; i++) {
    if (ends[i].point[1] <= ends[i - 1].point[1]) {
      return fault(issues, 'line-not-rising', line);
    }
  }
  const points = ends.map((end) => end.point);
  const isStraight = points.every((point) => Math.abs(point[0] - points[0][0]) < 1e-6);
  if (points.every(([u]) => Math.min(CENTRE_FRONT - u, u - CENTRE_BACK) < 1e-6)) {
    return fault(issues, 'line-on-centre', line);
  }
  const curve = isStraight ? fairCurve(points) : surfaceCurve(context.surface, points);
  if (!curve) {
    return fault(issues, 'line-leaves-surface', line);
  }
  return { kind: 'upright', line, curve, points, ends: [ends[0], ends[ends.length - 1]] };
}

/** More than a twentieth is gathered, not eased. */
const LARGEST_EASE = 0.05;

function isEaseSound({ ease, side, alongLevel, alongHeight }: SeamLine): boolean {
  if (!ease) return true;
  const isLevel = alongLevel !== undefined || alongHeight !== undefined;
  const fits = isLevel === (ease.longer === 'above' || ease.longer === 'below');
  return fits && side !== 'centre' && ease.fraction >= 0 && ease.fraction <= LARGEST_EASE;
}

function resolveLevel(
  line: SeamLine,
  v: number,
  ends: readonly LineEnd[],
  along: { readonly levelId?: string },
): ResolvedLine {
  const sorted = ends.toSorted((a, b) => a.point[0] - b.point[0]);
  const [first, last] = [sorted[0], sorted[sorted.length - 1]];
  return { kind: 'level', line, v, u: [first.point[0], last.point[0]], ends: [first, last], ...along };
}

function resolveCentre(line: SeamLine, ends: LineEnd[], issues: Issue[]): ResolvedLine | undefined {
  const isAt = (u: number): boolean => ends.every((end) => Math.abs(end.point[0] - u) < 1e-6);
  const heights = ends.map((end) => end.point[1]);
  const v: [number, number] = [Math.min(...heights), Math.max(...heights)];
  if (isAt(CENTRE_FRONT)) return { kind: 'centre', line, u: CENTRE_FRONT, v };
  if (isAt(CENTRE_BACK)) return { kind: 'centre', line, u: CENTRE_BACK, v };
  return fault(issues, 'line-off-centre', line);
}

/** `height`: v that a level line prescribes to its points. */
function resolveAnchor(
  anchor: SeamAnchor,
  line: SeamLine,
  context: Context,
  height?: number,
): LineEnd | undefined {
  const { form, issues } = context;
  const name = nameOfLine(line.name);
  if (anchor.armhole !== undefined) {
    const t = moveToHeight(context.armhole, context.findArmhole(anchor.armhole), height);
    if (t !== undefined) return { point: context.armhole.at(t), armhole: t };
    return fault(issues, 'line-misses-armhole', line);
  }
  const landmark = anchor.landmark === undefined ? undefined : form.landmarks[anchor.landmark];
  const target = anchor.toward === undefined ? undefined : form.landmarks[anchor.toward.landmark];
  const level = form.levels.find((candidate) => candidate.id === anchor.level);
  for (const [kind, wanted, found] of [
    ['landmark', anchor.landmark, landmark],
    ['landmark', anchor.toward?.landmark, target],
    ['level', anchor.level, level],
  ] as const) {
    if (wanted !== undefined && !found) {
      const message = phrase('seams.line-through-unknown', { line: name, kind, place: wanted });
      return tell(issues, `${kind}-unknown`, line, message);
    }
  }
  let u = (landmark ? wrapAngle(landmark.u) : 0) + (anchor.u ?? 0);
  let v = height ?? (level?.v ?? landmark?.v ?? 0) + (anchor.v ?? 0);
  if (anchor.toward && target) {
    u += anchor.toward.fraction * (wrapAngle(target.u) - u);
    if (!level && height === undefined) v += anchor.toward.fraction * (target.v - v);
  }
  if (anchor.onLine === undefined) return { point: [u, v] };
  const other = context.placed.get(anchor.onLine);
  if (!other) {
    const message = phrase('seams.line-ends-on-unknown', { line: name, other: anchor.onLine });
    return tell(issues, 'line-unknown', line, message);
  }
  if (other.kind === 'centre') return { point: [other.u, v] };
  const both = { line: name, other: nameOfLine(other.line.name) };
  if (other.kind === 'level') {
    if (u >= other.u[0] - 1e-9 && u <= other.u[1] + 1e-9)
      return { point: [u, other.v], onLine: anchor.onLine };
    return tell(issues, 'line-misses-line', line, phrase('seams.line-ends-beside', both));
  }
  const [low, high] = [other.ends[0].point[1], other.ends[1].point[1]];
  if (v < low || v > high) {
    return tell(issues, 'line-misses-line', line, phrase('seams.line-ends-off-height', both));
  }
  const [onU, onV] = other.curve.at(findHeights(other.curve, v)[0] ?? other.curve.range[0]);
  return { point: [onU, Math.abs(onV - v) < 1e-6 ? v : onV], onLine: anchor.onLine };
}

/** The place on a closed curve at height v that is nearest to t; t itself when no height is asked for. */
function moveToHeight(loop: ChartCurve, t: number, height: number | undefined): number | undefined {
  if (height === undefined || Math.abs(loop.at(t)[1] - height) < 1e-9) return t;
  const away = (other: number): number => Math.abs(other - t - Math.round(other - t));
  return findHeights(loop, height).toSorted((a, b) => away(a) - away(b))[0];
}

/** Angle in [−π/2, 3π/2): the right half first, the left half after the centre front. */
function wrapAngle(u: number): number {
  const turn = 2 * Math.PI;
  const wrapped = u - turn * Math.floor((u + Math.PI / 2) / turn);
  // 3π/2 rounded up or down is the centre back either way.
  return Math.abs(wrapped - 1.5 * Math.PI) < 1e-9 ? wrapped - turn : wrapped;
}

/** The loop with its middle within (−π, π]. */
export function toRightHalf(loop: Float64Array): Float64Array {
  let sum = 0;
  for (let i = 0; i < loop.length; i += 2) sum += loop[i];
  const turns = Math.round(sum / (loop.length / 2) / (2 * Math.PI));
  return loop.map((value, i) => (i % 2 === 0 ? value - 2 * Math.PI * turns : value));
}
