import { afterEach, describe, expect, it, vi } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';
import {
  analyseLdlt,
  Ldlt,
  type LdltReport,
  patternFromPairs,
  vectorFronts,
} from '../../src/core/math/index.ts';
import { productsModule } from '../../src/core/math/products-module.ts';

afterEach(() => vi.unstubAllGlobals());

/** An m × m grid of points in space, triangles' edges coupled, and some far pairs: fronts of many widths. */
function meshSystem(m: number, far: number) {
  const random = seededRandom(m);
  const pairs: number[] = [];
  for (let j = 0; j + 1 < m; j++)
    for (let i = 0; i + 1 < m; i++)
      pairs.push(
        ...[i + j * m, i + 1 + j * m, i + j * m, i + (j + 1) * m],
        ...[i + j * m, i + 1 + (j + 1) * m],
      );
  for (let k = 0; k < far; k++) pairs.push(Math.floor(random() * m * m), Math.floor(random() * m * m));
  const pattern = patternFromPairs(m * m, pairs);
  const values = Float64Array.from({ length: 9 * pattern.rowIndex.length }, () => random() - 0.5);
  for (let c = 0; c < pattern.size; c++)
    for (const k of [0, 4, 8]) values[9 * pattern.columnStart[c] + k] = 8 + random();
  return { pattern, values, right: Float64Array.from({ length: 3 * m * m }, random) };
}

type Outcome = [LdltReport, Float64Array[]];

function outcomes({ pattern, values, right }: ReturnType<typeof meshSystem>, isPlain: boolean): Outcome[] {
  const solver = isPlain
    ? new Ldlt(analyseLdlt(pattern, 3))
    : new Ldlt(analyseLdlt(pattern, 3), vectorFronts);
  const options = [{}, { shift: -9 }, { shift: -9, stopAtNegative: true }, { shift: 3 }];
  return options.map((option) => {
    const report = solver.factor(values, option);
    if (!report.isUsable) return [report, []];
    // One by one, and six at once, some of them nearly empty.
    const rights = [0, 1, 2, 3, 4, 5].map((n) => right.map((x, k) => (k % (n * n * n + 1) === 0 ? x : 0)));
    return [report, [solver.solve(right), ...solver.solveMany(rights)]];
  });
}

// The judge is the plain path, which `ldlt.test.ts` judges by dense elimination.
describe('vectorFronts', () => {
  it.each([
    [3, 0],
    [9, 5],
    [20, 30],
    [41, 90],
  ])('gives the very bits of plain loops: grid of %i, %i far pairs', (m, far) => {
    const system = meshSystem(m, far);
    const plain = outcomes(system, true);
    expect(plain.map(([{ isUsable }]) => isUsable)).toEqual([true, true, false, true]);
    expect(outcomes(system, false)).toEqual(plain);
  });

  it('solves many right sides at once as one by one', () => {
    const { pattern, values, right } = meshSystem(20, 30);
    const solver = new Ldlt(analyseLdlt(pattern, 3), vectorFronts);
    solver.factor(values);
    const rights = [1, 2, 3, 4, 5, 6, 7].map((n) => right.map((x, k) => (k < n ** 3 ? 0 : n * x)));
    expect(solver.solveMany(rights)).toEqual(rights.map((one) => solver.solve(one)));
    expect(solver.solveMany([])).toEqual([]);
  });

  it('runs in WebAssembly here, from a module small enough to be compiled at once', () => {
    const bytes = productsModule();
    expect(bytes.length).toBeLessThan(4096);
    expect(WebAssembly.validate(bytes)).toBe(true);
    const { panels, stack } = vectorFronts({ panels: 90, stack: 40, front: 12, width: 6, unknowns: 30 });
    expect(panels.buffer).toBe(stack.buffer);
    expect([panels.length, stack.length]).toEqual([90, 40]);
  });

  it('falls back to plain loops where WebAssembly is missing or forbidden', () => {
    const system = meshSystem(9, 5);
    const expected = outcomes(system, false);
    const sizes = { panels: 90, stack: 40, front: 12, width: 6, unknowns: 30 };
    const forbidden = {
      ...{ Memory: WebAssembly.Memory, Instance: WebAssembly.Instance },
      Module: class {
        constructor() {
          throw new WebAssembly.CompileError('refused by the policy of the page');
        }
      },
    };
    for (const missing of [undefined, forbidden]) {
      vi.stubGlobal('WebAssembly', missing);
      const { panels, stack } = vectorFronts(sizes);
      expect(panels.buffer).not.toBe(stack.buffer);
      expect(outcomes(system, false)).toEqual(expected);
    }
  });
});
