import type { Issue, Phrase } from '../base/index.ts';
import type { FrontPhoto, PhotoId, SidePhoto } from './photo-types.ts';
import { phrase } from './phrases.ts';
import type { BodyInput } from './types.ts';

/** From nearer a lens does not see both shoulders, and an error in its place bends all it shows; mm (common practice, no source). */
const LEAST_DISTANCE = 1000;
/** Fewer points of an edge tell nothing of its shape. */
const LEAST_POINTS = 3;

/** Pictures that nothing can be read from. */
export function checkPhotos({ photos = {} }: Pick<BodyInput, 'photos'>): Issue[] {
  return (['front', 'side'] as const).flatMap((photo) => {
    const drawn = photos[photo];
    return drawn === undefined ? [] : checkPhoto(photo, drawn);
  });
}

function checkPhoto(
  photo: PhotoId,
  { camera, outline, clicks = {}, drawingError }: FrontPhoto | SidePhoto,
): Issue[] {
  const { distance, lensHeight } = camera;
  const issues: Issue[] = [];
  const tell = (code: string, part: string, severity: Issue['severity'], message: Phrase): void => {
    issues.push({ code, path: `photos.${photo}.${part}`, severity, message });
  };
  if (!(distance >= LEAST_DISTANCE && Number.isFinite(distance))) {
    tell(
      'photo-too-near',
      'camera.distance',
      'error',
      phrase('body.photo-too-near', { photo, least: LEAST_DISTANCE }),
    );
  }
  const edges = Object.entries(outline);
  const numbers = [
    ...[lensHeight, drawingError],
    ...[...edges.flatMap(([, points]) => points), ...Object.values(clicks)].flatMap(({ p, q }) => [p, q]),
  ];
  if (!numbers.every(Number.isFinite) || drawingError < 0) {
    tell('photo-unreadable', 'outline', 'error', phrase('body.photo-unreadable', { photo }));
  }
  for (const [edge, points] of edges) {
    if (points.length >= LEAST_POINTS || edge.endsWith('Shoulder')) continue;
    tell(
      'photo-few-points',
      `outline.${edge}`,
      'warning',
      phrase('body.photo-few-points', { photo, count: points.length, least: LEAST_POINTS }),
    );
  }
  return issues;
}
