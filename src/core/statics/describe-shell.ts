import type { Issue } from '../base/index.ts';
import { pullOfLinks } from './add-links.ts';
import { strainTriangle } from './add-membrane.ts';
import { volumeOfFaces } from './add-pressure.ts';
import { phrase } from './phrases.ts';
import type { ShellShape } from './pose-bodies.ts';
import { RELAXED_SIZE, relaxCloth, STATE, STRESS } from './relax-cloth.ts';
import type { ShellState } from './shell-state.ts';
import { type Equilibrium, SLACK } from './types.ts';

/** What is to be known of a shell in balance; `state` holds the sums at that shape. */
export function describeShell(
  state: ShellState,
  shape: ShellShape,
  residual: number,
  steps: number,
): Equilibrium {
  const { problem, shell } = state;
  const x = shape.positions;
  const none = new Float64Array();
  return {
    positions: x.slice(),
    strandForces: problem.strands ? pullOfLinks(problem, problem.strands, x, true) : none,
    stripForces: problem.strips ? pullOfLinks(problem, problem.strips, x, false) : none,
    ...describeCloth(state, x),
    bodyLoads: loadBodies(state, shape),
    volume: volumeOfFaces(shell.faces, x),
    residual,
    steps,
  };
}

/**
 * Tension as it hangs is F S Fᵀ / J; its principal values are those of S C / J, with C = I + 2 E. Their trace and
 * determinant give them, and the larger one's direction at rest is F⁻¹ of that in space.
 */
function describeCloth({ rest }: ShellState, x: Float64Array) {
  const count = rest.areas.length;
  const tensions = new Float64Array(2 * count);
  const directions = new Float64Array(count);
  const states = new Uint8Array(count);
  const strain = new Float64Array(9);
  const state = new Float64Array(RELAXED_SIZE);
  for (let t = 0; t < count; t++) {
    strainTriangle(rest, t, x, strain);
    relaxCloth(rest.laws[rest.clothOf[t]], strain[0], strain[1], strain[2], 0, state);
    states[t] = state[STATE];
    const c11 = 1 + 2 * strain[0];
    const c22 = 1 + 2 * strain[1];
    const c12 = strain[2];
    const s11 = state[STRESS];
    const s22 = state[STRESS + 1];
    const s12 = state[STRESS + 2];
    const j = Math.sqrt(Math.max(c11 * c22 - c12 * c12, 1e-12));
    const m11 = (s11 * c11 + s12 * c12) / j;
    const m12 = (s11 * c12 + s12 * c22) / j;
    const m22 = (s12 * c12 + s22 * c22) / j;
    const half = (m11 + m22) / 2;
    const spread = Math.sqrt(Math.max(0, half * half - (s11 * s22 - s12 * s12)));
    tensions[2 * t] = half + spread;
    tensions[2 * t + 1] = state[STATE] === 2 ? half - spread : 0;
    // (S C − λ) d = 0 by its first row, or along warp where that says nothing.
    const [dx, dy] = eigenvector(m11, m12, (s12 * c11 + s22 * c12) / j, m22, half + spread);
    directions[t] = Math.atan2(dy, dx);
    if (directions[t] > Math.PI / 2) directions[t] -= Math.PI;
    if (directions[t] <= -Math.PI / 2) directions[t] += Math.PI;
  }
  return { tensions, directions, states };
}

/** Right eigenvector of [[a, b], [c, d]] for the eigenvalue, from the row that says more. */
function eigenvector(a: number, b: number, c: number, d: number, value: number): [number, number] {
  const first = Math.abs(a - value) + Math.abs(b);
  const second = Math.abs(c) + Math.abs(d - value);
  if (first + second < 1e-14) return [1, 0];
  return first > second ? [-b, a - value] : [d - value, -c];
}

/** Minus the gradient at each body's points, and its moment about the body's centre. */
function loadBodies({ problem, sums }: ShellState, { positions, centres }: ShellShape): Float64Array {
  const bodies = problem.bodies ?? [];
  const loads = new Float64Array(6 * bodies.length);
  bodies.forEach(({ points }, b) => {
    for (const p of points) {
      const [fx, fy, fz] = sums.atPoints.subarray(3 * p, 3 * p + 3).map((value) => -value);
      const [x, y, z] = [0, 1, 2].map((k) => positions[3 * p + k] - centres[3 * b + k]);
      const load = [fx, fy, fz, y * fz - z * fy, z * fx - x * fz, x * fy - y * fx];
      for (let k = 0; k < 6; k++) loads[6 * b + k] += load[k];
    }
  });
  return loads;
}

/** More of the cloth hanging loose than this is told. */
const MUCH_SLACK = 0.2;

/** Warnings: cloth that hangs loose, strands that hold nothing. */
export function warnOfSlack({ rest }: ShellState, found: Equilibrium): Issue[] {
  const issues: Issue[] = [];
  let area = 0;
  let slack = 0;
  for (let t = 0; t < rest.areas.length; t++) {
    area += rest.areas[t];
    if (found.states[t] === SLACK) slack += rest.areas[t];
  }
  const share = slack / area;
  if (share > MUCH_SLACK) {
    const message = phrase('statics.slack-cloth', { share, most: MUCH_SLACK });
    const range = { measured: share, limit: MUCH_SLACK };
    issues.push({ code: 'statics-slack-cloth', path: 'membrane', message, severity: 'warning', ...range });
  }
  const loose = found.strandForces.filter((force) => force === 0).length;
  if (loose > 0) {
    const message = phrase('statics.slack-strands', { loose, of: found.strandForces.length });
    issues.push({
      code: 'statics-slack-strands',
      path: 'strands',
      message,
      severity: 'warning',
      measured: loose,
    });
  }
  return issues;
}
