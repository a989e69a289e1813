import type { Words } from './english/app.ts';
import { folderOf, type Language } from './languages.ts';

/** What the app says, in one language. Fails when it cannot be fetched; English is there from the start. */
export async function loadWords(language: Language): Promise<Words> {
  const module: { readonly words: Words } = await import(`./${folderOf(language)}/app.ts`);
  return module.words;
}
