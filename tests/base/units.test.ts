import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatBoth,
  formatDifference,
  formatLength,
  type LengthUnit,
  mmPerInch,
  parseLength,
} from '../../src/core/base/index.ts';
import { inEnglish } from '../in-english.ts';

// Source of every inch below: 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).

function read(text: string, unit: LengthUnit = 'cm'): number {
  const result = parseLength(text, unit);
  if (!result.ok) throw new Error(inEnglish(result.issues[0].message));
  return result.value;
}

describe('parseLength', () => {
  it.each([
    ['92.5', 'cm', 925],
    ['92,5', 'cm', 925],
    ['92.5 cm', 'in', 925],
    ['92.5cm', 'in', 925],
    ['925 mm', 'cm', 925],
    ['925', 'mm', 925],
    ['.5', 'cm', 5],
    ['36 3/8', 'in', 36.375 * 25.4],
    ['36-3/8', 'in', 36.375 * 25.4],
    ['36 3/8"', 'cm', 36.375 * 25.4],
    ['36.375"', 'cm', 36.375 * 25.4],
    ['36⅜ in', 'cm', 36.375 * 25.4],
    ['7/8', 'in', 22.225],
    ['7⁄8 inches', 'cm', 22.225],
    ['½″', 'cm', 12.7],
    ['1 inch', 'cm', 25.4],
    ['-1 1/2', 'in', -38.1],
    ['−3', 'cm', -30],
    ['  40  ', 'cm', 400],
    ['36 IN', 'cm', 914.4],
  ] as const)('reads %j typed where %s is usual as %f mm', (text, unit, expected) => {
    expect(read(text, unit)).toBeCloseTo(expected, 9);
  });

  it.each([
    '',
    '  ',
    'abc',
    '3/0',
    '1.2.3',
    '1,200.5',
    '36 3',
    '3 feet',
    '12 3/8 4',
    '1/2/3',
    'NaN',
    'Infinity',
    '1e5',
  ])('refuses %j and shows what to type', (text) => {
    const result = parseLength(text, 'in');
    expect(result.ok).toBe(false);
    expect(result.issues[0]).toMatchObject({ code: 'length-not-understood', severity: 'error' });
    expect(inEnglish(result.issues[0].message)).toContain('36 3/8');
  });

  it('refuses a number too large to be one', () => {
    expect(parseLength('9'.repeat(400), 'cm').ok).toBe(false);
  });
});

describe('formatLength', () => {
  it.each([
    [925, 'cm', '92.5 cm'],
    [0.4, 'cm', '0.0 cm'],
    [-0.4, 'cm', '0.0 cm'],
    [-12, 'cm', '-1.2 cm'],
    [0.5, 'cm', '0.1 cm'],
    [925, 'in', '36 3/8 in'],
    [22.225, 'in', '7/8 in'],
    [12.7, 'in', '1/2 in'],
    [25.4, 'in', '1 in'],
    [0, 'in', '0 in'],
    [25.3, 'in', '1 in'],
    [-38.1, 'in', '-1 1/2 in'],
  ] as const)('shows %f mm in %s as %j', (length, unit, expected) => {
    expect(formatLength(length, unit)).toBe(expected);
  });

  it('shows sixteenths and bare numbers when asked', () => {
    expect(formatLength(mmPerInch * (2 + 3 / 16), 'in', { fraction: 16 })).toBe('2 3/16 in');
    expect(formatLength(925, 'cm', { bare: true })).toBe('92.5');
    expect(formatLength(925.25, 'cm', { decimals: 2 })).toBe('92.53 cm');
    expect(formatBoth(925)).toBe('92.5 cm (36 3/8 in)');
    expect(formatLength(Number.NaN, 'cm')).toBe('–');
  });

  // By hand, an inch being 25.4 mm: 1/8 in is 3.175 mm, half of 1/16 in is 0.79 mm, 5/8 in is 15.9 mm.
  it.each([
    [3.2, '0.32 cm (1/8 in)'],
    [0.6, '0.06 cm (under 1/16 in)'],
    [9.9, '0.99 cm (3/8 in)'],
    [16, '1.6 cm (5/8 in)'],
    [0, '0 cm (0 in)'],
  ])('shows a difference of %d mm as %s', (mm, text) => {
    expect(formatDifference(mm)).toBe(text);
  });
});

describe('what is shown reads back', () => {
  const length = fc.double({ min: -3000, max: 3000, noNaN: true });

  it('within half a millimetre in centimetres', () => {
    fc.assert(
      fc.property(length, (mm) => {
        expect(Math.abs(read(formatLength(mm, 'cm')) - mm)).toBeLessThanOrEqual(0.5 + 1e-6);
      }),
    );
  });

  it('within half a step in inches, and a second time unchanged', () => {
    fc.assert(
      fc.property(length, fc.constantFrom(8 as const, 16 as const), (mm, fraction) => {
        const shown = formatLength(mm, 'in', { fraction });
        const again = read(shown, 'cm');
        expect(Math.abs(again - mm)).toBeLessThanOrEqual(25.4 / fraction / 2 + 1e-6);
        expect(formatLength(again, 'in', { fraction })).toBe(shown);
      }),
    );
  });

  it('with fractions in lowest terms', () => {
    fc.assert(
      fc.property(length, (mm) => {
        const found = /(\d+)\/(\d+)/.exec(formatLength(mm, 'in', { fraction: 16 }));
        if (found) expect(Number(found[1]) % 2).toBe(1);
      }),
    );
  });
});
