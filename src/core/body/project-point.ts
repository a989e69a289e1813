import type { PhotoCamera, PhotoView } from './photo-types.ts';

/** How the person stood in a picture, and what the rule is off by: found by the fit. */
export interface PhotoPose {
  /** To the picture's right of the middle of the view, mm. */
  readonly shift: number;
  /** How much higher the person stands than the rule, mm. */
  readonly rise: number;
  /** Turned about the upright, anticlockwise from above, radians. */
  readonly yaw: number;
  /** How much more than it should the rule shows: 0 for a true one. */
  readonly scale: number;
}

/**
 * Where the lens shows a point of the body, written to out as (p, q) in mm of the rule's plane (see `PicturePoint`). The body's axes:
 * x to the wearer's right, y to the front, z up from the waist, which is `floor` over the floor. A pinhole: what lies nearer than
 * the rule by d shows D / (D − d) as large, D the lens's distance. Pitch and roll are the rule's to have undone.
 * Source: central projection, e.g. Hartley and Zisserman, Multiple View Geometry, ch. 6.
 */
export function projectPoint(
  view: PhotoView,
  { distance, lensHeight }: PhotoCamera,
  { shift, rise, yaw, scale }: PhotoPose,
  floor: number,
  point: ArrayLike<number>,
  out: Float64Array,
): void {
  const x = point[0];
  const y = point[1];
  const z = point[2];
  const across = view === 'front' ? -x : view === 'right' ? y : -y;
  const towards = view === 'front' ? y : view === 'right' ? x : -x;
  const [c, s] = [Math.cos(yaw), Math.sin(yaw)];
  const nearer = towards * c - across * s;
  const larger = ((1 + scale) * distance) / (distance - nearer);
  out[0] = (across * c + towards * s + shift) * larger;
  out[1] = lensHeight + (z + floor + rise - lensHeight) * larger;
}
