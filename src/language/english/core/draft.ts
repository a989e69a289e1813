import type { DraftPhrases } from '../../../core/assembly/index.ts';
import type { Entries } from '../../catalogue.ts';

/** What the drafting of a whole form says. */
export const draft: Entries<DraftPhrases> = {
  'form.body': ({ figure, girth }, { length }) =>
    girth === undefined ? figure : `${figure} ${length(girth)}`,
  'cloth.unknown-edge': ({ edge, known }) =>
    `No edge is called “${edge}”, so its allowance was not used. There are: ${known.join(', ')}.`,
  'piece.lettered-line': ({ letter, line }, { say }) => `${letter} ${say(line)}`,
};
