import type { ChartSurface } from '../mesh/index.ts';

/** One row of the body that the sleeve is to take: its outline, divided where the cloth is held. mm. */
export interface SectionTarget {
  readonly v: number;
  /** Mean height of the row. */
  readonly z: number;
  /** Chart angles of the held places, rising. */
  readonly heldAt: Float64Array;
  /** n × 2, closed, counter-clockwise; span k takes `pieces[k]` points from its held place on. */
  readonly outline: Float64Array;
  /** Height of each outline point (rows above the chest are not quite level). */
  readonly heights: Float64Array;
  readonly pieces: readonly number[];
  /** Length of cloth of every span, measured along the row. */
  readonly spans: Float64Array;
  readonly perimeter: number;
}

/** About so many points round a row: the chords fall short of a girth by about 0.04 %. */
const POINTS = 120;

/** The row at chart height v with the cloth held at the given angles (rising, within one turn). */
export function sliceTarget(surface: ChartSurface, v: number, heldAt: ArrayLike<number>): SectionTarget {
  const held = Float64Array.from(heldAt);
  const ends = Array.from(held, (_, k) => held[k + 1] ?? held[0] + 2 * Math.PI);
  const pieces = ends.map((end, k) => Math.max(2, Math.round((POINTS * (end - held[k])) / (2 * Math.PI))));
  const chart: number[] = [];
  ends.forEach((end, k) => {
    for (let i = 0; i < pieces[k]; i++) chart.push(held[k] + ((end - held[k]) * i) / pieces[k], v);
  });
  const count = chart.length / 2;
  const points = surface.evaluate(Float64Array.from(chart));
  const outline = new Float64Array(2 * count);
  const heights = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    outline[2 * i] = points[3 * i];
    outline[2 * i + 1] = points[3 * i + 1];
    heights[i] = points[3 * i + 2];
  }
  const spans = new Float64Array(held.length);
  for (let k = 0, i = 0; k < pieces.length; k++) {
    for (let end = i + pieces[k]; i < end; i++) {
      const a = 3 * i;
      const b = 3 * ((i + 1) % count);
      spans[k] += Math.hypot(
        points[b] - points[a],
        points[b + 1] - points[a + 1],
        points[b + 2] - points[a + 2],
      );
    }
  }
  const perimeter = spans.reduce((sum, span) => sum + span, 0);
  const z = heights.reduce((sum, height) => sum + height, 0) / count;
  return { v, z, heldAt: held, outline, heights, pieces, spans, perimeter };
}

/** The outline's points at the held places, n × 2. */
export function heldPoints(target: SectionTarget): Float64Array {
  const points = new Float64Array(2 * target.pieces.length);
  for (let k = 0, i = 0; k < target.pieces.length; i += target.pieces[k++]) {
    points[2 * k] = target.outline[2 * i];
    points[2 * k + 1] = target.outline[2 * i + 1];
  }
  return points;
}
