import { type Result, success } from '../base/index.ts';
import {
  cornersOfText,
  type Drawing,
  type DrawingItem,
  type DrawingLayer,
  makeLayer,
  translateItem,
} from '../drawing/index.ts';
import { boundsOfPoints, isInsidePolygon } from '../math/index.ts';
import { clipPolygon } from './clip-polygon.ts';
import { clipPolyline } from './clip-polyline.ts';
import { divideDrawing } from './divide-drawing.ts';
import { drawJointsOfTile, placeJointMarks } from './draw-joints.ts';
import { drawFoot, drawNameInside } from './draw-page-names.ts';
import { createFreeMap } from './free-map.ts';
import { drawCrossesOfTile, placeCrosses } from './place-crosses.ts';
import { FOOTER, planTiles, type TileGrid, type TileOptions } from './plan-tiles.ts';
import type { CellWords, Tile, TiledDrawing } from './types.ts';

export type TileDrawingOptions = TileOptions & CellWords;

/**
 * Cuts a drawing into pages. Lines are cut at the borders (no clipping left to the printer), words are whole on every
 * page they touch. Each page gets the drawing's own layers, then `join` (borders to join at, diamonds) and `page` (names,
 * bars, crosses that check the joining). Cells without a line are left out; only pages that a line passes between are
 * joined. Fails when the paper does not hold its margins. O(points · pages they lie on).
 */
export function tileDrawing(drawing: Drawing, options: TileDrawingOptions): Result<TiledDrawing> {
  const planned = planTiles(options);
  if (!planned.ok) return planned;
  return success(tileOnGrid(drawing, planned.value, options));
}

/** The same on a grid that is already planned; `closesCuts` lets closed lines run along the borders where they are cut. */
export function tileOnGrid(
  drawing: Drawing,
  grid: TileGrid,
  words: CellWords,
  closesCuts = false,
): TiledDrawing {
  // 1. Which pages there are, and how they are joined.
  const division = divideDrawing(drawing, grid, words);
  const { tiles } = division;
  const { say } = words;

  // 2. Cut the drawing's own layers.
  const own = tiles.map((tile) =>
    drawing.layers.map((layer) => makeLayer(layer.name, clipItems(layer, tile, closesCuts))),
  );

  // 3. Marks and names where nothing else is.
  const maps = tiles.map((tile, i) =>
    createFreeMap(
      tile.cell,
      own[i].flatMap(({ items }) => items),
    ),
  );
  const outlines = drawing.layers.flatMap(({ name, items }) =>
    name === 'cut' ? items.filter((item) => item.kind === 'path' && item.closed) : [],
  );
  const isOnPiece = (x: number, y: number): boolean =>
    outlines.some((item) => item.kind === 'path' && isInsidePolygon(item.points, x, y));
  const marks = placeJointMarks(division, maps, say, closesCuts ? isOnPiece : undefined);
  const crosses = placeCrosses(division, maps);
  const pages = tiles.map((tile, i): Drawing => {
    const inside = [...drawCrossesOfTile(division, i, crosses, say), ...drawNameInside(division, i, maps[i])];
    const joints = drawJointsOfTile(division, i, marks, say, !closesCuts);
    const dx = grid.margin - tile.cell.minX;
    const dy = grid.margin - tile.cell.minY;
    const height = grid.isRoll
      ? tile.shown.maxY - tile.cell.minY + 2 * grid.margin + FOOTER
      : grid.pageHeight;
    const move = (items: readonly DrawingItem[]) => items.map((item) => translateItem(item, dx, dy));
    const { minX, minY, maxX, maxY } = tile.shown;
    const lettersWithin = { minX: minX + dx, minY: minY + dy, maxX: maxX + dx, maxY: maxY + dy };
    return {
      width: grid.pageWidth,
      height,
      title: `${tile.name} – ${drawing.title}`,
      layers: [
        ...own[i].map(({ name, items }) => ({ name, items: move(items), lettersWithin })),
        makeLayer('join', move(joints)),
        makeLayer('page', [...move(inside), ...drawFoot(division, i, drawing.title, height, say)]),
      ],
    };
  });
  return { ...division, pages };
}

/**
 * Paths cut at the page's edges, in parts `id`, `id/part-2` …; texts whose box reaches into its cell: those that reach only into
 * its strip stand whole on the page that comes to lie there.
 */
function clipItems({ items }: DrawingLayer, { cell, shown: box }: Tile, closesCuts: boolean): DrawingItem[] {
  return items.flatMap((item): DrawingItem[] => {
    const bounds = boundsOfPoints([item.kind === 'path' ? item.points : cornersOfText(item)]);
    if (!bounds || bounds.minX >= box.maxX || bounds.maxX <= box.minX) return [];
    if (bounds.minY >= box.maxY || bounds.maxY <= box.minY) return [];
    if (item.kind === 'text') return bounds.minX < cell.maxX && bounds.minY < cell.maxY ? [item] : [];
    const isWhole =
      bounds.minX >= box.minX &&
      bounds.maxX <= box.maxX &&
      bounds.minY >= box.minY &&
      bounds.maxY <= box.maxY;
    if (isWhole) return [item];
    const { id, style } = item;
    const closed = closesCuts && item.closed;
    const parts = closed ? clipPolygon(item.points, box) : clipPolyline(item.points, item.closed, box);
    return parts.map((points, k) => ({
      kind: 'path',
      points,
      closed,
      ...(id === undefined ? {} : { id: k === 0 ? id : `${id}/part-${k + 1}` }),
      ...(style === undefined ? {} : { style }),
    }));
  });
}
