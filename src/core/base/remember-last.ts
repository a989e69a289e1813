import type { Result } from './result.ts';

/** Gives back the last success for the same key, else makes it anew. Failures are not kept. */
export type RememberLast<T> = (key: string, make: () => Result<T>) => Result<T>;

/** A memory of one result. */
export function rememberLast<T>(): RememberLast<T> {
  let kept: { readonly key: string; readonly result: Result<T> } | undefined;
  return (key, make) => {
    if (kept?.key === key) return kept.result;
    const result = make();
    if (result.ok) kept = { key, result };
    return result;
  };
}
