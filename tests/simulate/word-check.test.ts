import { describe, expect, it } from 'vitest';
import { wordCheck } from '../../src/core/simulate/index.ts';
import { catalogue as germanCore } from '../../src/language/german/core.ts';
import { createSpeakers, englishCore } from '../../src/language/index.ts';

const english = createSpeakers(englishCore);
const german = createSpeakers(germanCore);
const girth = wordCheck({ unit: 'mm', value: 925, below: 0, above: 5 });
const filling = wordCheck({ unit: 'kg', value: 0.235, below: 0.055, above: 0.055 });

describe('something to measure', () => {
  it('is told with its limits, in the same unit', () => {
    expect(english.cm(girth)).toBe('92.5 cm, −0 / +0.5 cm');
    expect(german.cm(girth)).toBe('92,5 cm, −0 / +0,5 cm');
    expect(english.cm(wordCheck({ unit: 'mm', value: 300, below: 0.5, above: 0.5 }))).toBe(
      '30.0 cm ± 0.05 cm',
    );
    expect(english.cm(wordCheck({ unit: 'mm', value: 300, below: null, above: null }))).toBe('30.0 cm');
  });

  it('is told to the sixteenth of an inch', () => {
    // 925 / 25.4 = 36.417, 36 7/16 by the sixteenth; 5 mm are 3.15 of them.
    expect(english.in(girth)).toBe('36 7/16 in, −0 / +3/16 in');
    expect(english.both(wordCheck({ unit: 'mm', value: 925, below: null, above: null }))).toBe(
      '92.5 cm (36 7/16 in)',
    );
  });

  it('is a range where it is a mass', () => {
    expect(english.cm(filling)).toBe('180 g to 290 g');
    expect(german.cm(filling)).toBe('180 g bis 290 g');
    // 1 oz = 28.3495 g (international avoirdupois ounce).
    expect(english.in(filling)).toBe('6.3 oz to 10.2 oz');
  });

  it('may be an angle or a count', () => {
    expect(german.cm(wordCheck({ unit: 'degrees', value: 10.52, below: null, above: null }))).toBe('10,5°');
    expect(english.in(wordCheck({ unit: 'pieces', value: 16, below: 0, above: 0 }))).toBe('16');
  });
});
