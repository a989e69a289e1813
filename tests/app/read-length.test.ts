import { describe, expect, it } from 'vitest';
import { readLength } from '../../src/app/views/parts/read-length.ts';
import { words as english } from '../../src/language/english/app.ts';
import { createNumbers } from '../../src/language/index.ts';

/** Waist-like limits, mm. 1 in = 25.4 mm exactly (international yard and pound agreement, 1959). */
const limits = { min: 392, max: 1755 };
const read = (text: string, unit: 'cm' | 'in' = 'cm') =>
  readLength(text, unit, 'Waist girth', limits, { words: english.length, numbers: createNumbers('en') });

describe('a typed measure', () => {
  it.each([
    ['76.5', 'cm', 765],
    ['76,5', 'cm', 765],
    ['765 mm', 'cm', 765],
    ['30 in', 'cm', 762],
    ['30 1/8', 'in', 30.125 * 25.4],
    ['30⅛"', 'cm', 30.125 * 25.4],
    ['76.5 cm', 'in', 765],
  ] as const)('%s in a field of %s', (text, unit, mm) => {
    const reading = read(text, unit);
    expect(reading.ok && reading.value).toBeCloseTo(mm, 9);
  });

  it('names field, value and both limits when out of range', () => {
    expect(read('10')).toEqual({
      ok: false,
      isShort: true,
      message: 'Waist girth is 10.0 cm; it must lie between 39.2 cm and 175.5 cm.',
    });
  });

  it('may become right with more digits while it is too short, not once it is too long', () => {
    expect(read('7')).toMatchObject({ ok: false, isShort: true });
    expect(read('765')).toMatchObject({ ok: false, isShort: false });
  });

  it.each([
    ['765', 'cm', 'If you meant millimetres, type 765 mm.'],
    ['30', 'cm', 'If you meant inches, type 30 in.'],
    ['76.5', 'in', 'If you meant centimetres, type 76.5 cm.'],
  ] as const)('%s in a field of %s is suspected to be another unit', (text, unit, hint) => {
    const reading = read(text, unit);
    expect(!reading.ok && reading.message.endsWith(hint)).toBe(true);
  });

  it('suspects nothing when the unit was typed', () => {
    const reading = read('765 cm');
    expect(!reading.ok && reading.message).not.toContain('If you meant');
  });

  it.each(['', '   ', 'abc', '7 0', '-76', '1/0'])('refuses “%s” naming the field', (text) => {
    const reading = read(text);
    expect(!reading.ok && reading.message).toContain('Waist girth');
  });
});
