import type { Issue, Phrase } from '../base/index.ts';
import type { ArmState } from './arm-states.ts';
import type { Arm } from './make-arm.ts';
import type { BodyPhotos, PhotoResidual } from './photo-types.ts';
import type { LandmarkId, LevelId } from './place-ids.ts';
import type { WaistKind } from './waist-kinds.ts';

export type * from './photo-types.ts';
export type { LandmarkId, LevelId };

export type Figure = 'bust' | 'chest';
export type SidedValue = { readonly left: number; readonly right: number };
export type MeasureValue = number | SidedValue;

/** What the fit reads: millimetres, keyed by measure id (see `measures.ts`). */
export interface BodyInput {
  readonly figure: Figure;
  /** Where the waist was tied, for every measure that starts or ends there; absent = narrowest. */
  readonly waist?: WaistKind;
  /** How the arms were held when measured; absent = not said. Nothing of the shape follows, what is written does. */
  readonly arms?: ArmState;
  readonly measures: Readonly<Record<string, MeasureValue>>;
  readonly readings?: Readonly<Record<string, readonly number[]>>;
  readonly shape?: Readonly<Record<string, string | number>>;
  /** Drawn over pictures of the person: read softly, beside tapes that stay exact. */
  readonly photos?: BodyPhotos;
}

/** A horizontal row of the chart: constant v, constant z. Where hips or armpits differ in height it tilts; z is its middle. */
export interface BodyLevel {
  readonly id: LevelId;
  readonly name: Phrase;
  readonly v: number;
  readonly z: number;
}

export interface ChartPoint {
  readonly u: number;
  readonly v: number;
}

/** A distance is read off the wall or up from the floor. */
export type TapeKind = 'girth' | 'length' | 'width' | 'depth' | 'distance';

/** One tape: what was asked for and what the fitted body reads. mm. */
export interface TapeReading {
  /** Measure id, with `.left` or `.right` where both sides were given. */
  readonly id: string;
  readonly kind: TapeKind;
  readonly target: number;
  readonly got: number;
  readonly status: 'met' | 'conflict' | 'estimated';
  /** One standard deviation: of the estimate, or of a reading that is not met exactly; absent of a tape that is. */
  readonly spread?: number;
}

/** A fitted body: plain data, survives postMessage. `surfaceOfBody` turns it into a ChartSurface. */
export interface Body {
  readonly figure: Figure;
  /** Everything the surface is computed from; opaque outside this room. */
  readonly shape: BodyShape;
  /** From the hip up. */
  readonly levels: readonly BodyLevel[];
  readonly landmarks: Readonly<Record<LandmarkId, ChartPoint>>;
  /** What the finished level sections measure: taut girth, width and depth, mm. Keyed by level id. */
  readonly sections: Readonly<
    Record<LevelId, { readonly girth: number; readonly width: number; readonly depth: number }>
  >;
  /** Closed loops in the chart, n × 2 (u, v), counter-clockwise in the (u, v) plane; u may be unwrapped past π. */
  readonly armholes: { readonly right: Float64Array; readonly left: Float64Array };
  /** Right and left, when the arm measures were given. */
  readonly arms: readonly Arm[];
  readonly tapes: readonly TapeReading[];
  /** Polyline in space (n × 3 mm) of the path each tape takes, keyed like `tapes`; for pictures. */
  readonly tapePaths: Readonly<Record<string, Float64Array>>;
  /** Of every place drawn over a picture, where there is one. */
  readonly photoResiduals?: readonly PhotoResidual[];
  readonly issues: readonly Issue[];
  /** Where the fit ended, and of what; warms the next fit. */
  readonly unknowns: Float64Array;
  readonly unknownIds: readonly string[];
}

export interface BodyShape {
  readonly isMirrorSymmetric: boolean;
  readonly vRange: readonly [number, number];
  /** Chart heights of the knots shared by all rails. */
  readonly knots: Float64Array;
  /** The rise at each knot, mm: where the rails' splines run; strictly rising, the height z on the trunk. */
  readonly rises: Float64Array;
  /** Rail values at the knots, rail-major. */
  readonly rails: Float64Array;
  /** Bump parameters, a fixed number per bump. */
  readonly bumps: Float64Array;
  /**
   * Turn of the armhole's plane against the trunk, its reach before and behind the side line, and the turn of the shoulders
   * against the hips; radians.
   */
  readonly armhole: {
    readonly yaw: number;
    readonly front: number;
    readonly back: number;
    readonly turn: number;
    /** Of its outline in half axes, at even angles counter-clockwise from the front; where left out an oval: all 1. */
    readonly radii?: Float64Array;
  };
  /** The faired trunk, when there is one: it stands in for the rails; bumps and armholes ride on it all the same. */
  readonly net?: TrunkNet;
}

/** A tensor product of cubic B-splines, periodic and evenly spaced in u, ending in its first and last row in the rise. */
export interface TrunkNet {
  /** The rise at each chart knot, mm; on the trunk exactly the height, so that levels stay level. */
  readonly rises: Float64Array;
  /** B-spline knots in the rise, rows + 4. */
  readonly knots: Float64Array;
  /** rows × NET_COLUMNS × 3, mm. */
  readonly controls: Float64Array;
}
