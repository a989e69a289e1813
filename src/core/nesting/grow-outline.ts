import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import { measurePolygonArea, thinPolyline } from '../math/index.ts';

/** Outlines with so few corners are not simplified. Ours. */
const FEW = 24;

/**
 * An outline that holds the given one with `margin` all round, of fewer points where it had many: grown by half the tolerance,
 * then thinned by as much, so nowhere wider than `margin + tolerance`. Corners are cut square beyond 2 margins. n × 2, simple;
 * hollows that close are filled.
 */
export function growOutline(outline: Float64Array, margin: number, tolerance: number): Float64Array {
  const slack = outline.length / 2 > FEW ? tolerance / 2 : 0;
  const clean = withoutRepeats(outline);
  const path = Array.from({ length: clean.length / 2 }, (_, i) => ({
    x: clean[2 * i],
    y: clean[2 * i + 1],
  }));
  const digits = digitsFor(clean);
  const grown = inflatePathsD([path], margin + slack, JoinType.Miter, EndType.Polygon, 2, digits).map((one) =>
    Float64Array.from(one.flatMap(({ x, y }) => [x, y])),
  );
  const area = (one: Float64Array): number => Math.abs(measurePolygonArea(one));
  const outer = grown.reduce((most, one) => (area(one) > area(most) ? one : most), new Float64Array(0));
  if (slack === 0) return outer;
  const kept = thinPolyline(outer, true, slack);
  return Float64Array.from(kept.flatMap((i) => [outer[2 * i], outer[2 * i + 1]]));
}

/** Decimals that leave nine digits in front of what clipping rounds to. */
function digitsFor(outline: Float64Array): number {
  const size = outline.reduce((most, value) => Math.max(most, Math.abs(value)), 1e-9);
  let digits = 8;
  for (let reach = 10; reach < size && digits > 0; reach *= 10) digits--;
  return digits;
}

/** Without points that equal the one before; counter-clockwise. */
export function withoutRepeats(outline: Float64Array): Float64Array {
  const n = outline.length / 2;
  const kept: number[] = [];
  for (let i = 0; i < n; i++) {
    const before = (i + n - 1) % n;
    if (outline[2 * i] !== outline[2 * before] || outline[2 * i + 1] !== outline[2 * before + 1])
      kept.push(i);
  }
  if (measurePolygonArea(outline) < 0) kept.reverse();
  return Float64Array.from(kept.flatMap((i) => [outline[2 * i], outline[2 * i + 1]]));
}
