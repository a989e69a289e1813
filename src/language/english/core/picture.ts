import type { PicturePhrases } from '../../../core/picture/index.ts';
import type { Entries } from '../../catalogue.ts';

/** Words in the pictures of the form and its pieces. */
export const picture: Entries<PicturePhrases> = {
  'picture.front': 'front',
  'picture.roll': 'rest, rolled up',
  'picture.load': ({ mass }, { mass: say }) => say(mass),
  'picture.push': ({ force }, { fixed }) => `${fixed(force, 0)} N`,
  'picture.tilt': ({ angle }, { angle: say }) => say(angle, 0),
};
