import { clamp } from '../../core/math/index.ts';
import type { Photo, PhotoMark, PhotoSide, ViewName } from './types.ts';

/** The body as seen straight from one side, mm: right, and up. */
export interface SideBounds {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** A person on a photo is about this much taller than a body from base to neck. */
const PHOTO_OVER_BODY = 2.2;
/** Two marks nearer to each other than this scale nothing truly, pixels. */
const LEAST_MARK_GAP = 20;

/** The side a view shows straight on; null for the others. */
export function photoSideOf(view: ViewName): PhotoSide | null {
  return view === 'front' || view === 'side' ? view : null;
}

/** Where a new photo lies until it is scaled: round the body's middle, large enough for a whole person. */
export function placeNewPhoto(height: number, bounds: SideBounds): Pick<Photo, 'mmPerPixel' | 'x' | 'z'> {
  return {
    mmPerPixel: (PHOTO_OVER_BODY * (bounds.high - bounds.low)) / height,
    x: (bounds.left + bounds.right) / 2,
    z: (bounds.low + bounds.high) / 2,
  };
}

/** A mark's place in the view, mm to the right and up. */
export function placeOfMark(photo: Photo, [px, py]: PhotoMark): readonly [number, number] {
  const { width, height, mmPerPixel, x, z } = photo;
  return [x + (px - width / 2) * mmPerPixel, z - (py - height / 2) * mmPerPixel];
}

export function markAtPlace(photo: Photo, [x, z]: readonly [number, number]): PhotoMark {
  const { width, height, mmPerPixel } = photo;
  return [
    clamp(width / 2 + (x - photo.x) / mmPerPixel, 0, width),
    clamp(height / 2 - (z - photo.z) / mmPerPixel, 0, height),
  ];
}

/**
 * The photo scaled so that two marks lie `mm` apart; the middle between them stays where it is. Null when the marks are
 * too near to each other.
 */
export function scaleByMarks(
  photo: Photo,
  [a, b]: readonly [PhotoMark, PhotoMark],
  mm: number,
): Pick<Photo, 'mmPerPixel' | 'x' | 'z'> | null {
  const gap = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (gap < LEAST_MARK_GAP) return null;
  const middle: PhotoMark = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const [x, z] = placeOfMark(photo, middle);
  const mmPerPixel = mm / gap;
  return {
    mmPerPixel,
    x: x - (middle[0] - photo.width / 2) * mmPerPixel,
    z: z + (middle[1] - photo.height / 2) * mmPerPixel,
  };
}
