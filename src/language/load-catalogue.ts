import type { Catalogue } from './catalogue.ts';
import { folderOf, type Language } from './languages.ts';

/** What the core says, in one language. Fails when it cannot be fetched. */
export async function loadCatalogue(language: Language): Promise<Catalogue> {
  const module: { readonly catalogue: Catalogue } = await import(`./${folderOf(language)}/core.ts`);
  return module.catalogue;
}
