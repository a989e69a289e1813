import { describe, expect, it } from 'vitest';
import { letterOf } from '../../src/core/base/index.ts';

describe('letterOf', () => {
  // Counting in letters without a nought: 26 of one letter, 26² of two, so ZZ is number 26 + 676 − 1.
  it('counts A to Z, then AA', () => {
    expect([0, 1, 25, 26, 27, 51, 52, 701, 702].map(letterOf)).toEqual([
      'A',
      'B',
      'Z',
      'AA',
      'AB',
      'AZ',
      'BA',
      'ZZ',
      'AAA',
    ]);
  });
});
