import { checkShell } from './check-shell.ts';
import { describeShell, warnOfSlack } from './describe-shell.ts';
import { NewtonWalk } from './newton-walk.ts';
import { phrase } from './phrases.ts';
import { isPreparedFor, type PreparedShell, prepareShell } from './prepare-shell.ts';
import { readyShell, usualForce } from './shell-state.ts';
import type { EquilibriumOptions, EquilibriumResult, ShellProblem } from './types.ts';

/**
 * The shape in which a filled shell is in balance: a minimum of the energy of cloth and links less the work of pressure,
 * found from `start` by Newton's method; the tangent is shifted until it is positive, steps are shortened until the
 * energy falls. Deterministic. mm, N.
 *
 * Fails, with the last sound shape, on input that makes no sense (all of it named), when stopped, when no step helps or
 * `maxSteps` are gone (`statics.stalled`), and when the shell turns inside out. `prepared` saves planning where only sizes
 * changed. Cost: per step one pass over the triangles and one sparse factor.
 * Sources: Nocedal and Wright, Numerical Optimization (2006), 3.4; follower pressure: Hibbitt (1979) as named in `add-membrane.ts`.
 */
export function findEquilibrium(
  problem: ShellProblem,
  options: EquilibriumOptions = {},
  prepared?: PreparedShell,
): EquilibriumResult {
  const faults = checkShell(problem, options);
  if (faults.length > 0) return { ok: false, issues: faults, lastShape: problem.start.slice() };
  const shell = prepared && isPreparedFor(prepared, problem) ? prepared : prepareShell(problem);
  const state = readyShell(problem, shell, options.pushed ?? 0.001);
  const walk = new NewtonWalk(state);
  const wanted = (options.tolerance ?? 1e-6) * usualForce(state);
  const maxSteps = options.maxSteps ?? 80;
  const fail = (code: 'stalled' | 'stopped' | 'everted'): EquilibriumResult => ({
    ok: false,
    issues: [
      {
        code: `statics-${code}`,
        path: '',
        message:
          code === 'stalled'
            ? phrase('statics.stalled', { steps: walk.steps, force: walk.residual })
            : phrase(`statics.${code}`),
        severity: 'error',
      },
    ],
    lastShape: walk.shape.positions.slice(),
  });
  while (walk.residual > wanted) {
    if (options.shouldStop?.()) return fail('stopped');
    if (walk.steps >= maxSteps || !walk.step()) return fail(walk.wouldEvert ? 'everted' : 'stalled');
    options.onProgress?.({ step: walk.steps, residual: walk.residual, wanted });
  }
  const value = describeShell(state, walk.shape, walk.residual, walk.steps);
  return { ok: true, value, issues: warnOfSlack(state, value) };
}
