/** Gradients and Hessians against central differences, on a crooked layout of a small bumpy panel. */
import { describe, expect, it } from 'vitest';
import { addDirichlet, limitStep, measureDirichlet } from '../../src/core/flatten/dirichlet-energy.ts';
import { addRules, makeLengthRules, measureRules } from '../../src/core/flatten/length-rules.ts';
import { addBending, makeOutlineBending, measureBending } from '../../src/core/flatten/outline-bending.ts';
import { type PreparedDisk, prepareDisk } from '../../src/core/flatten/prepare-disk.ts';
import { startLayout } from '../../src/core/flatten/start-layout.ts';
import { inEnglish } from '../in-english.ts';
import { bumpChart, makeGrid, scaleMesh } from './cases/disk-meshes.ts';

function prepare(): { disk: PreparedDisk; flat: Float64Array } {
  const prepared = prepareDisk(scaleMesh(makeGrid(4, 4, bumpChart(-0.8, 0.6)), 10));
  if (!prepared.ok) throw new Error(inEnglish(prepared.issues[0].message));
  const disk = prepared.value;
  // Strained further by a smooth map that keeps orientation, so that no term vanishes.
  const flat = startLayout(disk).map((x, i) => 1.1 * x + 3 * Math.sin(1.7 * i));
  expect(measureDirichlet(disk, flat)).toBeLessThan(Infinity);
  return { disk, flat };
}

function denseHessian(disk: PreparedDisk): number[][] {
  const n = 2 * disk.vertexCount;
  const dense = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  const { columnStart, rowIndex } = disk.pattern;
  for (let c = 0; c < disk.vertexCount; c++) {
    for (let k = columnStart[c]; k < columnStart[c + 1]; k++) {
      for (let a = 0; a < 2; a++) {
        for (let b = 0; b < 2; b++) {
          dense[2 * rowIndex[k] + a][2 * c + b] = disk.values[4 * k + 2 * a + b];
          dense[2 * c + b][2 * rowIndex[k] + a] = disk.values[4 * k + 2 * a + b];
        }
      }
    }
  }
  return dense;
}

type Add = (flat: Float64Array, gradient: Float64Array) => number;

/** Largest differences relative to the largest entry. Steps of 1e-4 mm on edges of about 50 mm. */
function compare(disk: PreparedDisk, flat: Float64Array, measure: (x: Float64Array) => number, add: Add) {
  const n = flat.length;
  const gradientAt = (x: Float64Array): Float64Array => {
    disk.values.fill(0);
    const gradient = new Float64Array(n);
    add(x, gradient);
    return gradient;
  };
  const gradient = gradientAt(flat);
  const energy = add(flat, new Float64Array(n));
  expect(energy).toBeCloseTo(measure(flat), 6);
  gradientAt(flat);
  const hessian = denseHessian(disk);
  const h = 1e-4;
  let [gradientError, hessianError, gradientSize, hessianSize] = [0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    const plus = flat.slice();
    const minus = flat.slice();
    plus[i] += h;
    minus[i] -= h;
    gradientSize = Math.max(gradientSize, Math.abs(gradient[i]));
    gradientError = Math.max(
      gradientError,
      Math.abs((measure(plus) - measure(minus)) / (2 * h) - gradient[i]),
    );
    const [gPlus, gMinus] = [gradientAt(plus), gradientAt(minus)];
    for (let j = 0; j < n; j++) {
      hessianSize = Math.max(hessianSize, Math.abs(hessian[i][j]));
      hessianError = Math.max(hessianError, Math.abs((gPlus[j] - gMinus[j]) / (2 * h) - hessian[i][j]));
    }
  }
  return { gradient: gradientError / gradientSize, hessian: hessianError / hessianSize };
}

