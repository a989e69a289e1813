import { describe, expect, it } from 'vitest';
import { surfaceOfBody } from '../../src/core/body/index.ts';
import { DEMO_IDS, fitOrThrow, readDemo } from './read-demo.ts';

/** Seen from the side, where the armhole's plane is nearly true: isoperimetric quotient and sum of all turns, degrees. */
function measureRing(points: Float64Array): { roundness: number; turn: number } {
  const n = points.length / 3;
  const at = (i: number): readonly [number, number] => [points[3 * (i % n) + 1], points[3 * (i % n) + 2]];
  let [area, length, turn] = [0, 0, 0];
  for (let i = 0; i < n; i++) {
    const [[ax, ay], [bx, by], [cx, cy]] = [at(i), at(i + 1), at(i + 2)];
    const [px, py, qx, qy] = [bx - ax, by - ay, cx - bx, cy - by];
    area += 0.5 * (ax * by - ay * bx);
    length += Math.hypot(px, py);
    turn += Math.abs(Math.atan2(px * qy - py * qx, px * qx + py * qy));
  }
  return { roundness: (4 * Math.PI * Math.abs(area)) / length ** 2, turn: (180 * turn) / Math.PI };
}

// A convex ring turns by 360° in all (Fenchel), an ellipse of 3 : 2 has an isoperimetric quotient of 0.94 (Ramanujan’s
// perimeter), the pear that an oval of the chart was beside a large bust 0.85 and turns of 409°.
describe.each(DEMO_IDS)('the armholes of the demo %s', (demo) => {
  const body = fitOrThrow(readDemo(demo), { fair: true });
  const surface = surfaceOfBody(body);

  it.each(['right', 'left'] as const)('are even ovals: %s', (side) => {
    const { roundness, turn } = measureRing(surface.evaluate(body.armholes[side]));
    expect(roundness).toBeGreaterThan(0.9);
    expect(turn).toBeLessThan(380);
  });

  it('keep armpit, shoulder point and breaks where the rough body has them in the chart', () => {
    const rough = fitOrThrow(readDemo(demo)).armholes;
    for (const side of ['right', 'left'] as const) {
      for (const i of [0, 16, 32, 48]) {
        expect(body.armholes[side][2 * i]).toBeCloseTo(rough[side][2 * i], 9);
        expect(body.armholes[side][2 * i + 1]).toBeCloseTo(rough[side][2 * i + 1], 9);
      }
    }
  });
});
