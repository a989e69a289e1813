import { expect, it } from 'vitest';
import { cornersOfText } from '../../src/core/drawing/index.ts';
import { printPieces } from '../../src/core/sheet/index.ts';
import { inEnglish } from '../in-english.ts';
import { plate } from '../pattern/plate.ts';

// 300 mm by 230 mm: on A4 a joint runs through the label of such a plate and two of its names.
it('puts no words of a large piece over a joint, and none on a page whose strip alone they reach', () => {
  const info = { say: inEnglish, project: 'Lantern Yard Players', body: 'bust', date: '' };
  // A rectangle would otherwise be told by numbers.
  const job = printPieces([plate(300, 230)], info, { plain: 'drawn' });
  if (!job.ok) throw new Error(inEnglish(job.issues[0].message));
  const { tiles, pages, grid, joints } = job.value.tiled;
  expect(joints.length).toBeGreaterThan(0);
  const seen: string[] = [];
  for (const [i, page] of pages.entries()) {
    for (const item of page.layers.find(({ name }) => name === 'text')!.items) {
      if (item.kind !== 'text') continue;
      seen.push(item.text);
      const corners = cornersOfText(item);
      for (let k = 0; k < 8; k += 2) {
        expect(corners[k]).toBeGreaterThanOrEqual(grid.margin);
        expect(corners[k]).toBeLessThanOrEqual(grid.margin + tiles[i].cell.maxX - tiles[i].cell.minX);
      }
    }
  }
  // Each word once, on one page.
  for (const word of ['back', 'front', 'left', 'right', 'plate'])
    expect(seen.filter((text) => text === word)).toHaveLength(1);
});
