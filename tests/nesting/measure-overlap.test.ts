import { areaPathsD, FillRule, intersectD } from 'clipper2-ts';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';
import { readyOutline, turnShape } from '../../src/core/nesting/make-shapes.ts';
import { overlapByLoops, overlapByVectors } from '../../src/core/nesting/measure-overlap.ts';
import { HEAD } from '../../src/core/nesting/overlap-proxy.ts';
import { pathOf } from './judge-plan.ts';
import { planOf, readInstance } from './sample-problems.ts';

afterEach(() => vi.unstubAllGlobals());

/** Every outline of an instance, in two turns. */
function shapesOf(name: string) {
  const { items } = readInstance(name, 0);
  const outlines = [...new Map(items.map(({ id, outline }) => [id.split('.')[0], outline])).values()];
  return outlines.flatMap((outline) => {
    const ready = readyOutline(outline, 1e-3, 0);
    return [turnShape(ready, 0, false), turnShape(ready, 0.7, true)];
  });
}

describe('overlap of two shapes', () => {
  test.each(['swim', 'mao', 'fu'])('%s: by vectors, the bits of plain loops', (name) => {
    const shapes = shapesOf(name);
    const byLoops = overlapByLoops(shapes);
    const byVectors = overlapByVectors(shapes);
    expect(byVectors).toBeDefined();
    const random = seededRandom(7);
    const reach = 2 * shapes[0].of.diameter;
    const f = Math.fround;
    const pick = (): number => HEAD * Math.floor(random() * shapes.length);
    let met = 0;
    for (let k = 0; k < 4000; k++) {
      const [a, b] = [pick(), pick()];
      const [dx, dy, epsilon] = [f((random() - 0.5) * reach), f((random() - 0.5) * reach), f(0.005 * reach)];
      const enough = random() < 0.5 ? Infinity : f(random() * reach * reach * 0.01);
      const found = byVectors!(a, b, dx, dy, epsilon, enough);
      if (found > 0) met++;
      if (!Object.is(found, byLoops(a, b, dx, dy, epsilon, enough))) throw new Error(`${a} ${b} ${dx} ${dy}`);
    }
    expect(met).toBeGreaterThan(400);
    expect(met).toBeLessThan(3600);
  });

  test('says that shapes meet where a polygon library finds a common area, and else not', () => {
    const shapes = shapesOf('swim');
    const overlap = overlapByLoops(shapes);
    const random = seededRandom(3);
    let [met, apart] = [0, 0];
    for (let k = 0; k < 300; k++) {
      const [a, b] = [Math.floor(random() * shapes.length), Math.floor(random() * shapes.length)];
      const [dx, dy] = [Math.fround((random() - 0.5) * 3000), Math.fround((random() - 0.5) * 3000)];
      const moved = pathOf(shapes[b].grown).map(({ x, y }) => ({ x: x + dx, y: y + dy }));
      const common = Math.abs(
        areaPathsD(intersectD([pathOf(shapes[a].grown)], [moved], FillRule.NonZero, 3)),
      );
      const found = overlap(HEAD * a, HEAD * b, dx, dy, 10, Infinity) > 0;
      // Touching within rounding may be told either way.
      if (common > 1) expect(found).toBe(true);
      else if (common === 0) expect(found).toBe(false);
      if (found) met++;
      else apart++;
    }
    expect(Math.min(met, apart)).toBeGreaterThan(50);
  });

  test('without WebAssembly the plan is the same', () => {
    const problem = readInstance('marques', 100_000);
    const plan = planOf(problem);
    vi.stubGlobal('WebAssembly', undefined);
    expect(planOf(problem)).toEqual(plan);
  });
});
