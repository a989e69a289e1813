import type { Drawing, DrawingPath } from '../../src/core/drawing/index.ts';

/** Black lines of one width in a picture, mm of paper. */
export function linesOfWidth(drawing: Drawing, strokeWidth: number): DrawingPath[] {
  return drawing.layers
    .flatMap(({ items }) => items)
    .filter((item): item is DrawingPath => item.kind === 'path' && item.style?.strokeWidth === strokeWidth)
    .filter(({ style }) => style?.fill === undefined);
}

/** Points (n × 2) along lines, so far apart at most; the end closed to the start where a line is closed. */
export function sampleLines(lines: readonly DrawingPath[], step: number): number[][] {
  return lines.flatMap(({ points, closed }) => {
    const ring = closed ? [...points, points[0], points[1]] : [...points];
    const samples: number[][] = [];
    for (let i = 2; i < ring.length; i += 2) {
      const [dx, dy] = [ring[i] - ring[i - 2], ring[i + 1] - ring[i - 1]];
      const count = Math.max(1, Math.ceil(Math.hypot(dx, dy) / step));
      for (let k = 0; k < count; k++)
        samples.push([ring[i - 2] + (k / count) * dx, ring[i - 1] + (k / count) * dy]);
    }
    return samples;
  });
}

export function nearest(points: readonly number[][], x: number, y: number): number {
  return points.reduce((least, [px, py]) => Math.min(least, Math.hypot(px - x, py - y)), Infinity);
}
