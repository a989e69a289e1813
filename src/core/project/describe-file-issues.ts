import type { z } from 'zod';
import { type Issue, plain } from '../base/index.ts';
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
      return [error('file-wrong-value', field, `${named(field)} is not understood: ${issue.message}`)];
  }
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
  const may = known.length === 0 ? 'holds nothing in this version' : `may hold ${known.join(', ')}`;
  return error(
    'file-unknown-key',
    field,
    `“${key}” is not known: ${owner === '' ? 'the project' : owner} ${may}.`,
  );
}

function outOfRange(
  issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig,
  field: string,
  value: unknown,
): Issue {
  const limit = Number(issue.code === 'too_small' ? issue.minimum : issue.maximum);
  const bound = issue.code === 'too_small' ? 'at least' : 'at most';
  const isNumber = issue.origin === 'number';
  const measured = isNumber ? Number(value) : (value as string | unknown[]).length;
  const unit = isNumber ? '' : issue.origin === 'string' ? ' characters' : ' entries';
  return {
    ...error(
      'file-out-of-range',
      field,
      `${named(field)} is ${measured}${unit}; it must be ${bound} ${limit}${unit}.`,
    ),
    measured,
    limit,
  };
}

function choice(values: readonly string[], field: string, value: unknown): Issue {
  const may = values.map((v) => `“${v}”`).join(' or ');
  if (value === undefined)
    return error('file-missing-key', field, `${named(field)} is missing; it is ${may}.`);
  return error('file-wrong-choice', field, `${named(field)} is ${inWords(value)}; it must be ${may}.`);
}

function wrongType(expected: string, field: string, value: unknown): Issue {
  const wanted = typeNames[expected] ?? expected;
  if (value === undefined) {
    return error('file-missing-key', field, `${named(field)} is missing; it must be ${wanted}.`);
  }
  return error('file-wrong-type', field, `${named(field)} is ${inWords(value)}; it must be ${wanted}.`);
}

const typeNames: Readonly<Record<string, string>> = {
  number: 'a number',
  string: 'text',
  object: 'an object in braces { }',
  record: 'an object in braces { }',
  array: 'a list in brackets [ ]',
};

function inWords(value: unknown): string {
  if (typeof value === 'string') return `the text “${value.length > 40 ? `${value.slice(0, 40)}…` : value}”`;
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  return String(value);
}

function named(field: string): string {
  return field === '' ? 'The project' : field;
}

function valueAt(raw: unknown, path: readonly PropertyKey[]): unknown {
  let value = raw;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

function error(code: string, path: string, message: string): Issue {
  return { code, path, message: plain(message), severity: 'error' };
}
