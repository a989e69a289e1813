import { LAYING_OPTIONS } from '../../core/laying/index.ts';
import { clamp } from '../../core/math/index.ts';
import type { ClothPhoto, PhotoMark } from './types.ts';

/** Two marks nearer to each other than this scale nothing truly, pixels. */
const LEAST_MARK_GAP = 20;
/** A repeat smaller than this is none, pixels. */
const LEAST_REPEAT = 8;

/** The photo scaled so that two marks on it lie `mm` apart on the cloth; null when the marks are too near to each other. */
export function scaleClothPhoto(
  photo: ClothPhoto,
  [a, b]: readonly [PhotoMark, PhotoMark],
  mm: number,
): ClothPhoto | null {
  const gap = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return gap < LEAST_MARK_GAP ? null : { ...photo, mmPerPixel: mm / gap };
}

/** One repeat between two corners, pixels; null when it is too small. */
export function cropRepeat(
  { width, height }: ClothPhoto,
  a: PhotoMark,
  b: PhotoMark,
): NonNullable<ClothPhoto['repeat']> | null {
  const [left, right] = [Math.min(a[0], b[0]), Math.max(a[0], b[0])].map((x) => clamp(x, 0, width));
  const [top, bottom] = [Math.min(a[1], b[1]), Math.max(a[1], b[1])].map((y) => clamp(y, 0, height));
  if (right - left < LEAST_REPEAT || bottom - top < LEAST_REPEAT) return null;
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/** Lengths of one repeat on the cloth, mm, to a tenth: up on the photo is along it. Null while the photo is not scaled. */
export function repeatOfPhoto(photo: ClothPhoto): { readonly along: number; readonly across: number } | null {
  const { mmPerPixel, repeat, width, height } = photo;
  if (mmPerPixel === null) return null;
  const length = (pixels: number, { max }: { readonly max: number }) =>
    Math.min(max, Math.round(10 * pixels * mmPerPixel) / 10);
  return {
    along: length(repeat?.height ?? height, LAYING_OPTIONS.print.along),
    across: length(repeat?.width ?? width, LAYING_OPTIONS.print.across),
  };
}
