import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/core/body/index.ts';
import { isBetterAnew, judgeRefit, REFIT_LIMITS } from '../../src/core/refit/index.ts';

/** A body of two levels, for its girths alone. */
function bodyOf(hip: number, waist: number): Body {
  const level = (id: string, v: number) => ({ id, name: { id: `level.${id}`, values: {} }, v, z: v });
  const section = (girth: number) => ({ girth, width: 0, depth: 0 });
  const neck = { u: 0, v: 400 };
  return {
    levels: [level('hip', -200), level('waist', 0)],
    sections: { hip: section(hip), waist: section(waist) },
    landmarks: { neckFront: neck, neckBack: neck },
  } as unknown as Body;
}

/** One half with the same gap all over a zone. */
function gridOf(atHip: number, atWaist: number) {
  const chart = Float64Array.of(1, -200, 1, 0);
  const gaps = Float64Array.of(atHip, atWaist);
  return [{ half: 'front' as const, columns: 1, rows: 0, chart, gaps, thickness: gaps }];
}

const ACROSS = {
  hip: { sides: ['A', 'B'], all: ['A', 'B', 'C', 'D', 'E', 'F'] },
  waist: { sides: ['A', 'B'], all: ['A', 'B', 'C', 'D', 'E', 'F'] },
};

const judge = (before: Body, after: Body, grid: ReturnType<typeof gridOf>) =>
  judgeRefit(before, after, grid, ACROSS, 8);

describe('what is done to a form for another body', () => {
  it('takes in the side seams: a seam moved by s on both plies shortens the girth by 2 s', () => {
    const [hip] = judge(bodyOf(1000, 760), bodyOf(976, 760), gridOf(-4, 0));
    expect(hip.steps).toEqual([{ kind: 'take-in', letters: ['A', 'B'], each: 6, girth: 976 }]);
    const [step] = hip.steps;
    if (step.kind !== 'take-in') throw new Error(step.kind);
    expect(1000 - 2 * step.letters.length * step.each).toBeCloseTo(976, 9);
  });

  it('takes in all upright seams where the sides alone would be taken in too much', () => {
    const [hip] = judge(bodyOf(1000, 760), bodyOf(940, 760), gridOf(-10, 0));
    expect(hip.steps).toEqual([{ kind: 'take-in', letters: ACROSS.hip.all, each: 5, girth: 940 }]);
  });

  it('says to make anew, and by which limit, beyond what seams take in, wadding fills, and filling hides', () => {
    const taken = judge(bodyOf(1000, 760), bodyOf(880, 760), gridOf(-20, 0));
    expect(taken[0].steps).toEqual([
      { kind: 'anew', why: 'too-much-to-take-in', measured: 10, limit: REFIT_LIMITS.takenIn },
    ]);
    const thick = judge(bodyOf(1000, 760), bodyOf(1300, 760), gridOf(45, 0));
    expect(thick[0].steps).toEqual([{ kind: 'anew', why: 'too-thick', measured: 45, limit: 36 }]);
    const full = judge(bodyOf(1000, 760), bodyOf(1000, 765), gridOf(0, -12));
    expect(full[1].steps).toEqual([
      { kind: 'anew', why: 'too-full', measured: 12, limit: REFIT_LIMITS.sunken },
    ]);
    for (const zones of [taken, thick, full]) expect(isBetterAnew(zones)).toBe(true);
  });

  it('pads by the nearest number of layers, and leaves alone what is as it was', () => {
    const zones = judge(bodyOf(1000, 760), bodyOf(1090, 761), gridOf(13, 1));
    expect(zones.map(({ steps }) => steps)).toEqual([[{ kind: 'pads', layers: 2, thickness: 16 }], [], []]);
    expect(isBetterAnew(zones)).toBe(false);
  });
});
