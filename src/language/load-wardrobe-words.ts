import type { WardrobeWords } from './english/wardrobe.ts';
import { folderOf, type Language } from './languages.ts';

/** What the app says of several bodies, in one language. Fails when it cannot be fetched. */
export async function loadWardrobeWords(language: Language): Promise<WardrobeWords> {
  const module: { readonly wardrobe: WardrobeWords } = await import(`./${folderOf(language)}/wardrobe.ts`);
  return module.wardrobe;
}
