/** Width of a strip of the sheet, mm: outlines are compared strip by strip. */
const STRIP = 4;

export interface Packing {
  /** Per outline: translation that brings it to its place. */
  readonly offsets: readonly { readonly dx: number; readonly dy: number }[];
  /** Lowest point used, mm from the top. */
  readonly height: number;
}

/**
 * Places outlines (closed, n × 2, page coordinates) on a sheet of given width without turning them, keeping
 * `gap` mm between any two and to the sheet's edges. Tallest first, each as far up as the outlines above it
 * allow (a skyline kept in strips, compared with the outline's own upper contour), then as far left.
 * Returns the index of the first outline wider than the sheet instead, as `tooWide`.
 * Cost O(#outlines · strips²) after O(n) for the contours. Greedy: not the least length of cloth.
 */
export function packOutlines(
  outlines: readonly Float64Array[],
  sheetWidth: number,
  gap: number,
): Packing | { readonly tooWide: number; readonly width: number } {
  const shapes = outlines.map((points) => contourOf(points, gap));
  const strips = Math.floor((sheetWidth - gap) / STRIP);
  const tooWide = shapes.findIndex((shape) => shape.upper.length > strips);
  if (tooWide >= 0) return { tooWide, width: shapes[tooWide].width };

  const order = shapes.map((_, i) => i).sort((a, b) => shapes[b].height - shapes[a].height || a - b);
  const skyline = new Float64Array(strips);
  const offsets = outlines.map(() => ({ dx: 0, dy: 0 }));
  let height = 0;
  for (const index of order) {
    const { upper, lower, minX, minY } = shapes[index];
    let best = { strip: 0, top: Number.POSITIVE_INFINITY };
    for (let strip = 0; strip + upper.length <= strips; strip++) {
      let top = 0;
      for (let i = 0; i < upper.length; i++) top = Math.max(top, skyline[strip + i] - upper[i]);
      if (top < best.top - 1e-9) best = { strip, top };
    }
    const top = best.top + gap;
    for (let i = 0; i < upper.length; i++) skyline[best.strip + i] = top + lower[i];
    offsets[index] = { dx: gap + best.strip * STRIP - minX, dy: top - minY };
    height = Math.max(height, top + shapes[index].height);
  }
  return { offsets, height: height + gap };
}

interface Contour {
  readonly minX: number;
  readonly minY: number;
  readonly width: number;
  readonly height: number;
  /** Per strip (and `gap` beyond it on either side): highest and lowest y of the outline, from its own top. */
  readonly upper: Float64Array;
  readonly lower: Float64Array;
}

function contourOf(points: Float64Array, gap: number): Contour {
  let [minX, minY, maxX, maxY] = [points[0], points[1], points[0], points[1]];
  for (let i = 0; i < points.length; i += 2) {
    minX = Math.min(minX, points[i]);
    maxX = Math.max(maxX, points[i]);
    minY = Math.min(minY, points[i + 1]);
    maxY = Math.max(maxY, points[i + 1]);
  }
  // The last strips are the gap to the right-hand neighbour.
  const strips = Math.ceil((maxX - minX + gap) / STRIP);
  const upper = new Float64Array(strips).fill(maxY - minY);
  const lower = new Float64Array(strips).fill(0);
  for (let i = 0, j = points.length - 2; i < points.length; j = i, i += 2) {
    const x0 = Math.min(points[i], points[j]) - minX - gap;
    const x1 = Math.max(points[i], points[j]) - minX + gap;
    const first = Math.max(0, Math.floor(x0 / STRIP));
    const last = Math.min(strips - 1, Math.floor(x1 / STRIP));
    for (let strip = first; strip <= last; strip++) {
      const [low, high] = rangeOver(
        points,
        j,
        i,
        minX + strip * STRIP - gap,
        minX + (strip + 1) * STRIP + gap,
      );
      upper[strip] = Math.min(upper[strip], low - minY);
      lower[strip] = Math.max(lower[strip], high - minY);
    }
  }
  return { minX, minY, width: maxX - minX, height: maxY - minY, upper, lower };
}

/** Least and greatest y of segment a–b over [from, to] in x. */
function rangeOver(points: Float64Array, a: number, b: number, from: number, to: number): [number, number] {
  const [ax, ay, bx, by] = [points[a], points[a + 1], points[b], points[b + 1]];
  const yAt = (x: number): number => {
    const t = ax === bx ? 0 : Math.min(1, Math.max(0, (x - ax) / (bx - ax)));
    return ay + t * (by - ay);
  };
  if (ax === bx) return [Math.min(ay, by), Math.max(ay, by)];
  const [p, q] = [yAt(from), yAt(to)];
  return [Math.min(p, q), Math.max(p, q)];
}
