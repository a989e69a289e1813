import type { Drawing } from '../drawing/index.ts';
import { thinPolyline } from '../math/index.ts';
import type { PrintJob } from './print-pieces.ts';

/** How far a line of a small picture may lie from the true one, mm on paper: less than a pixel of it. */
const TRUE_TO = 0.8;

/** A page as a small picture; mm on paper. */
export interface PagePicture {
  /** How it is spoken of: `page 3`, or the first words of its title. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** Polylines, n × 2: cut lines, and lines on which pages are joined. */
  readonly cut: readonly Float64Array[];
  readonly join: readonly Float64Array[];
}

/** How a print comes out, before it is made. */
export interface PrintPlan {
  /** Id of the paper. */
  readonly paper: string;
  readonly pages: number;
  /** Those of them with the pattern, and the joints at which these are taped. */
  readonly patternPages: number;
  readonly joints: number;
  readonly pictures: readonly PagePicture[];
}

/** Counts and small pictures of the pages of a print, in the order to print them. O(points). */
export function picturePages({ pages, tiled }: PrintJob, paper: string): PrintPlan {
  const front = pages.length - tiled.tiles.length;
  return {
    paper,
    pages: pages.length,
    patternPages: tiled.tiles.length,
    joints: tiled.joints.length,
    pictures: pages.map((page, i) =>
      picturePage(page, i < front ? page.title.split(' – ')[0] : tiled.tiles[i - front].words),
    ),
  };
}

function picturePage(page: Drawing, name: string): PagePicture {
  const linesOf = (layer: string): Float64Array[] =>
    page.layers
      .filter((one) => one.name === layer)
      .flatMap(({ items }) => items)
      .flatMap((item) => (item.kind === 'path' ? [thinned(item.points, item.closed)] : []));
  const { width, height } = page;
  return { name, width, height, cut: linesOf('cut'), join: linesOf('join') };
}

function thinned(points: Float64Array, isClosed: boolean): Float64Array {
  const kept = thinPolyline(points, isClosed, TRUE_TO);
  if (isClosed) kept.push(0);
  return Float64Array.from(kept.flatMap((i) => [points[2 * i], points[2 * i + 1]]));
}
