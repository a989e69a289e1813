import { measurePolygonArea, thinPolyline } from '../math/index.ts';
import { smoothRun } from './smooth-run.ts';

/** Regions smaller than this are not drawn, mm² of paper. */
const SMALLEST = 0.4;
/** Takes the steps of the pixels away, mm of paper. */
const SIGMA = 0.34;
/** Lines are drawn over the edges of tints: so far off them they may be, mm of paper. */
const OFF = 0.07;

/** A region of one tint: its outer edge only. Drawn after those it lies in, it needs no holes. */
export interface TintRegion {
  readonly tint: number;
  /** n × 2 mm of paper, closed. */
  readonly points: Float64Array;
  /** mm² of paper inside its edge. */
  readonly area: number;
}

/** Where pixels lie on the page. */
interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly left: number;
  readonly top: number;
  readonly perMm: number;
}

/**
 * Regions of equal numbers among the pixels (`tints`, columns × rows; the outermost pixels are 0, which is paper), the largest first, so
 * that painting them in order shows each pixel's own. Paper enclosed by a tint is a region too. O(pixels).
 */
export function traceTints(tints: Uint8Array, grid: Grid): TintRegion[] {
  const { columns } = grid;
  const labels = labelRegions(tints, columns);
  const regions: TintRegion[] = [];
  let next = 1;
  for (let pixel = 0; pixel < tints.length; pixel++) {
    // Labels rise in the order of their first pixels.
    if (labels[pixel] !== next) continue;
    next++;
    const points = toPage(followEdge(labels, columns, pixel), grid);
    const area = Math.abs(measurePolygonArea(points));
    if (area < SMALLEST) continue;
    const smooth = smoothRun(points, true, SIGMA);
    const kept = thinPolyline(smooth, true, OFF);
    const thin = Float64Array.from({ length: 2 * kept.length }, (_, i) => smooth[2 * kept[i >> 1] + (i % 2)]);
    regions.push({ tint: tints[pixel], points: thin, area });
  }
  return regions.sort((a, b) => b.area - a.area);
}

/** A number for every region, neighbours by their sides; the paper round all is 0. Runs of a row are filled at once. */
function labelRegions(tints: Uint8Array, columns: number): Int32Array {
  const labels = new Int32Array(tints.length).fill(-1);
  const stack: number[] = [];
  let label = 0;
  for (let start = 0; start < tints.length; start++) {
    if (labels[start] >= 0) continue;
    const tint = tints[start];
    const isFree = (pixel: number): boolean => labels[pixel] < 0 && tints[pixel] === tint;
    stack.push(start);
    for (let pixel = stack.pop(); pixel !== undefined; pixel = stack.pop()) {
      if (!isFree(pixel)) continue;
      const row = pixel - (pixel % columns);
      let from = pixel;
      while (from > row && isFree(from - 1)) from--;
      // Of a run above or below only the first pixel is remembered: the others are filled with it.
      let wasFreeAbove = false;
      let wasFreeBelow = false;
      for (let at = from; at < row + columns && isFree(at); at++) {
        labels[at] = label;
        const isFreeAbove = at >= columns && isFree(at - columns);
        const isFreeBelow = at + columns < tints.length && isFree(at + columns);
        if (isFreeAbove && !wasFreeAbove) stack.push(at - columns);
        if (isFreeBelow && !wasFreeBelow) stack.push(at + columns);
        wasFreeAbove = isFreeAbove;
        wasFreeBelow = isFreeBelow;
      }
    }
    label++;
  }
  return labels;
}

/** Ways along the sides of pixels: right, down, left, up; and the pixel on the right hand and the left hand ahead. */
const WAYS = [
  { dx: 1, dy: 0, right: [0, 0], left: [0, -1] },
  { dx: 0, dy: 1, right: [-1, 0], left: [0, 0] },
  { dx: -1, dy: 0, right: [-1, -1], left: [-1, 0] },
  { dx: 0, dy: -1, right: [0, -1], left: [-1, -1] },
] as const;

/** Corners of pixels round a region, clockwise on the page, from the upper left of its first pixel. */
function followEdge(labels: Int32Array, columns: number, first: number): number[] {
  const label = labels[first];
  const [startX, startY] = [first % columns, Math.floor(first / columns)];
  const isIn = (x: number, y: number): boolean => labels[y * columns + x] === label;
  const corners: number[] = [];
  let [x, y, way] = [startX, startY, 0];
  do {
    corners.push(x, y);
    x += WAYS[way].dx;
    y += WAYS[way].dy;
    // Keeps the region on the right hand; where two of its pixels touch at a corner only, they are apart.
    for (const turn of [1, 0, 3]) {
      const next = (way + turn) % 4;
      const { right, left } = WAYS[next];
      if (!isIn(x + right[0], y + right[1]) || isIn(x + left[0], y + left[1])) continue;
      way = next;
      break;
    }
  } while (x !== startX || y !== startY || way !== 0);
  return corners;
}

function toPage(corners: readonly number[], { left, top, perMm }: Grid): Float64Array {
  const points = new Float64Array(corners.length);
  for (let i = 0; i < corners.length; i++) points[i] = (i % 2 === 0 ? left : top) + corners[i] / perMm;
  return points;
}
