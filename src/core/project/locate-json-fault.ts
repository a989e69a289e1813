/** Where a text stops being JSON, counted from 1, and what would have been right there. */
export interface JsonFault {
  readonly line: number;
  readonly column: number;
  readonly message: string;
}

class Fault extends Error {
  constructor(
    readonly offset: number,
    message: string,
  ) {
    super(message);
  }
}

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
    if (end < text.length) throw new Fault(end, 'nothing more was expected here');
    return undefined;
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    const before = text.slice(0, fault.offset).split('\n');
    return { line: before.length, column: before[before.length - 1].length + 1, message: fault.message };
  }
}

function readValue(text: string, at: number, depth: number): number {
  if (depth > maxDepth) throw new Fault(at, `brackets are nested more than ${maxDepth} deep`);
  const first = text[at];
  if (first === '{') return readObject(text, at, depth);
  if (first === '[') return readList(text, at, depth);
  if (first === '"') return readString(text, at);
  for (const word of ['true', 'false', 'null']) if (text.startsWith(word, at)) return at + word.length;
  const end = match(numberPattern, text, at);
  if (end < 0)
    throw new Fault(at, at >= text.length ? 'the text ends too early' : 'a value was expected here');
  return end;
}

function readObject(text: string, start: number, depth: number): number {
  const keys = new Set<string>();
  let at = skipSpace(text, start + 1);
  if (text[at] === '}') return at + 1;
  for (;;) {
    const end = readString(text, at);
    const key = JSON.parse(text.slice(at, end)) as string;
    if (keys.has(key)) throw new Fault(at, `the key “${key}” is given twice`);
    keys.add(key);
    at = expectCharacter(text, skipSpace(text, end), ':', 'a colon');
    at = skipSpace(text, readValue(text, skipSpace(text, at), depth + 1));
    if (text[at] === '}') return at + 1;
    at = skipSpace(text, expectCharacter(text, at, ',', 'a comma or a closing brace }'));
  }
}

function readList(text: string, start: number, depth: number): number {
  let at = skipSpace(text, start + 1);
  if (text[at] === ']') return at + 1;
  for (;;) {
    at = skipSpace(text, readValue(text, at, depth + 1));
    if (text[at] === ']') return at + 1;
    at = skipSpace(text, expectCharacter(text, at, ',', 'a comma or a closing bracket ]'));
  }
}

function readString(text: string, start: number): number {
  if (text[start] !== '"') {
    const isEnd = start >= text.length;
    throw new Fault(start, isEnd ? 'the text ends too early' : 'a name in double quotes was expected here');
  }
  let at = start + 1;
  while (text[at] !== '"') {
    // Control characters, line ends among them, must be escaped (RFC 8259, section 7).
    if (at >= text.length || text.charCodeAt(at) < 0x20)
      throw new Fault(start, 'this quoted text is not closed');
    const next = text[at] === '\\' ? match(escapePattern, text, at) : at + 1;
    if (next < 0) throw new Fault(at, 'this backslash escape is not known');
    at = next;
  }
  return at + 1;
}

function expectCharacter(text: string, at: number, wanted: string, inWords: string): number {
  if (text[at] !== wanted) {
    throw new Fault(at, at >= text.length ? 'the text ends too early' : `${inWords} was expected here`);
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
