import { expect, it } from 'vitest';
import { cornersOfText } from '../../src/core/drawing/index.ts';
import { draftPiece } from '../../src/core/pattern/index.ts';
import { printPieces } from '../../src/core/sheet/index.ts';
import { LABEL } from '../pattern/synthetic-panels.ts';

/** A plate 300 mm wide and 230 mm deep, its edges named in the middle: on A4 a joint runs through its label and two names. */
function plate() {
  const corners = [0, 0, 300, 0, 300, 230, 0, 230, 0, 0];
  const edges = ['back', 'right', 'front', 'left'].map((id, i) => ({
    kind: 'opening' as const,
    id,
    letter: '',
    points: Float64Array.from(corners.slice(2 * i, 2 * i + 4)),
    marks: [],
    bodyHalf: 'front' as const,
  }));
  const input = {
    id: 'plate',
    name: 'plate',
    side: 'centre' as const,
    edges,
    levelLines: [],
    material: 'card',
  };
  const drafted = draftPiece(input, LABEL, { allowance: 0 });
  if (!drafted.ok) throw new Error(drafted.issues[0].message);
  return drafted.value;
}

it('puts no words of a large piece over a joint, and none on a page whose strip alone they reach', () => {
  const job = printPieces([plate()], { project: 'Lantern Yard Players', body: 'bust', date: '' });
  if (!job.ok) throw new Error(job.issues[0].message);
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
