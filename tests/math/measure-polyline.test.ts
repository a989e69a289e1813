import { describe, expect, it } from 'vitest';
import {
  isInsidePolygon,
  measureAlong,
  measureDistanceToPolyline,
  measurePolygonArea,
  measurePolyline,
  nearestAlong,
  reversePolyline,
  shareOfSegment,
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

describe('measureAlong', () => {
  // Two sides of 3-4-5 triangles.
  it('adds up to every point', () => {
    expect([...measureAlong(Float64Array.of(0, 0, 3, 4, 9, 12))]).toEqual([0, 5, 15]);
    expect([...measureAlong(Float64Array.of(7, 7))]).toEqual([0]);
  });
});

describe('reversePolyline', () => {
  it('turns the order of the points, not of their coordinates', () => {
    expect([...reversePolyline(Float64Array.of(1, 2, 3, 4, 5, 6))]).toEqual([5, 6, 3, 4, 1, 2]);
    expect(measurePolygonArea(reversePolyline(RECTANGLE))).toBe(-1200);
  });
});

describe('shareOfSegment', () => {
  // The foot of the height of a right triangle with legs 15 and 20 divides its hypotenuse 25 into 9 and 16 (Euclid VI.8).
  it('finds the foot of the perpendicular', () => {
    expect(shareOfSegment(0, 0, 25, 0, 9, 12)).toBe(9 / 25);
  });
  it('stays on the segment', () => {
    expect(shareOfSegment(0, 0, 25, 0, -3, 5)).toBe(0);
    expect(shareOfSegment(0, 0, 25, 0, 40, 5)).toBe(1);
    expect(shareOfSegment(2, 2, 2, 2, 40, 5)).toBe(0);
  });
});

describe('nearestAlong', () => {
  // Beside the middle of each side of a rectangle 30 × 40, by hand.
  it('tells how far round the nearest place lies', () => {
    const beside = [
      [15, -2],
      [33, 20],
      [15, 41],
      [-1, 20],
    ];
    expect(beside.map(([x, y]) => nearestAlong(RECTANGLE, true, x, y))).toEqual([15, 50, 85, 120]);
  });
  it('ends where an open line ends', () => {
    expect(nearestAlong(RECTANGLE, false, -1, 39)).toBe(100);
  });
});
