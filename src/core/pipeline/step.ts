import type { JobRound, MemoryOf, Phrase, Result } from '../base/index.ts';

/**
 * One result on the way, and how it is made. Same results of what it needs and same `dependsOn`, same result: it is then not
 * made again. Steps may be shared by several runs, so they keep nothing themselves.
 */
export interface Step<Made, Given> {
  /** Its own among all steps that are run together. */
  readonly id: string;
  /** Steps before it, by the names under which `run` finds their results. */
  readonly needs: Needs<Given>;
  /** Section of the saved project its issues belong to; absent = they name it themselves. */
  readonly section?: string;
  /** What it depends on besides its needs: plain data. */
  dependsOn(given: Given): unknown;
  /** Then its result is undefined, and its latest one stays in memory. */
  isLeftOut?(given: Given): boolean;
  /** `last`: its latest result, if any, of whatever it was made. */
  run(needed: Readonly<Record<string, unknown>>, context: StepContext<Given>, last?: Made): Result<Made>;
  /** What of the work ahead may be done elsewhere; `run` finds it in `context.memoryOf`. */
  rounds?(needed: Readonly<Record<string, unknown>>, context: StepContext<Given>): Iterable<JobRound>;
  /** For small results: those that need it are made again only when this changes, however it was come by. */
  nameOf?(made: Made): string;
}

export type Needs<Given> = Readonly<Record<string, Step<unknown, Given>>>;

export interface StepContext<Given> {
  readonly given: Given;
  /** `fraction` of the stage, 0 to 1; `what` in plain words. */
  readonly onProgress: (fraction: number, what: Phrase) => void;
  /** True = stop with whatever issue. */
  readonly isCancelled: () => boolean;
  readonly memoryOf: MemoryOf;
}

/** Steps that belong together for who looks at the work: they pass as one in progress and times. */
export interface Stage<Id extends string, Given> {
  readonly id: Id;
  /** What is being done. */
  readonly what: Phrase;
  /** How much of the whole work it is; only what it is beside the others' counts. */
  readonly share: number;
  readonly steps: readonly Step<unknown, Given>[];
}

type MadeBy<S> = S extends Step<infer Made, infer _> ? Made : never;

interface StepOf<Made, N, Given> extends Omit<Step<Made, Given>, 'needs' | 'run' | 'rounds' | 'isLeftOut'> {
  readonly needs: N;
  run(
    needed: { readonly [K in keyof N]: MadeBy<N[K]> },
    context: StepContext<Given>,
    last?: Made,
  ): Result<Made>;
  rounds?(needed: { readonly [K in keyof N]: MadeBy<N[K]> }, context: StepContext<Given>): Iterable<JobRound>;
}

/** Lets the types of what a step needs flow into its `run`. */
export interface DefineStep<Given> {
  <Made, N extends Needs<Given>>(
    step: StepOf<Made, N, Given> & { isLeftOut(given: Given): boolean },
  ): Step<Made | undefined, Given>;
  <Made, N extends Needs<Given>>(step: StepOf<Made, N, Given>): Step<Made, Given>;
}

/** The step itself; give it a type `DefineStep`. */
export function defineStep<S>(step: S): S {
  return step;
}
