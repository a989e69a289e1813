import type { Phrase } from '../base/index.ts';
import { phrase } from './phrases.ts';

/** Where a text stops being JSON, counted from 1, and what would have been right there. */
export interface JsonFault {
  readonly line: number;
  readonly column: number;
  readonly what: Phrase;
}

class Fault extends Error {
  constructor(
    readonly offset: number,
    readonly what: Phrase,
  ) {
    super(what.id);
  }
}

type Missing = 'json.colon-expected' | 'json.comma-or-brace-expected' | 'json.comma-or-bracket-expected';

const maxDepth = 100;
const numberPattern = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const escapePattern = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const spacePattern = /[ \t\n\r]*/y;

/**
 * Finds the first fault of a JSON text (grammar: RFC 8259), or a key given twice in one object, which JSON readers
 * drop without a word. Linear in the length. Returns undefined when there is none.
 */
export function locateJsonFault(text: string): JsonFault | undefined {
  try {
    const end = skipSpace(text, readValue(text, skipSpace(text, 0), 0));
    if (end < text.length) throw new Fault(end, phrase('json.nothing-more'));
    return undefined;
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    const before = text.slice(0, fault.offset).split('\n');
    return { line: before.length, column: before[before.length - 1].length + 1, what: fault.what };
  }
}

function readValue(text: string, at: number, depth: number): number {
  if (depth > maxDepth) throw new Fault(at, phrase('json.too-deep', { most: maxDepth }));
  const first = text[at];
  if (first === '{') return readObject(text, at, depth);
  if (first === '[') return readList(text, at, depth);
  if (first === '"') return readString(text, at);
  for (const word of ['true', 'false', 'null']) if (text.startsWith(word, at)) return at + word.length;
  const end = match(numberPattern, text, at);
  if (end < 0) throw new Fault(at, phrase(at >= text.length ? 'json.ends-early' : 'json.value-expected'));
  return end;
}

function readObject(text: string, start: number, depth: number): number {
  const keys = new Set<string>();
  let at = skipSpace(text, start + 1);
  if (text[at] === '}') return at + 1;
  for (;;) {
    const end = readString(text, at);
    const key = JSON.parse(text.slice(at, end)) as string;
    if (keys.has(key)) throw new Fault(at, phrase('json.key-twice', { key }));
    keys.add(key);
    at = expectCharacter(text, skipSpace(text, end), ':', 'json.colon-expected');
    at = skipSpace(text, readValue(text, skipSpace(text, at), depth + 1));
    if (text[at] === '}') return at + 1;
    at = skipSpace(text, expectCharacter(text, at, ',', 'json.comma-or-brace-expected'));
  }
}

function readList(text: string, start: number, depth: number): number {
  let at = skipSpace(text, start + 1);
  if (text[at] === ']') return at + 1;
  for (;;) {
    at = skipSpace(text, readValue(text, at, depth + 1));
    if (text[at] === ']') return at + 1;
    at = skipSpace(text, expectCharacter(text, at, ',', 'json.comma-or-bracket-expected'));
  }
}

function readString(text: string, start: number): number {
  if (text[start] !== '"') {
    throw new Fault(start, phrase(start >= text.length ? 'json.ends-early' : 'json.name-expected'));
  }
  let at = start + 1;
  while (text[at] !== '"') {
    // Control characters, line ends among them, must be escaped (RFC 8259, section 7).
    if (at >= text.length || text.charCodeAt(at) < 0x20)
      throw new Fault(start, phrase('json.text-not-closed'));
    const next = text[at] === '\\' ? match(escapePattern, text, at) : at + 1;
    if (next < 0) throw new Fault(at, phrase('json.escape-unknown'));
    at = next;
  }
  return at + 1;
}

function expectCharacter(text: string, at: number, wanted: string, missing: Missing): number {
  if (text[at] !== wanted) {
    throw new Fault(at, phrase(at >= text.length ? 'json.ends-early' : missing));
  }
  return at + 1;
}

function skipSpace(text: string, at: number): number {
  return match(spacePattern, text, at);
}

function match(pattern: RegExp, text: string, at: number): number {
  const sticky = new RegExp(pattern.source, 'y');
  sticky.lastIndex = at;
  return sticky.test(text) ? sticky.lastIndex : -1;
}
