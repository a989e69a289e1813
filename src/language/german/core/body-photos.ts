import type { PhotoPhrases } from '../../../core/body/index.ts';
import type { Entries } from '../../catalogue.ts';

const PHOTOS = { front: 'Bild von vorn', side: 'Bild von der Seite' };
const PLACES = {
  right: 'der Umriss rechts am Körper',
  left: 'der Umriss links am Körper',
  rightShoulder: 'die Linie der rechten Schulter',
  leftShoulder: 'die Linie der linken Schulter',
  front: 'der Umriss vorn',
  back: 'der Umriss hinten',
  neckBack: 'der Halswirbel',
  neckFront: 'die Halsgrube',
  neckSideRight: 'die rechte Halsseite',
  neckSideLeft: 'die linke Halsseite',
  shoulderPointRight: 'der rechte Schulterpunkt',
  shoulderPointLeft: 'der linke Schulterpunkt',
  bustPointRight: 'der rechte Brustpunkt',
  bustPointLeft: 'der linke Brustpunkt',
  bustPoint: 'der Brustpunkt',
  waist: 'das Gummiband an der Taille',
};

/** What two pictures of the person tell. */
export const bodyPhotos: Entries<PhotoPhrases> = {
  'body.photo-too-near': ({ photo, least }, { length }) =>
    `Zum ${PHOTOS[photo]} gehört der Abstand der Linse, mindestens ${length(least)}. Von näher zeigt es einen Körper verzerrt.`,
  'body.photo-unreadable': ({ photo }) =>
    `Etwas, das in das ${PHOTOS[photo]} gezeichnet wurde, oder die Höhe der Linse ist keine Zahl. Neu zeichnen.`,
  'body.photo-few-points': ({ photo, count, least }) =>
    `Ein Umriss im ${PHOTOS[photo]} hat nur ${count} Punkte; weniger als ${least} sagen wenig über seine Form. Einige mehr zeichnen.`,
  'body.photo-box-differs': ({ measure, photo, gap, size }, { say, difference }) =>
    `${say(measure)}: Das ${PHOTOS[photo]} zeigt ${difference(gap)} ${size === 'large' ? 'mehr' : 'weniger'} als eingetragen. Es gilt, was eingetragen ist. Noch einmal messen, und nachsehen, ob Kleidung oder ein Arm mitgezeichnet wurde.`,
  'body.photo-point-off': ({ photo, of, height, gap }, { length, difference }) =>
    `Im ${PHOTOS[photo]} liegt ${PLACES[of]} ${length(height)} über dem Boden ${difference(gap)} neben dem Körper, den die Maße zulassen. Nachsehen, ob Kleidung oder ein Arm mitgezeichnet wurde; wenn nicht, in der Nähe noch einmal messen.`,
};
