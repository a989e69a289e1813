import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createAppStore, keepLanguage, readKeptLanguage } from '../../src/app/store/index.ts';
import { parseLength } from '../../src/core/base/index.ts';
import {
  createNumbers,
  createSpeakers,
  englishCore,
  guessLanguage,
  localeOf,
} from '../../src/language/index.ts';

describe('numbers by place', () => {
  // Decimal marks and thousands as Unicode CLDR lists them for en, de and de-CH (which has a decimal point).
  it.each([
    ['en', '92.5 cm', '1.2 %', '−0.4 %', /^20,534$/, '1.25'],
    ['de', '92,5 cm', '1,2 %', '−0,4 %', /^20\.534$/, '1,25'],
    // Either apostrophe, by the edition of the tables.
    ['de-CH', '92.5 cm', '1.2 %', '−0.4 %', /^20[’']534$/, '1.25'],
  ])('%s', (locale, length, percent, signed, count, plain) => {
    const numbers = createNumbers(locale);
    expect(numbers.length(925, 'cm')).toBe(length);
    expect(numbers.percent(0.0123)).toBe(percent);
    expect(numbers.signedPercent(-0.0041)).toBe(signed);
    expect(numbers.count(20534)).toMatch(count);
    expect(numbers.plain(1.25, 3)).toBe(plain);
  });

  it('writes the same day of the calendar everywhere, as CLDR has its middle form', () => {
    expect(createNumbers('de').day('2026-03-04')).toBe('04.03.2026');
    expect(createNumbers('en').day('2026-03-04')).toBe('Mar 4, 2026');
    for (const none of ['im März', '2026-13-45', '']) expect(createNumbers('de').day(none)).toBe(none);
  });

  it('leaves fractions of inches alone', () => {
    // 36 3/8 in = 36.375 × 25.4 mm exactly.
    expect(createNumbers('de').length(923.925, 'in')).toBe('36 3/8 in');
  });

  it('tells how little something is off in the units shown, and never as nothing', () => {
    // By hand: 3.5 mm are 0.35 cm; 12.4 mm by the millimetre 1.2 cm; 3.175 mm are 1/8 in; 0.2 mm are 0.0079 in.
    const { small } = createNumbers('en');
    expect([0, 3.5, -3.5, 12.4].map((mm) => small(mm, 'cm'))).toEqual([
      '0 cm',
      '0.35 cm',
      '0.35 cm',
      '1.2 cm',
    ]);
    expect([3.175, 0.2].map((mm) => small(mm, 'in'))).toEqual(['1/8 in', '0.01 in']);
    expect(createNumbers('de').small(3.5, 'cm')).toBe('0,35 cm');
  });

  it('tells what is bought or typed with all its digits, in inches only where they are as exact', () => {
    const phrase = {
      id: 'gauge.out-of-range',
      values: { option: 'clearance', value: 12.7, least: 0.5, most: 25 },
    };
    const said = createSpeakers(englishCore);
    // 12.7 mm are 1/2 in; neither 0.5 nor 25 mm is a sixteenth of one.
    expect(said.cm(phrase)).toContain('1.27 cm: give 0.05 cm to 2.5 cm');
    expect(said.in(phrase)).toContain('1/2 in: give 0.5 mm to 25 mm');
    expect(said.both(phrase)).toContain('1.27 cm (1/2 in): give 0.05 cm to 2.5 cm');
  });

  it('gives masses and areas in one way beside centimetres, and one beside inches', () => {
    // NIST Handbook 44, appendix C: 1 lb = 0.453 592 37 kg = 16 oz, 1 in² = 6.4516 cm², 1 yd² = 0.836 127 36 m², 1 yd = 0.9144 m.
    const { mass, area, clothArea, longLength } = createNumbers('en');
    expect([0.25, 1.5, 21.34].map((kg) => mass(kg, 'cm'))).toEqual(['250 g', '1.50 kg', '21.3 kg']);
    expect([0.226796185, 0.45359237, 9.0718474].map((kg) => mass(kg, 'in'))).toEqual([
      '8.0 oz',
      '1.00 lb',
      '20.0 lb',
    ]);
    expect([area(64_516, 'cm'), area(64_516, 'in')]).toEqual(['645 cm²', '100 in²']);
    expect([clothArea(2.5083821, 'cm'), clothArea(2.5083821, 'in')]).toEqual(['2.51 m²', '3.00 yd²']);
    expect([longLength(182.88, 'cm'), longLength(182.88, 'in')]).toEqual(['183 m', '200 yd']);
    expect(createNumbers('de').mass(1.5, 'cm')).toBe('1,50 kg');
  });

  it('marks only points between digits', () => {
    const { mark } = createNumbers('de');
    expect(mark('Sie kippt bei 10.5°. Dann 2 kg.')).toBe('Sie kippt bei 10,5°. Dann 2 kg.');
  });

  it.each(['en', 'de', 'de-CH'])('what is shown in %s can be typed', (locale) => {
    const numbers = createNumbers(locale);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 25_000 }), (tenths) => {
        const read = parseLength(numbers.length(tenths / 10, 'cm', { bare: true }), 'cm');
        // Shown to the millimetre.
        expect(read.ok && Math.abs(read.value - tenths / 10)).toBeLessThanOrEqual(0.5 + 1e-9);
      }),
    );
  });
});

describe('the language', () => {
  it('is the first wished for that is spoken, else English', () => {
    expect(guessLanguage(['it-IT', 'de-AT', 'en'])).toBe('de');
    expect(guessLanguage(['en-GB', 'de'])).toBe('en');
    expect(guessLanguage(['it', 'DEU'])).toBe('en');
    expect(guessLanguage([])).toBe('en');
  });

  it('takes numbers and dates of the place named for it', () => {
    expect(localeOf('de', ['en-US', 'de-CH'])).toBe('de-CH');
    expect(localeOf('de', ['en-US'])).toBe('de');
  });

  it('is kept once chosen, and guessed anew otherwise', () => {
    const kept = new Map<string, string>();
    const storage = {
      read: (key: string) => kept.get(key) ?? null,
      write: (key: string, text: string) => void kept.set(key, text),
    };
    expect(readKeptLanguage(storage, ['de-DE'])).toBe('de');
    const store = createAppStore();
    keepLanguage(store, storage);
    store.setState({ theme: 'dark' });
    expect(kept.size).toBe(0);
    store.setState({ language: 'de' });
    expect(readKeptLanguage(storage, ['en'])).toBe('de');
  });

  it('is guessed where nothing can be kept', () => {
    const refuse = () => {
      throw new Error('refused');
    };
    const storage = { read: refuse, write: refuse };
    expect(readKeptLanguage(storage, ['de'])).toBe('de');
    const store = createAppStore();
    keepLanguage(store, storage);
    store.setState({ language: 'de' });
    expect(store.getState().language).toBe('de');
  });
});
