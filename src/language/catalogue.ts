import type { AdvicePhrases } from '../core/advice/index.ts';
import type { AssemblyPhrases, DraftPhrases } from '../core/assembly/index.ts';
import type { BasePhrases, Phrase } from '../core/base/index.ts';
import type { BodyPhrases } from '../core/body/index.ts';
import type { BookletPhrases } from '../core/booklet/index.ts';
import type { ExportPhrases } from '../core/export/index.ts';
import type { FilesPhrases } from '../core/files/index.ts';
import type { FlattenPhrases } from '../core/flatten/index.ts';
import type { FormPhrases } from '../core/form/index.ts';
import type { GaugePhrases } from '../core/gauge/index.ts';
import type { InsidePhrases } from '../core/inside/index.ts';
import type { LayingPhrases } from '../core/laying/index.ts';
import type { MakingPhrases } from '../core/making/index.ts';
import type { MeshPhrases } from '../core/mesh/index.ts';
import type { NestingPhrases } from '../core/nesting/index.ts';
import type { PatternPhrases } from '../core/pattern/index.ts';
import type { PicturePhrases } from '../core/picture/index.ts';
import type { PipelinePhrases } from '../core/pipeline/index.ts';
import type { ProjectPhrases } from '../core/project/index.ts';
import type { RefitPhrases } from '../core/refit/index.ts';
import type { SeamsPhrases } from '../core/seams/index.ts';
import type { SewingPhrases } from '../core/sewing/index.ts';
import type { SheetPhrases } from '../core/sheet/index.ts';
import type { SimulatePhrases } from '../core/simulate/index.ts';
import type { StaticsPhrases } from '../core/statics/index.ts';
import type { PlanPhrases } from './plan-phrases.ts';

/** Every phrase of the core, with what is put into it: the tables of all rooms; and what the core's results are told with. */
export type CorePhrases = AdvicePhrases &
  AssemblyPhrases &
  BasePhrases &
  BodyPhrases &
  BookletPhrases &
  DraftPhrases &
  ExportPhrases &
  FilesPhrases &
  FlattenPhrases &
  FormPhrases &
  GaugePhrases &
  LayingPhrases &
  MakingPhrases &
  MeshPhrases &
  NestingPhrases &
  PatternPhrases &
  PicturePhrases &
  PipelinePhrases &
  PlanPhrases &
  ProjectPhrases &
  RefitPhrases &
  SeamsPhrases &
  SewingPhrases &
  SheetPhrases &
  SimulatePhrases &
  StaticsPhrases &
  InsidePhrases;

/** What the first screen may say: of body, seams and panels, and of files that are read. */
type FirstPhrases = AssemblyPhrases &
  BasePhrases &
  BodyPhrases &
  DraftPhrases &
  FlattenPhrases &
  FormPhrases &
  MeshPhrases &
  PipelinePhrases &
  ProjectPhrases &
  SeamsPhrases;

/** What an entry words numbers and further phrases with, in the reader's language and units. */
export interface Tongue {
  say(phrase: Phrase): string;
  /** A name inside a sentence: without its capital, where the language writes it small. */
  inSentence(phrase: Phrase): string;
  /** mm, in the reader's units; in both `92.5 cm (36 3/8 in)`. */
  length(mm: number): string;
  /** mm; below a centimetre finer than `length`, `0.32 cm (1/8 in)`. */
  difference(mm: number): string;
  /** Radians, in degrees with so many decimals, `12°`. */
  angle(radians: number, decimals: number): string;
  /** mm, give or take: `76.0 ± 3.2 cm (29 7/8 ± 1 1/4 in)`. */
  around(mm: number, spread: number): string;
  /** mm, in one of the reader's units: centimetres, where both are told. */
  lengthAlone(mm: number): string;
  /** mm, to be checked: in inches to the sixteenth. */
  fineLength(mm: number): string;
  /** mm, little enough to be worked by eye: `0.32 cm`, or to the sixteenth of an inch. Without its sign. */
  small(mm: number): string;
  /** mm, as it is bought, typed or asked: all its digits, and inches only where they are as exact, else `25 mm`. */
  exactLength(mm: number): string;
  /** kg or g; pounds or ounces. */
  mass(kg: number): string;
  /** A fraction as a percentage, `1.2 %`. */
  percent(fraction: number, decimals: number): string;
  /** With so many decimals. */
  fixed(value: number, decimals: number): string;
  /** Only the decimals it has, so many at most. */
  plain(value: number, mostDecimals: number): string;
  /** With all its digits, as in a file. */
  exact(value: number): string;
  /** A number already written with a point. */
  mark(text: string): string;
}

type Entry<Values> = keyof Values extends never ? string : (values: Values, tongue: Tongue) => string;

/** What a language says for every phrase of a table: none may be missing. */
export type Entries<Table> = { readonly [Id in keyof Table]: Entry<Table[Id]> };

/** One language, as far as the core is said in it. */
export interface Catalogue {
  /** BCP 47. */
  readonly tag: string;
  /** A name as it stands inside a sentence. */
  readonly inSentence: (name: string) => string;
  /** Less than: `under 1/16 in`. */
  readonly under: string;
  readonly entries: Entries<CorePhrases>;
}

/** As much of a language as the first screen needs. */
export interface FirstCatalogue extends Omit<Catalogue, 'entries'> {
  readonly entries: Entries<FirstPhrases>;
}
