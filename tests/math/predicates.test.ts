import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  doSegmentsTouch,
  intersectSegments,
  locateInPolygon,
  orientation,
} from '../../src/core/math/index.ts';

describe('orientation', () => {
  it('is twice the area, positive counter-clockwise', () => {
    expect(orientation(0, 0, 4, 0, 0, 3)).toBe(12);
    expect(orientation(0, 0, 0, 3, 4, 0)).toBe(-12);
  });

  it('has the right sign where rounding gives the wrong one', () => {
    // Kettner, Mehlhorn, Pion, Schirra, Yap, Classroom examples of robustness problems (2008), fig. 2:
    // p near (0.5, 0.5), q = (12, 12), r = (24, 24); one unit in the last place of y decides.
    const u = 2 ** -53;
    expect(Math.sign(orientation(0.5, 0.5 + u, 12, 12, 24, 24))).toBe(1);
    expect(Math.sign(orientation(0.5 + u, 0.5, 12, 12, 24, 24))).toBe(-1);
    expect(orientation(0.5 + u, 0.5 + u, 12, 12, 24, 24)).toBe(0);
  });

  it('agrees with exact integer arithmetic', () => {
    const int = fc.integer({ min: -(2 ** 26), max: 2 ** 26 });
    fc.assert(
      fc.property(int, int, int, int, int, int, (ax, ay, bx, by, cx, cy) => {
        const [x1, y1, x2, y2] = [bx - ax, by - ay, cx - ax, cy - ay].map(BigInt);
        const exact = x1 * y2 - y1 * x2;
        expect(Math.sign(orientation(ax, ay, bx, by, cx, cy))).toBe(exact > 0n ? 1 : exact < 0n ? -1 : 0);
      }),
      { seed: 20260301, numRuns: 300 },
    );
  });
});

describe('segments', () => {
  it('cross where they should', () => {
    expect(intersectSegments(0, 0, 10, 0, 4, -1, 4, 3)).toEqual({ s: 0.4, t: 0.25 });
    expect(intersectSegments(0, 0, 10, 0, 10, 0, 12, 5)).toEqual({ s: 1, t: 0 });
    expect(intersectSegments(0, 0, 10, 0, 0, 1, 10, 1)).toBeNull();
    expect(intersectSegments(0, 0, 1, 0, 2, -1, 2, 1)).toBeNull();
  });

  it('touch when they overlap on one line, not when they lie apart on it', () => {
    expect(doSegmentsTouch(0, 0, 4, 4, 3, 3, 9, 9)).toBe(true);
    expect(doSegmentsTouch(0, 0, 2, 2, 3, 3, 9, 9)).toBe(false);
    expect(intersectSegments(0, 0, 4, 4, 3, 3, 9, 9)).toBeNull();
  });
});

describe('locateInPolygon', () => {
  const arrow = [0, 0, 10, 0, 5, 5, 10, 10, 0, 10];
  it('knows inside, border and outside of a notched outline, either direction', () => {
    const reversed = [0, 10, 10, 10, 5, 5, 10, 0, 0, 0];
    for (const polygon of [arrow, reversed]) {
      expect(locateInPolygon(polygon, 2, 5)).toBe(1);
      expect(locateInPolygon(polygon, 7, 5)).toBe(-1);
      expect(locateInPolygon(polygon, 5, 5)).toBe(0);
      expect(locateInPolygon(polygon, 0, 3)).toBe(0);
      expect(locateInPolygon(polygon, 4, 10)).toBe(0);
      expect(locateInPolygon(polygon, -1, 5)).toBe(-1);
      expect(locateInPolygon(polygon, 11, 0)).toBe(-1);
    }
  });
});
