import { describe, expect, it } from 'vitest';
import type { DrawingPath } from '../../src/core/drawing/index.ts';
import { type Mesh, pictureLine, pictureMesh, type View } from '../../src/core/mesh/index.ts';

/** A cube of side 10 about the origin. x to the wearer's right, y to the front, z up. */
const corners = [-5, 5].flatMap((z) => [-5, 5].flatMap((y) => [-5, 5].map((x) => [x, y, z])));
const sides = [
  [0, 2, 3, 1],
  [4, 5, 7, 6],
  [0, 1, 5, 4],
  [2, 6, 7, 3],
  [0, 4, 6, 2],
  [1, 3, 7, 5],
];
const cube: Mesh = {
  positions: Float64Array.from(corners.flat()),
  triangles: Uint32Array.from(sides.flatMap(([a, b, c, d]) => [a, b, c, a, c, d])),
};

const area = ({ points }: DrawingPath) => {
  let twice = 0;
  for (let i = 0; i < points.length; i += 2) {
    const j = (i + 2) % points.length;
    twice += points[i] * points[j + 1] - points[j] * points[i + 1];
  }
  return Math.abs(twice) / 2;
};

describe('pictureMesh', () => {
  it.each(['front', 'side', 'back'] as View[])(
    'shows one side of a cube at true size from the %s',
    (view) => {
      const items = pictureMesh(cube, view) as DrawingPath[];
      expect(items).toHaveLength(2);
      expect(items.reduce((sum, item) => sum + area(item), 0)).toBeCloseTo(100, 9);
    },
  );

  it('puts the wearer’s right on the left in front, on the right behind; up is up', () => {
    // Vertex 7 is right, front, top; vertex 5 is right, back, top.
    const end = (vertex: number, view: View) =>
      (pictureLine(cube, [vertex, vertex], view, {})[0] as DrawingPath).points.slice(0, 2);
    expect([...end(7, 'front')]).toEqual([-5, -5]);
    expect([...end(5, 'back')]).toEqual([5, -5]);
    // From the wearer's right the front is on the right.
    expect([...end(7, 'side')]).toEqual([5, -5]);
  });

  it('leaves out lines on the far side', () => {
    expect(pictureLine(cube, [0, 1], 'front', {})).toEqual([]);
    expect(pictureLine(cube, [2, 3], 'front', {})).toHaveLength(1);
  });
});
