import type { DraftPhrases } from '../../../core/assembly/index.ts';
import { allowanceInWords } from '../../allowance-in-words.ts';
import type { Entries } from '../../catalogue.ts';

/** What the drafting of a whole form says. */
export const draft: Entries<DraftPhrases> = {
  // The same word for both figures.
  'form.body': ({ girth }, { length }) => (girth === undefined ? 'Brust' : `Brust ${length(girth)}`),
  'cloth.unknown-edge': ({ edge, known }) =>
    `Keine Kante heißt „${edge}“, darum gilt ihre Zugabe nicht. Es gibt: ${known.join(', ')}.`,
  'cloth.usual-allowance-withdrawn': ({ edges, piece, allowance }, tongue) =>
    `${tongue.say(edges)}: Die breitere Zugabe, die dort üblich ist, hat auf dem Teil „${tongue.say(piece)}“ keinen Platz; darum sind es dort auf allen Teilen ${allowanceInWords(allowance, tongue)}. Eine eingetragene Zugabe geht vor.`,
  'piece.lettered-line': ({ letter, line }, { say }) => `${letter} ${say(line)}`,
};
