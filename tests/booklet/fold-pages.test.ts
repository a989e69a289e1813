import { describe, expect, it } from 'vitest';
import { foldPages } from '../../src/core/booklet/index.ts';
import { type Drawing, makeLayer, makeText } from '../../src/core/drawing/index.ts';

const WIDTH = 148.5;
const pages = (count: number): Drawing[] =>
  Array.from({ length: count }, (_, i) => ({
    width: WIDTH,
    height: 210,
    title: 'booklet',
    layers: [makeLayer('text', [makeText(20, 30, `${i + 1}`, 4)])],
  }));

/** What stands on the left and on the right half of a side; null where it is empty. */
function halvesOf({ layers }: Drawing): (number | null)[] {
  const texts = layers.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item] : [])));
  return [0, 1].map((half) => {
    const own = texts.filter(({ x }) => Math.floor(x / WIDTH) === half);
    expect(own.length).toBeLessThan(2);
    return own.length === 0 ? null : Number(own[0].text);
  });
}

/**
 * The order in which a folded stack is read, by what happens to the paper: sheets lie in each other, the outermost first. Its right half
 * is a leaf; turned over along the short edge, the leaf's back is the left half of the sheet's other side. After the innermost sheet the
 * leaves of the left halves follow, inside first.
 */
function readFolded(sides: readonly (number | null)[][]): (number | null)[] {
  const sheets = Array.from({ length: sides.length / 2 }, (_, k) => [sides[2 * k], sides[2 * k + 1]]);
  const before = sheets.flatMap(([front, back]) => [front[1], back[0]]);
  const after = sheets.toReversed().flatMap(([front, back]) => [back[1], front[0]]);
  return [...before, ...after];
}

describe('pages in the order for folding', () => {
  it.each([1, 2, 3, 4, 5, 8, 11, 42, 43, 44])('read from the first to the last: %i pages', (count) => {
    const sides = foldPages(pages(count));
    expect(sides.length).toBe(2 * Math.ceil(count / 4));
    expect(new Set(sides.map(({ width, height }) => `${width} ${height}`))).toEqual(new Set(['297 210']));
    const read = readFolded(sides.map(halvesOf));
    expect(read.slice(0, count)).toEqual(Array.from({ length: count }, (_, i) => i + 1));
    expect(read.slice(count).every((page) => page === null)).toBe(true);
  });

  it('is the order of imposed pages of eight: 8 1, 2 7, 6 3, 4 5 (common practice, no source)', () => {
    expect(foldPages(pages(8)).map(halvesOf)).toEqual([
      [8, 1],
      [2, 7],
      [6, 3],
      [4, 5],
    ]);
  });
});
