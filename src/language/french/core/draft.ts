import type { DraftPhrases } from '../../../core/assembly/index.ts';
import { allowanceInWords } from '../../allowance-in-words.ts';
import type { Entries } from '../../catalogue.ts';

/** What the drafting of a whole form says. */
export const draft: Entries<DraftPhrases> = {
  // The same word for both figures.
  'form.body': ({ girth }, { length }) => (girth === undefined ? 'poitrine' : `poitrine ${length(girth)}`),
  'cloth.unknown-edge': ({ edge, known }) =>
    `Aucun bord ne s’appelle « ${edge} » : sa marge de couture n’a pas servi. Il y a : ${known.join(', ')}.`,
  'cloth.usual-allowance-withdrawn': ({ edges, piece, allowance }, tongue) =>
    `${tongue.say(edges)} : la marge plus large, habituelle à cet endroit, n’a pas la place sur la pièce « ${tongue.say(piece)} » ; elle est donc de ${allowanceInWords(allowance, tongue)} sur toutes les pièces. Une marge saisie passe avant.`,
  'trial.leave-open': ({ letters }) =>
    `Laisser ${letters.join(' et ')} ${letters.length > 1 ? 'ouvertes' : 'ouverte'} de haut en bas. Pour l’essayage : les bras par les emmanchures, une autre personne épingle ligne sur ligne.`,
  'trial.head-does-not-pass': ({ girth, least }, { length }) =>
    `L’enveloppe d’essai ne s’ouvre que sur ${length(girth)}, et une tête demande ${length(least)} : il lui manque une couture au milieu du dos. Pour l’essayer, choisir une découpe qui en a une.`,
  'piece.lettered-line': ({ letter, line }, { say }) => `${letter} ${say(line)}`,
};
