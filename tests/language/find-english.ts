import type { Phrase } from '../../src/core/base/index.ts';

/** Common English words that are no German ones, and the words of the trade; a few are French as well. */
const WORDS = new Set(
  `the with must between and of is are be been to from than this that these those by for at on if its it not no
  when which where what while there here only both each all any other than too more most less least so-called
  right left back side level line point seam panel piece cloth body measure width depth girth length waist hip
  bust chest neck shoulder sleeve plate cover upper lower above below centre middle outer inner round large small
  far unusual very cut sew fold number list value key file missing take give make made look looks about
  into out up down over under before after again until without within inside outside through along across`.split(
    /\s+/,
  ),
);

/** Values that are said as they stand: ids and texts of files, letters, the maker's own words. */
const KEPT = new Set(
  `text id field owner key known choices given found seam format pattern typed name letter letters
  closingLetter endLetter`.split(/\s+/),
);

/** English words left in what another language says of a phrase, but those in quotes and in what was put in as it is. */
export function findEnglish(phrase: Phrase, said: string): string[] {
  let text = said;
  for (const kept of keptIn(phrase).sort((a, b) => b.length - a.length)) text = text.replaceAll(kept, ' ');
  text = text.replaceAll(/„[^“]*“|«[^»]*»|"[^"]*"/g, ' ');
  // Keys of the project's file, `inside.straps`.
  text = text.replaceAll(/\b[a-z]+\.[a-z]\w+/g, ' ');
  return (text.toLowerCase().match(/\p{L}+/gu) ?? []).filter((word) => WORDS.has(word));
}

function keptIn(value: unknown, isKept = false): string[] {
  if (typeof value === 'string') return isKept && value !== '' ? [value] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, inner]) =>
    keptIn(inner, Array.isArray(value) ? isKept : KEPT.has(name)),
  );
}
