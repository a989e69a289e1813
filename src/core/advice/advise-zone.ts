import { failure, type Issue, type Phrase, type Result, success } from '../base/index.ts';
import type { FormStrain } from '../flatten/index.ts';
import { distance, weightedPercentiles } from '../math/index.ts';
import { type ChartSurface, measureTriangleAreas } from '../mesh/index.ts';
import {
  type ChartPlace,
  type ControlPoint,
  listControlPoints,
  listMovablePoints,
  movePointBy,
  nameOfLine,
  type SeamForm,
  type SeamLayout,
} from '../seams/index.ts';
import { type LineWay, phrase } from './phrases.ts';
import { createJudge, type JudgedLayout, listCandidates, type ProposeOptions } from './propose-seams.ts';

/** A change that lowers the strain at one place, found by trying it. */
export interface ZoneAdvice {
  readonly kind: 'move' | 'add';
  readonly layout: SeamLayout;
  readonly lineId: string;
  /** mm by which the line's nearest point moves on the body; 0 for a new line. */
  readonly mm: number;
  /** 95th percentile of strain within 60 mm of the place, fractions. */
  readonly near: { readonly before: number; readonly after: number };
  readonly form: { readonly before: FormStrain; readonly after: FormStrain };
  /** What to do. */
  readonly step: Phrase;
  /** The same with the figures. */
  readonly message: Phrase;
}

/** mm of moves tried, either way. */
const MOVES = [3, 6, 9, 12, 16, 20];
/** mm on the body round the place that count. */
const REACH = 60;
/** mm: points nearer to each other are ends that meet. */
const SAME_PLACE = 3;
/** Less is not worth a change: share of the strain there. */
const WORTHWHILE = 0.03;
/** What a gain at the place may cost the form as a whole, share of its p95. */
const MAY_COST = 0.01;

/**
 * What would lower the strain at one place of a form: its nearest movable line moved some mm either way at the point
 * nearest to the place, and the one line more that lowers it most. Each is cut and unrolled on a coarse mesh; only what
 * gains 3 % there, brings no new warning and raises the whole form's p95 by no more than 1 % is told, the better one
 * first. Nothing is applied. `place`: on either half. Cost: about 30 trials of 40 ms for twelve panels. Issues: the
 * layout cannot be cut, cancelled; nothing helps, as a warning.
 */
export function adviseZone(
  surface: ChartSurface,
  form: SeamForm,
  layout: SeamLayout,
  place: ChartPlace,
  options: ProposeOptions = {},
): Result<readonly ZoneAdvice[]> {
  const { judge } = createJudge(surface, form, options);
  const first = judge(layout);
  const points = listControlPoints(surface, form, layout);
  if (!first || !points.ok) {
    const message = phrase('advice.layout-unsound', { layout: layout.name });
    return failure([issue('layout-unsound', message, 'error')]);
  }
  const search: Search = { surface, form, layout, at: placeOn(surface, place), first, judge, options };
  const before = measureNear(first, search.at);
  const advice = [moveNearestLine(search, before, points.value), addOneLine(search, before)].filter(
    (found) => found !== undefined,
  );

  if (options.isCancelled?.()) return failure([issue('cancelled', phrase('advice.stopped'), 'error')]);
  const nothing = phrase('advice.nothing-helps', { most: Math.max(...MOVES) });
  const issues = advice.length > 0 ? [] : [issue('nothing-helps', nothing, 'warning')];
  return success(
    advice.toSorted((a, b) => a.near.after - b.near.after),
    issues,
  );
}

/** What is searched: the layout as it is, judged, and the place in space that asks too much. */
interface Search {
  readonly surface: ChartSurface;
  readonly form: SeamForm;
  readonly layout: SeamLayout;
  readonly at: Point;
  readonly first: JudgedLayout;
  readonly judge: (layout: SeamLayout) => JudgedLayout | undefined;
  readonly options: ProposeOptions;
}

/** A trial that gains enough. */
interface Gain {
  readonly trial: SeamLayout;
  readonly after: number;
  readonly strain: FormStrain;
}

/** The trial, when it lowers the strain at the place enough and costs the form no more than it may. */
function tryOut({ at, first, judge, options }: Search, before: number, trial: SeamLayout): Gain | undefined {
  if (options.isCancelled?.()) return undefined;
  const judged = judge(trial);
  if (!judged || judged.strain.p95 > first.strain.p95 * (1 + MAY_COST)) return undefined;
  const after = measureNear(judged, at);
  return after < before * (1 - WORTHWHILE) ? { trial, after, strain: judged.strain } : undefined;
}

function tell(
  { first }: Search,
  before: number,
  kind: ZoneAdvice['kind'],
  found: Gain,
  lineId: string,
  mm: number,
  step: Phrase,
): ZoneAdvice {
  return {
    kind,
    layout: found.trial,
    lineId,
    mm,
    near: { before, after: found.after },
    form: { before: first.strain, after: found.strain },
    step,
    message: phrase('advice.gain', {
      step,
      reach: REACH,
      near: { before, after: found.after },
      form: { before: first.strain.p95, after: found.strain.p95 },
    }),
  };
}

