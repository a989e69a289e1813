import { clamp, convexHull } from '../math/index.ts';
import type { ChartSurface } from '../mesh/index.ts';
import type { SeamForm } from './types.ts';

/** Part of the way to the taut line that a hollow is filled when nothing else is asked for. */
export const USUAL_BRIDGING = 0.9;

/** Columns round the whole chart and their step. Every row is read at all of them. */
const COLUMNS = 240;
const COLUMN_STEP = (2 * Math.PI) / COLUMNS;
const ROW_STEP = 5;
/** mm of the chart over which bridging fades out above the highest level line, where rows are no level sections any more. */
const FADE = 130;
/** The same behind, above the waist. */
const FADE_BEHIND = 60;

/**
 * A surface with its hollows at the centre front (between the breasts) and centre back (along the spine) filled `share`
 * of the way to the taut line across them, as cloth under stuffing does. On every row the convex hull's edges across
 * the two centres are what a tape would follow; points inside are moved towards them, forwards or backwards only. A tape
 * measures the hull, so no reading changes. Fades out above the highest level line, and behind down to the waist: a seat's
 * hollow is kept, its taut line would only draw a hard edge over the hips.
 * Cost: one table of about 240 × 110 points at once, then a bicubic look-up per point. Hollows of 0.01 mm count as none.
 */
export function bridgeHollows(surface: ChartSurface, form: SeamForm, share: number): ChartSurface {
  if (share === 0) return surface;
  const top = Math.max(...form.levels.map((level) => level.v)) + FADE;
  const [low] = surface.vRange;
  const rows = Math.max(4, Math.ceil((top - low) / ROW_STEP) + 1);
  const rowStep = (top - low) / (rows - 1);
  const gaps = measureGaps(surface, low, rowStep, rows);
  const fadeFrom = top - FADE;
  const waist = form.levels.find((level) => level.id === 'waist')?.v ?? Number.NEGATIVE_INFINITY;
  return {
    vRange: surface.vRange,
    isMirrorSymmetric: surface.isMirrorSymmetric,
    evaluate(chart, out) {
      const points = surface.evaluate(chart, out);
      for (let i = 0, j = 0; i < chart.length; i += 2, j += 3) {
        const v = chart[i + 1];
        if (v >= top) continue;
        points[j + 1] +=
          share *
          fade((v - fadeFrom) / FADE) *
          (Math.sin(chart[i]) > 0 ? 1 : fade((waist + FADE_BEHIND - v) / FADE_BEHIND)) *
          readTable(gaps, rows, chart[i], Math.max(0, v - low) / rowStep);
      }
      return points;
    },
  };
}

/** 1 up to 0, 0 from 1 on, smooth between. */
function fade(t: number): number {
  const s = clamp(t, 0, 1);
  return 1 - s * s * s * (10 - s * (15 - 6 * s));
}

/** rows × COLUMNS: how far each point lies inside the hull's edge across the centre, signed along y. */
function measureGaps(surface: ChartSurface, low: number, rowStep: number, rows: number): Float64Array {
  const gaps = new Float64Array(rows * COLUMNS);
  const chart = new Float64Array(2 * COLUMNS);
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < COLUMNS; i++) {
      chart[2 * i] = -Math.PI / 2 + i * COLUMN_STEP;
      chart[2 * i + 1] = low + j * rowStep;
    }
    const p = surface.evaluate(chart);
    const flat = new Float64Array(2 * COLUMNS);
    for (let i = 0; i < COLUMNS; i++) {
      flat[2 * i] = p[3 * i];
      flat[2 * i + 1] = p[3 * i + 1];
    }
    for (const edge of edgesOverCentres(flat))
      fillGaps(flat, edge, gaps.subarray(j * COLUMNS, (j + 1) * COLUMNS));
  }
  return gaps;
}

type HullEdge = readonly [x0: number, y0: number, x1: number, y1: number];

/** The hull's edges that pass x = 0: one in front, one behind. */
function edgesOverCentres(flat: Float64Array): HullEdge[] {
  const hull = convexHull(flat);
  const edges: HullEdge[] = [];
  for (let i = 0; i < hull.length; i++) {
    const [a, b] = [2 * hull[i], 2 * hull[(i + 1) % hull.length]];
    const [x0, x1] = [flat[a], flat[b]];
    if (x0 > 0 === x1 > 0) continue;
    edges.push(x0 < x1 ? [x0, flat[a + 1], x1, flat[b + 1]] : [x1, flat[b + 1], x0, flat[a + 1]]);
  }
  return edges;
}

function fillGaps(flat: Float64Array, [x0, y0, x1, y1]: HullEdge, gaps: Float64Array): void {
  const isFront = y0 + y1 > 2 * meanOfOthers(flat);
  for (let i = 0; i < COLUMNS; i++) {
    // Columns run from centre back: the front half is the second and third quarter.
    const inFront = i > COLUMNS / 4 && i < (3 * COLUMNS) / 4;
    const x = flat[2 * i];
    if (inFront !== isFront || x <= x0 || x >= x1) continue;
    const gap = y0 + ((x - x0) / (x1 - x0)) * (y1 - y0) - flat[2 * i + 1];
    if (gap > 0 === isFront && Math.abs(gap) > 0.01) gaps[i] = gap;
  }
}

function meanOfOthers(flat: Float64Array): number {
  let sum = 0;
  for (let i = 1; i < flat.length; i += 2) sum += flat[i];
  return sum / (flat.length / 2);
}

/** Bicubic (Catmull–Rom) reading of a table, periodic in u, ends repeated in v. */
function readTable(table: Float64Array, rows: number, u: number, row: number): number {
  const x = (u + Math.PI / 2) / COLUMN_STEP;
  const i = Math.floor(x);
  const j = clamp(Math.floor(row), 0, rows - 2);
  const across = cubicWeights(x - i);
  const up = cubicWeights(row - j);
  let sum = 0;
  for (let b = -1; b <= 2; b++) {
    const start = clamp(j + b, 0, rows - 1) * COLUMNS;
    for (let a = -1; a <= 2; a++) {
      sum += up[b + 1] * across[a + 1] * table[start + ((((i + a) % COLUMNS) + COLUMNS) % COLUMNS)];
    }
  }
  return sum;
}

function cubicWeights(t: number): readonly [number, number, number, number] {
  const t2 = t * t;
  const t3 = t2 * t;
  return [
    0.5 * (-t3 + 2 * t2 - t),
    0.5 * (3 * t3 - 5 * t2 + 2),
    0.5 * (-3 * t3 + 4 * t2 + t),
    0.5 * (t3 - t2),
  ];
}
