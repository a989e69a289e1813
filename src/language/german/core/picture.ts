import type { PicturePhrases } from '../../../core/picture/index.ts';
import type { Entries } from '../../catalogue.ts';

/** Wörter in den Bildern der Form und ihrer Teile. */
export const picture: Entries<PicturePhrases> = {
  'picture.front': 'vorn',
  'picture.roll': 'Rest, aufgerollt',
  'picture.rolls': 'beide Seiten, aufgerollt',
  'picture.length': ({ length }, { lengthAlone }) => lengthAlone(length),
  'picture.stretched': 'breiter gezeichnet, als es ist',
  'picture.load': ({ mass }, { mass: say }) => say(mass),
  'picture.push': ({ force }, { fixed }) => `Stoß: ${fixed(force, 0)} N`,
  'picture.tilt': ({ angle }, { angle: say }) => `kippen: ${say(angle, 0)}`,
};
