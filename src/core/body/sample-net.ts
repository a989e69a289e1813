import { clampKnots, factorDense, grevilleAbscissae, solveDense } from '../math/index.ts';
import { makeChartRise } from './chart-rise.ts';
import { KNOT_IDS, KNOTS, RAIL, ShapeEvaluator } from './rails.ts';
import { COLUMN_STEP, NET_COLUMNS, TrunkNetEvaluator } from './trunk-net.ts';
import type { BodyShape, TrunkNet } from './types.ts';

/** Spans of the net below the neck base and in the neck. */
const TRUNK_SPANS = 26;
const NECK_SPANS = 3;
/** Rows nearer than this, mm, count as out of order. */
const LEAST_RISE = 0.1;
const UPPER_CHEST = KNOT_IDS.indexOf('upperChest');
const NECK_BASE = KNOT_IDS.indexOf('neckBase');

/** The net that takes over a rough trunk. */
export interface SampledNet {
  readonly net: TrunkNet;
  /** The first row whose heights are free: those below make z = rise, so that levels are level. */
  readonly firstTilted: number;
}

/**
 * A net through the rough trunk without its bumps, at as many places as it has controls. z is the rise up to the upper
 * chest. Null when rows of the trunk are out of order.
 */
export function sampleNet(shape: BodyShape): SampledNet | null {
  const evaluator = new ShapeEvaluator(shape);
  const rises = levelRises(shape, evaluator);
  if (rises.some((rise, i) => i > 0 && rise < rises[i - 1] + LEAST_RISE)) return null;
  const knots = makeKnots(rises);
  const sites = grevilleAbscissae(knots);
  const rows = sites.length;
  const controls = new Float64Array(rows * NET_COLUMNS * 3);
  const empty = { rises, knots, controls };
  const chart = new TrunkNetEvaluator(empty, KNOTS);
  const heights = sites.map((t) => invertRise(rises, t));
  const points = sampleRails(evaluator, heights);
  const tilts = sampleTilts(shape, evaluator, heights);
  const matrix = collocation(chart, heights);
  const firstTilted = knots.findIndex((t) => t >= rises[UPPER_CHEST] - 1e-9);
  const solveAll = makeSolver(matrix, rows, 0);
  const solveTop = makeSolver(matrix, rows, firstTilted);
  for (let column = 0; column < NET_COLUMNS; column++) {
    for (let axis = 0; axis < 3; axis++) {
      const values = Float64Array.from(
        { length: rows },
        (_, row) => points[3 * (row * NET_COLUMNS + column) + axis],
      );
      const solved = axis === 2 ? solveHeights(values, tilts, column) : solveAll(values, sites);
      for (let row = 0; row < rows; row++) controls[3 * (row * NET_COLUMNS + column) + axis] = solved[row];
    }
  }
  return { net: empty, firstTilted };

  /** z is the rise on level rows; what tilts them below the upper chest is carried over by itself. */
  function solveHeights(values: Float64Array, tilt: Float64Array | null, column: number): Float64Array {
    if (!tilt) return solveTop(values, sites);
    const share = COSINE_SHARE * Math.cos(column * COLUMN_STEP);
    const tilted = solveAll(
      tilt.map((dz) => share * dz),
      sites,
    );
    const level = solveTop(
      values.map((z, row) => z - share * tilt[row]),
      sites,
    );
    return level.map((z, row) => z + tilted[row]);
  }
}

/** A ring of controls that passes through cos u is this much larger. */
const COSINE_SHARE = 6 / (4 + 2 * Math.cos(COLUMN_STEP));

/** How far each row tilts to the right, mm; null where none does up to the upper chest. */
function sampleTilts(
  { rails }: BodyShape,
  evaluator: ShapeEvaluator,
  heights: Float64Array,
): Float64Array | null {
  const values = rails.subarray(RAIL.dz * KNOTS.length, RAIL.dz * KNOTS.length + UPPER_CHEST + 1);
  if (values.every((dz) => dz === 0)) return null;
  return heights.map((v) => evaluator.railsAt(v)[RAIL.dz]);
}

/**
 * Heights themselves up to the upper chest; above it, where rows fan out, so spaced that they need neither crowd in front
 * nor part behind more than they must.
 */
