import { type Drawing, makeLayer, translateItem } from '../drawing/index.ts';

/**
 * Pages of one size two on a side, side by side, so that the sheets, printed on both sides, laid together and folded in the middle, read
 * as a booklet: sides 2k and 2k + 1 are front and back of sheet k, turned over along their short edge. What is left of the last sheet
 * stays empty at the end. O(items).
 */
export function foldPages(pages: readonly Drawing[]): Drawing[] {
  const sheets = Math.ceil(pages.length / 4);
  const last = 4 * sheets - 1;
  return Array.from({ length: 2 * sheets }, (_, side) => {
    // The outermost side has the first page at its right, which is the front of the folded booklet; the next one the second at its left.
    const [left, right] = side % 2 === 0 ? [last - side, side] : [side, last - side];
    return besides(pages[left], pages[right], pages[0]);
  });
}

/** Two pages beside each other as one, each painted in its own order; either may be missing. */
function besides(
  left: Drawing | undefined,
  right: Drawing | undefined,
  { width, height, title }: Drawing,
): Drawing {
  const layers = [left, right].flatMap((page, k) => {
    return (page?.layers ?? []).map(({ name, items }) =>
      makeLayer(
        name,
        items.map((item) => translateItem(item, k * width, 0)),
      ),
    );
  });
  return { width: 2 * width, height, title, layers };
}
