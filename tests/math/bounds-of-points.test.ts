import { describe, expect, it } from 'vitest';
import { boundsOfPoints, boundsOfPolyline } from '../../src/core/math/index.ts';

// A circle of radius 5 about (30, −40) touches its box where the axes through its middle meet it.
const CIRCLE = Float64Array.from({ length: 16 }, (_, i) => {
  const angle = (Math.PI / 4) * (i >> 1);
  return i % 2 === 0 ? 30 + 5 * Math.cos(angle) : -40 + 5 * Math.sin(angle);
});

describe('boundsOfPolyline', () => {
  it('touches the outermost points', () => {
    expect(boundsOfPolyline(CIRCLE)).toEqual({ minX: 25, minY: -45, maxX: 35, maxY: -35 });
  });
});

describe('boundsOfPoints', () => {
  it('holds every line, and no more', () => {
    const bounds = boundsOfPoints([CIRCLE, Float64Array.of(100, -60), new Float64Array(0)]);
    expect(bounds).toEqual({ minX: 25, minY: -60, maxX: 100, maxY: -35 });
  });
  it('is null without a point', () => {
    expect(boundsOfPoints([])).toBeNull();
    expect(boundsOfPoints([new Float64Array(0)])).toBeNull();
  });
});
