import { describe, expect, it } from 'vitest';
import { foretellLevels } from '../../src/core/simulate/index.ts';
import type { LevelFinding } from '../../src/core/supports/index.ts';

const size = { width: 280, depth: 196, girth: 765 };
const level: LevelFinding = {
  id: 'waist',
  name: 'Waist',
  z: 0,
  body: size,
  free: { width: 243.5, depth: 243.5, girth: 765, deviation: 23 },
  held: { ...size, deviation: -1.6, where: 'left back', x: -60, y: -80 },
  slack: [],
};

describe('foretellLevels', () => {
  it('grows the girth by pR/(Et − pR) and adds π times the thickness (Laplace, Hooke, geometry of the outer face)', () => {
    // p = 3 kPa, R = 765/2π = 121.754 mm: pR = 0.365262 N/mm on 40 N/mm.
    const [found] = foretellLevels([level], { pressure: 3, clothStiffness: 40, clothThickness: 0.6 });
    const growth = 0.365262 / (40 - 0.365262);
    expect(found.growth).toBeCloseTo(growth, 7);
    expect(found.finished.girth).toBeCloseTo(765 * (1 + growth) + Math.PI * 0.6, 3);
  });

  it('takes the maker’s own test tube instead, when measured', () => {
    const [found] = foretellLevels([level], { measuredGrowth: 0.02, clothThickness: 0.5 });
    expect(found.growth).toBe(0.02);
    expect(found.finished.width).toBeCloseTo(280 * 1.02 + 0.5, 9);
  });
});
