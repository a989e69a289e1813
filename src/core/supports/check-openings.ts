import { type Issue, plain, wordsOf } from '../base/index.ts';
import { isInsidePolygon, measureDistanceToPolyline } from '../math/index.ts';
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
    ...tooLittle(
      brace,
      `between ${nameOf(opening)} and its edge`,
      clearance(opening.outline, outline),
      LEAST_BESIDE,
    ),
    ...openings
      .slice(i + 1)
      .flatMap((other) =>
        tooLittle(
          brace,
          `between ${nameOf(opening)} and ${nameOf(other)}`,
          clearance(opening.outline, other.outline, true),
          LEAST_BETWEEN,
        ),
      ),
  ]);
  return [...gaps, ...tooOpen(brace, strip, openings)];
}

function nameOf({ passage, id }: WebOpening): string {
  if (!passage) return id.replace('-', ' ');
  return passage.from === passage.to
    ? `the slot for a strap, ${id.replace('-', ' ')},`
    : `the slot several straps share, ${id.replace('-', ' ')},`;
}

function tooLittle(brace: DesignedBrace, where: string, left: number, limit: number): Issue[] {
  if (left >= limit) return [];
  const words = left > 0 ? `Only ${left.toFixed(1)} mm of cloth are left` : 'No cloth is left';
  const message = `${words} ${where} on the ${wordsOf(brace.name)}; ${limit} mm are needed. ${REMEDY}`;
  const severity = left > 0 ? 'warning' : 'error';
  return [
    { code: 'web-cut-through', path: 'straps', message: plain(message), severity, measured: left, limit },
  ];
}

function tooOpen(brace: DesignedBrace, strip: FlatStrip, openings: readonly WebOpening[]): Issue[] {
  const height = heightOf([...strip.left, ...strip.right]);
  const open = openings.reduce((sum, { outline }) => sum + heightOf(outline), 0) / height;
  if (open <= MOST_OPEN) return [];
  const percent = (part: number): string => `${(100 * part).toFixed(0)} %`;
  const message = `The ${wordsOf(brace.name)} is open over ${percent(open)} of its height; ${percent(MOST_OPEN)} is the most over which it still holds front to back. ${REMEDY}`;
  const code = 'web-cut-through';
  return [
    { code, path: 'straps', message: plain(message), severity: 'warning', measured: open, limit: MOST_OPEN },
  ];
}

const REMEDY =
  'Back this web with a second layer of cloth, or leave the straps out (in the project file, inside.straps: false).';

/** The strip's edge, closed, counter-clockwise. */
function outlineOf({ left, right }: FlatStrip): Float64Array {
  const back = left.map((_, i) => left[left.length - 2 - 2 * (i >> 1) + (i % 2)]);
  return Float64Array.from([...right, ...back]);
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
