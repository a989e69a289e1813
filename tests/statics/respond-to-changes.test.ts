import { describe, expect, it } from 'vitest';
import { type RigidBody, respondToChanges, type ShellProblem } from '../../src/core/statics/index.ts';
import { makeTrunk, makeTube } from './sample-shells.ts';
import { solved } from './solved.ts';

const EXACT = { tolerance: 1e-10 };

/** The trunk with its upper board moving as told, every other strand sewn on between points. */
function trunkWith(motion: RigidBody['motion']): ShellProblem {
  const [around, along] = [16, 18];
  const trunk = makeTrunk(around, along);
  const strands = trunk.strands!;
  const ends = strands.ends.slice();
  const corners: number[] = [];
  const weights: number[] = [];
  for (let k = 0; k < ends.length; k += 4) {
    corners.push(ends[k], ends[k] + 1, ends[k] + around);
    weights.push(0.5, 0.3, 0.2);
    ends[k] = trunk.start.length / 3 + k / 4;
  }
  return {
    ...trunk,
    places: { corners: Uint32Array.from(corners), weights: Float64Array.from(weights) },
    strands: { ...strands, ends },
    bodies: trunk.bodies!.map((body, b) => (b === 1 ? { ...body, motion } : body)),
  };
}

// Judged by the whole balance found twice, a little to both sides: central differences, whose error falls with h².
describe('respondToChanges', () => {
  it.each<RigidBody['motion']>([{ kind: 'free' }, { kind: 'slide', axis: [0.1, 0, 1] }])(
    'foretells how balance moves, board: $kind',
    (motion) => {
      const problem = trunkWith(motion);
      const balance = { ...problem, start: solved(problem, EXACT).positions };
      const { membrane, strands } = balance;
      const restEdges = membrane.restEdges.map((x, k) => (k > 900 && k < 1100 ? 0.01 * x : 0));
      const strandLengths = strands!.lengths.map((_, k) => (k % 7 === 0 ? 1 : 0));
      const found = respondToChanges(balance, [
        { restEdges },
        { strandLengths },
        { restEdges, strandLengths },
      ]);
      if (!found.ok) throw new Error(JSON.stringify(found.issues));
      const changed = (share: number, edges: boolean, lengths: boolean): Float64Array =>
        solved(
          {
            ...balance,
            membrane: {
              ...membrane,
              restEdges: membrane.restEdges.map((x, k) => x + (edges ? share * restEdges[k] : 0)),
            },
            strands: {
              ...strands!,
              lengths: strands!.lengths.map((x, k) => x + (lengths ? share * strandLengths[k] : 0)),
            },
          },
          EXACT,
        ).positions;
      const h = 1e-2;
      [
        [true, false],
        [false, true],
        [true, true],
      ].forEach(([edges, lengths], n) => {
        const more = changed(h, edges, lengths);
        const less = changed(-h, edges, lengths);
        const expected = more.map((x, k) => (x - less[k]) / (2 * h));
        const most = expected.reduce((a, x) => Math.max(a, Math.abs(x)), 0);
        expect(most).toBeGreaterThan(0.1);
        for (let k = 0; k < expected.length; k++)
          expect(Math.abs(found.value[n][k] - expected[k])).toBeLessThan(2e-3 * most);
      });
    },
  );

  it('moves the start so near to the new balance that few steps are left', () => {
    const problem = makeTrunk(30, 36);
    const balance = { ...problem, start: solved(problem).positions };
    const change = balance.membrane.restEdges.map((x) => 0.003 * x);
    const restEdges = balance.membrane.restEdges.map((x, k) => x + change[k]);
    const recut = { ...balance, membrane: { ...balance.membrane, restEdges } };
    const found = respondToChanges(balance, [{ restEdges: change }]);
    if (!found.ok) throw new Error(JSON.stringify(found.issues));
    const start = balance.start.map((x, k) => x + found.value[0][k]);
    expect(solved({ ...recut, start }).steps).toBeLessThan(solved(recut).steps / 1.5);
  });

  // Maxwell and Betti: a force at one place moves another by what a force there moves the first.
  it('answers forces alike both ways', () => {
    const problem = trunkWith({ kind: 'free' });
    const balance = { ...problem, start: solved(problem, EXACT).positions };
    const forceAt = (k: number) => {
      const forces = new Float64Array(balance.start.length);
      forces[k] = 1;
      return { forces };
    };
    // Two places of the cloth and one of the free board.
    const places = [3 * 100 + 1, 3 * 200, 3 * 16 * 18 + 2];
    const found = respondToChanges(balance, places.map(forceAt));
    if (!found.ok) throw new Error(JSON.stringify(found.issues));
    for (let a = 0; a < 3; a++) {
      expect(found.value[a][places[a]]).toBeGreaterThan(1e-3);
      for (let b = 0; b < a; b++) expect(found.value[a][places[b]]).toBeCloseTo(found.value[b][places[a]], 8);
    }
  });

  it('says so where there is no balance', () => {
    const tube = makeTube(100, 200, 8, 4);
    expect(respondToChanges({ ...tube, pressure: -1 }, []).issues.map(({ code }) => code)).toEqual([
      'statics-number',
    ]);
    // Pushed together to half its height, and not filled.
    const crushed = tube.start.map((x, k) => (k % 3 === 2 ? x / 2 : x));
    const found = respondToChanges({ ...tube, start: crushed, pressure: 0 }, [], { pushed: 0.5 });
    expect(found.issues.map(({ code }) => code)).toEqual(['statics-stalled']);
  });
});
