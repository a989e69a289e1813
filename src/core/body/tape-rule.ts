import type { ParameterId, StanceId } from './parameter-ids.ts';
import type { PhotoId } from './photo-types.ts';
import type { PhotoPose } from './project-point.ts';
import { KNOT_IDS, type KnotId, type ShapeEvaluator } from './rails.ts';
import { pathOfRow, sampleRow, type TapePath } from './tape-paths.ts';
import type { TapeTouch } from './tape-touches.ts';
import type { ChartPoint, TapeKind } from './types.ts';

/** Where the fitted landmarks lie that tapes start from. */
export interface TapeContext {
  readonly evaluator: ShapeEvaluator;
  readonly bust: { readonly right: ChartPoint; readonly left: ChartPoint };
  readonly armholes: Armholes;
  /** Where the wall stands (y) and how high the waist is over the floor, mm; 0 where nothing was read from there. */
  readonly stance: Readonly<Record<StanceId, number>>;
  /** How the body stands in pictures, and how far its clothes stand off in them, mm. */
  readonly poses: Readonly<Record<PhotoId, PhotoPose>> & { readonly cloth: number };
  /** Rows already sampled, by v: several tapes read the same row. */
  readonly rows: Map<number, Float64Array>;
}

export interface Armholes {
  readonly right: Float64Array;
  readonly left: Float64Array;
}

export type Side = 'right' | 'left';

/** What a tape depends on, so that a solver reads again only what a step can move. */
export interface TapeReach {
  /** First and last knot whose rails it reads. */
  readonly from: KnotId;
  readonly to: KnotId;
  /** A single level row at a knot: no other knot moves it. */
  readonly isRow: boolean;
  readonly bumps: boolean;
  readonly bustPoint: boolean;
  readonly armhole: boolean;
  /** What it is read from, where that is not the body itself. */
  readonly stance?: StanceId;
  /** Further unknowns it depends on that shape nothing. */
  readonly outside?: readonly ParameterId[];
}

export interface TapeRule {
  readonly kind: TapeKind;
  readonly sided: boolean;
  readonly reach: TapeReach;
  /** Length in mm. */
  readonly measure: (context: TapeContext, side: Side) => number;
  /** n × 3 path; closed for girths. */
  readonly trace: (context: TapeContext, side: Side) => Float64Array;
  /** How the length changes with the points of the surface that carry the tape. */
  readonly touch: (context: TapeContext, side: Side) => TapeTouch;
}

export function reach(from: KnotId, to: KnotId, more: Partial<TapeReach> = {}): TapeReach {
  return { from, to, isRow: from === to, bumps: true, bustPoint: false, armhole: false, ...more };
}

/** Position of a knot in the rails, for comparing reaches. */
export function knotIndex(knot: KnotId): number {
  return KNOT_IDS.indexOf(knot);
}

export function sideAngle(side: Side): number {
  return side === 'right' ? 0 : Math.PI;
}

export function rowOf(context: TapeContext, v: number): Float64Array {
  let points = context.rows.get(v);
  if (!points) {
    points = sampleRow(context.evaluator, v);
    context.rows.set(v, points);
  }
  return points;
}

/** The points furthest apart along the axis, the lower first. */
export function traceExtent(row: Float64Array, v: number, axis: 0 | 1): TapePath {
  let low = 0;
  let high = 0;
  for (let i = 0; i < row.length; i += 3) {
    if (row[i + axis] < row[low + axis]) low = i;
    if (row[i + axis] > row[high + axis]) high = i;
  }
  const { chart } = pathOfRow(row, v);
  const at = [low / 3, high / 3];
  return {
    points: Float64Array.from([...row.subarray(low, low + 3), ...row.subarray(high, high + 3)]),
    chart: Float64Array.from(at.flatMap((i) => [chart[2 * i], chart[2 * i + 1]])),
  };
}
