import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';
import { projectPoint } from '../../src/core/body/project-point.ts';
import { matrixOf, project } from './photograph.ts';

describe('projectPoint', () => {
  it('shows points where a homogeneous 3 × 4 camera matrix puts them, from every side', () => {
    const random = seededRandom(11);
    const between = (low: number, high: number): number => low + (high - low) * random();
    for (let i = 0; i < 300; i++) {
      const view = (['front', 'right', 'left'] as const)[i % 3];
      const [distance, lensHeight, waistHeight] = [
        between(1500, 5000),
        between(800, 1500),
        between(900, 1150),
      ];
      const [shift, turn, scale, rise] = [
        between(-80, 80),
        between(-0.2, 0.2),
        between(0.95, 1.05),
        between(-9, 9),
      ];
      const point = [between(-250, 250), between(-200, 200), between(-300, 450)];
      const out = new Float64Array(2);
      const pose = { shift, rise, yaw: turn, scale: scale - 1 };
      projectPoint(view, { distance, lensHeight }, pose, waistHeight, point, out);
      const shot = { view, distance, lensHeight, waistHeight: waistHeight + rise, shift, turn, scale };
      const { p, q } = project(matrixOf(shot), point);
      expect(out[0]).toBeCloseTo(p, 8);
      expect(out[1]).toBeCloseTo(q, 8);
    }
  });

  it('shows a metre in the plane of the rule as a metre, and nearer to the lens as more', () => {
    const at = (y: number, z: number): Float64Array => {
      const out = new Float64Array(2);
      const pose = { shift: 0, rise: 0, yaw: 0, scale: 0 };
      projectPoint('front', { distance: 3000, lensHeight: 1100 }, pose, 1000, [-200, y, z], out);
      return out;
    };
    expect([...at(0, 0)]).toEqual([200, 1000]);
    // Similar triangles: 300 mm nearer of 3000 show 10/9.
    expect(at(300, 0)[0]).toBeCloseTo((200 * 10) / 9, 9);
    expect(at(300, 0)[1]).toBeCloseTo(1100 - (100 * 10) / 9, 9);
  });
});
