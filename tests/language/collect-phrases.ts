import { isPhrase, type Phrase } from '../../src/core/base/index.ts';

/** Every phrase in plain data, those put into other phrases too, in no order. Long arrays of numbers are passed over. */
export function collectPhrases(data: unknown): Phrase[] {
  const found: Phrase[] = [];
  const seen = new Set<unknown>();
  const open: unknown[] = [data];
  while (open.length > 0) {
    const value = open.pop();
    if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value) || seen.has(value)) continue;
    seen.add(value);
    if (isPhrase(value)) found.push(value);
    open.push(...(value instanceof Map ? value.values() : Object.values(value)));
  }
  return found;
}
