import type { FilePhrases, JsonPhrases, ProjectPhrases } from '../../../core/project/index.ts';
import type { Entries } from '../../catalogue.ts';

const json: Entries<JsonPhrases> = {
  'json.nothing-more': 'hier wurde nichts mehr erwartet',
  'json.ends-early': 'der Text endet zu früh',
  'json.value-expected': 'hier wurde ein Wert erwartet',
  'json.colon-expected': 'hier wurde ein Doppelpunkt erwartet',
  'json.comma-or-brace-expected': 'hier wurde ein Komma oder eine schließende Klammer } erwartet',
  'json.comma-or-bracket-expected': 'hier wurde ein Komma oder eine schließende Klammer ] erwartet',
  'json.name-expected': 'hier wurde ein Name in Anführungszeichen erwartet',
  'json.text-not-closed': 'dieser Text in Anführungszeichen ist nicht geschlossen',
  'json.escape-unknown': 'dieses Zeichen nach dem umgekehrten Schrägstrich ist nicht bekannt',
  'json.too-deep': ({ most }) => `Klammern sind mehr als ${most} tief verschachtelt`,
  'json.key-twice': ({ key }) => `der Schlüssel „${key}“ steht zweimal da`,
};

const WANTED = {
  number: 'eine Zahl',
  int: 'eine ganze Zahl',
  string: 'ein Text',
  boolean: 'true oder false',
  object: 'ein Objekt in geschweiften Klammern { }',
  array: 'eine Liste in eckigen Klammern [ ]',
};

const BOUNDS = {
  number: { least: 'es muss mindestens', most: 'es darf höchstens' },
  count: { least: 'es müssen mindestens', most: 'es dürfen höchstens' },
};
const COUNTED = { characters: 'Zeichen', entries: 'Einträge' };

const nameField = (field: string) => (field === '' ? 'Das Projekt' : field);
const listChoices = (choices: readonly string[]) => choices.map((choice) => `„${choice}“`).join(' oder ');

const files: Entries<FilePhrases> = {
  'file.not-json': ({ line, column, fault }, { say }) =>
    `Die Datei ist kein lesbares JSON: Zeile ${line}, Spalte ${column}: ${say(fault)}.`,
  'file.no-project': 'Die Datei enthält kein Projekt: Sie muss ein Objekt in geschweiften Klammern { } sein.',
  'file.wrong-format': ({ found, format }) =>
    `format ${found === undefined ? 'fehlt' : `ist ${found}`}; in einer Projektdatei steht "${format}".`,
  'file.unknown-version': ({ found, oldest, newest }) =>
    `version ${found === undefined ? 'fehlt' : `ist ${found}`}; dieses Programm versteht ${oldest === newest ? newest : `${oldest} bis ${newest}`}.`,
  'file.unknown-key': ({ key, owner, known }) => {
    const may =
      known.length === 0
        ? `${nameField(owner)} enthält in dieser Version nichts`
        : `möglich sind ${owner === '' ? 'im Projekt' : `in ${owner}`}: ${known.join(', ')}`;
    return `„${key}“ ist nicht bekannt; ${may}.`;
  },
  'file.out-of-range': ({ field, value, bound, limit, counted }, { exact }) =>
    counted
      ? `${nameField(field)}: ${exact(value)} ${COUNTED[counted]}; ${BOUNDS.count[bound]} ${exact(limit)} sein.`
      : `${nameField(field)} ist ${exact(value)}; ${BOUNDS.number[bound]} ${exact(limit)} sein.`,
  'file.missing-choice': ({ field, choices }) =>
    `${nameField(field)} fehlt; möglich ist: ${listChoices(choices)}.`,
  'file.wrong-choice': ({ field, found, choices }, { say }) =>
    `${nameField(field)} ist ${say(found)}; möglich ist: ${listChoices(choices)}.`,
  'file.missing-key': ({ field, wanted }) => `${nameField(field)} fehlt; es muss ${WANTED[wanted]} sein.`,
  'file.wrong-type': ({ field, found, wanted }, { say }) =>
    `${nameField(field)} ist ${say(found)}; es muss ${WANTED[wanted]} sein.`,
  'file.wrong-pattern': ({ field, pattern }) =>
    `${nameField(field)} ist nicht verständlich: Der Text muss dem Muster ${pattern} entsprechen.`,
  'file.too-many-names': ({ field, most }) =>
    `${nameField(field)} ist nicht verständlich: Es nennt mehr als ${most} Namen.`,
  'file.wrong-name': ({ field }) =>
    `${nameField(field)} ist nicht verständlich: Der Name ist hier nicht möglich.`,
  'file.wrong-value': ({ field }) => `${nameField(field)} ist nicht verständlich.`,
  'file.found-text': ({ text }) => `der Text „${text}“`,
  'file.found-list': 'eine Liste',
  'file.found-object': 'ein Objekt',
};

/** What is wrong with a file that was opened. */
export const project: Entries<ProjectPhrases> = { ...json, ...files };
