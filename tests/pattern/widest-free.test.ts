import fc from 'fast-check';
import { expect, it } from 'vitest';
import { widestFree } from '../../src/core/pattern/widest-free.ts';

/** Every rectangle of the grid tried by itself: the definition, in its slowest form. */
function tryAll(taken: Uint8Array, columns: number, rows: number): number[] {
  const widest = [columns, ...new Array<number>(rows).fill(0)];
  for (let top = 0; top < rows; top++)
    for (let left = 0; left < columns; left++)
      for (let high = 1; top + high <= rows; high++)
        for (let wide = 1; left + wide <= columns; wide++)
          if (isFree(taken, columns, [left, top, wide, high])) widest[high] = Math.max(widest[high], wide);
  return widest;
}

function isFree(taken: Uint8Array, columns: number, [left, top, wide, high]: readonly number[]): boolean {
  for (let row = top; row < top + high; row++)
    for (let column = left; column < left + wide; column++) if (taken[row * columns + column]) return false;
  return true;
}

it('the widest free rectangle of each height is what trying all of them finds', () => {
  const grids = fc
    .tuple(fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 7 }))
    .chain(([columns, rows]) =>
      fc.tuple(
        fc.constant(columns),
        fc.constant(rows),
        fc.array(fc.integer({ min: 0, max: 3 }), { minLength: columns * rows, maxLength: columns * rows }),
      ),
    );
  fc.assert(
    fc.property(grids, ([columns, rows, cells]) => {
      const taken = Uint8Array.from(cells, (cell) => (cell === 0 ? 1 : 0));
      expect([...widestFree(taken, columns, rows)]).toEqual(tryAll(taken, columns, rows));
    }),
    { seed: 7, numRuns: 300 },
  );
});
