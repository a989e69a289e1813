import type { Issue, Phrase } from '../base/index.ts';
import { isInsidePolygon, measureDistanceToPolyline, reversePolyline } from '../math/index.ts';
import { phrase } from './phrases.ts';
import type { DesignedBrace } from './types.ts';
import type { FlatStrip } from './unroll-strip.ts';
import { LEAST_BESIDE, LEAST_BETWEEN, MOST_OPEN, type WebOpening } from './web-openings.ts';

/**
 * Whether a brace with its openings (as drawn, several straps' slots perhaps made one) keeps enough cloth: to its seams and
 * ends, between two openings, and in height, as it pulls across. Issues: `web-cut-through`, an error where no cloth is
 * left. O(points²).
 */
export function checkOpenings(
  brace: DesignedBrace,
  strip: FlatStrip,
  openings: readonly WebOpening[],
): Issue[] {
  const outline = outlineOf(strip);
  const gaps = openings.flatMap((opening, i) => [
    ...checkEdge(brace, opening, outline),
    ...openings.slice(i + 1).flatMap((other) => checkBetween(brace, opening, other)),
  ]);
  return [...gaps, ...tooOpen(brace, strip, openings)];
}

function checkEdge({ name: brace }: DesignedBrace, opening: WebOpening, outline: Float64Array): Issue[] {
  const left = clearance(opening.outline, outline);
  const least = LEAST_BESIDE;
  const message = phrase('inside.little-cloth-at-edge', { brace, opening: nameOf(opening), left, least });
  return left >= least ? [] : [tooLittle(message, left, least)];
}

function checkBetween({ name: brace }: DesignedBrace, opening: WebOpening, next: WebOpening): Issue[] {
  const left = clearance(opening.outline, next.outline, true);
  const least = LEAST_BETWEEN;
  const names = { opening: nameOf(opening), other: nameOf(next) };
  const message = phrase('inside.little-cloth-between', { brace, ...names, left, least });
  return left >= least ? [] : [tooLittle(message, left, least)];
}

function nameOf({ passage, number }: WebOpening): Phrase {
  if (!passage) return phrase('opening.for-fill', { number });
  return phrase(passage.from === passage.to ? 'opening.for-strap' : 'opening.for-straps', { number });
}

function tooLittle(message: Phrase, left: number, limit: number): Issue {
  const severity = left > 0 ? 'warning' : 'error';
  return { code: 'web-cut-through', path: 'straps', message, severity, measured: left, limit };
}

function tooOpen({ name: brace }: DesignedBrace, strip: FlatStrip, openings: readonly WebOpening[]): Issue[] {
  const height = heightOf([...strip.left, ...strip.right]);
  const open = openings.reduce((sum, { outline }) => sum + heightOf(outline), 0) / height;
  if (open <= MOST_OPEN) return [];
  const message = phrase('inside.web-too-open', { brace, open, most: MOST_OPEN });
  const code = 'web-cut-through';
  return [{ code, path: 'straps', message, severity: 'warning', measured: open, limit: MOST_OPEN }];
}

/** The strip's edge, closed, counter-clockwise. */
function outlineOf({ left, right }: FlatStrip): Float64Array {
  return Float64Array.from([...right, ...reversePolyline(left)]);
}

/** Least distance of the hole's points from a closed line; negative where they lie beyond it, or in the other hole. */
function clearance(hole: Float64Array, line: Float64Array, isHole = false): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < hole.length; i += 2) {
    const distance = measureDistanceToPolyline(line, true, hole[i], hole[i + 1]);
    const isBeyond = isInsidePolygon(line, hole[i], hole[i + 1]) === isHole;
    least = Math.min(least, isBeyond ? -distance : distance);
  }
  return least;
}

function heightOf(points: ArrayLike<number>): number {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 1; i < points.length; i += 2) {
    least = Math.min(least, points[i]);
    most = Math.max(most, points[i]);
  }
  return most - least;
}
