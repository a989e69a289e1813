import { isInsidePolygon, measureDistanceToPolyline } from '../math/index.ts';
import type { ChartSurface } from '../mesh/index.ts';
import type { SeamForm } from '../seams/index.ts';
import { gapBetween } from './gap-between.ts';

/** Front and back are padded apart: their pads meet at the sides. */
export const HALVES = ['front', 'back'] as const;
export type Half = (typeof HALVES)[number];

const COLUMNS = 60;
/** Between rows, mm of the chart. */
const ROW_STEP = 6;
/** Pads end so far from the armhole's edge, mm, and thin out towards it one for one: an arm or a plate goes on there. */
const FROM_ARMHOLE = 12;
/** mm of the body to a radian of the chart beside the armhole, roughly. */
const RADIUS = 110;

/** Gaps over one half of the body, (rows + 1) × (columns + 1), row-major from below; u rises by columns. */
export interface GapGrid {
  readonly half: Half;
  readonly columns: number;
  readonly rows: number;
  /** n × 2 (u, v). */
  readonly chart: Float64Array;
  /** mm, as `gapBetween`; 0 in the armholes and at their edges. */
  readonly gaps: Float64Array;
  /** How much wadding has room, mm: the gap, thinned out towards the armholes. */
  readonly thickness: Float64Array;
}

/** The gap all over the body, but thinned out at the armholes. About 15,000 points, ten evaluations of both surfaces each. */
export function gapGrid(from: ChartSurface, to: ChartSurface, form: SeamForm, half: Half): GapGrid {
  const [low, high] = from.vRange;
  const rows = Math.max(2, Math.round((high - low) / ROW_STEP));
  const start = half === 'front' ? 0 : Math.PI;
  const chart = new Float64Array(2 * (rows + 1) * (COLUMNS + 1));
  for (let i = 0, k = 0; i <= rows; i++) {
    for (let j = 0; j <= COLUMNS; j++) {
      chart[k++] = start + (Math.PI * j) / COLUMNS;
      chart[k++] = low + ((high - low) * i) / rows;
    }
  }
  const rooms = Float64Array.from({ length: chart.length / 2 }, (_, i) => {
    return roomAtArmholes(form, chart[2 * i], chart[2 * i + 1]);
  });
  const gaps = gapBetween(from, to, chart).map((gap, i) => (rooms[i] > 0 ? gap : 0));
  const thickness = gaps.map((gap, i) => Math.min(gap, rooms[i]));
  return { half, columns: COLUMNS, rows, chart, gaps, thickness };
}

/** How thick a pad may be here, mm; negative in the armhole and at its edge. */
function roomAtArmholes({ armholes }: SeamForm, u: number, v: number): number {
  let room = Number.POSITIVE_INFINITY;
  for (const loop of [armholes.right, armholes.left]) {
    const scaled = loop.map((x, i) => (i % 2 === 0 ? RADIUS * x : x));
    for (const turn of [-1, 0, 1]) {
      const x = RADIUS * (u + 2 * Math.PI * turn);
      if (isInsidePolygon(scaled, x, v)) return -FROM_ARMHOLE;
      room = Math.min(room, measureDistanceToPolyline(scaled, true, x, v) - FROM_ARMHOLE);
    }
  }
  return room;
}
