import type { CardPicture } from '../../store/index.ts';
import { outlineOf } from '../parts/side-drawing.ts';

/** The picture of a body that has no form yet, from points all over it, n × 3 mm. */
export function pictureOfPoints(points: Float64Array): CardPicture {
  return { front: outlineOf(points, 'front'), side: outlineOf(points, 'side'), seams: '' };
}
