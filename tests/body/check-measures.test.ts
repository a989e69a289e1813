import { describe, expect, it } from 'vitest';
import {
  type BodyInput,
  checkMeasures,
  FIRST_MEASURES,
  findMeasure,
  isThirdReadingWanted,
  MEASURES,
} from '../../src/core/body/index.ts';
import { inEnglish } from '../in-english.ts';

const GOOD = { bustGirth: 940, waistGirth: 765, hipGirth: 1010, backWaistLength: 402, neckBaseGirth: 366 };

function check(measures: BodyInput['measures'], more: Partial<BodyInput> = {}) {
  return checkMeasures({ figure: 'bust', measures: { ...GOOD, ...measures }, ...more });
}

describe('checkMeasures', () => {
  it('has nothing to say of an ordinary body', () => {
    expect(check({})).toEqual([]);
  });

  it('asks for each of the first five by its path', () => {
    for (const id of FIRST_MEASURES) {
      const { [id]: _, ...rest } = GOOD as Record<string, number>;
      const issues = checkMeasures({ figure: 'bust', measures: rest });
      expect(issues).toMatchObject([{ code: 'measure-missing', path: `measures.${id}`, severity: 'error' }]);
    }
  });

  it.each([
    [37, 'inches'],
    [94, 'centimetres'],
  ])('sees that %d for a bust is %s', (value, unit) => {
    const [issue] = check({ bustGirth: value });
    expect(issue).toMatchObject({ code: 'measure-out-of-range', severity: 'error', measured: value });
    expect(inEnglish(issue.message)).toContain(unit);
    expect(issue.limit).toBeGreaterThan(value);
  });

  it.each([0, -765, Number.NaN])('refuses %d as a waist', (value) => {
    const [issue] = check({ waistGirth: value });
    expect(issue.severity).toBe('error');
    expect(issue.path).toBe('measures.waistGirth');
  });

  it('refuses contradictions of plain geometry, naming the limit', () => {
    // 2 √(300² + 250²) = 781 ≤ girth ≤ 2 (300 + 250) = 1100 for any convex section in that box (rhombus and rectangle).
    expect(check({ waistWidth: 300, waistDepth: 250 })).toContainEqual(
      expect.objectContaining({
        code: 'measures-contradict',
        path: 'measures.waistGirth',
        limit: 2 * Math.hypot(300, 250),
      }),
    );
    expect(check({ neckToBustPoint: 275, frontWaistLength: 430 })).toEqual([]);
    const contradictions = check({ neckToBustPoint: 389, frontWaistLength: 380 }).filter(
      (i) => i.code === 'measures-contradict',
    );
    expect(contradictions).toMatchObject([{ path: 'measures.neckToBustPoint', severity: 'error' }]);
  });

  it('asks, and does not refuse, where a body is rare but real', () => {
    const issues = check({ bustGirth: 1010, waistGirth: 1016, hipGirth: 1012 });
    expect(issues.map((i) => i.severity)).not.toContain('error');
    expect(issues.map((i) => i.code)).toContain('please-confirm');
  });

  it('wants a third reading when two differ by more than is usual', () => {
    const readings = { bustGirth: [932, 948], shoulderLength: [130, 134] };
    expect(check({ shoulderLength: 132 }, { readings })).toMatchObject([
      { code: 'readings-differ', path: 'readings.bustGirth', measured: 16, limit: 10 },
    ]);
  });

  // 10 mm for the large girths, 5 mm for lengths and small girths (common practice, no source).
  it.each([
    ['waistGirth', [770, 780], false],
    ['waistGirth', [770, 781], true],
    ['neckBaseGirth', [366, 371], false],
    ['neckBaseGirth', [366, 372], true],
    ['shoulderLength', [130, 136], true],
    ['shoulderLength', [130, 136, 131], false],
    ['shoulderLength', [130], false],
  ] as const)('%s read as %j: a third is wanted, %s, as the field is offered', (id, readings, isWanted) => {
    const measure = findMeasure(id);
    if (!measure) throw new Error(id);
    expect(isThirdReadingWanted(measure, 'bust', readings)).toBe(isWanted);
    const codes = check({}, { readings: { [id]: readings } }).map(({ code }) => code);
    expect(codes).toEqual(isWanted ? ['readings-differ'] : []);
  });

  it('takes left and right only where a body has both', () => {
    expect(check({ shoulderLength: { left: 130, right: 128 } })).toEqual([]);
    expect(check({ waistGirth: { left: 380, right: 385 } })).toMatchObject([{ code: 'measure-not-sided' }]);
    expect(check({ elbows: 3 })).toMatchObject([{ code: 'unknown-measure', path: 'measures.elbows' }]);
  });

  it('asks about unlike sides and refuses what no body shows', () => {
    expect(check({ shoulderDrop: { left: 68, right: 48 } })).toMatchObject([
      { code: 'sides-differ', path: 'measures.shoulderDrop', measured: 20, severity: 'warning' },
    ]);
    // Scoliosis drops a shoulder by up to 90 mm and lifts a hip by up to 60 (common practice, no source).
    expect(check({ shoulderDrop: { left: 110, right: 20 } })).toMatchObject([{ code: 'sides-differ' }]);
    expect(check({ shoulderDrop: { left: 115, right: 24 } })).toMatchObject([
      { code: 'sides-contradict', limit: 90, severity: 'error' },
    ]);
    expect(check({ waistToHip: { left: 250, right: 190 } })).toMatchObject([{ code: 'sides-differ' }]);
    expect(check({ waistToHip: { left: 251, right: 190 } })).toMatchObject([
      { code: 'sides-contradict', limit: 60, severity: 'error' },
    ]);
  });

  it('names the back’s tape itself where it is shorter than the height it spans', () => {
    // A path is no shorter than the difference of its heights. 1400 − 1000 = 400, and 20 mm of measuring error.
    const heights = { napeHeight: 1400, waistHeight: 1000 };
    const back = (mm: number) => check({ ...heights, backWaistLength: mm });
    expect(back(401)).toEqual([]);
    expect(back(385)).toMatchObject([
      {
        code: 'back-shorter-than-height',
        path: 'measures.backWaistLength',
        severity: 'warning',
        measured: 385,
        limit: 400,
      },
    ]);
    expect(back(379)).toMatchObject([{ code: 'back-shorter-than-height', severity: 'error' }]);
    expect(inEnglish(back(379)[0].message)).toMatch(/Nape.*|Back.*/);
  });

  it('asks nothing more of a measure that two readings agree on', () => {
    expect(check({ backWaistLength: 285 }).length).toBeGreaterThan(0);
    expect(check({ backWaistLength: 285 }, { readings: { backWaistLength: [284, 286] } })).toEqual([]);
    const round = { bustGirth: 1010, waistGirth: 1016, hipGirth: 1012 };
    const readings = { waistGirth: [1016, 1016] };
    expect(check(round, { readings }).filter(({ path }) => path === 'measures.waistGirth')).toEqual([]);
  });

  it('hints that all girths are off when the boxes say so, and of none when they agree', () => {
    // Superellipses that fill their boxes as people of the survey do: girth over the ellipse's 1.11, 1.013, 1.069.
    const boxes = { bustWidth: 280, bustDepth: 240, highHipWidth: 290, highHipDepth: 205 };
    const ellipse = (w: number, d: number) => {
      // The arc length itself, summed.
      let sum = 0;
      for (let k = 0; k < 10000; k++) {
        const t = ((k + 0.5) * 2 * Math.PI) / 10000;
        sum += (Math.hypot(0.5 * w * Math.sin(t), 0.5 * d * Math.cos(t)) * 2 * Math.PI) / 10000;
      }
      return sum;
    };
    const girths = { bustGirth: 1.11 * ellipse(280, 240), highHipGirth: 1.013 * ellipse(290, 205) };
    const hints = (factor: number) =>
      check({
        ...boxes,
        bustGirth: factor * girths.bustGirth,
        highHipGirth: factor * girths.highHipGirth,
        waistGirth: factor * 740,
        hipGirth: factor * 960,
      }).filter(({ code }) => code === 'girths-off');
    expect(hints(1)).toEqual([]);
    expect(hints(1.05)).toMatchObject([{ severity: 'warning', path: 'measures' }]);
    expect(hints(1.05)[0].measured).toBeCloseTo(0.05, 2);
    expect(hints(0.94)[0].measured).toBeCloseTo(-0.06, 2);
  });

  it('knows every measure once, with a usual range for both figures', () => {
    expect(new Set(MEASURES.map((m) => m.id)).size).toBe(MEASURES.length);
    for (const { id, range } of MEASURES) {
      for (const [low, high] of [range.bust, range.chest]) expect(high, id).toBeGreaterThan(low);
    }
  });
});
