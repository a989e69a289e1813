import type { Say, Speaker } from '../core/base/index.ts';
import type { CommandWords } from '../language/english/command.ts';
import {
  type Catalogue,
  createNumbers,
  type Language,
  loadCatalogue,
  type Numbers,
  speakerFor,
} from '../language/index.ts';
import { loadCommandWords } from '../language/load-command-words.ts';

/** Whoever reads what a command shows: made once a run, and handed to all that words something. */
export interface Reader {
  readonly language: Language;
  /** What the command line says by itself. */
  readonly words: CommandWords;
  /** What the core says in this language, for those who word it in their own units. */
  readonly catalogue: Catalogue;
  /** Says what the core has to say. */
  readonly say: Say;
  /** The same, for whoever letters. */
  readonly speaker: Speaker;
  readonly numbers: Numbers;
}

/** A reader of one language. Numbers are written as the language writes them, wherever the command is run. */
export async function createReader(language: Language): Promise<Reader> {
  const [words, catalogue] = await Promise.all([loadCommandWords(language), loadCatalogue(language)]);
  const speaker = speakerFor(catalogue, { locale: language });
  return {
    language,
    words,
    catalogue,
    say: speaker.say,
    speaker,
    numbers: createNumbers(language),
  };
}
