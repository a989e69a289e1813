import { type NestItem, type NestProblem, type NestTurn, nest } from '../../src/core/nesting/index.ts';

const UPRIGHT: NestTurn = { angle: 0, mirrored: false };
const BOW = Float64Array.of(0, 0, 100, 100, 100, 0, 0, 100);
const NOTHING = Float64Array.of(0, 0, 1);
const box = (width: number, height: number): Float64Array =>
  Float64Array.of(0, 0, width, 0, width, height, 0, height);
const item = (id: string, outline: Float64Array, turns = [UPRIGHT]): NestItem => ({ id, outline, turns });
const SQUARE = item('A1', box(95, 95));

/** Outlines and cloth that cannot be laid, or not all. */
const PROBLEMS: readonly Partial<NestProblem>[] = [
  { width: 500, items: [item('B1', BOW), item('B2', NOTHING), item('B3', box(9, 9), [])] },
  { width: -3, gap: -2, flaws: [NOTHING] },
  {
    sheets: [
      { outline: BOW, flaws: [] },
      { outline: NOTHING, flaws: [] },
    ],
  },
  { width: 70 },
  { sheets: [{ outline: box(70, 300), flaws: [] }] },
  { sheets: [{ outline: box(100, 100), flaws: [] }], items: [SQUARE, { ...SQUARE, id: 'A2' }] },
];

/** What is said of them. */
export function tellOfNesting(): unknown {
  return PROBLEMS.map((problem) => {
    const work = nest({ items: [SQUARE], gap: 0, budget: 2000, seed: 1, ...problem });
    let step = work.next();
    while (!step.done) step = work.next();
    return step.value;
  });
}
