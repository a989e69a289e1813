import type { DraftPhrases } from '../../../core/assembly/index.ts';
import type { Entries } from '../../catalogue.ts';

/** What the drafting of a whole form says. */
export const draft: Entries<DraftPhrases> = {
  // The same word for both figures.
  'form.body': ({ girth }, { length }) => (girth === undefined ? 'Brust' : `Brust ${length(girth)}`),
  'cloth.unknown-edge': ({ edge, known }) =>
    `Keine Kante heißt „${edge}“, darum gilt ihre Zugabe nicht. Es gibt: ${known.join(', ')}.`,
  'piece.lettered-line': ({ letter, line }, { say }) => `${letter} ${say(line)}`,
};
