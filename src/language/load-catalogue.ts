import type { Catalogue, FirstCatalogue } from './catalogue.ts';
import { folderOf, type Language } from './languages.ts';

/** What the core says, in one language. Fails when it cannot be fetched. */
export async function loadCatalogue(language: Language): Promise<Catalogue> {
  const module: { readonly catalogue: Catalogue } = await import(`./${folderOf(language)}/core.ts`);
  return module.catalogue;
}

/** As much of it as the first screen needs. Fails when it cannot be fetched. */
export async function loadFirstCatalogue(language: Language): Promise<FirstCatalogue> {
  const module: { readonly first: FirstCatalogue } = await import(`./${folderOf(language)}/first.ts`);
  return module.first;
}
