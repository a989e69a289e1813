import { assertInvariant } from './invariant-error.ts';
import type { Phrase } from './phrase.ts';
import type { Result } from './result.ts';

/** Work for whoever has time: plain data that survives postMessage. Same job, same result, wherever it is done. */
export interface Job {
  /** Id of its `JobKind`. */
  readonly kind: string;
  readonly data: unknown;
}

/** Does jobs at some other place, in the order given; may be refused. */
export type RunJobsElsewhere = (jobs: readonly Job[]) => Promise<readonly Result<unknown>[]>;

/** How jobs of one kind are done, and what is kept between them. */
export interface JobKind<Data, Made, Memory> {
  readonly id: string;
  /** One for every place that does such jobs. */
  createMemory(): Memory;
  /** Puts what it made into the memory, and makes nothing anew that is there. */
  run(data: Data, memory: Memory): Result<Made>;
  recall(data: Data, memory: Memory): Made | undefined;
  /** Puts what was made elsewhere into the memory. */
  keep(data: Data, made: Made, memory: Memory): void;
}

export type AnyJobKind = JobKind<unknown, unknown, unknown>;

/** Jobs of one kind that do not depend on each other. */
export interface JobRound {
  readonly kind: AnyJobKind;
  readonly jobs: readonly RoundJob[];
  /** In plain words, as progress. */
  readonly what: Phrase;
  /** Part of the stage's time, 0 to 1. */
  readonly share: number;
}

export interface RoundJob {
  readonly data: unknown;
  /** Jobs of one lot go to the same place, round after round: what they have in common is kept there. */
  readonly lot: number;
  /** The more, the longer it takes. */
  readonly weight: number;
}

/** The memory of each kind, made when first asked for. */
export type MemoryOf = <Memory>(kind: JobKind<never, unknown, Memory>) => Memory;

export function createJobMemories(): MemoryOf {
  const memories = new Map<string, unknown>();
  return <Memory>(kind: JobKind<never, unknown, Memory>) => {
    if (!memories.has(kind.id)) memories.set(kind.id, kind.createMemory());
    return memories.get(kind.id) as Memory;
  };
}

/** For the other place: does any job whose kind is listed, with memories of its own. Throws on a kind it does not know. */
export function createJobRunner(kinds: readonly AnyJobKind[]): (job: Job) => Result<unknown> {
  const memoryOf = createJobMemories();
  return (job) => {
    const kind = kinds.find(({ id }) => id === job.kind);
    assertInvariant(kind !== undefined, 'base', 'a job is of a kind that is listed', job.kind);
    return kind.run(job.data, memoryOf(kind));
  };
}
