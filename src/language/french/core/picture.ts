import type { PicturePhrases } from '../../../core/picture/index.ts';
import type { Entries } from '../../catalogue.ts';

/** Words of the pictures of the form and its pieces. */
export const picture: Entries<PicturePhrases> = {
  'picture.front': 'devant',
  'picture.roll': 'le reste, roulé',
  'picture.rolls': 'les deux côtés, roulés',
  'picture.length': ({ length }, { lengthAlone }) => lengthAlone(length),
  'picture.stretched': 'dessiné plus large que nature',
  'picture.load': ({ mass }, { mass: say }) => say(mass),
  'picture.push': ({ force }, { fixed }) => `poussée\u00a0: ${fixed(force, 0)} N`,
  'picture.tilt': ({ angle }, { angle: say }) => `inclinaison\u00a0: ${say(angle, 0)}`,
};
