import { describe, expect, it } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import type { MaterialLine } from '../../src/core/inside/index.ts';
import { type Laying, type LayPlan, layAll, lengthToBuy, listToBuy } from '../../src/core/laying/index.ts';
import type { Piece } from '../../src/core/pattern/index.ts';

/** An oblong with its grain upright, mm. */
function oblong(id: string, width: number, height: number, material = 'shell'): Piece {
  return {
    id,
    name: verbatim(id),
    side: 'centre',
    material,
    cutLine: Float64Array.of(0, 0, width, 0, width, height, 0, height),
    sewLines: [],
    notches: [],
    levelLines: [],
    grainLine: Float64Array.of(width / 2, 10, width / 2, height - 10),
    texts: [],
  };
}

function lay(laying: Laying, use: 'shell' | 'webs' | 'card', pieces: readonly Piece[]): LayPlan {
  const made = layAll({ use, pieces, stock: laying[use] ?? {}, motifs: [], budget: 20_000 });
  if (!made.ok) throw new Error(made.issues.map(({ code }) => code).join());
  return made.value;
}

const three = ['a', 'b', 'c'].map((id) => oblong(id, 300, 300));

describe('a length to buy, reckoned by hand', () => {
  it('of three squares of 300 mm on cloth 1000 mm wide is one square and what washing takes', () => {
    const laying = { shell: { stockWidth: 1000 } };
    const plan = lay(laying, 'shell', three);
    // 3 × 300 = 900 fit between selvedges of 10 mm.
    expect(plan.length).toBeCloseTo(300, 1);
    expect(plan.taken).toBeCloseTo(300 * 1000, -2);
    expect(plan.area).toBeCloseTo(3 * 300 * 300, 6);
    // 300 / 0.97 = 309.3: 350 mm in steps of 50; 0.338 yd of 914.4 mm is 2.7 eighths: 3/8.
    expect(lengthToBuy(plan, laying.shell)).toEqual({ metric: 350, yards: 0.375 });
  });

  it('of the same on cloth 900 mm wide is two rows, because the selvedges are lost', () => {
    const laying = { shell: { stockWidth: 900, shrinkage: 0 } };
    const plan = lay(laying, 'shell', three);
    // A search ends within a millimetre of the shortest, never below it.
    expect(plan.length).toBeGreaterThanOrEqual(600);
    expect(plan.length).toBeLessThan(601);
    // 600 mm exactly; 600 / 914.4 = 0.656 yd = 5.25 eighths: 3/4.
    expect(lengthToBuy({ length: 600 }, laying.shell).yards).toBe(0.75);
    expect(lengthToBuy({ length: 600 }, laying.shell).metric).toBe(600);
  });

  it('of squares with a stripe of 320 mm to keep is told by the stripe', () => {
    // Two rows of stripes a repeat apart: 0 … 300 and 320 … 620.
    const stock = { stockWidth: 640, print: { kind: 'stripesAcross', along: 320 } } as const;
    const motifs = three.map(({ id }) => ({ piece: id, point: [0, 0] as const }));
    const made = layAll({ use: 'shell', pieces: three, stock, motifs, budget: 20_000 });
    expect(made.ok && made.value.length).toBeCloseTo(620, 1);
    for (const { x } of made.ok ? made.value.placed : [])
      expect(Math.abs(x / 320 - Math.round(x / 320))).toBeLessThan(1e-9);
  });
});

describe('the list to buy', () => {
  const lines: MaterialLine[] = [
    { id: 'shell', name: verbatim('cloth'), quantity: 0.3, unit: 'm²', note: verbatim('wash') },
    { id: 'interfacing', name: verbatim('interfacing'), quantity: 0.3, unit: 'm²', note: verbatim('') },
    { id: 'thread', name: verbatim('thread'), quantity: 90, unit: 'm', note: verbatim('') },
  ];
  const laying = { shell: { stockWidth: 1000 } };

  it('has cloth by its plan, and interfacing for the whole laid length, and all else as it was', () => {
    const list = listToBuy(lines, [lay(laying, 'shell', three)], laying);
    expect(list.map(({ id }) => id)).toEqual(['shell', 'interfacing', 'thread']);
    expect(list[0]).toMatchObject({ quantity: 0.35, unit: 'm' });
    // 900 mm wide interfacing over 1000 × 300 mm: two strips of 300 along or one of 1000 across; 600 / 0.97 = 618.6.
    expect(list[1]).toMatchObject({ quantity: 0.65, unit: 'm' });
    expect(list[2]).toBe(lines[2]);
  });

  it('has no interfacing of that kind where it is laid for itself', () => {
    const own = { ...laying, interfacing: { isLaid: false } };
    const list = listToBuy(lines, [lay(laying, 'shell', three)], own);
    expect(list[1]).toBe(lines[1]);
  });
});
