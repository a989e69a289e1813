import type { DraftPhrases } from '../core/assembly/index.ts';
import type { BasePhrases, Phrase } from '../core/base/index.ts';
import type { ExportPhrases } from '../core/export/index.ts';
import type { FilesPhrases } from '../core/files/index.ts';
import type { PatternPhrases } from '../core/pattern/index.ts';
import type { SheetPhrases } from '../core/sheet/index.ts';

/** TRANSITIONAL. */
export interface PlainPhrases {
  readonly plain: { readonly text: string };
}

/** Every phrase of the core, with what is put into it: the tables of all rooms. */
export type CorePhrases = BasePhrases &
  DraftPhrases &
  ExportPhrases &
  FilesPhrases &
  PatternPhrases &
  PlainPhrases &
  SheetPhrases;

/** What an entry words numbers and further phrases with, in the reader's language and units. */
export interface Tongue {
  say(phrase: Phrase): string;
  /** A name inside a sentence: without its capital, where the language writes it small. */
  within(phrase: Phrase): string;
  /** mm, in the reader's units; in both `92.5 cm (36 3/8 in)`. */
  length(mm: number): string;
  /** mm; below a centimetre finer than `length`, `3.2 mm (1/8 in)`. */
  difference(mm: number): string;
  /** With so many decimals. */
  fixed(value: number, decimals: number): string;
  /** Only the decimals it has, so many at most. */
  plain(value: number, mostDecimals: number): string;
}

type Entry<Values> = keyof Values extends never ? string : (values: Values, tongue: Tongue) => string;

/** What a language says for every phrase of a table: none may be missing. */
export type Entries<Table> = { readonly [Id in keyof Table]: Entry<Table[Id]> };

/** One language, as far as the core is said in it. */
export interface Catalogue {
  /** BCP 47. */
  readonly tag: string;
  /** A name as it stands inside a sentence. */
  readonly within: (name: string) => string;
  readonly entries: Entries<CorePhrases>;
}
