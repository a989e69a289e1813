import { assertInvariant } from '../base/index.ts';
import { cross, dot, factorDense, solveDense, type Vector } from '../math/index.ts';
import { makePrior } from './body-prior.ts';
import { stateProblem } from './fit-body.ts';
import {
  differentiateReadings,
  type FitProblem,
  listBeliefs,
  listReadings,
  shapeAt,
  type Target,
} from './fit-problem.ts';
import type { StanceId } from './parameter-ids.ts';
import { isStanceRead, READ_TO } from './read-stance.ts';
import { residualOf } from './residual-of.ts';
import { readShapeChoices } from './shape-choices.ts';
import { surfaceOfBody } from './surface-of-body.ts';
import { TAPE_RULES } from './tapes.ts';
import type { Body, BodyInput, BodyShape, TapeKind } from './types.ts';

/** What a careful person's tape, wall and box err by, one standard deviation in mm (common practice, no source). */
const READING_ERROR: Readonly<Record<TapeKind, number>> = {
  girth: 8,
  length: 5,
  width: 5,
  depth: 5,
  distance: READ_TO,
};
const AROUND = 24;
const ROWS = 28;

/** The straightened posterior of a fit: n = `count` unknowns. mm. */
export interface BelievedBody {
  readonly count: number;
  /** n × n. */
  readonly covariance: Float64Array;
  /** How a measure not typed changes with the unknowns, by id, and what reading it errs by. */
  readonly candidates: ReadonlyMap<string, { readonly gradient: Float64Array; readonly error: number }>;
  /** How a place of the grid moves across the surface with the unknowns, places × n. */
  readonly sensitivity: Float64Array;
  readonly grid: SurfaceGrid;
}

interface SurfaceGrid {
  readonly around: number;
  readonly rows: number;
  /** Share of the surface that belongs to each place; they add up to 1. */
  readonly weights: Float64Array;
}

/** `body` must be fitted to `input`. */
export function believeBody(input: BodyInput, body: Body): BelievedBody {
  const { numbers } = readShapeChoices(input.shape ?? {}, input.figure);
  const problem = stateProblem(input, makePrior(input, numbers), numbers);
  const point = body.unknowns;
  assertInvariant(
    point.length === problem.unknowns.length,
    'body',
    'the body is of this input',
    input.figure,
  );
  const targets = asRead(problem.targets);
  const wished = wishedTargets(input, targets);
  const all = [...targets, ...wished];
  const rows = linearise({ ...problem, targets: all }, point);
  const n = point.length;
  // A wished tape was not read: its row tells how it would change, not what is known.
  const isRead = (row: number): boolean => row < targets.length || row >= all.length;
  const { grid, sensitivity } = differentiateSurface(problem, point);
  return {
    count: n,
    covariance: invert(informationOf(problem, rows, isRead), n),
    candidates: candidatesOf(input, all, rows, n),
    sensitivity,
    grid,
  };
}

/** Typed tapes as they were read by a person, not as tight as the fit meets them. */
function asRead(targets: readonly Target[]): Target[] {
  return targets.map((target) =>
    target.typed ? { ...target, typed: false, spread: errorOf(target) } : target,
  );
}

function errorOf({ id, rule }: Pick<Target, 'id' | 'rule'>): number {
  const error = READING_ERROR[rule.kind];
  // Two heights off the wall.
  return /^(nape|waist)Height$/.test(id) ? error * Math.SQRT2 : error;
}

/** Tapes that were neither typed nor foretold by the survey. Of the heights the missing one, else the first. */
function wishedTargets(input: BodyInput, targets: readonly Target[]): Target[] {
  const has = new Set(targets.map(({ id }) => id.split('.')[0]));
  const height = input.measures.napeHeight === undefined ? 'napeHeight' : 'waistHeight';
  return Object.entries(TAPE_RULES)
    .filter(([id]) => (id === 'napeRise' ? !has.has('napeHeight') : !has.has(id)))
    .filter(([, { reach }]) => canBeRead(reach.stance, input))
    .map(([id, rule]) => {
      const named = id === 'napeRise' ? height : id;
      const spread = errorOf({ id: named, rule });
      return { id: named, rule, side: 'right', value: 0, spread, typed: false };
    });
}

/** One reading from a wall or floor of which nothing is known tells nothing. */
function canBeRead(stance: StanceId | undefined, input: BodyInput): boolean {
  if (stance === undefined || isStanceRead(input, stance)) return true;
  return stance === 'floor' && input.measures.waistHeight !== undefined;
}

/** Jacobian of all readings of the surface, each over its spread; rows × n. */
function linearise(problem: FitProblem, point: Float64Array): Float64Array {
  const readings = listReadings(problem, 1);
  const { context } = shapeAt(problem, point);
  const residuals = Float64Array.from(readings, (reading) => residualOf(reading, reading.read(context)));
  const rows = new Float64Array(readings.length * point.length);
  differentiateReadings(problem, readings, Float64Array.from(point), residuals, rows);
  return rows;
}

