import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';
import {
  type EquilibriumOptions,
  findEquilibrium,
  prepareShell,
  type ShellProblem,
} from '../../src/core/statics/index.ts';
import { CLOTH, makeTrunk, makeTube } from './sample-shells.ts';
import { solved } from './solved.ts';

describe('findEquilibrium', () => {
  it('does not depend on the order of points and triangles: 1e-6 mm', () => {
    const problem = makeTrunk(20, 24);
    const random = seededRandom(8);
    const shuffled = (count: number): number[] => {
      const list = Array.from({ length: count }, (_, k) => k);
      for (let k = count - 1; k > 0; k--) {
        const other = Math.floor(random() * (k + 1));
        [list[k], list[other]] = [list[other], list[k]];
      }
      return list;
    };
    const count = problem.start.length / 3;
    const placeOf = shuffled(count);
    const rename = (points: Uint32Array): Uint32Array => points.map((p) => placeOf[p]);
    const start = new Float64Array(problem.start.length);
    for (let p = 0; p < count; p++) start.set(problem.start.subarray(3 * p, 3 * p + 3), 3 * placeOf[p]);
    const { membrane, strands } = problem;
    const order = shuffled(membrane.triangles.length / 3);
    const pick = (values: ArrayLike<number>, size: number): number[] =>
      order.flatMap((t) => Array.from({ length: size }, (_, k) => values[size * t + k]));
    const other: ShellProblem = {
      ...problem,
      start,
      membrane: {
        ...membrane,
        triangles: rename(Uint32Array.from(pick(membrane.triangles, 3))),
        restEdges: Float64Array.from(pick(membrane.restEdges, 4)),
      },
      closing: rename(problem.closing!),
      strands: { ...strands!, ends: rename(strands!.ends) },
      bodies: problem.bodies!.map((body) => ({ ...body, points: rename(body.points) })),
    };
    const options = { tolerance: 1e-10 };
    const [a, b] = [solved(problem, options), solved(other, options)];
    let worst = 0;
    for (let p = 0; p < count; p++)
      for (let k = 0; k < 3; k++)
        worst = Math.max(worst, Math.abs(a.positions[3 * p + k] - b.positions[3 * placeOf[p] + k]));
    expect(worst).toBeLessThan(1e-6);
  });

  // Chords of N on a circle are 1 − (π/N)²/6 of it: 0.2 % at 36; the finer mesh is the judge.
  it('gives the same trunk on two meshes, within 1 mm in girth', () => {
    const girthAt = (around: number, along: number, share: number): number => {
      const { positions } = solved(makeTrunk(around, along));
      const first = 3 * around * Math.round(along * share);
      let girth = 0;
      for (let i = 0; i < around; i++) {
        const [p, q] = [first + 3 * i, first + 3 * ((i + 1) % around)];
        girth += Math.hypot(...[0, 1, 2].map((k) => positions[p + k] - positions[q + k]));
      }
      return girth;
    };
    for (const share of [0.25, 0.5, 0.75]) {
      expect(Math.abs(girthAt(36, 40, share) - girthAt(72, 80, share))).toBeLessThan(1);
    }
  });

  it('gives the same bits twice, with and without what was prepared', () => {
    const problem = makeTrunk(20, 24);
    const prepared = prepareShell(problem);
    const first = findEquilibrium(problem, {}, prepared);
    findEquilibrium({ ...problem, pressure: 0.001 }, {}, prepared);
    expect(findEquilibrium(problem, {}, prepared)).toEqual(first);
    expect(findEquilibrium(problem)).toEqual(first);
    // Made for other triangles: not used.
    expect(findEquilibrium(problem, {}, prepareShell(makeTube(100, 200, 8, 4)))).toEqual(first);
  });

  it('starts from its own end in no step', () => {
    const problem = makeTrunk(20, 24);
    const { positions } = solved(problem);
    expect(solved({ ...problem, start: positions }).steps).toBe(0);
  });

  it('tells how far it is, and stops when asked', () => {
    const problem = makeTube(100, 200, 24, 12);
    const seen: number[] = [];
    const { steps } = solved(problem, { onProgress: ({ step }) => seen.push(step) });
    expect(seen).toEqual(Array.from({ length: steps }, (_, k) => k + 1));
    const stopped = findEquilibrium(problem, { shouldStop: () => seen.push(0) > steps + 2 });
    expect(stopped.ok ? '' : stopped.issues[0].code).toBe('statics-stopped');
    // Two steps were gone: neither the start nor the end.
    const { positions } = solved(problem);
    expect(stopped.ok ? [] : stopped.lastShape).not.toEqual(problem.start);
    expect(stopped.ok ? [] : stopped.lastShape).not.toEqual(positions);
  });
});

