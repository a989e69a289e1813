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
  'trial.leave-open': ({ letters }) =>
    `Leave ${letters.join(' and ')} open from top to bottom. To try on: arms through the armholes, a helper pins line on line.`,
  'trial.head-does-not-pass': ({ girth, least }, { length }) =>
    `The trial shell opens to ${length(girth)} only, and a head needs ${length(least)}: it has no seam down the middle of the back. Choose a layout with one to try the shell on.`,
  'piece.lettered-line': ({ letter, line }, { say }) => `${letter} ${say(line)}`,
};
