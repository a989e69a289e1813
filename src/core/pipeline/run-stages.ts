import { createJobMemories, failure, type Issue, type Result, success } from '../base/index.ts';
import { followProgress, type Watch } from './follow-progress.ts';
import { phrase } from './phrases.ts';
import { createStepMemory, type KnownSteps, knownBy, leftOut } from './remember-steps.ts';
import type { SharedWork } from './share-work.ts';
import type { Stage, Step, StepContext } from './step.ts';

export interface RunOptions<Id extends string> extends Watch<Id> {
  /** The last stage to run; absent = all. */
  readonly upTo?: Id;
}

/** What a run came to. */
export interface Harvest<Id extends string, Given> {
  /** Undefined for what was left out or lies past the end. */
  take<Made>(step: Step<Made, Given>): Made | undefined;
  /** Stages that were run, in order; not those of which every step was left out. */
  readonly stages: readonly Id[];
  readonly issues: readonly Issue[];
  readonly timingsMs: Readonly<Record<string, number>>;
}

export interface StageRunner<Given> {
  /**
   * Runs the stages in order. The first with a step that fails is the last; its other steps are run all the same where they
   * can be, so that what is wrong is told together. Yields work that may be done ahead elsewhere: who drives may pass over it.
   */
  run<Id extends string>(
    stages: readonly Stage<Id, Given>[],
    given: Given,
    options: RunOptions<Id>,
  ): Generator<SharedWork, Result<Harvest<Id, Given>>, void>;
  /** One step, and before it what it needs; no one looks on. */
  makeOne<Made>(step: Step<Made, Given>, given: Given): Result<Made>;
}

/** Remembers the last success of every step from run to run, or as many as `remembered`. */
export function createStageRunner<Given>(remembered = 1): StageRunner<Given> {
  const memory = createStepMemory<Given>(remembered);
  const memoryOf = createJobMemories();

  /** One step, its result put where the steps after it find it. */
  function* runStep(
    step: Step<unknown, Given>,
    context: StepContext<Given>,
    known: KnownSteps<Given>,
  ): Generator<SharedWork, readonly Issue[], void> {
    if (step.isLeftOut?.(context.given)) {
      known.set(step, leftOut(step));
      return [];
    }
    const ready = memory.prepare(step, context.given, known);
    known.set(step, null);
    if (!ready) return [];
    if (step.rounds && !memory.isKept(ready)) {
      yield { ...context, rounds: step.rounds(ready.needed, context) };
      if (context.isCancelled()) return [];
    }
    const made = memory.make(ready, context);
    if (made.ok) known.set(step, knownBy(ready, made.value));
    return made.issues;
  }

  return {
    *run(stages, given, options) {
      const isRun = ({ steps }: (typeof stages)[number]) =>
        steps.length === 0 || !steps.every((step) => step.isLeftOut?.(given));
      // What is left out takes no time.
      const parts = stages.map((stage) => (isRun(stage) ? stage : { ...stage, share: 0 }));
      const { enter, finish, tellPart: onProgress, isCancelled } = followProgress(parts, options);
      const context = { given, onProgress, isCancelled, memoryOf };
      const known: KnownSteps<Given> = new Map();
      const issues: Issue[] = [];
      const last = stages.findIndex(({ id }) => id === options.upTo);
      const wanted = last < 0 ? stages : stages.slice(0, last + 1);
      for (const stage of stages) {
        if (isCancelled()) return cancelled(issues);
        // Stages past the last pass at once: progress and times tell of all.
        enter(stage);
        if (!wanted.includes(stage)) continue;
        for (const step of stage.steps) {
          if (isCancelled()) return cancelled(issues);
          const found = yield* runStep(step, context, known);
          // What a stopped step complains of is that it was stopped.
          if (known.get(step) === null && isCancelled()) return cancelled(issues);
          issues.push(...found);
        }
        if (stage.steps.some((step) => known.get(step) === null)) return failure(issues);
      }
      const take = <Made>(step: Step<Made, Given>) => known.get(step)?.value as Made | undefined;
      const ids = wanted.filter(isRun).map(({ id }) => id);
      return success({ take, stages: ids, issues, timingsMs: finish() }, issues);
    },

    makeOne<Made>(wanted: Step<Made, Given>, given: Given): Result<Made> {
      const context = { given, onProgress: () => {}, isCancelled: () => false, memoryOf };
      const known: KnownSteps<Given> = new Map();
      const issues: Issue[] = [];
      const visit = (step: Step<unknown, Given>): void => {
        for (const other of Object.values(step.needs)) if (!known.has(other)) visit(other);
        const steps = runStep(step, context, known);
        for (let made = steps.next(); ; made = steps.next()) {
          if (!made.done) continue;
          issues.push(...made.value);
          return;
        }
      };
      visit(wanted);
      const made = known.get(wanted);
      return made ? success(made.value as Made, issues) : failure(issues);
    },
  };
}

function cancelled(issues: readonly Issue[]) {
  const message = phrase('pipeline.cancelled');
  return failure<never>([...issues, { code: 'cancelled', path: '', message, severity: 'error' }]);
}
