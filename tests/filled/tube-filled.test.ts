import { describe, expect, it } from 'vitest';
import { filledProblem, loadOfFilling, measureFilled } from '../../src/core/filled/index.ts';
import type { Equilibrium } from '../../src/core/statics/index.ts';
import { makeTubeShell, tube } from '../form/tube-shell.ts';
import { solved } from '../statics/solved.ts';
import { AROUND, CHORD, LOAD, stretchOfTube, tubeCut } from './tube-cut.ts';

describe('a tube cut so much smaller as it grows', () => {
  const { hoop, axial, around, along } = stretchOfTube(LOAD);
  const filled = filledProblem(tubeCut(1 / around, 1 / along), { load: LOAD });
  const balance = solved(filled.problem);
  const measures = measureFilled(filled, balance);

  it('is cut where weft and warp stretch unlike', () => {
    expect(around).toBeGreaterThan(1.007);
    expect(along).toBeLessThan(1.001);
  });

  it('comes out as the tube it was asked to be (statics of a prism)', () => {
    const { positions } = filled.given.shell.mesh;
    positions.forEach((x, k) => {
      expect(Math.abs(balance.positions[k] - x)).toBeLessThan(1e-4);
    });
  });

  it('measures over the cloth: half of 0.6 mm on every side, 2π times that in girth', () => {
    const [{ asked, found }] = measures.levels;
    // A prism of 12 sides.
    expect(asked.girth).toBeCloseTo(12 * CHORD, 9);
    expect(asked.width).toBeCloseTo(2 * tube.radius, 9);
    expect(found.girth - asked.girth).toBeCloseTo(2 * Math.PI * 0.3, 3);
    expect(found.width - asked.width).toBeCloseTo(0.6, 3);
    expect(found.depth - asked.depth).toBeCloseTo(0.6, 3);
    expect(measures.distance.rms).toBeCloseTo(0.3, 3);
  });

  it('pulls at its upright seams by p × the distance of its sides', () => {
    for (const { mean, peak } of measures.seams) {
      expect(mean).toBeCloseTo(10 * hoop, 4);
      expect(peak).toBeCloseTo(10 * hoop, 4);
    }
  });

  it('pulls at its level seams by p × area / girth', () => {
    const twoTiers = makeTubeShell(true);
    const level = twoTiers.seams.filter(({ isLevel }) => isLevel);
    expect(level.length).toBe(2);
    const given = { ...filled.given, shell: { ...filled.given.shell, seams: level } };
    for (const { mean } of measureFilled({ ...filled, given }, balance).seams)
      expect(mean).toBeCloseTo(10 * axial, 4);
  });

  it('leaves its boards where they are', () => {
    expect(measures.boards.map(({ id }) => id)).toEqual(['base', 'neck']);
    for (const { moved, turned } of measures.boards) {
      expect(moved).toBeLessThan(1e-4);
      expect(turned).toBeLessThan(1e-6);
    }
  });
});

describe('distances', () => {
  const filled = filledProblem(tubeCut(1, 1), { load: LOAD });
  const { positions } = filled.given.shell.mesh;
  const last = positions.length / 3;
  const measured = (outwards: (p: number) => number) => {
    const moved = positions.map((x, k) =>
      k % 3 === 2 ? x : x * (1 + outwards(Math.floor(k / 3)) / tube.radius),
    );
    return measureFilled(filled, { ...emptyBalance(filled.problem), positions: moved });
  };

  it('are those the cloth was moved by, and half its thickness', () => {
    const { distance } = measured(() => 5);
    expect(distance.rms).toBeCloseTo(5.3, 9);
    expect(distance.within).toBe(1);
    // Inside, an edge of the prism is nearest to its sides, which lean by half of 30° to the way it went.
    const inside = measured(() => -5).distance;
    for (const found of inside.ofPoints) expect(found).toBeCloseTo(0.3 - 5 * Math.cos(Math.PI / 12), 9);
  });

  it('name the worst place, and the throat', () => {
    // In front, a row over the level.
    const front = 3 * AROUND + tube.columns / 2;
    const back = AROUND + (3 * tube.columns) / 2;
    expect(back).toBeLessThan(last);
    const { distance, throat } = measured((p) => (p === front ? 9 : p === back ? -12 : 0));
    expect(distance.worst).toMatchObject({ where: 'centre back' });
    expect(distance.worst.over).toBeUndefined();
    expect(throat).toMatchObject({ over: 'waist', where: 'centre front' });
    expect(throat.distance).toBeCloseTo(9.3, 9);
    expect(distance.within).toBeLessThan(1);
    expect(distance.within).toBeGreaterThan(0.9);
  });
});

function emptyBalance({ membrane }: { membrane: { triangles: Uint32Array } }): Equilibrium {
  const count = membrane.triangles.length / 3;
  return {
    positions: new Float64Array(),
    strandForces: new Float64Array(),
    stripForces: new Float64Array(),
    tensions: new Float64Array(2 * count),
    directions: new Float64Array(count),
    states: new Uint8Array(count),
    bodyLoads: new Float64Array(),
    volume: 0,
    residual: 0,
    steps: 0,
  };
}

describe('loadOfFilling', () => {
  it('is the usual without a tube: 3 kPa on 40 N/mm, 8 across (no source)', () => {
    expect(loadOfFilling({})).toEqual({
      pressure: 0.003,
      shell: { warp: 40, weft: 40, shear: 8, poisson: 0 },
      web: 40,
    });
  });

  it('is as stiff as the test tube shows: p R / (Et − p R) of 100 mm radius', () => {
    // 0.3 N/mm in the hoop on 40 N/mm: 0.3 / 39.7 = 0.7557 %.
    const { shell } = loadOfFilling({ measuredGrowth: 0.3 / 39.7 });
    expect(shell.weft).toBeCloseTo(40, 9);
    expect(shell.shear).toBeCloseTo(8, 9);
  });
});
