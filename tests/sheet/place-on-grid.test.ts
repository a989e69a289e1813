import { expect, it } from 'vitest';
import { draftPiece } from '../../src/core/pattern/index.ts';
import { planTiles } from '../../src/core/sheet/index.ts';
import { placeOnGrid } from '../../src/core/sheet/place-on-grid.ts';
import { LABEL, samplePanels } from '../pattern/synthetic-panels.ts';

const A4 = planTiles();
if (!A4.ok) throw new Error('A4 is a paper');
const grid = A4.value;

function pieceOf(outline: Float64Array) {
  const drafted = draftPiece(samplePanels()[0], LABEL);
  if (!drafted.ok) throw new Error('a sound panel');
  return { ...drafted.value, cutLine: outline, notches: [], levelLines: [], texts: [] };
}

function disc(radius: number): Float64Array {
  return Float64Array.from({ length: 720 }, (_, i) =>
    i % 2 === 0 ? radius * Math.cos((i * Math.PI) / 360) : radius * Math.sin(((i - 1) * Math.PI) / 360),
  );
}

it('gives neither page of a disc a little too wide for one only a sliver', () => {
  // 190 mm across on cells of 180: the narrower part could be 10 mm wide, and is at least 40.
  const { columns, rows, pages, placement } = placeOnGrid(pieceOf(disc(95)), grid);
  expect([columns, rows, pages]).toEqual([2, 1, 2]);
  const joint = grid.cellWidth - placement.dx;
  expect(Math.min(95 + joint, 95 - joint)).toBeGreaterThanOrEqual(40);
});

it('turns a long slanted strip so that it needs two pages rather than four', () => {
  const [along, across] = [450, 70];
  const turn = Math.PI / 6;
  const corners = [0, 0, across, 0, across, along, 0, along];
  const slanted = Float64Array.from(corners, (_, i) => {
    const [x, y] = [corners[i - (i % 2)], corners[i - (i % 2) + 1]];
    return i % 2 === 0 ? x * Math.cos(turn) - y * Math.sin(turn) : x * Math.sin(turn) + y * Math.cos(turn);
  });
  expect(placeOnGrid(pieceOf(slanted), grid).pages).toBe(2);
  const upright = placeOnGrid(pieceOf(slanted), grid, true);
  expect(upright.placement.angle).toBe(0);
  expect(upright.pages).toBeGreaterThan(2);
});
