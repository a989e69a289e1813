import { boundsOfItems, type Drawing, type DrawingItem, makeLayer, translateItem } from '../drawing/index.ts';

/** Round the picture, mm of paper: half the widest line and a little. */
const MARGIN = 1;

/** A picture as a drawing no larger than it is: tints below, lines over them, letters over all. */
export function finishDrawing(
  title: string,
  tints: readonly DrawingItem[],
  lines: readonly DrawingItem[],
): Drawing {
  const bounds = boundsOfItems([...tints, ...lines]) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const place = (items: readonly DrawingItem[]): DrawingItem[] => {
    return items.map((item) => translateItem(item, MARGIN - bounds.minX, MARGIN - bounds.minY));
  };
  return {
    width: bounds.maxX - bounds.minX + 2 * MARGIN,
    height: bounds.maxY - bounds.minY + 2 * MARGIN,
    title,
    layers: [
      makeLayer('fill', place(tints)),
      makeLayer('mark', place(lines.filter(({ kind }) => kind === 'path'))),
      makeLayer('text', place(lines.filter(({ kind }) => kind === 'text'))),
    ],
  };
}
