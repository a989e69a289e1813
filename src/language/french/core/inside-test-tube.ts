import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries } from '../../catalogue.ts';

type TestTube = {
  readonly [Id in keyof InsidePhrases as Id extends `test-tube.${string}` ? Id : never]: InsidePhrases[Id];
};

/** The tube that tells how far the cloth gives. */
export const testTube: Entries<TestTube> = {
  'test-tube.name': 'boudin d’essai',
  'test-tube.end': ({ end }) => `boudin d’essai, ${end === 'bottom' ? 'fond' : 'dessus'}`,
  'test-tube.line': ({ number }) => `mesure ${number}`,
  'test-tube.why':
    'Avant de couper un panneau\u00a0: de combien ce tissu s’allonge-t-il quand on le rembourre\u202f?',
  'test-tube.numbered': ({ number, text }, { say }) => `${number}. ${say(text)}`,
  'test-tube.cut':
    'Couper le boudin et ses deux bouts dans le tissu et l’entoilage de l’enveloppe, thermocollés comme ils le seront, droit-fil comme dessiné.',
  'test-tube.sew': ({ closingLetter: closing, endLetter: end }) =>
    `Coudre ${closing} sur ${closing}, puis un bout sur chaque ${end}, cran sur cran, avec le point et le fil de l’enveloppe. Laisser 10 cm ouverts à l’un des ${end}. Retourner sur l’endroit.`,
  'test-tube.stuff':
    'Le rembourrer aussi ferme que le sera le mannequin, d’abord de petits flocons contre les bords, avec un masque\u00a0: le pouce n’y laisse pas de creux. Le fermer à la main, le poser debout et le laisser reposer un jour.',
  'test-tube.measure':
    'En mesurer le tour aux lignes 1, 2 et 3, le mètre ruban à l’horizontale, touchant partout mais sans tirer.',
  'test-tube.type': ({ girth }, { fineLength }) =>
    `Saisir les trois tours sous «\u00a0Intérieur\u00a0», «\u00a0Boudin d’essai\u00a0». Avant rembourrage, il mesure ${fineLength(girth)} sur le tissu. Les panneaux sont alors coupés d’après l’allongement du tissu\u00a0: ne les imprimer et ne les couper qu’ensuite.`,
  'test-tube.too-small': ({ line, girth, least }, { lengthAlone }) =>
    `Boudin d’essai, tour à la ligne ${line}\u00a0: ${lengthAlone(girth)} est moins que le boudin tel qu’il a été cousu, ${lengthAlone(least)} sur le tissu. Le rembourrer plus ferme, ou vérifier qu’il a été imprimé en vraie grandeur, et mesurer de nouveau\u202f; d’ici là, rien n’est retiré pour l’allongement.`,
  'test-tube.too-large': ({ line, girth, most }, { lengthAlone }) =>
    `Boudin d’essai, tour à la ligne ${line}\u00a0: ${lengthAlone(girth)} est plus que ce qu’un tissu peut donner, ${lengthAlone(most)} sur le tissu. Vérifier que sa couture n’est pas ouverte et qu’il a été imprimé en vraie grandeur, et mesurer de nouveau\u202f; d’ici là, rien n’est retiré pour l’allongement.`,
  'test-tube.uneven': ({ spread, most }, { small, exactLength }) =>
    `Boudin d’essai\u00a0: les tours diffèrent de ${small(spread)}, et ${exactLength(most)} sont le plus qu’on admet d’un boudin rembourré régulièrement. Rembourrer plus ferme la partie mince et mesurer de nouveau aux trois lignes.`,
  'test-tube.skipped': ({ level, width }, { say, small }) =>
    `STOP avant d’imprimer\u00a0: aucun boudin d’essai n’a été mesuré, l’allongement de votre tissu n’est donc qu’estimé. Au seul niveau «\u00a0${say(level)}\u00a0», le tour peut tomber n’importe où sur ${small(width)}. Coudre d’abord le boudin d’essai et saisir ses tours sous «\u00a0Intérieur\u00a0».`,
  'test-tube.growth-twice': ({ growth }, { percent }) =>
    `L’allongement est donné deux fois\u00a0: ${percent(growth, 2)} dans le fichier du projet (inside.measuredGrowth), qui compte, et des tours du boudin d’essai. Supprimer l’un des deux.`,
};
