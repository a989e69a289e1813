import type { Say } from '../base/index.ts';
import { type DrawingItem, makePath, makeText } from '../drawing/index.ts';
import { type FreeMap, isFree, takeRectangle } from './free-map.ts';
import { phrase } from './phrases.ts';
import type { Division, Tile } from './types.ts';

const ARM = 3;
const SIZE = 3;
/** Area of a cross with its two lines of words, mm from the cross's middle. */
const AREA = { left: 4, right: 42, up: 4.5, down: 4.5 };
/** Distances are whole multiples of this, mm. */
const STEP = 10;

/** Two crosses on two pages that must come out exactly this far apart once the pages are joined. */
export interface Crosses {
  readonly from: number;
  readonly to: number;
  readonly x: number;
  readonly y: number;
  readonly isUpright: boolean;
  readonly length: number;
}

/**
 * For every group of joined pages: a pair of crosses as far apart as can be found down one column and one along one row,
 * in places free of lines. Measured after joining, they show whether the joints add up. A group without room has none.
 */
export function placeCrosses({ tiles, grid }: Division, maps: readonly FreeMap[]): Crosses[] {
  const crosses: Crosses[] = [];
  for (const group of new Set(tiles.map((tile) => tile.group))) {
    const members = tiles.map((tile, index) => ({ tile, index })).filter(({ tile }) => tile.group === group);
    for (const isUpright of [true, false]) {
      const lane = longestLane(members, isUpright);
      if (lane.length < 2) continue;
      const first = lane[0];
      const last = lane[lane.length - 1];
      const found = findPair(
        maps[first.index],
        maps[last.index],
        first.tile,
        last.tile,
        isUpright,
        grid.cellWidth,
      );
      if (!found) continue;
      crosses.push({ from: first.index, to: last.index, isUpright, ...found });
      const [dx, dy] = isUpright ? [0, found.length] : [found.length, 0];
      takeRectangle(maps[first.index], areaAt(found.x, found.y));
      takeRectangle(maps[last.index], areaAt(found.x + dx, found.y + dy));
    }
  }
  return crosses;
}

interface Member {
  readonly tile: Tile;
  readonly index: number;
}

/** The members of one column (or row) that span the most cells. */
function longestLane(members: readonly Member[], isUpright: boolean): readonly Member[] {
  let best: Member[] = [];
  let span = 0;
  const laneOf = ({ tile }: Member): number => (isUpright ? tile.column : tile.row);
  const placeOf = ({ tile }: Member): number => (isUpright ? tile.row : tile.column);
  for (const lane of new Set(members.map(laneOf))) {
    const own = members.filter((member) => laneOf(member) === lane).sort((a, b) => placeOf(a) - placeOf(b));
    const length = placeOf(own[own.length - 1]) - placeOf(own[0]);
    if (length > span) [best, span] = [own, length];
  }
  return best;
}

function findPair(
  mapA: FreeMap,
  mapB: FreeMap,
  a: Tile,
  b: Tile,
  isUpright: boolean,
  laneWidth: number,
): { x: number; y: number; length: number } | null {
  // 1. Free places of the first page from its far end, so that the pair comes out long.
  const step = 4;
  for (let along = 0; along < (isUpright ? a.cell.maxY - a.cell.minY : laneWidth); along += step) {
    const width = isUpright ? a.cell.maxX - a.cell.minX : a.cell.maxY - a.cell.minY;
    for (let across = 0; across < width; across += step) {
      const x = a.cell.minX + (isUpright ? across : along);
      const y = a.cell.minY + (isUpright ? along : across);
      if (!isFree(mapA, areaAt(x, y))) continue;
      // 2. The farthest partner at a whole number of centimetres.
      const end = isUpright ? b.cell.maxY - y : b.cell.maxX - x;
      const start = isUpright ? b.cell.minY - y : b.cell.minX - x;
      for (let length = Math.floor(end / STEP) * STEP; length >= start; length -= STEP) {
        const [dx, dy] = isUpright ? [0, length] : [length, 0];
        if (isFree(mapB, areaAt(x + dx, y + dy))) return { x, y, length };
      }
    }
  }
  return null;
}

function areaAt(x: number, y: number) {
  return { minX: x - AREA.left, minY: y - AREA.up, maxX: x + AREA.right, maxY: y + AREA.down };
}

/** The crosses of one page, drawing coordinates. */
export function drawCrossesOfTile(
  { tiles }: Division,
  index: number,
  crosses: readonly Crosses[],
  say: Say,
): DrawingItem[] {
  return crosses.flatMap(({ from, to, x, y, isUpright, length }, k) => {
    if (from !== index && to !== index) return [];
    const isFrom = from === index;
    const [dx, dy] = isFrom ? [0, 0] : isUpright ? [0, length] : [length, 0];
    const { name, words } = tiles[isFrom ? to : from];
    const way = name === words ? 'joint.to-cross' : 'joint.to-cross-of-page';
    const [cx, cy] = [x + dx, y + dy];
    const id = `check/${k + 1}/${isFrom ? 'from' : 'to'}`;
    return [
      makePath([cx - ARM, cy, cx + ARM, cy], { id: `${id}/across` }),
      makePath([cx, cy - ARM, cx, cy + ARM], { id: `${id}/down` }),
      makeText(cx + ARM + 1, cy - 0.6, say(phrase(way, { page: words })), SIZE * 0.8),
      makeText(cx + ARM + 1, cy + SIZE, say(phrase('joint.cross-distance', { length })), SIZE),
    ];
  });
}
