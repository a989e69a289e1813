import { assertInvariant } from '../base/index.ts';
import { orientation } from '../math/index.ts';
import { type ChartSurface, findTwins, nextHalfedge } from '../mesh/index.ts';
import { cellPlane } from './cell-plane.ts';
import { fillOutline } from './fill-outline.ts';
import { isUnfolded, measureStretch, relaxPlane } from './relax-plane.ts';
import type { SurfaceGrid } from './surface-grid.ts';
import { smoothTriangles, triangulateOutline } from './triangulate-outline.ts';

export interface CellMesh {
  /** #V × 2 (u, v): the border's vertices in the order of their first visit, then inner ones. */
  readonly chart: Float64Array;
  /** Counter-clockwise. */
  readonly triangles: Uint32Array;
}

/** Points are kept this part of the spacing away from the border. */
const CLEARANCE = 0.5;
const SMOOTHING_ROUNDS = 2;
/** A plane whose edges are within this (log ratio) of their length in space is even enough. */
const EVEN_ENOUGH = 0.12;

interface Filling {
  /** #V × 2 mm. */
  readonly plane: Float64Array;
  readonly triangles: Uint32Array;
}

type ChartOf = (x: number, y: number) => readonly [number, number];

/**
 * Triangulates one region with points about `spacing` apart in space. `borderChart`: #B × 2; `border`: the walk over it.
 * First in plane coordinates from the rows; where those are uneven, that draft is flattened by its edge lengths and
 * filled anew in the better plane. O(n log n).
 */
export function meshCell(
  border: Uint32Array,
  borderChart: Float64Array,
  surface: ChartSurface,
  grid: SurfaceGrid,
  spacing: number,
): CellMesh {
  const rows = cellPlane(grid, middleColumn(borderChart));
  const flat = new Float64Array(borderChart.length);
  for (let i = 0; i < flat.length; i += 2) {
    flat[i] = rows.x(borderChart[i], borderChart[i + 1]);
    flat[i + 1] = rows.y(borderChart[i + 1]);
  }
  const chartByRows: ChartOf = (x, y) => {
    const v = rows.v(y);
    return [rows.u(x, v), v];
  };
  const draft = fillPlane(border, flat, spacing);
  const chart = chartOfPoints(draft.plane, borderChart, chartByRows);
  const positions = surface.evaluate(chart);
  if (measureStretch(draft.plane, positions, draft.triangles) > EVEN_ENOUGH) {
    const plane = draft.plane.slice();
    relaxPlane(plane, positions, draft.triangles);
    // A fold would make the outline useless; the rows' plane is always sound.
    if (isUnfolded(plane, draft.triangles)) {
      const filled = fillPlane(border, plane.subarray(0, borderChart.length), spacing);
      return smoothFilling(border, borderChart, filled, createLocator({ ...draft, plane }, chart));
    }
  }
  return smoothFilling(border, borderChart, draft, chartByRows);
}

function fillPlane(border: Uint32Array, flat: Float64Array, spacing: number): Filling {
  const outline = new Float64Array(2 * border.length);
  for (let i = 0; i < border.length; i++) {
    outline[2 * i] = flat[2 * border[i]];
    outline[2 * i + 1] = flat[2 * border[i] + 1];
  }
  const inner = fillOutline(outline, spacing, CLEARANCE * spacing);
  const plane = new Float64Array(flat.length + inner.length);
  plane.set(flat);
  plane.set(inner, flat.length);
  return { plane, triangles: triangulateOutline(plane, border) };
}

function smoothFilling(
  border: Uint32Array,
  borderChart: Float64Array,
  filling: Filling,
  chartOf: ChartOf,
): CellMesh {
  const triangles = smoothTriangles(filling.plane, border, filling.triangles, SMOOTHING_ROUNDS);
  return { chart: chartOfPoints(filling.plane, borderChart, chartOf), triangles };
}

function chartOfPoints(plane: Float64Array, borderChart: Float64Array, chartOf: ChartOf): Float64Array {
  const chart = new Float64Array(plane.length);
  chart.set(borderChart);
  for (let i = borderChart.length; i < chart.length; i += 2) {
    const [u, v] = chartOf(plane[i], plane[i + 1]);
    chart[i] = u;
    chart[i + 1] = v;
  }
  return chart;
}

/** Plane → chart, linear in every triangle of the draft. Walks from the last triangle found; neighbours are cheap. */
function createLocator({ plane, triangles }: Filling, chart: Float64Array): ChartOf {
  const twins = findTwins(triangles, plane.length / 2);
  const faceCount = triangles.length / 3;
  const side = (e: number, x: number, y: number): number => {
    const a = 2 * triangles[e];
    const b = 2 * triangles[nextHalfedge(e)];
    return orientation(plane[a], plane[a + 1], plane[b], plane[b + 1], x, y);
  };
  const holds = (f: number, x: number, y: number): boolean =>
    side(3 * f, x, y) >= 0 && side(3 * f + 1, x, y) >= 0 && side(3 * f + 2, x, y) >= 0;
  let last = 0;
  const walk = (x: number, y: number): number => {
    let f = last;
    for (let step = 0; step < faceCount; step++) {
      let out = -1;
      for (let k = 0; k < 3 && out === -1; k++) {
        // Starting edge varies with the step, so that a walk cannot circle for ever.
        const e = 3 * f + ((k + step) % 3);
        if (twins[e] !== -1 && side(e, x, y) < 0) out = e;
      }
      if (out === -1) break;
      f = (twins[out] / 3) | 0;
    }
    return f;
  };
  return (x, y) => {
    let f = walk(x, y);
    // Round a notch the straight walk ends at the border: look everywhere.
    if (!holds(f, x, y)) for (f = 0; f < faceCount && !holds(f, x, y); f++);
    assertInvariant(
      f < faceCount,
      'seams',
      'a point inside an outline lies in a triangle of it',
      `${x}, ${y}`,
    );
    last = f;
    const [a, b, c] = [triangles[3 * f], triangles[3 * f + 1], triangles[3 * f + 2]];
    const weights = [side(3 * f + 1, x, y), side(3 * f + 2, x, y), side(3 * f, x, y)];
    const sum = weights[0] + weights[1] + weights[2];
    const read = (d: number): number =>
      (weights[0] * chart[2 * a + d] + weights[1] * chart[2 * b + d] + weights[2] * chart[2 * c + d]) / sum;
    return [read(0), read(1)];
  };
}

function middleColumn(chart: Float64Array): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < chart.length; i += 2) {
    low = Math.min(low, chart[i]);
    high = Math.max(high, chart[i]);
  }
  return (low + high) / 2;
}
