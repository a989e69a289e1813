import type { Phrase } from './phrase.ts';

export type Severity = 'error' | 'warning';

/** Something a person can fix or should know: which field, what, how far off. */
export interface Issue {
  /** Stable kebab-case code, for example `measure-out-of-range`. */
  readonly code: string;
  /** Dotted path; starts at the stage's own options, the pipeline prefixes it into the project file. */
  readonly path: string;
  /** One or two plain sentences naming field, value and limit. */
  readonly message: Phrase;
  readonly severity: Severity;
  readonly measured?: number;
  readonly limit?: number;
}

/** Warnings travel with a success; a failure carries every issue found, not the first. */
export type Result<T> =
  | { readonly ok: true; readonly value: T; readonly issues: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };

export function success<T>(value: T, issues: readonly Issue[] = []): Result<T> {
  return { ok: true, value, issues };
}

export function failure<T>(issues: readonly Issue[]): Result<T> {
  return { ok: false, issues };
}
