import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/core/base/index.ts';
import { hollowMesh, thickenFlat } from '../../src/core/export/index.ts';

interface Triangles {
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
}

/** Σ a·(b × c) ÷ 6: the divergence theorem for x/3. */
function volume({ positions: p, triangles }: Triangles): number {
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]];
    sum +=
      p[a] * (p[b + 1] * p[c + 2] - p[b + 2] * p[c + 1]) +
      p[a + 1] * (p[b + 2] * p[c] - p[b] * p[c + 2]) +
      p[a + 2] * (p[b] * p[c + 1] - p[b + 1] * p[c]);
  }
  return sum / 6;
}

/** Every directed edge once, and its reverse once. */
function isWatertight({ triangles }: Triangles): boolean {
  const edges = new Set<string>();
  for (let t = 0; t < triangles.length; t += 3)
    for (let k = 0; k < 3; k++) {
      const edge = `${triangles[t + k]} ${triangles[t + ((k + 1) % 3)]}`;
      if (edges.has(edge)) return false;
      edges.add(edge);
    }
  return [...edges].every((edge) => edges.has(edge.split(' ').reverse().join(' ')));
}

/** An upright prism over a regular polygon, open below, closed above by a fan. */
function cup(corners: number, radius: number, height: number): Triangles {
  const positions: number[] = [];
  for (const z of [0, height])
    for (let i = 0; i < corners; i++) {
      const angle = (2 * Math.PI * i) / corners;
      positions.push(radius * Math.cos(angle), radius * Math.sin(angle), z);
    }
  positions.push(0, 0, height);
  const triangles: number[] = [];
  for (let i = 0; i < corners; i++) {
    const j = (i + 1) % corners;
    triangles.push(i, j, corners + j, i, corners + j, corners + i, corners + i, corners + j, 2 * corners);
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

describe('a hollow cup', () => {
  const [corners, radius, height, wall] = [96, 50, 120, 6];
  const hollow = hollowMesh(cup(corners, radius, height), wall);

  it('is watertight and stands level', () => {
    expect(isWatertight(hollow)).toBe(true);
    expect(Math.min(...hollow.positions.filter((_, i) => i % 3 === 2))).toBe(0);
  });

  it('holds the prism outside less the prism inside (½ n sin(2π/n) r² h)', () => {
    const prism = (r: number, h: number) => 0.5 * corners * Math.sin((2 * Math.PI) / corners) * r * r * h;
    // The wall is measured across the polygon's flats: r − w ÷ cos(π/n) at its corners. At the rim the lid's corner is π − 2π/n
    // wide and the wall's π, so the mean direction leans by 2 %: 0.1 mm of the lid's 6.
    const inner = radius - wall / Math.cos(Math.PI / corners);
    const truth = prism(radius, height) - prism(inner, height - wall);
    expect(Math.abs(volume(hollow) / truth - 1)).toBeLessThan(4e-3);
  });

  it('must have a level border', () => {
    const { positions, triangles } = cup(8, 10, 10);
    const tilted = positions.map((v, i) => (i === 2 ? 1 : v));
    expect(() => hollowMesh({ positions: tilted, triangles }, 1)).toThrow(InvariantError);
    expect(() => hollowMesh(hollow, 1)).toThrow(InvariantError);
  });
});

it('a flat panel thickened is watertight and holds area × thickness', () => {
  // An L of three unit squares: area 3.
  const flat = Float64Array.of(0, 0, 1, 0, 2, 0, 2, 1, 1, 1, 1, 2, 0, 2, 0, 1);
  const triangles = Uint32Array.of(0, 1, 4, 0, 4, 7, 1, 2, 3, 1, 3, 4, 7, 4, 5, 7, 5, 6);
  const plate = thickenFlat(flat, triangles, 1.5, 10, -4);
  expect(isWatertight(plate)).toBe(true);
  expect(volume(plate)).toBeCloseTo(4.5, 10);
  expect(Math.min(...plate.positions.filter((_, i) => i % 3 === 0))).toBe(10);
});
