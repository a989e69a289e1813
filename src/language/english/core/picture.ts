import type { PicturePhrases } from '../../../core/picture/index.ts';
import type { Entries } from '../../catalogue.ts';

/** Words in the pictures of the form and its pieces. */
export const picture: Entries<PicturePhrases> = {
  'picture.front': 'front',
  'picture.roll': 'rest, rolled up',
  'picture.rolls': 'both sides, rolled up',
  'picture.length': ({ length }, { lengthAlone }) => lengthAlone(length),
  'picture.stretched': 'drawn wider than it is',
  'picture.load': ({ mass }, { mass: say }) => say(mass),
  'picture.push': ({ force }, { fixed }) => `push: ${fixed(force, 0)} N`,
  'picture.tilt': ({ angle }, { angle: say }) => `tilt: ${say(angle, 0)}`,
};
