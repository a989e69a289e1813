import { describe, expect, it } from 'vitest';
import { fitBody, meshOfArm, surfaceOfBody } from '../../src/core/body/index.ts';
import { fitOrThrow, readDemo } from './read-demo.ts';

const ARM = { upperArmGirth: 295, elbowGirth: 255, wristGirth: 162, shoulderToElbow: 335, elbowToWrist: 250 };
const average = readDemo('average');
const { upperArmGirth: _, ...withoutUpperArm } = { ...average.measures, ...ARM };

describe('arms', () => {
  const body = fitOrThrow({ ...average, measures: { ...average.measures, ...ARM } });
  const [right, left] = body.arms;

  it('read what was typed, girth by girth and length by length', () => {
    for (const [id, value] of Object.entries(ARM)) {
      const tape = body.tapes.find((t) => t.id === id);
      expect(tape?.status, id).toBe('met');
      expect(Math.abs((tape?.got ?? 0) - value), id).toBeLessThan(0.5);
    }
    // The same wrist, measured from its points: an ellipse's perimeter lies between π (a + b) and π √(2 (a² + b²)).
    const at = (column: number): Float64Array =>
      right.points.subarray(3 * (right.wristRow * right.columns + column)).subarray(0, 3);
    const span = (i: number, j: number): number => Math.hypot(...at(i).map((x, k) => x - at(j)[k]));
    const [a, b] = [span(0, right.columns / 2) / 2, span(right.columns / 4, (3 * right.columns) / 4) / 2];
    expect(ARM.wristGirth).toBeGreaterThan(Math.PI * (a + b) - 0.2);
    expect(ARM.wristGirth).toBeLessThan(Math.PI * Math.sqrt(2 * (a * a + b * b)) + 0.2);
  });

  it('begin exactly on the armhole’s edge', () => {
    const loop = surfaceOfBody(body).evaluate(body.armholes.right);
    for (let i = 0; i < right.columns; i++) {
      const from = 3 * ((i + right.columns / 2) % right.columns);
      for (let k = 0; k < 3; k++) expect(right.points[3 * i + k]).toBeCloseTo(loop[from + k], 9);
    }
  });

  it('are mirror images on a body of like sides, both facing outwards', () => {
    for (let i = 0; i < right.points.length; i += 3) {
      expect(left.points[i]).toBeCloseTo(-right.points[i], 6);
      expect(left.points[i + 2]).toBeCloseTo(right.points[i + 2], 6);
    }
    for (const arm of [right, left]) {
      const { positions, triangles } = meshOfArm(arm);
      // Signed volume under an open tube about its own middle is positive when its triangles face outwards.
      const middle = [0, 1, 2].map((k) => {
        let sum = 0;
        for (let i = k; i < positions.length; i += 3) sum += positions[i];
        return (3 * sum) / positions.length;
      });
      let volume = 0;
      for (let t = 0; t < triangles.length; t += 3) {
        const [a, b, c] = [0, 1, 2].map((j) =>
          [0, 1, 2].map((k) => positions[3 * triangles[t + j] + k] - middle[k]),
        );
        volume +=
          a[0] * (b[1] * c[2] - b[2] * c[1]) +
          a[1] * (b[2] * c[0] - b[0] * c[2]) +
          a[2] * (b[0] * c[1] - b[1] * c[0]);
      }
      expect(volume).toBeGreaterThan(0);
    }
  });

  it('are told when they cannot be made', () => {
    const partial = fitBody({ ...average, measures: withoutUpperArm });
    expect(partial.issues).toContainEqual(
      expect.objectContaining({ code: 'arm-incomplete', severity: 'warning' }),
    );
    const stub = fitBody({ ...average, measures: { ...average.measures, ...ARM, shoulderToElbow: 195 } });
    expect(stub.issues).toContainEqual(expect.objectContaining({ code: 'arm-too-short', measured: 195 }));
  });
});