function levelRises(shape: BodyShape, evaluator: ShapeEvaluator): Float64Array {
  const p = new Float64Array(3);
  const heightAt = (s: number, knot: number): number => {
    evaluator.railsPoint(0, s, KNOTS[knot], p, 0);
    return p[2];
  };
  const chest = heightAt(1, UPPER_CHEST);
  const middle = Math.sqrt(
    Math.max(heightAt(1, NECK_BASE) - chest, 50) * Math.max(heightAt(-1, NECK_BASE) - chest, 50),
  );
  const pace = middle / (shape.rises[NECK_BASE] - shape.rises[UPPER_CHEST]);
  const rises = new Float64Array(KNOTS.length);
  for (let k = 0; k < rises.length; k++) {
    if (k <= UPPER_CHEST) {
      evaluator.railsPoint(1, 0, KNOTS[k], p, 0);
      rises[k] = p[2] - shape.rails[RAIL.dz * KNOTS.length + k];
    } else rises[k] = rises[k - 1] + (k <= NECK_BASE ? pace : 1) * (shape.rises[k] - shape.rises[k - 1]);
  }
  return rises;
}

function makeKnots(rises: Float64Array): Float64Array {
  const [bottom, neck, top] = [rises[0], rises[NECK_BASE], rises[rises.length - 1]];
  const breaks: number[] = [];
  for (let i = 0; i < TRUNK_SPANS; i++) breaks.push(bottom + ((neck - bottom) * i) / TRUNK_SPANS);
  for (let i = 0; i < NECK_SPANS; i++) breaks.push(neck + ((top - neck) * i) / NECK_SPANS);
  return clampKnots([...breaks, top]);
}

/** The chart height of a rise, by halving. */
function invertRise(rises: Float64Array, t: number): number {
  const riseOf = makeChartRise(KNOTS, rises);
  let [low, high] = [KNOTS[0], KNOTS[KNOTS.length - 1]];
  if (t <= rises[0]) return low;
  if (t >= rises[rises.length - 1]) return high;
  for (let i = 0; i < 50; i++) {
    const middle = 0.5 * (low + high);
    if (riseOf(middle) < t) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}

/** rows × NET_COLUMNS × 3: what controls round each row make it pass through the rails there. */
function sampleRails(evaluator: ShapeEvaluator, heights: Float64Array): Float64Array {
  const out = new Float64Array(heights.length * NET_COLUMNS * 3);
  const ring = new Float64Array(NET_COLUMNS * 3);
  const shares = interpolationShares();
  heights.forEach((v, row) => {
    for (let i = 0; i < NET_COLUMNS; i++) {
      evaluator.railsPoint(Math.cos(i * COLUMN_STEP), Math.sin(i * COLUMN_STEP), v, ring, 3 * i);
    }
    for (let i = 0; i < NET_COLUMNS; i++) {
      for (let k = 0; k < NET_COLUMNS; k++) {
        const share = shares[(i - k + NET_COLUMNS) % NET_COLUMNS];
        for (let axis = 0; axis < 3; axis++) {
          out[3 * (row * NET_COLUMNS + i) + axis] += share * ring[3 * k + axis];
        }
      }
    }
  });
  return out;
}

/** What each point of an evenly spaced ring gives to the control `offset` columns on, so that the ring is passed through. */
function interpolationShares(): Float64Array {
  // The inverse of the filter (1, 4, 1) / 6 is √3 z^|k|, z = √3 − 2, here wrapped round (Unser, Aldroubi, Eden 1993).
  const z = Math.sqrt(3) - 2;
  const wrap = 1 - z ** NET_COLUMNS;
  return Float64Array.from(
    { length: NET_COLUMNS },
    (_, k) => (Math.sqrt(3) * (z ** k + z ** (NET_COLUMNS - k))) / wrap,
  );
}

/** rows × rows: what each row of controls gives at each height. */
function collocation(chart: TrunkNetEvaluator, heights: Float64Array): Float64Array {
  const n = heights.length;
  const matrix = new Float64Array(n * n);
  const weights = new Float64Array(4);
  heights.forEach((v, i) => {
    const first = chart.weightsAlong(v, weights);
    for (let b = 0; b < 4; b++) matrix[i * n + first + b] += weights[b];
  });
  return matrix;
}

type Solve = (values: Float64Array, fixed: Float64Array) => Float64Array;

/** Solves for the controls from row `from` on; those below are as in `fixed`. */
function makeSolver(matrix: Float64Array, n: number, from: number): Solve {
  const size = n - from;
  const normal = new Float64Array(size * size);
  for (let i = from; i < n; i++) {
    for (let a = 0; a < size; a++) {
      for (let b = 0; b < size; b++)
        normal[a * size + b] += matrix[i * n + from + a] * matrix[i * n + from + b];
    }
  }
  factorDense(normal, size);
  return (values, fixed) => {
    const right = new Float64Array(size);
    for (let i = from; i < n; i++) {
      let rest = values[i];
      for (let k = 0; k < from; k++) rest -= matrix[i * n + k] * fixed[k];
      for (let a = 0; a < size; a++) right[a] += matrix[i * n + from + a] * rest;
    }
    const out = Float64Array.from(fixed);
    solveDense(normal, right, right);
    out.set(right, from);
    return out;
  };
}
