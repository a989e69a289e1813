import { describe, expect, it } from 'vitest';
import {
  type FillingTrial,
  filledProblem,
  type StrandedBrace,
  type TriedFilling,
  tryFilling,
} from '../../src/core/filled/index.ts';
import { tube } from '../form/tube-shell.ts';
import { solved } from '../statics/solved.ts';
import { AROUND, LOAD, tubeCut } from './tube-cut.ts';

/** So tall that what its boards hold back is none of its middle rows' business. */
const TALLER = 20;
const given = tubeCut(1, 1, TALLER);

/** A strap from front to back at a row, this much shorter than the tube is deep. */
function strapAt(id: string, row: number, shorter: number): StrandedBrace {
  const z = (TALLER * tube.height * row) / tube.rows;
  const rungs = [-20, 20].map((up) => {
    const [from, to] = [tube.radius, -tube.radius].map((y) => [0, y, z + up] as const);
    return { z: z + up, v: z + up, from, to, length: 2 * tube.radius - shorter };
  });
  return { id, isAcross: true, rungs };
}

const braces = [strapAt('upper', 3, 4), strapAt('lower', 1, 6)];

function trying(trial: FillingTrial, with_: readonly StrandedBrace[] = []): TriedFilling {
  const filled = filledProblem(given, { load: LOAD, braces: with_ });
  const tried = tryFilling(filled, solved(filled.problem), trial);
  if (!tried.ok) throw new Error(JSON.stringify(tried.issues));
  return tried.value;
}

/** By how much the radius grew, in the mean of a row. */
function growthAt({ balance }: TriedFilling, row: number): number {
  let sum = 0;
  for (let p = row * AROUND; p < (row + 1) * AROUND; p++)
    sum += Math.hypot(balance.positions[3 * p], balance.positions[3 * p + 1]);
  return sum / AROUND / tube.radius - 1;
}

function farthest(a: Float64Array, b: Float64Array): number {
  return a.reduce((most, x, k) => Math.max(most, Math.abs(x - b[k])), 0);
}

/** Laplace and Hooke: a hoop under p R grows by p R / Et, where a prism's sides lie as far out as R cos(π / N). */
const HOOP = (LOAD.pressure * tube.radius * Math.cos(Math.PI / AROUND)) / LOAD.shell.weft;

describe('tryFilling', () => {
  it('leaves the balance where it was found with nothing otherwise, and with all as it is', () => {
    const filled = filledProblem(given, { load: LOAD, braces });
    const balance = solved(filled.problem);
    for (const trial of [{}, { zone: { share: 1 }, stiffness: 1, without: 'none of it' }]) {
      const tried = tryFilling(filled, balance, trial);
      if (!tried.ok) throw new Error(JSON.stringify(tried.issues));
      expect(tried.value.balance.positions).toEqual(balance.positions);
    }
  });

  it('lets a hoop grow by p R / Et (Laplace): half with half the pressure, half with twice the stiffness', () => {
    const growth = (trial: FillingTrial) => [1, 2, 3].map((row) => growthAt(trying(trial), row) / HOOP);
    for (const [trial, times] of [
      [{ zone: { share: 1.5 } }, 1.5],
      [{ zone: { share: 0.5 } }, 0.5],
      [{ stiffness: 2 }, 0.5],
      [{ stiffness: 0.5 }, 2],
    ] as const)
      for (const found of growth(trial)) expect(Math.abs(found / times - 1)).toBeLessThan(0.01);
  });

  it('presses otherwise in the one zone only; the row between two bears the mean of both', () => {
    const growth = (trial: FillingTrial) => [1, 2, 3].map((row) => growthAt(trying(trial), row) / HOOP);
    const near = (found: number[], expected: number[]) => {
      found.forEach((x, k) => {
        expect(Math.abs(x / expected[k] - 1)).toBeLessThan(0.01);
      });
    };
    near(growth({ zone: { upper: 'waist', share: 0.5 } }), [0.5, 0.75, 1]);
    near(growth({ zone: { lower: 'waist', share: 0.5 } }), [1, 0.75, 0.5]);
    // Farthest it falls in where half of the pressure is gone.
    const { change } = trying({ zone: { lower: 'waist', share: 0.5 } });
    expect(change.over).toBe('waist');
    expect(change.distance / (-0.5 * HOOP * tube.radius)).toBeGreaterThan(0.95);
    expect(change.distance / (-0.5 * HOOP * tube.radius)).toBeLessThan(1.05);
  });

  // All forces in proportion, the same shape: pressure over stiffness decides.
  it('makes of half the pressure what it makes of cloth and straps twice as stiff, with half the pull', () => {
    const [softer, firmer] = [trying({ zone: { share: 0.5 } }, braces), trying({ stiffness: 2 }, braces)];
    expect(farthest(softer.balance.positions, firmer.balance.positions)).toBeLessThan(1e-3);
    expect(farthest(softer.balance.positions, trying({}, braces).balance.positions)).toBeGreaterThan(0.1);
    firmer.measures.pulls.forEach(({ pull }, k) => {
      expect(pull).toBeCloseTo(2 * softer.measures.pulls[k].pull, 3);
    });
  });

  it('leaves a strap out as if the form had been made without it', () => {
    const tried = trying({ without: 'upper' }, braces);
    const made = filledProblem(given, { load: LOAD, braces: [braces[1]] });
    const balance = solved(made.problem);
    const count = given.shell.mesh.positions.length;
    const [found, expected] = [tried.balance, balance].map(({ positions }) => positions.subarray(0, count));
    expect(farthest(found, expected)).toBeLessThan(1e-2);
    expect(farthest(found, trying({}, braces).balance.positions.subarray(0, count))).toBeGreaterThan(0.5);
    expect(tried.measures.pulls.map(({ id }) => id)).toEqual(['lower']);
    expect(farthest(tried.balance.strandForces, balance.strandForces)).toBeLessThan(1e-2);
  });

  it('names what it cannot try', () => {
    const filled = filledProblem(given, { load: LOAD });
    const balance = solved(filled.problem);
    for (const trial of [{ zone: { share: -1 } }, { stiffness: 0 }])
      expect(tryFilling(filled, balance, trial).issues[0]?.code).toBe('statics-number');
    expect(() => tryFilling(filled, balance, { zone: { upper: 'knee', share: 1 } })).toThrow('knee');
  });
});
