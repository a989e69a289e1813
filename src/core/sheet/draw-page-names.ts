import { mmPerInch, type Say } from '../base/index.ts';
import { type DrawingItem, makePath, makeText, measureText } from '../drawing/index.ts';
import { type FreeMap, findFree, takeRectangle } from './free-map.ts';
import { phrase } from './phrases.ts';
import type { Division } from './types.ts';

const BAR = 50;
/** Of a page's name, the largest that finds room, mm. */
const SIZES = [14, 10, 7];
const SMALL = 3;
/** Air round a page's name where there is room, so that nobody reads it with the words beside it, mm. */
const AIR = 6;

/** The page's name in a free place, and a 50 mm bar up the page; drawing coordinates. */
export function drawNameInside({ tiles }: Division, index: number, map: FreeMap): DrawingItem[] {
  const { words, cell } = tiles[index];
  const items: DrawingItem[] = [];
  for (const size of words === tiles[index].name ? SIZES.slice(0, 1) : SIZES) {
    const [width, height] = [measureText(words, size) + 4, size + 4];
    const [x, y] = [(cell.minX + cell.maxX) / 2, (cell.minY + cell.maxY) / 2];
    const airy = findFree(map, width + 2 * AIR, height + 2 * AIR, x, y);
    const place = airy ? { x: airy.x + AIR, y: airy.y + AIR } : findFree(map, width, height, x, y);
    if (!place) continue;
    takeRectangle(map, { minX: place.x, minY: place.y, maxX: place.x + width, maxY: place.y + height });
    items.push(makeText(place.x + width / 2, place.y + 2 + 0.8 * size, words, size, { anchor: 'middle' }));
    break;
  }
  const bar = findFree(map, 8, BAR + 4, cell.maxX, cell.maxY);
  if (bar) {
    const [bx, by] = [bar.x + 6, bar.y + 2];
    items.push(...drawBar(bx, by, BAR, true, 'scale/50-y'));
    items.push(makeText(bx - 1.2, by + BAR / 2, '50 mm', SMALL, { anchor: 'middle', angle: -Math.PI / 2 }));
  }
  return items;
}

/** The line at the page's foot: name, what is on it, project; bars of 50 mm and 2 in. Page coordinates. */
export function drawFoot(
  { tiles, grid }: Division,
  index: number,
  title: string,
  pageHeight: number,
  say: Say,
): DrawingItem[] {
  const { name, words: spoken, caption } = tiles[index];
  const bottom = pageHeight - grid.margin;
  const inches = 2 * mmPerInch;
  const right = grid.pageWidth - grid.margin;
  const line = bottom - 1.5;
  const [barY, label] = [bottom - 2.5, 11];
  const inchesX = right - inches;
  const millimetresX = inchesX - label - BAR;
  const room = millimetresX - label - 4 - grid.margin;
  const number = say(phrase('page.number', { number: index + 1, pages: tiles.length }));
  const words = [...(spoken === name ? [name] : []), number, caption, title].filter((part) => part !== '');
  // Low and flat: above it are the words that say what happens to this edge.
  return [
    makeText(grid.margin, line, shorten(words.join(' · '), SMALL, room), SMALL),
    ...drawBar(inchesX, barY, inches, false, 'scale/2in-x'),
    makeText(inchesX - 2, line, '2 in', SMALL, { anchor: 'end' }),
    ...drawBar(millimetresX, barY, BAR, false, 'scale/50-x'),
    makeText(millimetresX - 2, line, '50 mm', SMALL, { anchor: 'end' }),
  ];
}

/** A bar with a tick at each end, under the id. */
export function drawBar(x: number, y: number, length: number, isUpright: boolean, id: string): DrawingItem[] {
  const half = 1.5;
  const [ex, ey] = isUpright ? [x, y + length] : [x + length, y];
  const [tx, ty] = isUpright ? [half, 0] : [0, half];
  return [
    makePath([x, y, ex, ey], { id }),
    makePath([x - tx, y - ty, x + tx, y + ty], { id: `${id}/tick-1` }),
    makePath([ex - tx, ey - ty, ex + tx, ey + ty], { id: `${id}/tick-2` }),
  ];
}

/** As much of the text as fits, the rest as `…`. */
export function shorten(text: string, size: number, room: number): string {
  if (measureText(text, size) <= room) return text;
  const characters = [...text];
  while (characters.length > 0 && measureText(`${characters.join('')}…`, size) > room) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}
