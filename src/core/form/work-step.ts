import type { Phrase } from '../base/index.ts';
import type { Caution } from '../inside/index.ts';
import type { FillingContext } from '../simulate/index.ts';

export type WorkPhase = 'prepare' | 'cut' | 'plates' | 'sew' | 'arms' | 'pole' | 'fill' | 'finish';

/** One thing to do, with all that is needed to do it. Lengths mm, masses kg, angles degrees. */
export interface WorkStep {
  readonly id: string;
  readonly phase: WorkPhase;
  readonly title: Phrase;
  /** What to do, in sentences that may be read one by one. */
  readonly text: readonly Phrase[];
  readonly pieces: readonly { readonly id: string; readonly name: Phrase }[];
  /** In the order of sewing. */
  readonly seams: readonly WorkSeam[];
  /** Ids of steps that must be done before this one. */
  readonly needs: readonly string[];
  readonly checks: readonly WorkCheck[];
  readonly cautions: readonly Caution[];
  /** Of work, breaks and drying left out: our estimate, no source. */
  readonly hours: number;
  /** May be left out. */
  readonly isOptional?: boolean;
}

export interface WorkSeam {
  /** Seam of the shell, or of an inner piece. */
  readonly id: string;
  readonly letter: string;
  readonly name: Phrase;
  readonly kind: 'shell' | 'inner';
  /** Length of each side along its stitching line; one alone where the other is part of something longer. mm. */
  readonly lengths: readonly number[];
  /** Matched marks between the two ends. */
  readonly marks: number;
  /** All that is sewn so far still lies flat, with this seam. */
  readonly isFlat: boolean;
  readonly closesRing: boolean;
  readonly note?: Phrase;
}

/** Something to measure before going on. */
export interface WorkCheck {
  readonly id: string;
  readonly name: Phrase;
  readonly unit: 'mm' | 'kg' | 'degrees' | 'pieces';
  readonly value: number;
  /** How much less and more are fine, in the same unit; null: any amount. */
  readonly below: number | null;
  readonly above: number | null;
}

/** What is needed beside the pieces to make and judge a form; plain data, survives postMessage. */
export interface Making {
  /** In the order of the work. */
  readonly steps: readonly WorkStep[];
  /** Of all steps that may not be left out. */
  readonly hours: number;
  /** For `judgeFilling`. */
  readonly stuffing: FillingContext;
}
