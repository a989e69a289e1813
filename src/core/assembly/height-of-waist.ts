import { type Body, meanValue, surfaceOfBody } from '../body/index.ts';
import type { Project } from '../project/index.ts';

/** Where neither form nor person tells: about an adult's (ours). */
const USUAL = 1040;

/**
 * The waist level over the floor, mm, once the form stands: as chosen for the form, else as measured on the person, else
 * the person's nape less what the body rises from waist to nape, else 1040. The only place that says so. O(1).
 */
export function heightOfWaist(
  { inside, body: { measures } }: Pick<Project, 'inside' | 'body'>,
  body: Pick<Body, 'shape' | 'landmarks'>,
): number {
  if (inside.waistHeight !== undefined) return inside.waistHeight;
  if (measures.waistHeight !== undefined) return meanValue(measures.waistHeight);
  if (measures.napeHeight === undefined) return USUAL;
  const { u, v } = body.landmarks.neckBack;
  const rise = surfaceOfBody(body).evaluate(Float64Array.of(u, v))[2];
  return meanValue(measures.napeHeight) - rise;
}

/** Neither chosen for the form nor measured on the person, so that the stand's height is an adult's usual one. */
export function isHeightOfWaistAssumed({
  inside,
  body: { measures },
}: Pick<Project, 'inside' | 'body'>): boolean {
  return [inside.waistHeight, measures.waistHeight, measures.napeHeight].every(
    (height) => height === undefined,
  );
}
