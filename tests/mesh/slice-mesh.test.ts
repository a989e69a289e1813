import { describe, expect, it } from 'vitest';
import { sliceMesh } from '../../src/core/mesh/index.ts';

const ROUND = 180;
const ROWS = 10;

/** An upright tube of radius 100, from z = 0 to 200 mm, open at both ends. */
function tube() {
  const positions: number[] = [];
  const triangles: number[] = [];
  for (let i = 0; i <= ROWS; i++) {
    for (let j = 0; j < ROUND; j++) {
      const angle = (2 * Math.PI * (j + 0.5)) / ROUND;
      positions.push(100 * Math.cos(angle), 100 * Math.sin(angle), (200 * i) / ROWS);
      if (i === ROWS) continue;
      const [a, b] = [i * ROUND + j, i * ROUND + ((j + 1) % ROUND)];
      triangles.push(a, b, b + ROUND, a, b + ROUND, a + ROUND);
    }
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

function lengthOf(points: Float64Array, closed: boolean): number {
  const count = points.length / 2;
  let sum = 0;
  for (let i = 0; i < (closed ? count : count - 1); i++) {
    const j = (i + 1) % count;
    sum += Math.hypot(points[2 * j] - points[2 * i], points[2 * j + 1] - points[2 * i + 1]);
  }
  return sum;
}

describe('slicing a mesh', () => {
  it('finds one ring in a tube cut across: a polygon in a circle, n · 2r sin(π/n) round', () => {
    const slices = sliceMesh(tube(), 2, 73.2);
    expect(slices.map(({ closed }) => closed)).toEqual([true]);
    // Diagonals of the squares lie in the chords too.
    expect(lengthOf(slices[0].points, true)).toBeCloseTo(ROUND * 200 * Math.sin(Math.PI / ROUND), 9);
  });

  it('finds two open lines along a tube that is cut lengthwise, each from end to end', () => {
    const slices = sliceMesh(tube(), 0, 0);
    expect(slices.map(({ closed }) => closed)).toEqual([false, false]);
    for (const { points } of slices) {
      expect(lengthOf(points, false)).toBeCloseTo(200, 9);
      expect([points[1], points[points.length - 1]].toSorted((a, b) => a - b)).toEqual([0, 200]);
    }
  });

  it('finds nothing beside the mesh', () => {
    expect(sliceMesh(tube(), 1, 100.5)).toEqual([]);
  });

  it('counts a vertex in the plane as above it: no row of vertices is found twice', () => {
    expect(sliceMesh(tube(), 2, 100)).toHaveLength(1);
    expect(sliceMesh(tube(), 2, 0)).toHaveLength(0);
  });
});