const codesOf = (change: Partial<ShellProblem>, options?: EquilibriumOptions): string[] =>
  findEquilibrium({ ...makeTube(100, 200, 8, 4), ...change }, options).issues.map(
    ({ code, path }) => `${code} ${path}`,
  );

describe('bad input is named', () => {
  const { membrane, start, bodies } = makeTube(100, 200, 8, 4);
  const link = (ends: number[], length: number, stiffness: number) => ({
    ends: Uint32Array.from(ends),
    lengths: Float64Array.of(length),
    stiffness: Float64Array.of(stiffness),
  });
  const free = bodies!.map((body) => ({ ...body, motion: { kind: 'free' } as const }));
  it.each<[string, Partial<ShellProblem>, string]>([
    ['negative pressure', { pressure: -0.003 }, 'statics-number pressure'],
    ['pressure that is no number', { pressure: Number.NaN }, 'statics-number pressure'],
    [
      'cloth without stiffness',
      { membrane: { ...membrane, cloths: [{ ...CLOTH, warp: 0 }] } },
      'statics-number membrane.cloths',
    ],
    ['a strand without stiffness', { strands: link([9, 20], 100, 0) }, 'statics-number strands.stiffness'],
    ['a strand within one board', { strands: link([0, 3], 100, 1) }, 'statics-idle-link strands.0'],
    ['a shell with a hole', { closing: new Uint32Array() }, 'statics-not-closed membrane'],
    [
      'a shell inside out',
      { bodies: free, start: start.map((x, k) => (k % 3 === 0 ? -x : x)) },
      'statics-no-volume start',
    ],
    [
      'a triangle cut without area',
      { membrane: { ...membrane, restEdges: membrane.restEdges.map((x, k) => (k < 4 ? 0 : x)) } },
      'statics-flat-rest membrane.restEdges',
    ],
  ])('%s', (_, change, expected) => {
    expect(codesOf(change)).toEqual([expected]);
  });

  it('all of it at once', () => {
    const strands = link([0, 3], -1, 1);
    expect(codesOf({ pressure: 2, strands }, { pushed: 2 })).toEqual([
      'statics-number pressure',
      'statics-number strands.lengths',
      'statics-number pushed',
      'statics-idle-link strands.0',
    ]);
  });

  it('keeps the start as the last shape', () => {
    const result = findEquilibrium({ ...makeTube(100, 200, 8, 4), pressure: -1 });
    expect(result.ok ? [] : result.lastShape).toEqual(start);
  });

  it('warns of a strand too long to be taut, and of cloth too large to be', () => {
    expect(codesOf({ strands: link([9, 20], 9000, 1) })).toEqual(['statics-slack-strands strands']);
    const large = { ...membrane, restEdges: membrane.restEdges.map((x) => 1.2 * x) };
    expect(codesOf({ membrane: large, pressure: 0 })).toEqual(['statics-slack-cloth membrane']);
  });

  it('does not turn a shell inside out', () => {
    // A strand to a point far below pulls the upper board through the lower.
    const { bodies: boards, start: points } = makeTube(100, 200, 8, 4);
    const below = points.length / 3;
    const result = findEquilibrium({
      ...makeTube(100, 200, 8, 4),
      start: Float64Array.from([...points, 0, 0, -900]),
      bodies: [...boards!, { points: Uint32Array.of(below), motion: { kind: 'fixed' } }],
      strands: link([below - 1, below], 300, 50),
    });
    expect(result.issues.map(({ code }) => code)).toEqual(['statics-everted']);
    // The last shape is still a tube: its upper board above the lower.
    expect(result.ok ? 0 : result.lastShape[3 * (below - 1) + 2]).toBeGreaterThan(0);
  });

  it('calls what is not balanced in the steps allowed a stall', () => {
    expect(codesOf({}, { maxSteps: 2 })).toEqual(['statics-stalled ']);
  });

  it('takes lists that do not fit for a mistake of ours', () => {
    expect(() => codesOf({ pressure: new Float64Array(3) })).toThrow('all faces have a pressure');
    expect(() => codesOf({ bodies: [] })).toThrow('holds every point');
  });
});