describe('symmetric Dirichlet energy', () => {
  it('has the gradient and Hessian of its differences', () => {
    const { disk, flat } = prepare();
    const errors = compare(
      disk,
      flat,
      (x) => measureDirichlet(disk, x),
      (x, gradient) => addDirichlet(disk, x, gradient, disk.values, false),
    );
    expect(errors.gradient).toBeLessThan(1e-7);
    expect(errors.hessian).toBeLessThan(1e-7);
  });

  // By hand: stretches 2 and 1/2 give 4 + 1/4 + 1/4 + 4 = 8.5 per area.
  it('is 8.5 per area for stretches 2 and ½, and infinite when flipped', () => {
    const prepared = prepareDisk(makeGrid(2, 2, (u, v) => [0, u, v]));
    if (!prepared.ok) throw new Error('unfit');
    const disk = prepared.value;
    const flat = Float64Array.from({ length: 18 }, (_, i) => {
      const v = i >> 1;
      return i % 2 === 0 ? (v % 3) * 0.5 * 2 : Math.floor(v / 3) * 0.5 * 0.5;
    });
    expect(measureDirichlet(disk, flat)).toBeCloseTo(8.5, 12);
    expect(
      measureDirichlet(
        disk,
        flat.map((x, i) => (i % 2 ? x : -x)),
      ),
    ).toBe(Infinity);
  });

  it('when projected, has no negative direction where the exact Hessian has one', () => {
    const { disk, flat } = prepare();
    const squeezed = flat.map((x) => 0.6 * x);
    const report = (isProjected: boolean) => {
      disk.values.fill(0);
      addDirichlet(disk, squeezed, new Float64Array(flat.length), disk.values, isProjected);
      return disk.solver.factor(disk.values, { shift: 1e-6 });
    };
    expect(report(false).negativePivots).toBeGreaterThan(0);
    expect(report(true).negativePivots).toBe(0);
  });

  it('limits a step at 0.9 of the first flip', () => {
    const prepared = prepareDisk(makeGrid(2, 2, (u, v) => [0, u, v]));
    if (!prepared.ok) throw new Error('unfit');
    const disk = prepared.value;
    const flat = Float64Array.from({ length: 18 }, (_, i) => {
      const v = i >> 1;
      return i % 2 === 0 ? (v % 3) * 0.5 : Math.floor(v / 3) * 0.5;
    });
    // Collapsing the last column onto the middle one: area of its triangles is 1 − t·(speed/0.5).
    const step = new Float64Array(18);
    for (const v of [2, 5, 8]) step[2 * v] = -1;
    expect(limitStep(disk, flat, step)).toBeCloseTo(0.9 * 0.5, 12);
    expect(
      limitStep(
        disk,
        flat,
        step.map((x) => -x),
      ),
    ).toBe(1);
  });
});

describe('length rules', () => {
  it('have the gradient of their differences; the Hessian at rest of single edges too', () => {
    const { disk, flat } = prepare();
    const { boundary } = disk;
    const length = (a: number, b: number) =>
      Math.hypot(flat[2 * b] - flat[2 * a], flat[2 * b + 1] - flat[2 * a + 1]);
    const rules = makeLengthRules(disk, [
      { edges: [boundary[0], boundary[1]], target: length(boundary[0], boundary[1]) },
      { edges: [boundary[4], boundary[3]], target: length(boundary[3], boundary[4]) },
    ]);
    rules.multipliers.set([700, -400]);
    const errors = new Float64Array(2);
    // Where the error is zero, λ ∇²ℓ + ρ ∇ℓ ∇ℓᵀ is the exact Hessian.
    const found = compare(
      disk,
      flat,
      (x) => measureRules(rules, x, errors),
      (x, gradient) => addRules(rules, x, gradient, disk.values, errors, false),
    );
    expect(found.gradient).toBeLessThan(1e-6);
    expect(found.hessian).toBeLessThan(1e-5);
  });

  it('sum over paths', () => {
    const { disk, flat } = prepare();
    const b = disk.boundary;
    const rules = makeLengthRules(disk, [{ edges: [b[0], b[1], b[1], b[2], b[2], b[3]], target: 10 }]);
    rules.multipliers[0] = 50;
    const errors = new Float64Array(1);
    const found = compare(
      disk,
      flat,
      (x) => measureRules(rules, x, errors),
      (x, gradient) => addRules(rules, x, gradient, disk.values, errors, false),
    );
    expect(found.gradient).toBeLessThan(1e-7);
  });
});

describe('outline bending', () => {
  it('has the gradient and Hessian of its differences', () => {
    const { disk, flat } = prepare();
    const bending = makeOutlineBending(disk, startLayout(disk), new Uint8Array(disk.boundary.length).fill(1));
    expect(bending.restAngles.length).toBe(disk.boundary.length - 4);
    const found = compare(
      disk,
      flat,
      (x) => measureBending(bending, x),
      (x, gradient) => addBending(bending, x, gradient, disk.values, false),
    );
    expect(found.gradient).toBeLessThan(1e-6);
    expect(found.hessian).toBeLessThan(1e-5);
  });
});
