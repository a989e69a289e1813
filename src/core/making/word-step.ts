import type { Phrase } from '../base/index.ts';
import type { WorkCheck, WorkSeam, WorkStep } from '../form/index.ts';
import { wordCheck } from '../simulate/index.ts';
import { phrase } from './phrases.ts';

/** A seam with its lengths and marks, as it stands in the order of work; without its letter. */
export function wordSeam({ name, lengths, marks, closesRing, note }: WorkSeam): Phrase {
  return phrase('work.seam', { seam: name, lengths, marks, closesRing, ...(note && { note }) });
}

/** A check with what it is to come to. */
export function wordStepCheck(check: WorkCheck): Phrase {
  return phrase('work.check', { check: check.name, value: wordCheck(check) });
}

/** Numbers, from 1, of the steps to be done before the `i`th, but for the one above it, of which that goes without saying. */
export function numbersBefore(steps: readonly WorkStep[], i: number): number[] {
  const numberOf = new Map(steps.map(({ id }, k) => [id, k + 1]));
  return steps[i].needs.flatMap((id) => numberOf.get(id) ?? []).filter((number) => number !== i);
}
