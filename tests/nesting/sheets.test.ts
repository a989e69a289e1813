import { describe, expect, test } from 'vitest';
import { nest } from '../../src/core/nesting/index.ts';
import { areaAstray, laidOf, pathOf, worstOverlap } from './judge-plan.ts';
import { planOf, problemOf, rectangle, TURNED, UPRIGHT } from './sample-problems.ts';

const box = (width: number, height: number): Float64Array =>
  Float64Array.of(0, 0, width, 0, width, height, 0, height);
const sheetOf = (outline: Float64Array, flaws: Float64Array[] = []) => ({ outline, flaws });

describe('on sheets', () => {
  test('nine squares of a third each fill one sheet of nine, and begin a second with a tenth', () => {
    // By hand: 3 × 3 of 99 in 300 × 300, the tenth alone takes 99 of the next.
    const squares = [...'abcdefghij'].map((id) => rectangle(id, 99, 99));
    const plan = planOf(
      problemOf(squares, { sheets: [sheetOf(box(300, 300)), sheetOf(box(300, 300))], budget: 60_000 }),
    );
    expect(plan.sheetsUsed).toBe(2);
    expect(plan.length).toBeCloseTo(99, 1);
    expect(plan.left).toEqual([]);
    expect(worstOverlap(laidOf(squares, plan))).toBeLessThan(0.01);
  });

  test('the last sheet is used as little as possible, or not at all', () => {
    const squares = [...'abcd'].map((id) => rectangle(id, 95, 95));
    const plan = planOf(
      problemOf(squares, { sheets: [sheetOf(box(200, 200)), sheetOf(box(200, 200))], budget: 40_000 }),
    );
    expect(plan.sheetsUsed).toBe(1);
  });

  test('on a sheet of any outline with a flaw, everything lies on it and off the flaw', () => {
    // A triangle with a bitten side, somewhere off the origin.
    const outline = Float64Array.of(100, 50, 900, 50, 500, 250, 500, 650, 300, 450, 100, 650);
    const flaw = Float64Array.of(300, 100, 380, 100, 380, 160, 300, 160);
    const pieces = [...'abcdefgh'].map((id) => rectangle(id, 110, 70, { turns: [UPRIGHT, TURNED] }));
    const plan = planOf(problemOf(pieces, { sheets: [sheetOf(outline, [flaw])], budget: 60_000 }));
    const laid = laidOf(pieces, plan);
    expect(laid).toHaveLength(8);
    expect(
      areaAstray(
        laid.map(({ path }) => path),
        pathOf(outline),
        [pathOf(flaw)],
      ),
    ).toBeLessThan(0.5);
    expect(worstOverlap(laid)).toBeLessThan(0.01);
  });

  test('lattices count from the origin of the sheet', () => {
    const turns = [{ ...UPRIGHT, latticeX: { period: 50, phase: 10 } }];
    const outline = box(330, 100).map((value, k) => (k % 2 === 0 ? value + 200 : value));
    const squares = [...'abcd'].map((id) => rectangle(id, 90, 90, { turns }));
    const plan = planOf(problemOf(squares, { sheets: [sheetOf(outline), sheetOf(outline)] }));
    for (const placement of plan.placements) expect((placement!.x - 10) % 50).toBeCloseTo(0, 9);
    expect(plan.placements.every((placement) => placement!.x >= 200 - 1e-3)).toBe(true);
  });

  test('held items stay on their sheet', () => {
    const held = { turn: 0, sheet: 1, x: 20, y: 30 };
    const items = [rectangle('held', 50, 50, { held }), rectangle('a', 90, 90)];
    const plan = planOf(problemOf(items, { sheets: [sheetOf(box(100, 100)), sheetOf(box(100, 100))] }));
    expect(plan.placements[0]).toEqual(held);
    expect(plan.placements[1]?.sheet).toBe(0);
  });

  test('what finds no room is named, with the area that lacks at least', () => {
    const squares = [...'abcde'].map((id) => rectangle(id, 95, 95));
    const work = nest(problemOf(squares, { sheets: [sheetOf(box(200, 200))], budget: 20_000 }));
    let step = work.next();
    while (!step.done) step = work.next();
    if (!step.value.ok) throw new Error('no plan');
    const { value: plan, issues } = step.value;
    expect(plan.left).toHaveLength(1);
    expect(issues.map(({ code, measured }) => [code, measured])).toEqual([['no-room', 95 * 95]]);
    expect(worstOverlap(laidOf(squares, plan))).toBeLessThan(0.01);
  });
});
