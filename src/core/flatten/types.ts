import type { Phrase } from '../base/index.ts';
import type { Mesh } from '../mesh/index.ts';
import type { FlattenMemory } from './flatten-memory.ts';

/** Two boundary paths that will be sewn together, edge for edge. Same number of vertices, same order. */
export interface Join {
  readonly id: string;
  readonly a: { readonly disk: number; readonly vertices: Uint32Array };
  readonly b: { readonly disk: number; readonly vertices: Uint32Array };
  /** True: keep the 3D edge lengths (level seams). False: a common length between free and 3D. */
  readonly keepsLength: boolean;
  /** Sewn-in ease: edges of this side are longer than their partners by the fraction, which the sewing takes in. */
  readonly ease?: { readonly side: 'a' | 'b'; readonly fraction: number };
}

/** A path (of mesh edges) whose total flat length equals its 3D length. */
export interface KeptPath {
  readonly disk: number;
  readonly vertices: Uint32Array;
  /** mm to keep instead of the path's own 3D length. */
  readonly length?: number;
  /** Of paths with the same `sum` only the lengths' sum is kept; each takes the share it strains least with. */
  readonly sum?: string;
}

export interface FlattenProblem {
  readonly disks: readonly Mesh[];
  /** Per disk, index of the disk it mirrors vertex by vertex, or −1. */
  readonly mirrorOf: Int32Array;
  readonly joins: readonly Join[];
  readonly keptPaths: readonly KeptPath[];
}

export interface FlattenOptions {
  /** 0 = seams take the mean of the two free lengths, 1 = the length on the body. Default 0. */
  readonly seamLengthBlend?: number;
  /** 0 = shrink and stretch weigh the same; 1 = the cloth rather stretches, so that fewer places wrinkle. Default 0. */
  readonly wrinkleAversion?: number;
  /** Kept by the caller between calls: disks that did not change are not solved again. */
  readonly memory?: FlattenMemory;
  readonly onProgress?: (fraction: number, what: Phrase) => void;
  /** Polled between solves; true stops with an issue. */
  readonly isCancelled?: () => boolean;
  /** One line of numbers per Newton step. */
  readonly trace?: (line: Readonly<Record<string, number>>) => void;
}

/** A disk unrolled. */
export interface FlatDisk {
  /** #V × 2 mm. Up on the body is +y (mean direction), same handedness as seen from outside. */
  readonly positions: Float64Array;
  readonly strain: StrainField;
}

/** What the cloth feels going from flat to body. Positive: must stretch; negative: must shrink. */
export interface StrainField {
  /** #F larger and smaller principal strain (stretch − 1). */
  readonly major: Float64Array;
  readonly minor: Float64Array;
  /** #F angle of the major direction in the flat piece, radians from +x. */
  readonly direction: Float64Array;
  readonly summary: StrainSummary;
}

/** Area-weighted over both principal strains, fractions. p95 and p99 are of the absolute value. */
export interface StrainSummary {
  /** √(Σ A (major² + minor²) / 2 Σ A); times √2 it is the strain √(major² + minor²) of a place. */
  readonly rms: number;
  readonly p95: number;
  readonly p99: number;
  readonly min: number;
  readonly max: number;
  readonly flipped: number;
  readonly area3d: number;
  readonly areaFlat: number;
}
