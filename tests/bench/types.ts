/** One fixed piece of work to be timed. */
export interface BenchCase {
  /** `room/what`, stable: the history is kept under it. */
  readonly name: string;
  /** Made once, outside the clock. */
  readonly prepare?: () => unknown;
  /** Returns a checksum: a number that depends on all of the result. */
  readonly run: (prepared: never) => number | BenchParts | Promise<number>;
  /** Timed runs; default 5. */
  readonly runs?: number;
}

/** A checksum, and the times of parts of the work, ms; each part gets a line of its own. */
export interface BenchParts {
  readonly checksum: number;
  readonly partsMs: Readonly<Record<string, number>>;
}