/** The nearest line that can be moved, at its nearest point. */
function moveNearestLine(
  search: Search,
  before: number,
  points: readonly ControlPoint[],
): ZoneAdvice | undefined {
  const { surface, form, layout, at } = search;
  const named = listMovablePoints(layout);
  const movable = points.filter(({ lineId, anchor }) =>
    named.some((h) => h.lineId === lineId && h.anchor === anchor),
  );
  const nearest = nearestOf(movable, at);
  if (!nearest) return undefined;
  // Front and back lines that meet on the shoulder stay together.
  const together = movable.filter((point) => distance(point.position, nearest.position) < SAME_PLACE);
  const trials = MOVES.flatMap((mm) => [mm, -mm]).flatMap((mm) => {
    const moved = together.reduce((lines, point) => movePointBy(lines, point, mm), layout);
    const found = tryOut(search, before, moved);
    return found ? [found] : [];
  });
  const best = trials.toSorted((a, b) => a.after - b.after)[0];
  if (!best) return undefined;
  const moved = tellMove(surface, form, best.trial, nearest);
  const lines = layout.lines
    .filter(({ id }) => together.some((point) => point.lineId === id))
    .map((line) => nameOfLine(line.name));
  const step = phrase('advice.step-move', { lines, ...moved });
  return tell(search, before, 'move', best, nearest.lineId, moved.mm, step);
}

/** The one line more that lowers the strain at the place most. */
function addOneLine(search: Search, before: number): ZoneAdvice | undefined {
  const { form, layout, first } = search;
  const added = listCandidates(form, layout, first.shell).flatMap((line) => {
    const found = tryOut(search, before, { ...layout, lines: [...layout.lines, line] });
    return found ? [{ found, line }] : [];
  });
  const best = added.toSorted((a, b) => a.found.after - b.found.after)[0];
  if (!best) return undefined;
  const step = phrase('advice.step-add', { line: nameOfLine(best.line.name) });
  return tell(search, before, 'add', best.found, best.line.id, 0, step);
}

type Point = readonly [number, number, number];

/** In space, on the right half. */
function placeOn(surface: ChartSurface, { u, v }: ChartPlace): Point {
  const right = Math.cos(u) < 0 ? Math.PI - u : u;
  const [x, y, z] = surface.evaluate(Float64Array.of(right, v));
  return [x, y, z];
}

/** 95th percentile over the area of both principal strains, absolute, of the triangles about a place. */
function measureNear({ shell, flat }: JudgedLayout, at: Point): number {
  const sizes: number[] = [];
  const weights: number[] = [];
  for (const [d, { mesh }] of shell.panels.entries()) {
    const areas = measureTriangleAreas(mesh);
    const { major, minor } = flat[d].strain;
    for (let f = 0; f < areas.length; f++) {
      const middle = [0, 1, 2].map((k) => {
        const corner = (c: number) => mesh.positions[3 * mesh.triangles[3 * f + c] + k];
        return (corner(0) + corner(1) + corner(2)) / 3;
      });
      if (distance(middle, at) > REACH) continue;
      sizes.push(Math.abs(major[f]), Math.abs(minor[f]));
      weights.push(areas[f], areas[f]);
    }
  }
  if (sizes.length === 0) return 0;
  return weightedPercentiles(Float64Array.from(sizes), Float64Array.from(weights), [0.95])[0];
}

function nearestOf(points: readonly ControlPoint[], at: Point): ControlPoint | undefined {
  return points.toSorted((a, b) => distance(a.position, at) - distance(b.position, at))[0];
}

/** How far the point went on the body, and whether nearer to the bust point, shoulder blade or, on the shoulder, the neck. */
function tellMove(
  surface: ChartSurface,
  form: SeamForm,
  moved: SeamLayout,
  nearest: ControlPoint,
): { readonly mm: number; readonly way?: LineWay } {
  const points = listControlPoints(surface, form, moved);
  const now = points.ok
    ? points.value.find((p) => p.lineId === nearest.lineId && p.anchor === nearest.anchor)
    : undefined;
  if (!now) return { mm: 0 };
  const [id, mark] = markNear(nearest);
  const landmark = form.landmarks[id];
  const mm = distance(now.position, nearest.position);
  if (!landmark) return { mm, way: now.u > nearest.u ? 'to-front' : 'to-back' };
  const aim = placeOn(surface, landmark);
  const isNearer = distance(now.position, aim) < distance(nearest.position, aim);
  return { mm, way: `${isNearer ? 'to' : 'from'}-${mark}` };
}

function markNear({ u }: ControlPoint) {
  if (Math.abs(Math.sin(u)) < 0.1) return ['neckSideRight', 'neck'] as const;
  return Math.sin(u) > 0
    ? (['bustPointRight', 'bust-point'] as const)
    : (['bladePointRight', 'blade'] as const);
}

function issue(code: string, message: Phrase, severity: Issue['severity']): Issue {
  return { code, path: 'lines', message, severity };
}
