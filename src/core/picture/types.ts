import type { Phrase } from '../base/index.ts';

/** From where a picture is seen: parallel light, no perspective. */
export interface Camera {
  /** Radians from straight in front towards the wearer's right; π is from behind. */
  readonly azimuth: number;
  /** Radians over the level. */
  readonly elevation: number;
  /** mm on paper for one mm of the thing. */
  readonly scale: number;
  /** The form stands on its head. */
  readonly isTurned?: boolean;
}

/** What a sheet is, for its tint and for leaving whole kinds out. */
export type SheetKind =
  | 'panel'
  | 'web'
  | 'tie'
  | 'strap'
  | 'throat'
  | 'sleeve'
  | 'pole'
  | 'plate'
  | 'block'
  | 'support'
  | 'cushion'
  | 'arm'
  | 'stand';

/** One thing that can be shown, drawn as a ghost, or left out. */
export interface Sheet {
  readonly id: string;
  readonly kind: SheetKind;
  /** Where it is, seen by the wearer: of panels by the middle of their chart angles. */
  readonly half: 'front' | 'back';
  readonly side: 'right' | 'left' | 'centre';
}

/** A smooth surface of one or several sheets, sewn together where they share vertices. mm. */
export interface Surface {
  /** #V × 3. */
  readonly positions: Float64Array;
  /** #F × 3, counter-clockwise seen from the right side. */
  readonly triangles: Uint32Array;
  /** #V × 3 unit normals, out of the right side. */
  readonly normals: Float64Array;
  /** #F: number of the sheet in the scene. */
  readonly sheetOf: Uint16Array;
}

/** A line that lies on sheets. */
export interface SceneLine {
  /** Seams: the seam's id; the two edges of an open one have the same. */
  readonly id: string;
  readonly kind: 'seam' | 'level' | 'tape';
  readonly letter?: string;
  /** n × 3, mm, and the normals of the sheet there. */
  readonly points: Float64Array;
  readonly normals: Float64Array;
  /** Numbers of the sheets it lies on; drawn while one of them is shown. */
  readonly sheets: readonly number[];
}

export interface Scene {
  readonly sheets: readonly Sheet[];
  readonly surfaces: readonly Surface[];
  readonly lines: readonly SceneLine[];
}

export type Showing = 'solid' | 'ghost' | 'none';

/** An arrow in space: straight, or bent sideways by `bend` of its length; with words at its tail. */
export interface SceneArrow {
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
  /** To the right of its way on the page, as a share of its length; 0: straight. */
  readonly bend?: number;
  readonly words?: Phrase;
}