function informationOf(
  problem: FitProblem,
  rows: Float64Array,
  isRead: (row: number) => boolean,
): Float64Array {
  const n = problem.unknowns.length;
  const information = new Float64Array(n * n);
  for (let row = 0; row < rows.length / n; row++) {
    if (!isRead(row)) continue;
    for (let i = 0; i < n; i++) {
      const a = rows[row * n + i];
      if (a === 0) continue;
      for (let j = 0; j < n; j++) information[i * n + j] += a * rows[row * n + j];
    }
  }
  for (const { of, spread } of listBeliefs(problem)) {
    for (const a of of) {
      for (const b of of) information[a.unknown * n + b.unknown] += (a.times * b.times) / (spread * spread);
    }
  }
  return information;
}

function candidatesOf(input: BodyInput, targets: readonly Target[], rows: Float64Array, n: number) {
  const candidates = new Map<string, { gradient: Float64Array; error: number }>();
  targets.forEach((target, row) => {
    const id = target.id.split('.')[0];
    if (input.measures[id] !== undefined || candidates.has(id)) return;
    const gradient = rows.slice(row * n, (row + 1) * n).map((x) => x * target.spread);
    candidates.set(id, { gradient, error: errorOf(target) });
  });
  return candidates;
}

/** How far each place moves along its normal as each unknown moves by one. */
function differentiateSurface(problem: FitProblem, point: Float64Array) {
  const { shape } = shapeAt(problem, point);
  const looked = placesLookedAt(shape);
  const chart = chartOf(looked, shape);
  const at = (of: BodyShape): Float64Array => surfaceOfBody({ shape: of }).evaluate(chart);
  const base = at(shape);
  const { normals, areas } = measureGrid(shape, chart);
  const n = point.length;
  const moves = new Float64Array(looked.length * n);
  const values = Float64Array.from(point);
  problem.unknowns.forEach(({ spread }, j) => {
    const step = 1e-4 * spread;
    values[j] = point[j] + step;
    const moved = at(shapeAt(problem, values).shape);
    values[j] = point[j];
    for (let i = 0; i < looked.length; i++) {
      let across = 0;
      for (let k = 0; k < 3; k++) across += (moved[3 * i + k] - base[3 * i + k]) * normals[3 * i + k];
      moves[i * n + j] = across / step;
    }
  });
  const sensitivity = new Float64Array(AROUND * ROWS * n);
  const weights = new Float64Array(AROUND * ROWS);
  looked.forEach((place, i) => {
    for (const to of shape.isMirrorSymmetric ? [place, mirrored(place)] : [place]) {
      sensitivity.set(moves.subarray(i * n, (i + 1) * n), to * n);
      weights[to] = areas[i];
    }
  });
  const total = weights.reduce((sum, area) => sum + area, 0);
  return {
    grid: { around: AROUND, rows: ROWS, weights: weights.map((area) => area / total) },
    sensitivity,
  };
}

/** Places of the grid, or their right half where the left is alike. */
function placesLookedAt({ isMirrorSymmetric }: BodyShape): number[] {
  const places = Array.from({ length: AROUND * ROWS }, (_, i) => i);
  return isMirrorSymmetric ? places.filter((place) => place >= mirrored(place)) : places;
}

/** The place at π − u. */
function mirrored(place: number): number {
  const k = place % AROUND;
  return place - k + ((AROUND + AROUND / 2 - k) % AROUND);
}

function chartOf(places: readonly number[], { vRange: [low, high] }: BodyShape): Float64Array {
  return Float64Array.from(
    places.flatMap((place) => [
      (2 * Math.PI * (place % AROUND)) / AROUND,
      low + ((high - low) * Math.floor(place / AROUND)) / (ROWS - 1),
    ]),
  );
}

function measureGrid(shape: BodyShape, chart: Float64Array) {
  const surface = surfaceOfBody({ shape });
  const [low, high] = shape.vRange;
  const shifted = (du: number, dv: number): Float64Array =>
    surface.evaluate(chart.map((x, i) => (i % 2 === 0 ? x + du : Math.min(high, Math.max(low, x + dv)))));
  const [right, left, up, down] = [shifted(0.01, 0), shifted(-0.01, 0), shifted(0, 2), shifted(0, -2)];
  const count = chart.length / 2;
  const normals = new Float64Array(3 * count);
  const areas = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const across = cross(difference(right, left, i), difference(up, down, i));
    const area = Math.sqrt(dot(across, across));
    areas[i] = area;
    for (let k = 0; k < 3; k++) normals[3 * i + k] = area > 0 ? across[k] / area : 0;
  }
  return { normals, areas };
}

function difference(a: Float64Array, b: Float64Array, i: number): Vector {
  return [a[3 * i] - b[3 * i], a[3 * i + 1] - b[3 * i + 1], a[3 * i + 2] - b[3 * i + 2]];
}

function invert(matrix: Float64Array, n: number): Float64Array {
  assertInvariant(factorDense(matrix, n), 'body', 'every unknown has a prior', n);
  const inverse = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    const column = inverse.subarray(i * n, (i + 1) * n);
    column[i] = 1;
    solveDense(matrix, column, column);
  }
  return inverse;
}
