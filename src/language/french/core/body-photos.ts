import type { PhotoPhrases } from '../../../core/body/index.ts';
import type { Entries } from '../../catalogue.ts';

const PHOTOS = { front: 'la photo de face', side: 'la photo de profil' };
const PLACES = {
  right: 'le bord à votre droite',
  left: 'le bord à votre gauche',
  rightShoulder: 'la ligne de l’épaule droite',
  leftShoulder: 'la ligne de l’épaule gauche',
  front: 'le bord de devant',
  back: 'le bord de derrière',
  neckBack: 'la nuque',
  neckFront: 'le creux du cou',
  neckSideRight: 'le côté droit du cou',
  neckSideLeft: 'le côté gauche du cou',
  shoulderPointRight: 'la pointe de l’épaule droite',
  shoulderPointLeft: 'la pointe de l’épaule gauche',
  bustPointRight: 'la pointe du sein droit',
  bustPointLeft: 'la pointe du sein gauche',
  bustPoint: 'la pointe de sein',
  waist: 'l’élastique de la taille',
};

/** What two pictures of the person tell. */
export const bodyPhotos: Entries<PhotoPhrases> = {
  'body.photo-too-near': ({ photo, least }, { length }) =>
    `Pour ${PHOTOS[photo]}, il faut la distance de l’objectif, ${length(least)} au moins. De plus près, le corps paraît courbé.`,
  'body.photo-unreadable': ({ photo }) =>
    `Dans ${PHOTOS[photo]}, ce qui est dessiné, ou la hauteur de l’objectif, n’est pas un nombre. Dessiner de nouveau.`,
  'body.photo-few-points': ({ photo, count, least }) =>
    `Dans ${PHOTOS[photo]}, un bord n’a que ${count} ${count < 2 ? 'point' : 'points'}\u202f; moins de ${least} disent peu de sa forme. En dessiner d’autres.`,
  'body.photo-box-differs': ({ measure, photo, gap, size }, { say, difference }) =>
    `${say(measure)}\u00a0: ${PHOTOS[photo]} montre ${difference(gap)} de ${size === 'large' ? 'plus' : 'moins'} que la valeur saisie. C’est la valeur saisie qui compte. La mesurer encore, et voir si un vêtement ou un bras a été dessiné avec.`,
  'body.photo-point-off': ({ photo, of, height, gap }, { length, difference }) =>
    `Dans ${PHOTOS[photo]}, à ${length(height)} du sol, ${PLACES[of]} a été dessiné à ${difference(gap)} du corps que permettent les mesures. Voir si un vêtement ou un bras a été dessiné avec\u202f; sinon, mesurer encore près de là.`,
};
