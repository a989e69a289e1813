import type { DraftPhrases } from '../../../core/assembly/index.ts';
import { allowanceInWords } from '../../allowance-in-words.ts';
import type { Entries } from '../../catalogue.ts';

/** What the drafting of a whole form says. */
export const draft: Entries<DraftPhrases> = {
  'form.body': ({ figure, girth }, { length }) =>
    girth === undefined ? figure : `${figure} ${length(girth)}`,
  'cloth.unknown-edge': ({ edge, known }) =>
    `No edge is called “${edge}”, so its allowance was not used. There are: ${known.join(', ')}.`,
  'cloth.usual-allowance-withdrawn': ({ edges, piece, allowance }, tongue) =>
    `${tongue.say(edges)}: the wider allowance that is usual there has no room on piece “${tongue.say(piece)}”, so they have ${allowanceInWords(allowance, tongue)} on all pieces. An allowance typed for them goes before it.`,
  'piece.lettered-line': ({ letter, line }, { say }) => `${letter} ${say(line)}`,
};
