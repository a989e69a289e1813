import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';
import { type ClothStiffness, SLACK, TAUT, WRINKLED } from '../../src/core/statics/index.ts';
import {
  ENERGY,
  lawOfCloth,
  RELAXED_SIZE,
  relaxCloth,
  STATE,
  STRESS,
  TANGENT,
} from '../../src/core/statics/relax-cloth.ts';

const ALIKE: ClothStiffness = { warp: 40, weft: 40, shear: 40 / 2.6, poisson: 0.3 };
/** Poplin is stiffer along the warp and soft across the bias; figures from memory. */
const WOVEN: ClothStiffness = { warp: 60, weft: 25, shear: 2, poisson: 0.2 };
/** Shear so stiff that pull would rather run along the bias. */
const BIASED: ClothStiffness = { warp: 20, weft: 20, shear: 60, poisson: 0 };

function relaxed(cloth: ClothStiffness, e: readonly number[], pushed = 0): Float64Array {
  const out = new Float64Array(RELAXED_SIZE);
  relaxCloth(lawOfCloth(cloth), e[0], e[1], e[2], pushed, out);
  return out;
}

/**
 * The dual: the most of S : E − ½ S : C⁻¹ : S over all tensions S that push nowhere, by projected gradients in axes where the steps are alike.
 * Source: Fenchel duality, Rockafellar, Convex Analysis (1970), 31; the primal is Pipkin's (1994).
 */
function relaxedByDual(cloth: ClothStiffness, [e11, e22, g]: readonly number[]): number {
  const { warp, weft, shear, poisson } = cloth;
  const strain = (s: number[]): number[] => [
    s[0] / warp - (poisson / warp) * s[1],
    s[1] / weft - (poisson / warp) * s[0],
    s[2] / shear,
  ];
  const value = (s: number[]): number => {
    const h = strain(s);
    return s[0] * e11 + s[1] * e22 + s[2] * g - (s[0] * h[0] + s[1] * h[1] + s[2] * h[2]) / 2;
  };
  let s = [0, 0, 0];
  const step = Math.min(warp, weft, 2 * shear) / 2;
  for (let k = 0; k < 6000; k++) {
    const h = strain(s);
    s = [s[0] + step * (e11 - h[0]), s[1] + step * (e22 - h[1]), s[2] + (step * (g - h[2])) / 2];
    s = withoutPush(s);
  }
  return value(s);
}

/** Nearest tension (in the norm of matrices) that pushes nowhere: negative principal values become 0. */
function withoutPush([s11, s22, s12]: number[]): number[] {
  const half = (s11 + s22) / 2;
  const spread = Math.hypot((s11 - s22) / 2, s12);
  const [high, low] = [Math.max(0, half + spread), Math.max(0, half - spread)];
  if (spread === 0) return [high, high, 0];
  const [c, s] = [(s11 - s22) / 2 / spread, s12 / spread];
  return [
    (high + low) / 2 + ((high - low) / 2) * c,
    (high + low) / 2 - ((high - low) / 2) * c,
    ((high - low) / 2) * s,
  ];
}

function strains(count: number, seed: number): number[][] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => [0, 0, 0].map(() => 0.1 * (random() - 0.5)));
}

describe('cloth that cannot be pushed', () => {
  it.each([
    ['alike in all directions', ALIKE],
    ['woven', WOVEN],
    ['stiff on the bias', BIASED],
  ])('has the energy of the dual problem, %s', (_, cloth) => {
    for (const e of strains(60, 3)) {
      const expected = relaxedByDual(cloth, e);
      expect(Math.abs(relaxed(cloth, e)[ENERGY] - expected), e.join()).toBeLessThan(1e-8);
    }
  });

  it('comes upon every state', () => {
    const states = strains(60, 3).map((e) => relaxed(WOVEN, e)[STATE]);
    expect(new Set(states)).toEqual(new Set([SLACK, WRINKLED, TAUT]));
  });

  // Pipkin (1986): taut where e2 > −ν e1, slack where e1 < 0, else pulled along e1 with E e1² / 2.
  it('is Pipkin’s for cloth alike in all directions', () => {
    for (const [e1, e2, state] of [
      [0.02, -0.005, TAUT],
      [0.02, -0.0061, WRINKLED],
      [0.02, -0.2, WRINKLED],
      [-0.001, -0.2, SLACK],
    ]) {
      for (const turn of [0, 0.3, 1.4, -1.1]) {
        const [c, s] = [Math.cos(turn), Math.sin(turn)];
        const e = [e1 * c * c + e2 * s * s, e1 * s * s + e2 * c * c, 2 * (e1 - e2) * c * s];
        const found = relaxed(ALIKE, e);
        expect(found[STATE]).toBe(state);
        if (state === SLACK) expect(found[ENERGY]).toBe(0);
        if (state !== WRINKLED) continue;
        expect(found[ENERGY]).toBeCloseTo(20 * e1 * e1, 12);
        expect(found[STRESS]).toBeCloseTo(40 * e1 * c * c, 9);
        expect(found[STRESS + 1]).toBeCloseTo(40 * e1 * s * s, 9);
        expect(found[STRESS + 2]).toBeCloseTo(40 * e1 * c * s, 9);
      }
    }
  });

  // Central differences: error h² and rounding, far below the bounds away from where states change.
  it.each([0, 0.01])('has tension and tangent as slopes of the energy, %f kept when pushed', (pushed) => {
    const h = 1e-6;
    let judged = 0;
    for (const e of strains(80, 11)) {
      const here = relaxed(WOVEN, e, pushed);
      const near = [0, 1, 2].map((k) =>
        [1, -1].map((sign) =>
          relaxed(
            WOVEN,
            e.map((x, i) => (i === k ? x + sign * h : x)),
            pushed,
          ),
        ),
      );
      if (near.flat().some((state) => state[STATE] !== here[STATE])) continue;
      judged++;
      for (let k = 0; k < 3; k++) {
        const [more, less] = near[k];
        const slope = (i: number): number => (more[i] - less[i]) / (2 * h);
        expect(here[STRESS + k]).toBeCloseTo(slope(ENERGY), 6);
        for (let i = 0; i < 3; i++) {
          const place = [0, 1, 2, 1, 3, 4, 2, 4, 5][3 * i + k];
          expect(here[TANGENT + place]).toBeCloseTo(slope(STRESS + i), 4);
        }
      }
    }
    expect(judged).toBeGreaterThan(70);
  });

  it('keeps of pushed cloth what it is told', () => {
    const found = relaxed(ALIKE, [-0.02, -0.02, 0], 0.01);
    // ½ · E / (1 − ν) · 2 e², plane stress alike on both axes; a hundredth of it.
    expect(found[ENERGY]).toBeCloseTo((0.01 * 40 * 0.02 ** 2) / 0.7, 12);
  });
});
