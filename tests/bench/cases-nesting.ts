import { type NestProblem, nest } from '../../src/core/nesting/index.ts';
import { readInstance } from '../nesting/sample-problems.ts';
import type { BenchCase } from './types.ts';

/** So many places tried; the checksum is the length. */
function layCase(name: string, budget: number): BenchCase {
  return {
    name: `nesting/${name}-${budget / 1000}k`,
    prepare: () => readInstance(name, budget),
    run: (problem: NestProblem) => {
      let length = Number.NaN;
      for (const { plan } of nest(problem)) length = plan?.length ?? length;
      return length;
    },
    runs: 3,
  };
}

/** Outlines made ready and a first valid plan. */
function firstCase(name: string): BenchCase {
  return {
    name: `nesting/first-plan-${name}`,
    prepare: () => readInstance(name, 1000),
    run: (problem: NestProblem) => {
      for (const { plan } of nest(problem)) if (plan) return plan.length;
      return Number.NaN;
    },
  };
}

export default [layCase('shirts', 500_000), layCase('swim', 500_000), firstCase('shirts'), firstCase('swim')];
