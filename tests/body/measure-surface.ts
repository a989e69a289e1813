import type { ChartSurface } from '../../src/core/mesh/index.ts';

/** Tape readings taken from surface points alone, by methods the body room does not use. */

/** n × 3 points of the row at v. */
export function denseRow(surface: ChartSurface, v: number, count = 4000): Float64Array {
  const chart = new Float64Array(2 * count);
  for (let i = 0; i < count; i++) {
    chart[2 * i] = (2 * Math.PI * i) / count;
    chart[2 * i + 1] = v;
  }
  return surface.evaluate(chart);
}

/** Girth of the convex hull in plan by Cauchy's formula: the mean width over all directions times π. */
export function cauchyGirth(row: Float64Array, directions = 2000): number {
  let sum = 0;
  for (let k = 0; k < directions; k++) {
    const angle = (Math.PI * k) / directions;
    const c = Math.cos(angle);
    const s = Math.sin(angle);
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < row.length; i += 3) {
      const t = row[i] * c + row[i + 1] * s;
      if (t < low) low = t;
      if (t > high) high = t;
    }
    sum += high - low;
  }
  return (Math.PI * sum) / directions;
}

export function extent(row: Float64Array, axis: number): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = axis; i < row.length; i += 3) {
    low = Math.min(low, row[i]);
    high = Math.max(high, row[i]);
  }
  return high - low;
}

export function pointAt(surface: ChartSurface, u: number, v: number): Float64Array {
  return surface.evaluate(Float64Array.of(u, v));
}
