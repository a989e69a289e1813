import type { Drawing, DrawingPath } from '../../src/core/drawing/index.ts';

/** Lines of one layer of a picture: `thin`, `seam`, `outline` or `bold`; those with dashes only where asked for. */
export function linesOf(drawing: Drawing, layer: string, hasDashes = false): DrawingPath[] {
  return drawing.layers
    .filter(({ name }) => name === layer)
    .flatMap(({ items }) => items)
    .filter((item): item is DrawingPath => item.kind === 'path')
    .filter(({ style }) => (style?.dash !== undefined) === hasDashes);
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
