import type { z } from 'zod';
import { type Issue, type Phrase, verbatim } from '../base/index.ts';
import { phrase, type WantedType } from './phrases.ts';
import { knownKeys } from './project.ts';

type RawIssue = z.core.$ZodIssue;

/**
 * Turns what the schema found into issues a person can act on: which field, what it holds, what it may hold.
 * `raw` is the value that was checked; every unknown key gets an issue of its own.
 */
export function describeFileIssues(found: readonly RawIssue[], raw: unknown): Issue[] {
  return found.flatMap((issue) => sayIssue(issue, issue.path, raw));
}

function sayIssue(issue: RawIssue, path: readonly PropertyKey[], raw: unknown): Issue[] {
  const field = path.map(String).join('.');
  const value = valueAt(raw, path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => unknownKey(path, key));
    case 'invalid_union': {
      const branch = closestBranch(issue.errors, value);
      return branch.flatMap((inner) => sayIssue(inner, [...path, ...inner.path], raw));
    }
    case 'too_small':
    case 'too_big':
      return [outOfRange(issue, field, value)];
    case 'invalid_value':
      return [choice(issue.values.map(String), field, value)];
    case 'invalid_type':
      return [wrongType(issue.expected, field, value)];
    default:
      return [error('file-wrong-value', field, sayRest(issue, field))];
  }
}

function sayRest(issue: RawIssue, field: string): Phrase {
  if (issue.code === 'invalid_format' && issue.pattern !== undefined)
    return phrase('file.wrong-pattern', { field, pattern: issue.pattern });
  if (issue.code === 'custom' && issue.params !== undefined)
    return phrase('file.too-many-names', { field, most: issue.params.mostNames });
  return phrase(issue.code === 'invalid_key' ? 'file.wrong-name' : 'file.wrong-value', { field });
}

/** For an object the branch that takes objects, else the first: its complaint is the one worth reading. */
function closestBranch(branches: readonly (readonly RawIssue[])[], value: unknown): readonly RawIssue[] {
  const isObject = typeof value === 'object' && value !== null;
  const takesObject = branches.find((b) =>
    b.some((i) => i.path.length > 0 || i.code === 'unrecognized_keys'),
  );
  return (isObject ? takesObject : undefined) ?? branches[0] ?? [];
}

function unknownKey(path: readonly PropertyKey[], key: string): Issue {
  const owner = path.map(String).join('.');
  const field = owner === '' ? key : `${owner}.${key}`;
  // Entries of lists and records go by `*`: all of them, or only the last.
  const listed = path.map((part) => (typeof part === 'number' ? '*' : String(part))).join('.');
  const known =
    knownKeys.get(owner) ??
    knownKeys.get(listed) ??
    knownKeys.get([...path.slice(0, -1).map(String), '*'].join('.')) ??
    [];
  return error('file-unknown-key', field, phrase('file.unknown-key', { key, owner, known }));
}

function outOfRange(
  issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig,
  field: string,
  value: unknown,
): Issue {
  const limit = Number(issue.code === 'too_small' ? issue.minimum : issue.maximum);
  const bound = issue.code === 'too_small' ? 'least' : 'most';
  const measured = typeof value === 'number' ? value : (value as string | unknown[]).length;
  const counted =
    typeof value === 'number'
      ? {}
      : ({ counted: typeof value === 'string' ? 'characters' : 'entries' } as const);
  const message = phrase('file.out-of-range', { field, value: measured, bound, limit, ...counted });
  return { ...error('file-out-of-range', field, message), measured, limit };
}

function choice(choices: readonly string[], field: string, value: unknown): Issue {
  if (value === undefined)
    return error('file-missing-key', field, phrase('file.missing-choice', { field, choices }));
  const message = phrase('file.wrong-choice', { field, found: wordValue(value), choices });
  return error('file-wrong-choice', field, message);
}

function wrongType(expected: string, field: string, value: unknown): Issue {
  const wanted = typeNames[expected];
  if (!wanted) return error('file-wrong-value', field, phrase('file.wrong-value', { field }));
  if (value === undefined)
    return error('file-missing-key', field, phrase('file.missing-key', { field, wanted }));
  return error(
    'file-wrong-type',
    field,
    phrase('file.wrong-type', { field, found: wordValue(value), wanted }),
  );
}

/** The schema's words for types. */
const typeNames: Readonly<Record<string, WantedType>> = {
  number: 'number',
  int: 'int',
  string: 'string',
  boolean: 'boolean',
  object: 'object',
  record: 'object',
  array: 'array',
};

function wordValue(value: unknown): Phrase {
  if (typeof value === 'string')
    return phrase('file.found-text', { text: value.length > 40 ? `${value.slice(0, 40)}…` : value });
  if (Array.isArray(value)) return phrase('file.found-list');
  if (typeof value === 'object' && value !== null) return phrase('file.found-object');
  return verbatim(String(value));
}

function valueAt(raw: unknown, path: readonly PropertyKey[]): unknown {
  let value = raw;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

function error(code: string, path: string, message: Phrase): Issue {
  return { code, path, message, severity: 'error' };
}
