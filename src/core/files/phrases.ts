import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';

interface WithProject {
  readonly project: string;
}

interface NamedById {
  readonly id: string;
  readonly name: Phrase;
}

interface Unknown {
  readonly name: string;
  readonly known: readonly string[];
}

/** Headings of the tables of seams and tapes. */
type Heading =
  | 'seam.id'
  | 'seam.letter'
  | 'seam.name'
  | 'seam.panel-1'
  | 'seam.panel-2'
  | 'seam.on-panel-1'
  | 'seam.on-panel-2'
  | 'seam.on-body'
  | 'seam.on-panel-1-inches'
  | 'tape.id'
  | 'tape.kind'
  | 'tape.asked'
  | 'tape.found'
  | 'tape.off'
  | 'tape.status'
  | 'tape.found-inches';

/** What this room says, and what is put in; lengths in mm. */
export type FilesPhrases = {
  readonly 'file.unknown-format': Unknown;
  readonly 'file.unknown-piece': Unknown;
  /** A model of one to `scale`. */
  readonly 'file.model-scale': { readonly scale: number; readonly least: number; readonly most: number };
  readonly 'file.model-wall': {
    readonly wall: number;
    readonly scale: number;
    readonly least: number;
    readonly most: number;
  };
  readonly 'file.letters-lacking': { readonly letters: readonly string[] };
  /** Titles of printed files; English shows the id of the paper, as its file's name does. */
  readonly 'file.print-title': WithProject & { readonly paper: NamedById };
  readonly 'file.projector-title': WithProject;
  readonly 'file.labels-title': WithProject;
  readonly 'file.lay-title': WithProject;
  readonly 'file.booklet-title': WithProject;
  readonly 'file.revision': { readonly revision: string };
} & { readonly [Id in Heading as `table.${Id}`]: NoValues };

export const phrase = phrasesOf<FilesPhrases>();
