import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';
import { finderOnMesh, type Mesh, positionOnMesh } from '../../src/core/mesh/index.ts';

const HALF = [30, 20, 50];
const PARTS = 7;

/** A box about the origin, each side parted into squares of two triangles. */
function makeBox(): Mesh {
  const positions: number[] = [];
  const triangles: number[] = [];
  for (const axis of [0, 1, 2]) {
    for (const side of [-1, 1]) {
      const first = positions.length / 3;
      for (let i = 0; i <= PARTS; i++) {
        for (let j = 0; j <= PARTS; j++) {
          const at = [0, 0, 0];
          at[axis] = side * HALF[axis];
          at[(axis + 1) % 3] = HALF[(axis + 1) % 3] * ((2 * i) / PARTS - 1);
          at[(axis + 2) % 3] = HALF[(axis + 2) % 3] * ((2 * j) / PARTS - 1);
          positions.push(...at);
        }
      }
      for (let i = 0; i < PARTS; i++) {
        for (let j = 0; j < PARTS; j++) {
          const a = first + i * (PARTS + 1) + j;
          triangles.push(a, a + PARTS + 1, a + 1, a + 1, a + PARTS + 1, a + PARTS + 2);
        }
      }
    }
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

/** Distance to the surface of a box, in closed form: outside that to the clamped point, inside to the nearest side. */
function distanceToBox(at: readonly number[]): number {
  const over = at.map((x, axis) => Math.abs(x) - HALF[axis]);
  const outside = Math.hypot(...over.map((x) => Math.max(0, x)));
  return outside > 0 ? outside : -Math.max(...over);
}

describe('finderOnMesh', () => {
  const mesh = makeBox();
  const find = finderOnMesh(mesh);
  const random = seededRandom(3);
  const points = Array.from({ length: 400 }, (_, k) =>
    // Near, and far outside of the cells too.
    HALF.map((half) => (k < 300 ? 3 : 40) * half * (random() - 0.5)),
  );

  it('finds a point as near as the box is', () => {
    for (const at of points) {
      const [x, y, z] = positionOnMesh(mesh, find(at));
      expect(Math.hypot(x - at[0], y - at[1], z - at[2])).toBeCloseTo(distanceToBox(at), 8);
    }
  });

  it('has weights of a point of the triangle', () => {
    for (const at of points) {
      const { weights } = find(at);
      expect(Math.min(...weights)).toBeGreaterThanOrEqual(0);
      expect(weights[0] + weights[1] + weights[2]).toBeCloseTo(1, 12);
    }
  });
});
