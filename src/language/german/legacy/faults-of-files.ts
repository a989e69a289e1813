import type { Phrase } from './translate.ts';

/** How the core names the value that stands in a file, and the one that should. */
const values: readonly Phrase[] = [
  ['a number', 'eine Zahl'],
  ['text', 'ein Text'],
  ['an object in braces { }', 'ein Objekt in geschweiften Klammern { }'],
  ['a list in brackets [ ]', 'eine Liste in eckigen Klammern [ ]'],
  ['a list', 'eine Liste'],
  ['an object', 'ein Objekt'],
];

/** Where reading a text as JSON ended. */
const ends: readonly Phrase[] = [
  ['nothing more was expected here', 'hier wurde nichts mehr erwartet'],
  ['the text ends too early', 'der Text endet zu früh'],
  ['a value was expected here', 'hier wurde ein Wert erwartet'],
  ['a colon was expected here', 'hier wurde ein Doppelpunkt erwartet'],
  [
    'a comma or a closing brace } was expected here',
    'hier wurde ein Komma oder eine schließende Klammer } erwartet',
  ],
  [
    'a comma or a closing bracket ] was expected here',
    'hier wurde ein Komma oder eine schließende Klammer ] erwartet',
  ],
  ['a name in double quotes was expected here', 'hier wurde ein Name in Anführungszeichen erwartet'],
  ['this quoted text is not closed', 'dieser Text in Anführungszeichen ist nicht geschlossen'],
  ['this backslash escape is not known', 'dieses Zeichen nach dem Schrägstrich ist nicht bekannt'],
  ['brackets are nested more than {n:num} deep', 'Klammern sind mehr als {n} tief verschachtelt'],
  ['the key “{k:any}” is given twice', 'der Schlüssel „{k}“ steht zweimal da'],
];

/** What is wrong with a file that was opened. */
export const faultsOfFiles: readonly Phrase[] = [
  ...values,
  ...ends,
  [
    'The file is not readable JSON: line {l:num}, column {c:num}: {what:text}.',
    'Die Datei ist kein lesbares JSON: Zeile {l}, Spalte {c}: {what}.',
  ],
  [
    'The file holds no project: it must be one object in braces { }.',
    'Die Datei enthält kein Projekt: Sie muss ein Objekt in geschweiften Klammern { } sein.',
  ],
  ['format is missing; a project file says "{f:any}".', 'format fehlt; in einer Projektdatei steht "{f}".'],
  ['format is {x:any}; a project file says "{f:any}".', 'format ist {x}; in einer Projektdatei steht "{f}".'],
  ['version is missing; this program understands {n:any}.', 'version fehlt; dieses Programm versteht {n}.'],
  ['version is {x:any}; this program understands {n:any}.', 'version ist {x}; dieses Programm versteht {n}.'],
  ['“{k:any}” is not known: {where:any}.', '„{k}“ ist nicht bekannt.'],
  ['{k:any} is missing; it must be {w:text}.', '{k} fehlt; es muss {w} sein.'],
  ['{k:any} is missing; it is {w:any}.', '{k} fehlt; möglich ist: {w}.'],
  ['{k:any} is the text “{x:any}”; it must be {w:text}.', '{k} ist der Text „{x}“; es muss {w} sein.'],
  ['{k:any} is {x:name}; it must be {w:text}.', '{k} ist {x}; es muss {w} sein.'],
  ['{k:any} is {x:num}; it must be at least {l:num}.', '{k} ist {x}; es muss mindestens {l} sein.'],
  ['{k:any} is {x:num}; it must be at most {l:num}.', '{k} ist {x}; es darf höchstens {l} sein.'],
];
