import type { Catalogue } from './catalogue.ts';
import { english, type Words } from './english/app.ts';
import { englishCore } from './english/core.ts';

export const LANGUAGES = ['en', 'de'] as const;
export type Language = (typeof LANGUAGES)[number];

/** As those who speak them write them. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch' };

/** English is there from the start, every other language comes when it is wanted. Fails when it cannot be fetched. */
export async function loadWords(language: Language): Promise<Words> {
  return language === 'de' ? (await import('./german/app.ts')).german : english;
}

/** What the core says, as `loadWords`. */
export async function loadCatalogue(language: Language): Promise<Catalogue> {
  return language === 'de' ? (await import('./german/core.ts')).germanCore : englishCore;
}

/** The first language of `wanted` (tags of BCP 47, best first) that the program speaks, else English. */
export function guessLanguage(wanted: readonly string[]): Language {
  for (const tag of wanted) {
    const known = LANGUAGES.find((language) => isOf(tag, language));
    if (known) return known;
  }
  return 'en';
}

/** Where numbers and dates are written as this person writes them: the place they named for the language, if any. */
export function localeOf(language: Language, wanted: readonly string[]): string {
  return wanted.find((tag) => isOf(tag, language)) ?? language;
}

function isOf(tag: string, language: Language): boolean {
  return tag.toLowerCase().split('-')[0] === language;
}
