/**
 * The languages the program speaks, one entry each: its own name, as those who speak it write it, and its folder beside this
 * file. In the folder are `app.ts` (words of the app), `wardrobe.ts` (of its dialogs of bodies), `help.ts` (keys, gestures and
 * words of the trade), `core.ts` (catalogue of what the core says), `first.ts` (as much of it
 * as the first screen needs) and `command.ts` (words of the command line). Each is loaded by those who need it, in the language wanted only.
 */
const TABLE = {
  en: { name: 'English', folder: 'english' },
  de: { name: 'Deutsch', folder: 'german' },
  fr: { name: 'Français', folder: 'french' },
} as const;

export type Language = keyof typeof TABLE;

export const LANGUAGES = Object.keys(TABLE) as readonly Language[];

/** As those who speak them write them. */
export const LANGUAGE_NAMES = Object.fromEntries(
  LANGUAGES.map((language) => [language, TABLE[language].name]),
) as Readonly<Record<Language, string>>;

/** Where what is said in a language stands. */
export function folderOf(language: Language): string {
  return TABLE[language].folder;
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
