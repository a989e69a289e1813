import type { Help } from './english/help.ts';
import { folderOf, type Language } from './languages.ts';

/** What the help says, in one language. Fails when it cannot be fetched. */
export async function loadHelp(language: Language): Promise<Help> {
  const module: { readonly help: Help } = await import(`./${folderOf(language)}/help.ts`);
  return module.help;
}
