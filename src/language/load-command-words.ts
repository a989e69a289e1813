import type { CommandWords } from './english/command.ts';
import { folderOf, type Language } from './languages.ts';

/** What the command line says by itself, in one language. */
export async function loadCommandWords(language: Language): Promise<CommandWords> {
  const module: { readonly commandWords: CommandWords } = await import(`./${folderOf(language)}/command.ts`);
  return module.commandWords;
}
