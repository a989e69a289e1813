import {
  InvariantError,
  type JobRound,
  type MemoryOf,
  type Phrase,
  type RoundJob,
  type RunJobsElsewhere,
} from '../base/index.ts';

/** A step about to run, part of whose work may be done ahead of it. */
export interface SharedWork {
  /** The next round is asked for when the one before is done; what was made is found in the memory. */
  readonly rounds: Iterable<JobRound>;
  readonly memoryOf: MemoryOf;
  readonly onProgress: (fraction: number, what: Phrase) => void;
  readonly isCancelled: () => boolean;
}

/**
 * Fills the memories with what the jobs make, half of the work done elsewhere at the same time, so that the step finds it
 * there. Who does a job changes nothing in it, so the result has the same bytes. Never refused: what could not be done, here
 * or elsewhere, is missing from the memory, and the step does it or tells why not. What is known already is not done again.
 */
export async function shareWork(work: SharedWork, elsewhere: RunJobsElsewhere): Promise<void> {
  const assign = createAssignment();
  let done = 0;
  try {
    for (const round of work.rounds) {
      await shareRound(round, work, done, assign(round.jobs), elsewhere);
      if (work.isCancelled()) return;
      done += round.share;
    }
  } catch (error) {
    // The step breaks the same promise, where it is told.
    if (!(error instanceof InvariantError)) throw error;
  }
}

async function shareRound(
  { kind, jobs, what, share }: JobRound,
  { memoryOf, onProgress, isCancelled }: SharedWork,
  done: number,
  isTheirs: (job: RoundJob) => boolean,
  elsewhere: RunJobsElsewhere,
): Promise<void> {
  const memory = memoryOf(kind);
  const open = jobs.filter(({ data }) => kind.recall(data, memory) === undefined);
  const theirs = open.filter(isTheirs);
  const sent = theirs.map(({ data }) => ({ kind: kind.id, data }));
  const answer = sent.length > 0 ? elsewhere(sent).catch(() => []) : Promise.resolve([]);
  const ours = open.filter((job) => !isTheirs(job));
  for (const [k, { data }] of ours.entries()) {
    if (isCancelled()) break;
    onProgress(done + (share * k) / ours.length, what);
    kind.run(data, memory);
  }
  for (const [k, result] of (await answer).entries())
    if (result.ok) kind.keep(theirs[k].data, result.value, memory);
}

/** Lots to the one or the other place: the heaviest first, each to whoever has less so far, and there it stays. */
function createAssignment() {
  const isTheirs = new Map<number, boolean>();
  let [ours, theirs] = [0, 0];
  return (jobs: readonly RoundJob[]) => {
    for (const { lot, weight } of jobs.toSorted((a, b) => b.weight - a.weight)) {
      if (isTheirs.has(lot)) continue;
      isTheirs.set(lot, theirs < ours);
      if (theirs < ours) theirs += weight;
      else ours += weight;
    }
    return ({ lot }: RoundJob): boolean => isTheirs.get(lot) ?? false;
  };
}
