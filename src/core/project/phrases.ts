import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';

/** Where reading a text as JSON ended, and why. */
export interface JsonPhrases {
  readonly 'json.nothing-more': NoValues;
  readonly 'json.ends-early': NoValues;
  readonly 'json.value-expected': NoValues;
  readonly 'json.colon-expected': NoValues;
  readonly 'json.comma-or-brace-expected': NoValues;
  readonly 'json.comma-or-bracket-expected': NoValues;
  readonly 'json.name-expected': NoValues;
  readonly 'json.text-not-closed': NoValues;
  readonly 'json.escape-unknown': NoValues;
  readonly 'json.too-deep': { readonly most: number };
  readonly 'json.key-twice': { readonly key: string };
}

/** What is to be said of a field; `field` is its dotted path, empty for the whole project. */
interface Field {
  readonly field: string;
}

/** What a field must hold. */
export type WantedType = 'number' | 'int' | 'string' | 'boolean' | 'object' | 'array';

/** What is wrong with a file that was opened. */
export interface FilePhrases {
  readonly 'file.not-json': { readonly line: number; readonly column: number; readonly fault: Phrase };
  readonly 'file.no-project': NoValues;
  /** `found` is what stands there, as JSON; absent when the key is. */
  readonly 'file.wrong-format': { readonly found?: string; readonly format: string };
  readonly 'file.unknown-version': {
    readonly found?: string;
    readonly oldest: number;
    readonly newest: number;
  };
  readonly 'file.unknown-key': {
    readonly key: string;
    readonly owner: string;
    readonly known: readonly string[];
  };
  readonly 'file.out-of-range': Field & {
    readonly value: number;
    readonly bound: 'least' | 'most';
    readonly limit: number;
    /** What is counted; absent for a number itself. */
    readonly counted?: 'characters' | 'entries';
  };
  readonly 'file.missing-choice': Field & { readonly choices: readonly string[] };
  readonly 'file.wrong-choice': Field & { readonly found: Phrase; readonly choices: readonly string[] };
  readonly 'file.missing-key': Field & { readonly wanted: WantedType };
  readonly 'file.wrong-type': Field & { readonly found: Phrase; readonly wanted: WantedType };
  readonly 'file.wrong-pattern': Field & { readonly pattern: string };
  readonly 'file.too-many-names': Field & { readonly most: number };
  readonly 'file.wrong-name': Field;
  readonly 'file.wrong-value': Field;
  /** What a field holds. */
  readonly 'file.found-text': { readonly text: string };
  readonly 'file.found-list': NoValues;
  readonly 'file.found-object': NoValues;
}

/** What this room says, and what is put in. */
export type ProjectPhrases = JsonPhrases & FilePhrases;

export const phrase = phrasesOf<ProjectPhrases>();
