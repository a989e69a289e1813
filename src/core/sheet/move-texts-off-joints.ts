import { cornersOfText, type DrawingPath, makeText, placeItem, placePoints } from '../drawing/index.ts';
import { type Bounds, boundsOfPoints, doSegmentsTouch } from '../math/index.ts';
import { drawPieces, type Piece, type PieceText } from '../pattern/index.ts';
import { createFreeMap, type FreeMap, findFree, takeRectangle } from './free-map.ts';
import { type BlockPlace, isOnJoint } from './place-on-grid.ts';
import type { TileGrid } from './plan-tiles.ts';

/** Kept between moved words and a joint, mm. */
const FROM_JOINT = 1.5;
/** What a label is scaled by until it lies on one page, and the smallest letters that are still read, mm. */
const SHRINKS = [1, 0.85, 0.7, 0.6, 0.5];
const SMALLEST = 2.5;
/** Words that name a line may move by so many times their size and still be seen to name it. */
const FARTHEST = 5;

/**
 * The piece with its notes, its label, and every word that would lie over a joint of its pages, moved to the nearest place on one page
 * that is free of lines and on the same side of the cut and sew lines; `mayShrink` lets a label be turned and set smaller for it. Words of a line stay near it; what finds no place stays.
 * O(words on joints · places tried · points).
 */
export function moveTextsOffJoints(
  piece: Piece,
  place: BlockPlace,
  grid: TileGrid,
  mayShrink = false,
): Piece {
  const { columns, rows, placement } = place;
  if (columns * rows === 1) return piece;
  const boxOf = (texts: readonly PieceText[]): Bounds => boundsOfTexts(texts, placement);
  const isSplit = (texts: readonly PieceText[]): boolean => {
    const { minX, maxX, minY, maxY } = boxOf(texts);
    return isOnJoint(minX, maxX, grid.cellWidth, columns) || isOnJoint(minY, maxY, grid.cellHeight, rows);
  };
  const label = piece.texts.filter(({ anchor, isNote }) => anchor === 'start' && !isNote);
  const notes = piece.texts.filter(({ isNote }) => isNote);
  const names = piece.texts.filter(({ anchor }) => anchor !== 'start');
  const groups = [notes, label, ...names.map((text) => [text])];
  const split = groups.filter((group) => group.length > 0 && isSplit(group));
  if (split.length === 0) return piece;

  const still = {
    ...piece,
    texts: piece.texts.filter((text) => !split.some((group) => group.includes(text))),
  };
  const layers = drawPieces([still], [placement]);
  const maps = mapsOfCells(
    place,
    grid,
    layers.flatMap(({ items }) => items),
  );
  const barriers = barriersOf(layers);
  const moved = new Map<PieceText, PieceText>();
  for (const group of split) {
    const isBlock = group === label || group === notes;
    const farthest = isBlock ? Number.POSITIVE_INFINITY : FARTHEST * group[0].size;
    for (const shape of isBlock && mayShrink ? shapesOf(group) : [group]) {
      const { minX, minY, maxX, maxY } = boxOf(shape);
      const [width, height, x, y] = [maxX - minX, maxY - minY, (minX + maxX) / 2, (minY + maxY) / 2];
      const isAllowed = (toX: number, toY: number): boolean =>
        Math.hypot(toX - x, toY - y) <= farthest && isSameSide(barriers, x, y, toX, toY);
      let best: { map: FreeMap; x: number; y: number; distance: number } | null = null;
      for (const map of maps) {
        const found = findFree(map, width, height, x, y, isAllowed);
        if (!found) continue;
        const distance = Math.hypot(found.x - minX, found.y - minY);
        if (!best || distance < best.distance) best = { map, ...found, distance };
      }
      if (!best) continue;
      takeRectangle(best.map, { minX: best.x, minY: best.y, maxX: best.x + width, maxY: best.y + height });
      // Back from the page, where the piece is turned and y runs down, to the piece's own axes.
      const back = { dx: 0, dy: 0, angle: -(placement.angle ?? 0) };
      const [dx, down] = placePoints(Float64Array.of(best.x - minX, best.y - minY), back);
      for (const [i, text] of shape.entries())
        moved.set(group[i], { ...text, x: text.x + dx, y: text.y - down });
      break;
    }
  }
  return { ...piece, texts: piece.texts.map((text) => moved.get(text) ?? text) };
}

/** A block of words as it is, a quarter turned, and both ever smaller, as long as it can be read. */
function shapesOf(group: readonly PieceText[]): PieceText[][] {
  const [cx, cy] = [group[0].x, group[0].y];
  const smallest = Math.min(...group.map(({ size }) => size));
  return SHRINKS.filter((scale) => scale === 1 || scale * smallest >= SMALLEST).flatMap((scale) =>
    [0, Math.PI / 2].map((turn) => {
      const [cos, sin] = [scale * Math.cos(turn), scale * Math.sin(turn)];
      return group.map((text) => ({
        ...text,
        x: cx + cos * (text.x - cx) - sin * (text.y - cy),
        y: cy + sin * (text.x - cx) + cos * (text.y - cy),
        angle: text.angle + turn,
        size: scale * text.size,
      }));
    }),
  );
}

function boundsOfTexts(texts: readonly PieceText[], placement: BlockPlace['placement']): Bounds {
  const corners = texts.map(({ x, y, text, size, anchor, angle }) =>
    cornersOfText(placeItem(makeText(x, -y, text, size, { anchor, angle: -angle }), placement)),
  );
  return boundsOfPoints(corners) as Bounds;
}

function mapsOfCells(
  { columns, rows }: BlockPlace,
  { cellWidth, cellHeight }: TileGrid,
  items: Parameters<typeof createFreeMap>[1],
): FreeMap[] {
  const all = [...items];
  return Array.from({ length: columns * rows }, (_, k) => {
    const [column, row] = [k % columns, Math.floor(k / columns)];
    const cell = {
      minX: column * cellWidth + FROM_JOINT,
      minY: row * cellHeight + FROM_JOINT,
      maxX: (column + 1) * cellWidth - FROM_JOINT,
      maxY: (row + 1) * cellHeight - FROM_JOINT,
    };
    return createFreeMap(cell, all);
  });
}

/** Closed outlines one by one, and all sew lines together, which close round the piece. */
function barriersOf(layers: ReturnType<typeof drawPieces>): DrawingPath[][] {
  const pathsOf = (name: string): DrawingPath[] =>
    layers.flatMap((layer) =>
      layer.name === name ? layer.items.filter((item): item is DrawingPath => item.kind === 'path') : [],
    );
  return [...pathsOf('cut').flatMap((path) => (path.closed ? [[path]] : [])), pathsOf('sew')];
}

/** Whether the way from one point to the other crosses each closed line an even number of times. */
function isSameSide(
  barriers: readonly (readonly DrawingPath[])[],
  ax: number,
  ay: number,
  bx: number,
  by: number,
): boolean {
  return barriers.every((paths) => {
    let crossings = 0;
    for (const { points, closed } of paths) {
      const count = points.length / 2;
      for (let i = 0; i < (closed ? count : count - 1); i++) {
        const j = (i + 1) % count;
        if (
          doSegmentsTouch(ax, ay, bx, by, points[2 * i], points[2 * i + 1], points[2 * j], points[2 * j + 1])
        )
          crossings++;
      }
    }
    return crossings % 2 === 0;
  });
}
