import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries } from '../../catalogue.ts';
import { kilogramsAndPounds } from '../../kilograms-and-pounds.ts';

type Buying = {
  readonly [Id in keyof InsidePhrases as Id extends `buy.${string}` ? Id : never]: InsidePhrases[Id];
};

/** The shopping list. */
export const buying: Entries<Buying> = {
  'buy.shell': 'tissu de l’enveloppe',
  'buy.shell.note': 'coton tissé ferme\u202f; laver et repasser avant de couper',
  'buy.interfacing': 'entoilage tissé thermocollant',
  'buy.interfacing.note': 'thermocoller avant de couper\u00a0: le tissu thermocollé rétrécit',
  'buy.webs': 'tissu pour cloisons, liens et fourreau',
  'buy.webs.note': 'le même tissu ferme, droit-fil vertical',
  'buy.covers': 'tissu pour les housses des plaques',
  'buy.card': ({ thickness }, { exactLength }) =>
    `carton ondulé pour les plaques, ${exactLength(thickness)} d’épaisseur une fois les deux couches collées`,
  'buy.card.note': 'cannelures (les vagues du carton) des deux couches croisées',
  'buy.foam': 'mousse ferme pour le bloc de cou',
  'buy.foam.note': ({ width, depth, height }, { small }) =>
    `un bloc d’au moins ${small(width)} × ${small(depth)} × ${small(height)}\u202f; à couper d’après les trois gabarits`,
  'buy.tube': ({ diameter }, { exactLength }) =>
    `tube, ${exactLength(diameter)} à l’extérieur (à mesurer au pied à coulisse)`,
  'buy.tube.note': ({ insideForm, isHeightAssumed }, { small }) =>
    `du sol à la plaque d’encolure\u202f; dont ${small(insideForm)} dans le mannequin${isHeightAssumed ? '\u202f; la hauteur de la taille est supposée, personne ne l’a mesurée\u00a0: mesurer avant de scier' : ''}`,
  'buy.thread': 'fil polyester solide',
  'buy.thread.note': 'chaque couture est piquée deux fois',
  'buy.cord': 'ficelle cirée',
  'buy.cord.note': 'pour lacer les plaques et fermer la dernière ouverture',
  'buy.binding': 'ruban de coton solide',
  'buy.binding.note': ({ width }, { length }) => `${length(width)} de large, autour du bord des plaques`,
  'buy.fill': 'fibre polyester',
  'buy.fill.note': ({ low, high, assumed }, tongue) =>
    `${kilogramsAndPounds(low, high, 'à', tongue)} bien tassés, et un cinquième de réserve\u202f; ${assumed ? `supposé de ${assumed.low} à ${assumed.high} kg par mètre cube (sans source)\u00a0: peser ce que prend le boudin d’essai` : 'd’après le poids de ce qu’a pris le boudin d’essai'}\u202f; la pratique parle de ${kilogramsAndPounds(2.5, 5, 'à', tongue)} par buste (sans source)`,
  'buy.arms': 'tissu et entoilage pour les bras',
  'buy.arms.note': 'comme l’enveloppe',
  'buy.arm-fill': 'fibre polyester pour les bras',
  'buy.arm-fill.note': ({ low, high }, tongue) =>
    `${kilogramsAndPounds(low, high, 'à', tongue)}, plus souple au-dessus du coude\u202f; en plus de celle du buste`,
  'buy.magnets': 'aimants ronds qui repèrent la place des bras et des pelotes à épingles',
  'buy.magnets.note': ({ diameter }, { exactLength }) =>
    `${exactLength(diameter)} de diamètre, comme dessiné sur les plaques\u202f; cousus dedans et comptés\u202f; à tenir loin des enfants et à 15 cm des implants`,
  'buy.pegs': 'chevilles de bois qui portent les bras',
  'buy.pegs.note': ({ diameter }, { exactLength }) =>
    `${exactLength(diameter)} de diamètre\u202f; collées dans la plaque du bras`,
  'buy.collar': 'bagues de serrage\u202f; une goupille à travers le tube empêche de tourner',
  'buy.collar.note': ({ diameter }, { exactLength }) =>
    `pour un tube de ${exactLength(diameter)}\u00a0: celle du haut porte la plaque d’encolure, celle du bas la plaque de base et avec elle le mannequin`,
  'buy.disc': 'disque de contreplaqué entre la plaque de base et la bague du bas',
  'buy.disc.note': ({ diameter }, { exactLength }) =>
    `au moins ${exactLength(80)} de diamètre, ${exactLength(6)} d’épaisseur, avec un trou pour un tube de ${exactLength(diameter)}\u00a0: il répartit la charge sur le carton`,
  'buy.packing': 'garniture entre le tube et la tige qui est dedans',
  'buy.packing.note': ({ thickness }, { small, exactLength }) =>
    `${small(thickness)} d’épaisseur tout autour, ${exactLength(60)} de haut, aux deux bouts où ils s’emboîtent\u00a0: liège, ruban adhésif ou douille tournée, pour que rien ne ballotte`,
  'buy.foot': 'pied avec son lest',
  'buy.foot.note': ({ legs, radius }, { small }) =>
    `${legs} ${legs === 1 ? 'branche qui va' : 'branches qui vont'} à ${small(radius)} du tube, de ce poids en tout\u202f; voir ce qui le fait basculer. Roulettes avec garde ou capuchon, pour qu’elles ne happent aucun ourlet`,
  'buy.glue': 'colle à bois pour les couches de carton',
  'buy.glue.note': 'environ 200 g par mètre carré\u202f; laisser sécher à plat sous des poids',
  'buy.needles': 'aiguilles\u00a0: un paquet',
  'buy.needles.note':
    'à la machine, de 90 à 100 pour tissu ferme\u202f; à la main, une courbe et une de 12 cm ou plus',
  'buy.tape': 'ruban adhésif pour le papier, un rouleau',
  'buy.tape.note': 'transparent ou de masquage\u202f; pas sur les lignes coupées par une machine',
  'buy.test-tube': 'tissu et entoilage pour le boudin d’essai',
  'buy.test-tube.note': ({ low, high }, tongue) =>
    `du même tissu que l’enveloppe\u202f; prend ${kilogramsAndPounds(low, high, 'à', tongue)} du rembourrage, qui resservira`,
};
