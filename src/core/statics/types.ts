import type { Issue } from '../base/index.ts';

/**
 * How a cloth resists, N/mm (stress times thickness), in the axes of its threads. Poisson's ratio is what the weft
 * shrinks by where the warp is pulled; weft to warp follows by symmetry.
 */
export interface ClothStiffness {
  readonly warp: number;
  readonly weft: number;
  readonly shear: number;
  readonly poisson: number;
}

/** Triangles of cloth, each with the shape it has at rest, lying flat. Welded cloth shares its points. */
export interface Membrane {
  /** #F × 3 points, counter-clockwise from outside. */
  readonly triangles: Uint32Array;
  /** #F × 4: first to second corner and first to third, each along warp and along weft, mm at rest. */
  readonly restEdges: Float64Array;
  readonly cloths: readonly ClothStiffness[];
  /** #F: which cloth; absent: all of the first. */
  readonly clothOf?: Uint8Array;
}

/** Places on the cloth that links may end at: between three points each, which share their pull. */
export interface Places {
  /** #K × 3 points. */
  readonly corners: Uint32Array;
  /** #K × 3; those of a place sum to 1. */
  readonly weights: Float64Array;
}

/** Straight links between two ends each. */
export interface Links {
  /** #L × 2: points, and counted on from the last point, places. */
  readonly ends: Uint32Array;
  /** #L, mm at rest. */
  readonly lengths: Float64Array;
  /** #L, N/mm: EA / L. */
  readonly stiffness: Float64Array;
}

/** Points that move as one: a board with the cloth's rim on it, a pole with the places tied to it. */
export interface RigidBody {
  readonly points: Uint32Array;
  readonly motion: BodyMotion;
}

/** A sliding body keeps its turn and moves along `axis` (any length but 0). */
export type BodyMotion =
  | { readonly kind: 'fixed' }
  | { readonly kind: 'slide'; readonly axis: readonly [number, number, number] }
  | { readonly kind: 'free' };

/** A filled shell: what it is made of, where it starts from, what presses on it. mm, N. */
export interface ShellProblem {
  /** #P × 3 start of all points: corners, and places of bodies that links go to. */
  readonly start: Float64Array;
  readonly membrane: Membrane;
  /** Triangles without cloth that close the volume, over boards; pressed on like the others. */
  readonly closing?: Uint32Array;
  /** N/mm² (0.003 is 3 kPa), outwards; of every triangle of cloth and then of closing, or one for all. */
  readonly pressure: number | Float64Array;
  readonly places?: Places;
  /** Pull only. */
  readonly strands?: Links;
  /** Pull and push: seams and allowances along edges. */
  readonly strips?: Links;
  readonly bodies?: readonly RigidBody[];
}

export interface EquilibriumOptions {
  /** Share of its stiffness a cloth keeps where it is pushed; default 0.001. More makes creases that cost steps, less changes little. */
  readonly pushed?: number;
  /** Force left at any point, as a share of pressure times the mean area of a point; default 1e-6, which leaves places right to about 1e-4 mm. */
  readonly tolerance?: number;
  /** Newton steps until it is told as a stall; default 80. */
  readonly maxSteps?: number;
  readonly onProgress?: (progress: EquilibriumProgress) => void;
  /** Asked before every step. */
  readonly shouldStop?: () => boolean;
}

export interface EquilibriumProgress {
  readonly step: number;
  /** Largest force left at any point, N, and where it counts as balanced. */
  readonly residual: number;
  readonly wanted: number;
}

export const SLACK = 0;
export const WRINKLED = 1;
export const TAUT = 2;

/** A shell in balance. */
export interface Equilibrium {
  /** #P × 3, mm. */
  readonly positions: Float64Array;
  /** Pull in each strand, N, 0 where slack; pull in each strip, negative where pushed. */
  readonly strandForces: Float64Array;
  readonly stripForces: Float64Array;
  /** #F × 2: larger and smaller principal tension, N per mm of the cloth as it hangs, without what is kept of pushed cloth. */
  readonly tensions: Float64Array;
  /** #F: direction of the larger one at rest, from warp towards weft, radians in (−π/2, π/2]. */
  readonly directions: Float64Array;
  /** #F: SLACK, WRINKLED or TAUT. */
  readonly states: Uint8Array;
  /** Force (N) and moment (N mm, about the centre of its points) of cloth, links and pressure on every body: #B × 6. */
  readonly bodyLoads: Float64Array;
  /** mm³ within cloth and closing. */
  readonly volume: number;
  /** Largest force left at any point, N. */
  readonly residual: number;
  readonly steps: number;
}

/** A `Result` whose failure brings the last shape that was sound: the best one reached, or the start. */
export type EquilibriumResult =
  | { readonly ok: true; readonly value: Equilibrium; readonly issues: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[]; readonly lastShape: Float64Array };
