import type { Phrase } from '../base/index.ts';
import type { SectionSize } from '../inside/index.ts';

export type ReadingKind = 'girth' | 'width' | 'depth';

/** How far a filled level may be off, mm (common practice, no source): a girth may only be over. */
export const FILLING_TOLERANCE: Readonly<
  Record<ReadingKind, { readonly below: number; readonly above: number }>
> = {
  girth: { below: 0, above: 5 },
  width: { below: 5, above: 5 },
  depth: { below: 5, above: 5 },
};

/** What the filled form is to measure at one level. mm. */
export interface LevelTarget extends SectionSize {
  readonly id: string;
  readonly name: Phrase;
  /** Height over the waist. */
  readonly z: number;
  /** Of the empty shell, all seams sewn: twice its width laid flat. */
  readonly emptyGirth: number;
  /** What firm filling is foretold to bring it to. */
  readonly foretold: SectionSize;
}

/** What was measured on the form at one level; all may be missing. mm. */
export type LevelReading = Readonly<Partial<Record<ReadingKind, number>>>;

export type Standing = 'under' | 'good' | 'over';

/** Which way a reading is off its target, and by how much; `off` is signed, mm. */
export function compareReading(
  kind: ReadingKind,
  measured: number,
  target: number,
): { readonly off: number; readonly standing: Standing } {
  const off = measured - target;
  const { below, above } = FILLING_TOLERANCE[kind];
  return { off, standing: off < -below - SLACK ? 'under' : off > above + SLACK ? 'over' : 'good' };
}

/** Half a millimetre, as near as a tape is read. */
const SLACK = 0.5;
