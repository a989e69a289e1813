import { describe, expect, it } from 'vitest';
import { type FilledShell, filledProblem, weighGarment } from '../../src/core/filled/index.ts';
import { tube } from '../form/tube-shell.ts';
import { solved } from '../statics/solved.ts';
import { AROUND, LOAD, tubeCut } from './tube-cut.ts';

/** Radius and height of the rows: a tube with shoulders that slope by 27° to a neck of 10 mm. */
const ROWS = [
  [50, 0],
  [50, 60],
  [50, 120],
  [30, 130],
  [10, 140],
] as const;
const EXACT = { tolerance: 1e-10 };

/** Its cloth is cut as it stands there, every triangle by itself, alike stiff both ways. */
function bottle(): FilledShell {
  const given = tubeCut(1, 1);
  const { triangles } = given.shell.mesh;
  const positions = given.shell.mesh.positions.map((x, k) => {
    const [radius, height] = ROWS[Math.floor(k / 3 / AROUND)];
    return k % 3 === 2 ? height : (x * radius) / tube.radius;
  });
  const shell = { ...given.shell, mesh: { positions, triangles } };
  const load = { ...LOAD, shell: { warp: 40, weft: 40, shear: 20, poisson: 0 } };
  const filled = filledProblem({ ...given, shell }, { load });
  const { membrane } = filled.problem;
  const restEdges = Float64Array.from({ length: membrane.restEdges.length }, (_, k) => {
    const { long, along, across } = flatten(
      positions,
      membrane.triangles.subarray(3 * (k >> 2), 3 * (k >> 2) + 3),
    );
    return [0, -long, across, -along][k % 4];
  });
  return { ...filled, problem: { ...filled.problem, membrane: { ...membrane, restEdges } } };
}

/** Length of a triangle's first edge, and its second one along that and across it. */
function flatten(positions: Float64Array, [a, b, c]: Uint32Array) {
  const [u, v] = [b, c].map((p) => [0, 1, 2].map((k) => positions[3 * p + k] - positions[3 * a + k]));
  const long = Math.hypot(...u);
  const along = u.reduce((sum, x, k) => sum + x * v[k], 0) / long;
  return { long, along, across: Math.sqrt(Math.hypot(...v) ** 2 - along ** 2) };
}

/** A garment's weight at every point, N down: by the area (Heron) of the triangles above the level, all of which look upwards. */
function weights({ given: { shell } }: FilledShell, mass: number): Float64Array {
  const { positions, triangles } = shell.mesh;
  const out = new Float64Array(positions.length / 3);
  let whole = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [...triangles.subarray(t, t + 3)];
    if (corners.some((p) => positions[3 * p + 2] < 119)) continue;
    const [a, b, c] = corners.map((p, k) => {
      const q = corners[(k + 1) % 3];
      return Math.hypot(...[0, 1, 2].map((axis) => positions[3 * p + axis] - positions[3 * q + axis]));
    });
    const s = (a + b + c) / 2;
    const area = Math.sqrt(s * (s - a) * (s - b) * (s - c));
    whole += area;
    for (const p of corners) out[p] += area / 3;
  }
  return out.map((area) => (mass * 9.81 * area) / whole);
}

/** Within cloth and boards, mm³: tetrahedra from the origin. */
function volumeOf({ problem: { membrane, closing } }: FilledShell, x: Float64Array): number {
  let volume = 0;
  for (const faces of [membrane.triangles, closing!])
    for (let t = 0; t < faces.length; t += 3) {
      const [p, q, r] = [3 * faces[t], 3 * faces[t + 1], 3 * faces[t + 2]];
      volume +=
        x[p] * (x[q + 1] * x[r + 2] - x[q + 2] * x[r + 1]) +
        x[p + 1] * (x[q + 2] * x[r] - x[q] * x[r + 2]) +
        x[p + 2] * (x[q] * x[r + 1] - x[q + 1] * x[r]);
    }
  return volume / 6;
}

describe('weighGarment', () => {
  const filled = bottle();
  const balance = solved(filled.problem, EXACT);
  const weighed = (mass: number) => {
    const sag = weighGarment(filled, balance, mass);
    if (!sag.ok) throw new Error(JSON.stringify(sag.issues));
    return sag.value;
  };
  const sag = weighed(0.2);

  // Maxwell and Betti: weight × the way the shoulders go where it is filled harder is pressure × the volume the weight takes.
  it('takes as much volume from the filling as harder filling lifts it', () => {
    const h = 1e-3 * LOAD.pressure;
    const [more, less] = [h, -h].map(
      (change) => solved({ ...filled.problem, pressure: LOAD.pressure + change }, EXACT).positions,
    );
    const down = weights(filled, 0.2);
    const work = down.reduce(
      (sum, weight, p) => sum - (weight * (more[3 * p + 2] - less[3 * p + 2])) / (2 * h),
      0,
    );
    const moved = (share: number) => balance.positions.map((x, k) => x + share * sag.moves[k]);
    const gained = (volumeOf(filled, moved(1e-3)) - volumeOf(filled, moved(-1e-3))) / 2e-3;
    expect(gained).toBeLessThan(-100);
    expect(Math.abs(work / gained - 1)).toBeLessThan(1e-3);
  });

  it('tells how far shoulders and neck go down', () => {
    const sunk = (from: number, to: number) =>
      Math.max(...Array.from({ length: to - from }, (_, p) => -sag.moves[3 * (from + p) + 2]));
    expect(sag.shoulders).toBe(sunk(2 * AROUND, 5 * AROUND));
    expect(sag.top).toBe(sunk(4 * AROUND, 5 * AROUND));
    expect(sag.top).toBeGreaterThan(0.01);
    expect(sag.shoulders).toBeGreaterThanOrEqual(sag.top);
    // The base stands.
    expect(Math.abs(sunk(0, AROUND))).toBe(0);
  });

  it('tells twice as much of twice the mass, nothing of none', () => {
    expect(weighed(0.4).shoulders).toBeCloseTo(2 * sag.shoulders, 9);
    expect(weighed(0).shoulders).toBe(0);
  });

  it('says so where there is no balance', () => {
    const crushed = balance.positions.map((x, k) => (k % 3 === 2 ? x / 2 : x));
    const empty = { ...filled, problem: { ...filled.problem, pressure: 0 } };
    expect(weighGarment(empty, { ...balance, positions: crushed }, 1).issues.map(({ code }) => code)).toEqual(
      ['statics-stalled'],
    );
  });
});
