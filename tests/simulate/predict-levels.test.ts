import { describe, expect, it } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import type { LevelFinding } from '../../src/core/inside/index.ts';
import { predictLevels } from '../../src/core/simulate/index.ts';

const size = { width: 280, depth: 196, girth: 765 };
const level: LevelFinding = {
  id: 'waist',
  name: verbatim('Waist'),
  z: 0,
  body: size,
  free: { width: 243.5, depth: 243.5, girth: 765, deviation: 23 },
  held: { ...size, deviation: -1.6, where: 'left back', x: -60, y: -80 },
  slack: [],
};

describe('predictLevels', () => {
  it('grows the girth by pR/(Et − pR) and adds π times the thickness (Laplace, Hooke, geometry of the outer face)', () => {
    // p = 3 kPa, R = 765/2π = 121.754 mm: pR = 0.365262 N/mm on 40 N/mm.
    const [found] = predictLevels([level], { pressure: 3, clothStiffness: 40, clothThickness: 0.6 });
    const growth = 0.365262 / (40 - 0.365262);
    expect(found.growth).toBeCloseTo(growth, 7);
    expect(found.finished.girth).toBeCloseTo(765 * (1 + growth) + Math.PI * 0.6, 3);
  });

  it('takes the maker’s own test tube instead, takes it off the panels, and lets it grow back', () => {
    const [found] = predictLevels([level], { measuredGrowth: 0.02, clothThickness: 0.5, coverThickness: 4 });
    // Laplace: 0.02 on a tube of 100 mm radius is k = 0.02/1.02/100 per mm. G' = 765 − 2π·4.25 = 738.2965;
    // cut H = G'/(1 + kG'/2π) = 738.2965/1.0230392 = 721.670; growth of it G'/H − 1 = 0.0230392.
    expect(found.growth).toBeCloseTo(0.0230392, 5);
    expect(found.takenOff).toBeCloseTo(765 - 721.67, 2);
    expect(found.finished.girth).toBeCloseTo(765, 9);
    expect(found.finished.width).toBeCloseTo((280 * 738.2965) / 765 + 8.5, 3);
  });
});
