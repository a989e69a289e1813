import type { Phrase, Say } from '../base/index.ts';
import { type DrawingItem, makePath, makeText, measureText } from '../drawing/index.ts';
import { clipPolyline, type Rectangle } from './clip-polyline.ts';
import { type FreeMap, isFree, takeRectangle } from './free-map.ts';
import { phrase } from './phrases.ts';
import type { Division, Joint } from './types.ts';

/** From the middle of a joining diamond to its corners, mm: inside the narrowest strip. */
const REACH = 4.5;
const LABEL = 4;
const WORDS = 2.6;
/** Room kept round a diamond, along the joint and across it: with its number and some air, tightly, without the number, none. */
const ROOMS = [
  { along: 7, across: 12 },
  { along: 5, across: REACH + LABEL + 1.2 },
  { along: 5, across: REACH + 0.5 },
  { along: 5, across: 0 },
] as const;

/** Places of the two diamonds of a joint, as distances along the drawing's axis. */
export interface JointMarks {
  readonly joint: Joint;
  readonly at: readonly number[];
  /** Middle of the words on the strip that is covered, and whether only the short ones found room. */
  readonly words: { readonly along: number; readonly isShort: boolean };
}

/**
 * Two diamonds on every joint, near its quarters, moved along until they cross no line of the drawing. Where no place is
 * free they stay where they may be at all: a joint without marks would be worse than a crossed one. `isAllowed` narrows the
 * places, for parts that are cut out before they are joined.
 */
export function placeJointMarks(
  division: Division,
  maps: readonly FreeMap[],
  say: Say,
  isAllowed: (x: number, y: number) => boolean = () => true,
): JointMarks[] {
  return division.joints.map((joint) => {
    const { cell } = division.tiles[joint.first];
    const border = borderOf(cell, joint.isUpright);
    const at: number[] = [];
    for (const share of [0.22, 0.78]) {
      const wanted = border.low + share * (border.high - border.low);
      const place = ROOMS.map((room) =>
        nearestFree(division, joint, maps, border, wanted, room, at, isAllowed),
      ).find((found) => found !== undefined);
      const chosen = place ?? wanted;
      at.push(chosen);
      for (const tile of [joint.first, joint.second])
        takeRectangle(maps[tile], boxAt(border.position, chosen, ROOMS[0], joint.isUpright));
    }
    return { joint, at, words: placeWords(division, joint, maps[joint.second], border, at, say) };
  });
}

type Room = (typeof ROOMS)[number];

interface Border {
  readonly position: number;
  readonly low: number;
  readonly high: number;
}

function borderOf(cell: Rectangle, isUpright: boolean): Border {
  return isUpright
    ? { position: cell.maxX, low: cell.minY, high: cell.maxY }
    : { position: cell.maxY, low: cell.minX, high: cell.maxX };
}

function boxAt(position: number, at: number, { along, across }: Room, isUpright: boolean): Rectangle {
  return isUpright
    ? { minX: position - across, minY: at - along, maxX: position + across, maxY: at + along }
    : { minX: at - along, minY: position - across, maxX: at + along, maxY: position + across };
}

function nearestFree(
  { tiles }: Division,
  joint: Joint,
  maps: readonly FreeMap[],
  border: Border,
  wanted: number,
  room: Room,
  others: readonly number[],
  isAllowed: (x: number, y: number) => boolean,
): number | undefined {
  const reach = (border.high - border.low) / 2;
  for (let shift = 0; shift <= reach; shift += 2) {
    for (const along of shift === 0 ? [wanted] : [wanted - shift, wanted + shift]) {
      if (along < border.low + room.along || along > border.high - room.along) continue;
      if (others.some((other) => Math.abs(other - along) < 4 * ROOMS[0].along)) continue;
      const ends = joint.isUpright
        ? [-REACH, REACH].map((shift) => isAllowed(border.position, along + shift))
        : [-REACH, REACH].map((shift) => isAllowed(along + shift, border.position));
      if (ends.includes(false)) continue;
      if (room.across === 0) return along;
      const box = boxAt(border.position, along, room, joint.isUpright);
      const isClear = [joint.first, joint.second].every((tile) =>
        isFree(maps[tile], intersect(box, tiles[tile].cell)),
      );
      if (isClear) return along;
    }
  }
  return undefined;
}

