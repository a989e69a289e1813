import { describe, expect, it } from 'vitest';
import {
  isInsidePolygon,
  measureDistanceToPolyline,
  measurePolygonArea,
  measurePolyline,
} from '../../src/core/math/index.ts';

const RECTANGLE = Float64Array.of(0, 0, 30, 0, 30, 40, 0, 40);

describe('measurePolyline', () => {
  // 3-4-5 triangles: 5 + 10 (Euclid I.47). Two segments, so that a root of summed squares would show.
  it('adds segment by segment', () => {
    expect(measurePolyline(Float64Array.of(0, 0, 3, 4, 9, 12))).toBe(15);
  });
  it('closes on request', () => {
    expect(measurePolyline(RECTANGLE)).toBe(100);
    expect(measurePolyline(RECTANGLE, true)).toBe(140);
  });
});

describe('measurePolygonArea', () => {
  it('is signed', () => {
    expect(measurePolygonArea(RECTANGLE)).toBe(1200);
    expect(measurePolygonArea(Float64Array.of(0, 40, 30, 40, 30, 0, 0, 0))).toBe(-1200);
  });
  it('keeps its digits far from the origin', () => {
    const far = RECTANGLE.map((value) => value + 1e9);
    expect(measurePolygonArea(far)).toBe(1200);
  });
  // Regular n-gon: (n/2) r² sin(2π/n).
  it('agrees with the closed form of a regular polygon', () => {
    const n = 17;
    const points = Float64Array.from({ length: 2 * n }, (_, i) => {
      const angle = (2 * Math.PI * (i >> 1)) / n;
      return 50 * (i % 2 ? Math.sin(angle) : Math.cos(angle));
    });
    expect(measurePolygonArea(points)).toBeCloseTo((n / 2) * 2500 * Math.sin((2 * Math.PI) / n), 9);
  });
});

describe('isInsidePolygon', () => {
  it('tells a hollow from the inside', () => {
    const hollow = Float64Array.of(0, 0, 30, 0, 30, 30, 15, 10, 0, 30);
    expect(isInsidePolygon(hollow, 15, 5)).toBe(true);
    expect(isInsidePolygon(hollow, 15, 20)).toBe(false);
    expect(isInsidePolygon(hollow, 3, 20)).toBe(true);
    expect(isInsidePolygon(hollow, -3, 20)).toBe(false);
  });
});

describe('measureDistanceToPolyline', () => {
  it('finds segments, ends and the closing segment', () => {
    expect(measureDistanceToPolyline(RECTANGLE, false, 15, -7)).toBe(7);
    expect(measureDistanceToPolyline(RECTANGLE, false, 33, 44)).toBe(5);
    expect(measureDistanceToPolyline(RECTANGLE, false, 5, 21)).toBe(19);
    expect(measureDistanceToPolyline(RECTANGLE, true, 5, 20)).toBe(5);
  });
});
