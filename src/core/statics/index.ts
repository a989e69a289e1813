export { findEquilibrium } from './find-equilibrium.ts';
export type { ShellNumber, StaticsPhrases } from './phrases.ts';
export { type PreparedShell, prepareShell } from './prepare-shell.ts';
export { respondToChanges, type ShellChange } from './respond-to-changes.ts';
export {
  type BodyMotion,
  type ClothStiffness,
  type Equilibrium,
  type EquilibriumOptions,
  type EquilibriumProgress,
  type EquilibriumResult,
  type Links,
  type Membrane,
  type Places,
  type RigidBody,
  type ShellProblem,
  SLACK,
  TAUT,
  WRINKLED,
} from './types.ts';
