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
    expect(check({ shoulderDrop: { left: 95, right: 30 } })).toMatchObject([
      { code: 'sides-contradict', limit: 60, severity: 'error' },
    ]);
  });

  it('knows every measure once, with a usual range for both figures', () => {
    expect(new Set(MEASURES.map((m) => m.id)).size).toBe(MEASURES.length);
    for (const { id, range } of MEASURES) {
      for (const [low, high] of [range.bust, range.chest]) expect(high, id).toBeGreaterThan(low);
    }
  });
});
