import { prefixIssues } from '../assembly/index.ts';
import { assertInvariant, failure, type Result, success } from '../base/index.ts';
import type { Step, StepContext } from './step.ts';

/** A result, and what it depends on: by its own step and by all that this needs. */
export interface Known {
  readonly value: unknown;
  readonly parts: readonly string[];
}

/** What one run has made so far; null = could not be made. */
export type KnownSteps<Given> = Map<Step<unknown, Given>, Known | null>;

/** A step whose needs are met. */
export interface ReadyStep<Given> {
  readonly step: Step<unknown, Given>;
  readonly needed: Readonly<Record<string, unknown>>;
  readonly parts: readonly string[];
  readonly key: string;
}

/**
 * Keeps the last successes of every step, `most` of them: only what differs from them all is made again. Failures are not kept.
 */
export function createStepMemory<Given>(most: number) {
  /** By key; the last used stands last. */
  const kept = new Map<Step<unknown, Given>, Map<string, Result<unknown>>>();
  const keptOf = (step: Step<unknown, Given>) => kept.get(step) ?? new Map<string, Result<unknown>>();

  const lastOf = (step: Step<unknown, Given>): unknown => {
    const result = [...keptOf(step).values()].at(-1);
    return result?.ok ? result.value : undefined;
  };

  const keep = (step: Step<unknown, Given>, key: string, result: Result<unknown>): void => {
    const results = keptOf(step);
    results.delete(key);
    results.set(key, result);
    const [oldest] = results.keys();
    if (results.size > most && oldest !== undefined) results.delete(oldest);
    kept.set(step, results);
  };

  return {
    /** Null when something it needs could not be made. */
    prepare(step: Step<unknown, Given>, given: Given, known: KnownSteps<Given>): ReadyStep<Given> | null {
      const needed: Record<string, unknown> = {};
      const parts = new Set<string>();
      for (const [name, other] of Object.entries(step.needs)) {
        const found = known.get(other);
        assertInvariant(found !== undefined, 'pipeline', `a step comes after what it needs`, step.id);
        if (found === null) return null;
        needed[name] = found.value;
        for (const part of found.parts) parts.add(part);
      }
      parts.add(`${step.id} ${JSON.stringify(step.dependsOn(given))}`);
      return { step, needed, parts: [...parts], key: [...parts].join('\n') };
    },

    isKept: ({ step, key }: ReadyStep<Given>): boolean => keptOf(step).has(key),

    /** Issues with their paths as in the saved project. */
    make({ step, needed, key }: ReadyStep<Given>, context: StepContext<Given>): Result<unknown> {
      const before = keptOf(step).get(key);
      if (before) {
        keep(step, key, before);
        return before;
      }
      const made = step.run(needed, context, lastOf(step));
      const issues = step.section === undefined ? made.issues : prefixIssues(made.issues, step.section);
      if (!made.ok) return failure(issues);
      const result = success(made.value, issues);
      keep(step, key, result);
      return result;
    },
  };
}

/** How others know a result that was made. */
export function knownBy<Given>({ step, parts }: ReadyStep<Given>, value: unknown): Known {
  return { value, parts: step.nameOf ? [`${step.id} ${step.nameOf(value)}`] : parts };
}

export function leftOut<Given>(step: Step<unknown, Given>): Known {
  return { value: undefined, parts: [`${step.id} left out`] };
}
