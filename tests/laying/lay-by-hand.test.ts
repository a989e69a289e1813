import { describe, expect, it } from 'vitest';
import {
  findFaults,
  type LaidPiece,
  type LayTask,
  planOfPlaces,
  rulesOfLay,
  type Stock,
  snapPlace,
  stepPlace,
} from '../../src/core/laying/index.ts';
import { rectangle } from './rectangles.ts';

/*
 * Rectangles on cloth, worked out by hand. A piece with its top to the far end (angle −90°) has its own x across the cloth downwards
 * and its own y along it: (px, py) lies at (x + py, y − px).
 */

const UP = -Math.PI / 2;
const DOWN = Math.PI / 2;

/** Two panels 200 × 300 sewn at B, the front with a motif wanted at its middle. */
function task(stock: Stock): LayTask {
  const pieces = [rectangle('front', 200, 300, { right: 'B' }), rectangle('side', 100, 240, { left: 'B' })];
  return { use: 'shell', pieces, stock, motifs: [{ piece: 'front', point: [0, 20] }], budget: 1 };
}
const laid = (piece: string, x: number, y: number, angle = UP, more: Partial<LaidPiece> = {}): LaidPiece => ({
  piece,
  x,
  y,
  angle,
  sheet: 0,
  isHeld: false,
  ...more,
});
const stripes: Stock = {
  stockWidth: 800,
  print: { kind: 'stripesAcross', along: 80, firstAlong: 30, shiftUp: 7 },
};

describe('a piece laid by hand', () => {
  it('snaps to where a motif lies as far above its place as was asked', () => {
    const rules = rulesOfLay(task(stripes));
    const { x, y } = snapPlace(rules, laid('front', 412, 333));
    expect(y).toBe(333);
    // The place (0, 20) lies at x + 20 on the cloth; a motif, at 30 and every 80, is to lie 7 beyond it, to the top.
    const over = x + 20 + 7 - 30;
    expect(over / 80).toBeCloseTo(Math.round(over / 80), 9);
    expect(Math.abs(x - 412)).toBeLessThanOrEqual(40);
  });

  it('meets its partner at the level: their waist lines lie alike in the print', () => {
    const rules = rulesOfLay(task(stripes));
    const front = snapPlace(rules, laid('front', 200, 300));
    const side = snapPlace(rules, laid('side', 611, 300));
    // Both waist lines lie at their own y = 0, so at x on the cloth.
    expect(((side.x - front.x) / 80) % 1).toBeCloseTo(0, 9);
    const { print } = planOfPlaces(rules, [front, side]);
    expect(print?.met.map(({ seam, at }) => [seam, at])).toEqual([['B', 'waist']]);
    expect(print?.met[0].along).toBeCloseTo(0, 9);
  });

  it('tells by how much the print is off where it was left between, also when it lies the other way', () => {
    const rules = rulesOfLay(task(stripes));
    const front = snapPlace(rules, laid('front', 200, 300));
    const off = { ...snapPlace(rules, laid('side', 611, 300)) };
    const along = (side: LaidPiece) => planOfPlaces(rules, [front, side]).print?.met[0].along ?? Number.NaN;
    expect(along({ ...off, x: off.x + 11 })).toBeCloseTo(11, 9);
    expect(along({ ...off, x: off.x + 75 })).toBeCloseTo(-5, 9);
    // Upside down its waist lies as far from a motif as the front's, on the other side of one: 30 + (30 − x) and whole repeats.
    const turned = { ...off, angle: DOWN, x: 60 - front.x + 80 * 9 };
    expect(along(turned)).toBeCloseTo(0, 9);
    expect(along({ ...turned, x: turned.x + 4 })).toBeCloseTo(-4, 9);
  });

  it('goes by keys from one such place to the next, and by millimetres where there is none', () => {
    const rules = rulesOfLay(task(stripes));
    const front = snapPlace(rules, laid('front', 412, 333));
    const next = stepPlace(rules, front, 1, 1, 10);
    expect([next.x - front.x, next.y - front.y]).toEqual([80, 10]);
    const plain = rulesOfLay(task({ stockWidth: 800 }));
    const moved = stepPlace(plain, laid('front', 412, 333), -1, 0, 1);
    expect([moved.x, moved.y]).toEqual([411, 333]);
  });
});

describe('what is wrong with places', () => {
  const rules = rulesOfLay(task({ stockWidth: 800, selvedge: 10 }));

  it('is nothing for pieces that share a cut line', () => {
    // 300 along by 200 across from (0, 10), then 240 × 100 above it.
    expect(findFaults(rules, [laid('front', 150, 110), laid('side', 120, 260)])).toEqual([]);
  });

  it('is the area by which one lies over the other, and who', () => {
    const faults = findFaults(rules, [laid('front', 150, 110), laid('side', 120, 257)]);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ kind: 'overlap', pieces: ['front', 'side'] });
    expect(faults[0].area).toBeCloseTo(240 * 3, 3);
    expect(findFaults(rules, [laid('front', 150, 110), laid('side', 120, 257)], 'side')).toEqual(faults);
  });

  it('is what lies on a selvedge, before the cut end or on a flaw', () => {
    const areas = (place: LaidPiece, stock: Stock = { stockWidth: 800, selvedge: 10 }) =>
      findFaults(rulesOfLay(task(stock)), [place]).map(({ kind, area }) => [kind, Math.round(area)]);
    expect(areas(laid('front', 150, 105))).toEqual([['outside', 5 * 300]]);
    expect(areas(laid('front', 142, 110))).toEqual([['outside', 8 * 200]]);
    const flaws = [
      [
        [290, 100],
        [400, 100],
        [400, 150],
        [290, 150],
      ],
    ] as const;
    expect(areas(laid('front', 150, 110), { stockWidth: 800, flaws })).toEqual([['outside', 10 * 50]]);
  });

  it('is nothing on another sheet', () => {
    const pieces = [0, 1].map(() => ({
      outline: [
        [0, 0],
        [500, 0],
        [500, 400],
        [0, 400],
      ] as const,
    }));
    const sheets = rulesOfLay(task({ pieces }));
    const places = (sheet: number) => [laid('front', 150, 110), laid('side', 130, 110, UP, { sheet })];
    expect(findFaults(sheets, places(1))).toEqual([]);
    expect(findFaults(sheets, places(0)).map(({ kind }) => kind)).toEqual(['overlap']);
  });
});

describe('the plan of places kept', () => {
  it('takes what its pieces reach to, and leaves out what is no piece any more', () => {
    const rules = rulesOfLay(task({ stockWidth: 800, selvedge: 10 }));
    const plan = planOfPlaces(rules, [
      laid('front', 150, 110),
      { piece: 'gone', x: 900, y: 100, angle: UP },
      laid('side', 420, 60, UP, { isHeld: true }),
    ]);
    expect(plan).toMatchObject({ length: 540, taken: 540 * 800, area: 200 * 300 + 100 * 240, left: [] });
    expect(plan.placed.map(({ piece, isHeld }) => [piece, isHeld])).toEqual([
      ['front', false],
      ['side', true],
    ]);
    // The longest piece, 300 along the grain, is longer than the area over the usable 780.
    expect(plan.bound).toBe(300);
    expect(planOfPlaces(rules, []).left).toEqual(['front', 'side']);
  });
});
