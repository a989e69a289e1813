import { describe, expect, test } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import {
  divideFill,
  type FillingContext,
  type FillZone,
  judgeFilling,
  type LevelTarget,
  wordCorrection,
} from '../../src/core/simulate/index.ts';
import { createSpeakers, englishCore } from '../../src/language/index.ts';
import { buildSphere } from '../mesh/sample-meshes.ts';

const { cm: inCm, in: inInches } = createSpeakers(englishCore);

const level = (id: string, z: number, girth: number, width: number, depth: number): LevelTarget => {
  return {
    id,
    name: verbatim(id),
    z,
    girth,
    width,
    depth,
    emptyGirth: girth,
    foretold: { girth, width, depth },
  };
};
const targets = [
  level('hip', -200, 1000, 350, 245),
  level('waist', 0, 750, 275, 195),
  level('bust', 120, 940, 305, 245),
];
const zones: FillZone[] = [
  { id: 'top-bust', name: verbatim('Top'), lower: 'bust', volumeL: 8, frontShare: 0.5, low: 0.4, high: 0.6 },
  {
    id: 'bust-waist',
    name: verbatim('Chest'),
    upper: 'bust',
    lower: 'waist',
    volumeL: 7,
    frontShare: 0.5,
    low: 0.3,
    high: 0.5,
  },
  {
    id: 'waist-hip',
    name: verbatim('Belly'),
    upper: 'waist',
    lower: 'hip',
    volumeL: 10,
    frontShare: 0.5,
    low: 0.5,
    high: 0.7,
  },
  { id: 'hip-base', name: verbatim('Hips'), upper: 'hip', volumeL: 5, frontShare: 0.5, low: 0.2, high: 0.4 },
];
const context: FillingContext = {
  targets,
  zones,
  lettersAcross: {
    hip: ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'],
    waist: ['A', 'B', 'C', 'D'],
    bust: ['A', 'B'],
  },
  allowance: 10,
  clothThickness: 0.6,
  sections: {},
};
const good = {
  hip: { girth: 1003, width: 352, depth: 244 },
  waist: { girth: 750, width: 273, depth: 198 },
  bust: { girth: 944, width: 305, depth: 246 },
};

describe('judging a filled form', () => {
  test('all within the tolerances: nothing to do', () => {
    expect(judgeFilling(good, 'filled', context)).toEqual([]);
    expect(judgeFilling({}, 'filled', context)).toEqual([]);
  });

  test('one girth over: filling out, twice its share of what the zones next to it hold', () => {
    const [found, ...rest] = judgeFilling(
      { ...good, waist: { ...good.waist, girth: 765 } },
      'filled',
      context,
    );
    expect(rest).toEqual([]);
    // Area by girth squared: 2 × 15/750 of (0.4 + 0.6) kg.
    expect(found).toMatchObject({ kind: 'fill', levelId: 'waist', off: 15, isAlone: true });
    expect(found.kind === 'fill' && found.mass).toBeCloseTo(-0.04, 10);
    expect(found.kind === 'fill' && found.zones).toEqual(['bust-waist', 'waist-hip']);
  });

  test('under by more than nothing is under: a girth may only be over', () => {
    const found = judgeFilling({ waist: { girth: 747 } }, 'filled', context);
    expect(found).toMatchObject([{ kind: 'fill', off: -3 }]);
    expect(judgeFilling({ waist: { girth: 755 } }, 'filled', context)).toEqual([]);
    expect(judgeFilling({ waist: { girth: 756 } }, 'filled', context)).toMatchObject([{ kind: 'fill' }]);
  });

  test('all girths over by about one share: the cloth has grown', () => {
    // Laplace and Hooke with p/(Et) = 1e-4/mm: a hoop H grows to H/(1 − 1e-4 H/2π), a tube of radius 100 by 1/(1 − 0.01) − 1.
    const grow = (H: number) => H / (1 - (1e-4 * H) / (2 * Math.PI));
    const grown = Object.fromEntries(
      targets.map(({ id, girth, width, depth }) => {
        const share = grow(girth) / girth;
        // Over the cloth: π t for half its thickness all round.
        return [id, { girth: grow(girth) + Math.PI * 0.6, width: width * share, depth: depth * share }];
      }),
    );
    const found = judgeFilling(grown, 'filled', context);
    expect(found.length).toBe(1);
    expect(found[0].kind).toBe('growth');
    expect(found[0].kind === 'growth' && found[0].growth).toBeCloseTo(1 / 0.99 - 1, 10);
  });

  test('more than cloth does by itself is another scale', () => {
    const far = Object.fromEntries(targets.map(({ id, girth }) => [id, { girth: girth * 1.059 }]));
    expect(judgeFilling(far, 'filled', context)).toMatchObject([{ kind: 'scale' }]);
  });

  test('a single girth no filling reaches: seams, each by off/(2n)', () => {
    const found = judgeFilling({ ...good, waist: { girth: 790 } }, 'filled', context);
    expect(found).toMatchObject([{ kind: 'seam', levelId: 'waist', off: 40, each: 5, isFilled: true }]);
  });

  test('readings that no outline can have', () => {
    // 350 wide and 245 deep: a segment aslant is 854.5 round (Pythagoras), the box 1190.
    const found = judgeFilling({ hip: { girth: 840, width: 350, depth: 245 } }, 'filled', context);
    expect(found).toMatchObject([{ kind: 'misread', levelId: 'hip', most: 1190 }]);
    expect(found[0].kind === 'misread' && found[0].least).toBeCloseTo(854.4588, 3);
    expect(judgeFilling({ hip: { girth: 1195, width: 350, depth: 245 } }, 'filled', context)[0].kind).toBe(
      'misread',
    );
    // A circle is a possible outline.
    const circle = { girth: Math.PI * 300, width: 300, depth: 300 };
    expect(judgeFilling({ hip: circle }, 'filled', context).map(({ kind }) => kind)).not.toContain('misread');
  });

  test('right girth, wrong shape: the ties, each its share', () => {
    // A sleeve of 740 with one web of 196, split in two ties in line: see `find-tie-change.test.ts` for the arcs by hand.
    const section = {
      problem: {
        spans: Float64Array.of(370, 370),
        start: Float64Array.of(0, -98, 0, 98),
        ties: [{ from: 0, to: 1, length: 196 }],
      },
      shares: [1],
      names: [verbatim('right web')],
    };
    const reading = { waist: { girth: 752, width: 262, depth: 208 } };
    const [found] = judgeFilling(reading, 'filled', { ...context, sections: { waist: section } });
    expect(found).toMatchObject({ kind: 'shape', widthOff: -13, depthOff: 13 });
    if (found.kind !== 'shape' || !found.change) throw new Error('no change of ties');
    expect(found.change.depth).toBeCloseTo(-13, 0);
    expect(found.ties).toEqual([{ name: verbatim('right web'), change: found.change.change }]);
    const words = wordCorrection(found, verbatim);
    expect(inCm(words.text)).toContain('Shorten');
    expect(inCm(words.text)).toContain('right web by');
    // Without ties there is nothing to change.
    expect(judgeFilling(reading, 'filled', context)).toMatchObject([
      { kind: 'shape', change: null, ties: [] },
    ]);
  });
});

