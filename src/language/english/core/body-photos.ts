import type { PhotoPhrases } from '../../../core/body/index.ts';
import type { Entries } from '../../catalogue.ts';

const PHOTOS = { front: 'picture from the front', side: 'picture from the side' };
const PLACES = {
  right: 'the edge on your right',
  left: 'the edge on your left',
  rightShoulder: 'the right shoulder’s line',
  leftShoulder: 'the left shoulder’s line',
  front: 'the edge in front',
  back: 'the edge behind',
  neckBack: 'the nape',
  neckFront: 'the pit of the neck',
  neckSideRight: 'the right side of the neck',
  neckSideLeft: 'the left side of the neck',
  shoulderPointRight: 'the right shoulder point',
  shoulderPointLeft: 'the left shoulder point',
  bustPointRight: 'the right bust point',
  bustPointLeft: 'the left bust point',
  bustPoint: 'the bust point',
  waist: 'the elastic at the waist',
};

/** What two pictures of the person tell. */
export const bodyPhotos: Entries<PhotoPhrases> = {
  'body.photo-too-near': ({ photo, least }, { length }) =>
    `The ${PHOTOS[photo]} needs the distance of the lens, at least ${length(least)}. From nearer it shows a body bent.`,
  'body.photo-unreadable': ({ photo }) =>
    `Something drawn over the ${PHOTOS[photo]}, or the height of its lens, is not a number. Draw it again.`,
  'body.photo-few-points': ({ photo, count, least }) =>
    `An edge in the ${PHOTOS[photo]} has only ${count} points; fewer than ${least} say little of its shape. Draw some more.`,
  'body.photo-box-differs': ({ measure, photo, gap, size }, { say, difference }) =>
    `${say(measure)}: the ${PHOTOS[photo]} shows ${difference(gap)} ${size === 'large' ? 'more' : 'less'} than typed. The typed value counts. Measure it again, and look whether clothes or an arm were drawn along.`,
  'body.photo-point-off': ({ photo, of, height, gap }, { length, difference }) =>
    `In the ${PHOTOS[photo]}, ${PLACES[of]} was drawn ${difference(gap)} off the body that your measures allow, ${length(height)} over the floor. Look whether clothes or an arm were drawn along; if not, measure again near there.`,
};