/** Where the words on the strip cross the fewest lines: the free place nearest to the middle, else the middle. */
function placeWords(
  division: Division,
  joint: Joint,
  map: FreeMap,
  border: Border,
  at: readonly number[],
  say: Say,
): JointMarks['words'] {
  for (const isShort of [false, true]) {
    const along = freeForWords(
      joint,
      map,
      border,
      at,
      say(wordsOfStrip(division.tiles[joint.second].words, isShort)),
    );
    if (along !== undefined) return { along, isShort };
  }
  return { along: (border.low + border.high) / 2, isShort: true };
}

function freeForWords(
  joint: Joint,
  map: FreeMap,
  border: Border,
  at: readonly number[],
  words: string,
): number | undefined {
  const middle = (border.low + border.high) / 2;
  const half = measureText(words, WORDS) / 2;
  for (let shift = 0; shift + half < (border.high - border.low) / 2; shift += 3) {
    for (const along of [middle - shift, middle + shift]) {
      if (at.some((mark) => Math.abs(mark - along) < half + ROOMS[0].along)) continue;
      const [a, b] = [border.position + 0.5, border.position + 1.5 + WORDS];
      const box = joint.isUpright
        ? { minX: a, minY: along - half, maxX: b, maxY: along + half }
        : { minX: along - half, minY: a, maxX: along + half, maxY: b };
      if (isFree(map, box)) return along;
    }
  }
  return undefined;
}

function wordsOfStrip(page: string, isShort: boolean): Phrase {
  return phrase(isShort ? 'joint.glue-short' : 'joint.glue', { page });
}

function intersect(a: Rectangle, b: Rectangle): Rectangle {
  return {
    minX: Math.max(a.minX, b.minX),
    minY: Math.max(a.minY, b.minY),
    maxX: Math.min(a.maxX, b.maxX),
    maxY: Math.min(a.maxY, b.maxY),
  };
}

/**
 * Diamonds on joints with their numbers, as one page shows them, and (unless the parts come cut out) the line to join at and
 * what to do there; drawing coordinates.
 */
export function drawJointsOfTile(
  division: Division,
  index: number,
  marks: readonly JointMarks[],
  say: Say,
  hasLines = true,
): DrawingItem[] {
  const { tiles, grid } = division;
  const tile = tiles[index];
  const isButt = grid.overlap === 0;
  const items: DrawingItem[] = [];
  for (const { joint, at, words } of marks) {
    if (joint.first !== index && joint.second !== index) continue;
    const isFirst = joint.first === index;
    const partner = tiles[isFirst ? joint.second : joint.first].words;
    const border = borderOf(tiles[joint.first].cell, joint.isUpright);
    const point = (across: number, along: number): [number, number] =>
      joint.isUpright ? [border.position + across, along] : [along, border.position + across];
    const end = (along: number): [number, number] => point(0, along);
    const id = `joint/${joint.number}`;
    if (hasLines) items.push(makePath([...end(border.low), ...end(border.high)], { id: `${id}/line` }));
    const side = isFirst ? -1 : 1;
    for (const [k, along] of at.entries()) {
      const diamond = [
        point(-REACH, along),
        point(0, along - REACH),
        point(REACH, along),
        point(0, along + REACH),
      ];
      const parts = clipPolyline(Float64Array.from(diamond.flat()), true, tile.shown);
      for (const [n, part] of parts.entries())
        items.push(makePath(part, { id: `${id}/diamond-${k + 1}/${n}` }));
      const text = `${joint.number}${'ab'[k]}`;
      const [x, y] = point(side * (REACH + 1), along);
      if (joint.isUpright)
        items.push(makeText(x, y + LABEL * 0.36, text, LABEL, { anchor: isFirst ? 'end' : 'start' }));
      else items.push(makeText(x, y + (isFirst ? 0 : LABEL * 0.75), text, LABEL, { anchor: 'middle' }));
    }
    if (!hasLines) continue;
    const edge = isButt
      ? phrase('joint.edge-to-edge', { page: partner })
      : isFirst
        ? wordsOfStrip(partner, words.isShort)
        : phrase('joint.lay-on', { page: partner });
    const middle = isFirst ? words.along : (border.low + border.high) / 2;
    items.push(wordJoint(point, middle, joint.isUpright, isFirst, say(edge)));
  }
  return items;
}

/** On the waste side of the line: what happens to this edge. */
function wordJoint(
  point: (across: number, along: number) => [number, number],
  along: number,
  isUpright: boolean,
  isFirst: boolean,
  words: string,
): DrawingItem {
  // Read from below, or turned a quarter with the head to the left.
  const lift = isFirst ? 1.2 + WORDS * 0.76 : -1.2;
  const [x, y] = point(lift, along);
  return makeText(x, y, words, WORDS, { anchor: 'middle', ...(isUpright ? { angle: -Math.PI / 2 } : {}) });
}
