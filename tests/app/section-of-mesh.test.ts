import { describe, expect, it } from 'vitest';
import { sectionOfMesh } from '../../src/app/store/index.ts';

/** A prism of a regular polygon of n corners on radius r, from z 0 to 100, upright. */
function prism(n: number, r: number) {
  const positions = new Float64Array(6 * n);
  const triangles = new Uint32Array(6 * n);
  for (let i = 0; i < n; i++) {
    const angle = (2 * Math.PI * i) / n;
    positions.set([r * Math.cos(angle), r * Math.sin(angle), 0], 6 * i);
    positions.set([r * Math.cos(angle), r * Math.sin(angle), 100], 6 * i + 3);
    const j = (i + 1) % n;
    triangles.set([2 * i, 2 * j, 2 * j + 1, 2 * i, 2 * j + 1, 2 * i + 1], 6 * i);
  }
  return { positions, triangles };
}

describe('a section', () => {
  it('of a prism is its polygon: girth 2 n r sin(π / n), closed form', () => {
    const section = sectionOfMesh(prism(40, 120), 37);
    expect(section?.girth).toBeCloseTo(2 * 40 * 120 * Math.sin(Math.PI / 40), 6);
    expect(section?.width).toBeCloseTo(240, 6);
    expect(section?.depth).toBeCloseTo(240, 6);
  });

  it('through vertices is whole, and beside the mesh is none', () => {
    expect(sectionOfMesh(prism(40, 120), 100)?.girth).toBeCloseTo(2 * 40 * 120 * Math.sin(Math.PI / 40), 6);
    expect(sectionOfMesh(prism(40, 120), 101)).toBeNull();
  });
});
