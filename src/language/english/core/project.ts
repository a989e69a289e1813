import type { FilePhrases, JsonPhrases, ProjectPhrases } from '../../../core/project/index.ts';
import type { Entries } from '../../catalogue.ts';

const json: Entries<JsonPhrases> = {
  'json.nothing-more': 'nothing more was expected here',
  'json.ends-early': 'the text ends too early',
  'json.value-expected': 'a value was expected here',
  'json.colon-expected': 'a colon was expected here',
  'json.comma-or-brace-expected': 'a comma or a closing brace } was expected here',
  'json.comma-or-bracket-expected': 'a comma or a closing bracket ] was expected here',
  'json.name-expected': 'a name in double quotes was expected here',
  'json.text-not-closed': 'this quoted text is not closed',
  'json.escape-unknown': 'this backslash escape is not known',
  'json.too-deep': ({ most }) => `brackets are nested more than ${most} deep`,
  'json.key-twice': ({ key }) => `the key “${key}” is given twice`,
};

const WANTED = {
  number: 'a number',
  int: 'int',
  string: 'text',
  boolean: 'boolean',
  object: 'an object in braces { }',
  array: 'a list in brackets [ ]',
};

const BOUNDS = { least: 'at least', most: 'at most' };
const COUNTED = { characters: ' characters', entries: ' entries' };

const nameField = (field: string) => (field === '' ? 'The project' : field);
const listChoices = (choices: readonly string[]) => choices.map((choice) => `“${choice}”`).join(' or ');

const files: Entries<FilePhrases> = {
  'file.not-json': ({ line, column, fault }, { say }) =>
    `The file is not readable JSON: line ${line}, column ${column}: ${say(fault)}.`,
  'file.no-project': 'The file holds no project: it must be one object in braces { }.',
  'file.wrong-format': ({ found, format }) =>
    `format ${found === undefined ? 'is missing' : `is ${found}`}; a project file says "${format}".`,
  'file.unknown-version': ({ found, oldest, newest }) =>
    `version ${found === undefined ? 'is missing' : `is ${found}`}; this program understands ${oldest === newest ? newest : `${oldest} to ${newest}`}.`,
  'file.unknown-key': ({ key, owner, known }) => {
    const may = known.length === 0 ? 'holds nothing in this version' : `may hold ${known.join(', ')}`;
    return `“${key}” is not known: ${owner === '' ? 'the project' : owner} ${may}.`;
  },
  'file.out-of-range': ({ field, value, bound, limit, counted }, { exact }) => {
    const unit = counted ? COUNTED[counted] : '';
    return `${nameField(field)} is ${exact(value)}${unit}; it must be ${BOUNDS[bound]} ${exact(limit)}${unit}.`;
  },
  'file.missing-choice': ({ field, choices }) =>
    `${nameField(field)} is missing; it is ${listChoices(choices)}.`,
  'file.wrong-choice': ({ field, found, choices }, { say }) =>
    `${nameField(field)} is ${say(found)}; it must be ${listChoices(choices)}.`,
  'file.missing-key': ({ field, wanted }) => `${nameField(field)} is missing; it must be ${WANTED[wanted]}.`,
  'file.wrong-type': ({ field, found, wanted }, { say }) =>
    `${nameField(field)} is ${say(found)}; it must be ${WANTED[wanted]}.`,
  'file.wrong-pattern': ({ field, pattern }) =>
    `${nameField(field)} is not understood: Invalid string: must match pattern ${pattern}`,
  'file.too-many-names': ({ field, most }) =>
    `${nameField(field)} is not understood: it names more than ${most}`,
  'file.wrong-name': ({ field }) => `${nameField(field)} is not understood: Invalid key in record`,
  'file.wrong-value': ({ field }) => `${nameField(field)} is not understood.`,
  'file.found-text': ({ text }) => `the text “${text}”`,
  'file.found-list': 'a list',
  'file.found-object': 'an object',
};

/** What is wrong with a file that was opened. */
export const project: Entries<ProjectPhrases> = { ...json, ...files };