describe('judging the empty shell', () => {
  test('within 4 mm all round: nothing', () => {
    expect(judgeFilling({ hip: { girth: 1004 }, waist: { girth: 746 } }, 'empty', context)).toEqual([]);
  });

  test('too wide at one level: taken in over the seams that cross it', () => {
    const found = judgeFilling(
      { hip: { girth: 1016 }, waist: { girth: 750 }, bust: { girth: 940 } },
      'empty',
      context,
    );
    // 8 seams take 2 × 1 mm each.
    expect(found).toMatchObject([
      { kind: 'seam', levelId: 'hip', off: 16, each: 1, isPossible: true, isFilled: false },
    ]);
    expect(8 * 2 * 1).toBe(16);
  });

  test('let out only as far as the allowance goes', () => {
    const found = judgeFilling(
      { bust: { girth: 916 }, hip: { girth: 1000 }, waist: { girth: 750 } },
      'empty',
      context,
    );
    expect(found).toMatchObject([{ kind: 'seam', levelId: 'bust', each: -6, isPossible: false }]);
  });

  test('all by one share: printed to fit a page', () => {
    const found = judgeFilling(
      Object.fromEntries(targets.map(({ id, girth }) => [id, { girth: girth * 0.94 }])),
      'empty',
      context,
    );
    expect(found).toMatchObject([{ kind: 'scale' }]);
    expect(found[0].kind === 'scale' && found[0].share).toBeCloseTo(-0.06, 10);
  });
});

describe('words', () => {
  test('inches and ounces for those who read them', () => {
    const [fill] = judgeFilling({ waist: { girth: 775.4 } }, 'filled', context);
    const words = wordCorrection(fill, (id) => verbatim(id.toUpperCase()));
    // 25.4 mm; 2 × 25.4/750 of 1 kg = 67.7 g = 2.4 oz of 28.3495 g.
    expect(inInches(words.title)).toContain('1 in too large');
    expect(inInches(words.text)).toContain('2.4 oz');
    expect(inInches(words.text)).not.toContain('mm');
  });
});

describe('zones of filling', () => {
  test('add up to the filling, pole and plates taken off', () => {
    const sphere = buildSphere(200, 4);
    const pole = { y: 0, radius: 12.5, reach: 17, sleeveGirth: 86, zBottom: -190, zTop: 190 };
    const fill = { volumeL: 32, low: 1.6, high: 2.56, buy: 3, bags: 3, isAssumed: true };
    const parts = divideFill(sphere, [{ id: 'waist', name: verbatim('Waist'), z: 0 }], pole, fill);
    expect(parts.map(({ id }) => id)).toEqual(['top-waist', 'waist-base']);
    expect(parts.reduce((sum, { volumeL }) => sum + volumeL, 0)).toBeCloseTo(32, 9);
    expect(parts.reduce((sum, { low }) => sum + low, 0)).toBeCloseTo(1.6, 9);
    // A sphere is alike above and below, before and behind.
    expect(parts[0].volumeL).toBeCloseTo(parts[1].volumeL, 3);
    expect(parts[0].frontShare).toBeCloseTo(0.5, 3);
  });
});
