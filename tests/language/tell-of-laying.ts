import { type Phrase, type Say, verbatim } from '../../src/core/base/index.ts';
import type { MaterialLine } from '../../src/core/inside/index.ts';
import {
  drawLayPages,
  type LayPlan,
  layAll,
  listToBuy,
  type Stock,
  tellOfPlan,
  USE_IDS,
  type UseId,
} from '../../src/core/laying/index.ts';
import type { Piece } from '../../src/core/pattern/index.ts';
import { inEnglish } from '../in-english.ts';

/** An oblong with one seam, whose marks lie so high over its lower edge. mm. */
function oblong(id: string, side: Piece['side'], waist: number): Piece {
  return {
    id,
    name: { id: 'use.shell', values: {} },
    side,
    material: 'shell',
    cutLine: Float64Array.of(0, 0, 200, 0, 200, 500, 0, 500),
    sewLines: ['A', 'B'].map((name, k) => ({
      id: `seam-${name}`,
      name,
      // Both run round their own piece.
      points: k === 0 ? Float64Array.of(200, 0, 200, 500) : Float64Array.of(0, 500, 0, 0),
    })),
    notches: [],
    levelLines: [{ id: 'waist', name: verbatim('waist'), points: Float64Array.of(0, 200, 200, waist) }],
    grainLine: Float64Array.of(100, 20, 100, 480),
    texts: [],
  };
}

const PIECES = [oblong('right', 'right', 200), oblong('left', 'left', 217)];
const PAPER = { pageWidth: 210, pageHeight: 297, margin: 10 };
const BOW = [
  [0, 0],
  [900, 900],
  [900, 0],
  [0, 900],
] as const;
const SMALL = [
  [0, 0],
  [520, 0],
  [520, 230],
  [0, 230],
] as const;

const STOCKS: readonly Stock[] = [
  {},
  { ways: 'one', shrinkage: 0, leastGap: 5 },
  { isFolded: true },
  { isFolded: true, print: { kind: 'stripesAcross', along: 50 } },
  { print: { kind: 'checks', along: 90, across: 70 } },
  { print: { kind: 'stripesAlong', across: 45 } },
  { stockLength: 620, stockWidth: 700 },
  { pieces: [{ outline: SMALL }] },
  {
    pieces: [
      { outline: SMALL },
      {
        outline: SMALL,
        folds: [
          [
            [10, 0],
            [10, 230],
          ],
        ],
      },
    ],
  },
  { pieces: [{ outline: BOW }] },
  { stockWidth: 160 },
  { stockWidth: 160, stockLength: 300 },
];

/** What is said of pieces laid on cloth, and of cloth that will not do. */
export function tellOfLaying(): unknown {
  const said: Phrase[] = [];
  const say: Say = (phrase) => {
    said.push(phrase);
    return inEnglish(phrase);
  };
  const motifs = [{ piece: 'right', point: [200, 200] as const }];
  const made = STOCKS.map((stock) => ({
    stock,
    result: layAll({ use: 'shell', pieces: PIECES, stock, motifs, budget: 2000 }),
  }));
  const plans = made.flatMap(({ stock, result }) => (result.ok ? [{ stock, plan: result.value }] : []));
  const told = plans.map(({ stock, plan }) => [
    tellOfPlan(plan, PIECES, stock),
    drawLayPages([plan], PIECES, { shell: stock }, 'Hamlet', PAPER, say),
  ]);
  const others = USE_IDS.filter((use) => use !== 'shell').map((use): LayPlan => ({ ...plans[0].plan, use }));
  const line = (id: UseId): MaterialLine => ({
    id,
    name: verbatim(id),
    quantity: 1,
    unit: 'm²',
    note: verbatim(''),
  });
  const bought = [
    listToBuy([], [plans[0].plan, ...others], {}),
    ...plans.map(({ stock, plan }) =>
      listToBuy([line('shell')], [plan], { shell: stock, lining: { isLaid: true } }),
    ),
  ];
  return [said, made.map(({ result }) => result.issues), told, bought];
}
