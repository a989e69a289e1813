import {
  type Equilibrium,
  type EquilibriumOptions,
  findEquilibrium,
  type ShellProblem,
} from '../../src/core/statics/index.ts';

/** The balance of a shell that has one. */
export function solved(problem: ShellProblem, options?: EquilibriumOptions): Equilibrium {
  const result = findEquilibrium(problem, options);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.value;
}
