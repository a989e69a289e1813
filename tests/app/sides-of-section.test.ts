import { describe, expect, it } from 'vitest';
import { sectionOfMesh, sidesOfSection } from '../../src/app/store/index.ts';

/** An upright prism of a regular polygon of n corners, radius r, round (x, y). */
function prism(n: number, r: number, x: number, y = 0) {
  const positions = new Float64Array(6 * n);
  const triangles: number[] = [];
  for (let i = 0; i < n; i++) {
    const angle = (2 * Math.PI * i) / n;
    const at = [x + r * Math.cos(angle), y + r * Math.sin(angle)] as const;
    positions.set([...at, 0, ...at, 100], 6 * i);
    const j = (i + 1) % n;
    triangles.push(2 * i, 2 * j, 2 * j + 1, 2 * i, 2 * j + 1, 2 * i + 1);
  }
  return { positions, triangles: Uint32Array.from(triangles) };
}

describe('the sides of a section', () => {
  it('of a circle beside the middle are its arcs, reaches and depths, closed form', () => {
    // Radius 100 round x = 20: the middle plane cuts it where cos θ = −1/5. 2000 corners: within 1e-3 of the circle.
    const section = sectionOfMesh(prism(2000, 100, 20, 35), 50)!;
    const { right, left } = sidesOfSection(section)!;
    const cut = Math.acos(-0.2);
    expect(right.girth).toBeCloseTo(200 * cut, 2);
    expect(left.girth).toBeCloseTo(200 * (Math.PI - cut), 2);
    expect(right.girth + left.girth).toBeCloseTo(section.girth, 9);
    expect(right.width).toBeCloseTo(120, 3);
    expect(left.width).toBeCloseTo(80, 3);
    expect(right.width + left.width).toBeCloseTo(section.width, 9);
    // The foremost point, x = 20, is on the right; on the left the depth is the chord in the middle plane.
    expect(right.depth).toBeCloseTo(200, 3);
    expect(left.depth).toBeCloseTo(2 * Math.sqrt(100 ** 2 - 20 ** 2), 2);
  });

  it('are none where the section lies on one side', () => {
    expect(sidesOfSection(sectionOfMesh(prism(40, 100, 150), 50)!)).toBeNull();
  });
});
