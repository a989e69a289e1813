import { z } from './zod-without-code.ts';

/** One round of measuring the shell or the form; lengths mm, masses kg. */
export interface CheckingEntry {
  /** Given by who enters it, for example 2026-03-14. */
  readonly date: string;
  /** The sewn shell before filling, its girths twice its flat width; or the form as it is filled. */
  readonly state: 'empty' | 'filled';
  readonly levels: Readonly<Record<string, CheckingReading>>;
  /** Filling weighed in so far. */
  readonly fillMass?: number;
  readonly note?: string;
}

export interface CheckingReading {
  readonly girth?: number;
  readonly width?: number;
  readonly depth?: number;
}

/** The stuffing log, oldest entry first. */
export interface ProjectChecking {
  readonly entries: readonly CheckingEntry[];
}

/** How far the making has got. */
export interface ProjectMaking {
  /** Ids of the steps of the order of work that are done. */
  readonly done: readonly string[];
}

const readingInMm = z.number().min(0).max(4000);

/** @internal */
export const checkingReadingSchema = z.strictObject({
  girth: readingInMm.exactOptional(),
  width: readingInMm.exactOptional(),
  depth: readingInMm.exactOptional(),
});

/** @internal */
export const checkingEntrySchema = z.strictObject({
  date: z.string().max(40),
  state: z.enum(['empty', 'filled']),
  levels: z.record(z.string().max(100), checkingReadingSchema),
  fillMass: z.number().min(0).max(100).exactOptional(),
  note: z.string().max(1000).exactOptional(),
});

/** @internal */
export const checkingSchema = z.strictObject({ entries: z.array(checkingEntrySchema).max(500) });

/** @internal */
export const makingSchema = z.strictObject({ done: z.array(z.string().max(100)).max(500) });
