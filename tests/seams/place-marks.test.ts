import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MAX_MARK_GAP, MIN_MARK_GAP, placeMarks } from '../../src/core/seams/place-marks.ts';

const even = (count: number, step: number): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => i * step);

describe('placeMarks', () => {
  it('marks both ends of a short seam and nothing else', () => {
    expect(placeMarks(even(9, 10), new Map())).toEqual([
      { kind: 'end', index: 0 },
      { kind: 'end', index: 8 },
    ]);
  });

  it('divides a long seam evenly', () => {
    const marks = placeMarks(even(31, 10), new Map());
    expect(marks.map((mark) => mark.index)).toEqual([0, 10, 20, 30]);
    expect(marks[1].kind).toBe('balance');
  });

  it('leaves out a level crossing too near an end, keeps the others', () => {
    const marks = placeMarks(
      even(13, 10),
      new Map([
        [1, 'hip'],
        [6, 'waist'],
        [12, 'bust'],
      ]),
    );
    expect(marks).toEqual([
      { kind: 'end', index: 0 },
      { kind: 'level', index: 6, levelId: 'waist' },
      { kind: 'end', index: 12, levelId: 'bust' },
    ]);
  });

  it('keeps every gap within the limits on any seam with points dense enough', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 4, max: 20, noNaN: true }), { minLength: 8, maxLength: 120 }),
        fc.uniqueArray(fc.integer({ min: 0, max: 119 }), { maxLength: 6 }),
        (steps, crossings) => {
          const along = Float64Array.from([0, ...steps]);
          for (let i = 1; i < along.length; i++) along[i] += along[i - 1];
          const levels = new Map(crossings.filter((i) => i < along.length).map((i) => [i, `level${i}`]));
          const marks = placeMarks(along, levels);
          for (let i = 1; i < marks.length; i++) {
            const gap = along[marks[i].index] - along[marks[i - 1].index];
            expect(gap).toBeLessThanOrEqual(MAX_MARK_GAP);
            if (marks.length > 2) expect(gap).toBeGreaterThanOrEqual(MIN_MARK_GAP);
          }
        },
      ),
      { seed: 4711, numRuns: 200 },
    );
  });
});
