import type { AdvicePhrases, LineWay, PointWay } from '../../../core/advice/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

const POINT_WAYS: Readonly<Record<PointWay, string>> = {
  up: 'up',
  down: 'down',
  'on-round-armhole': 'on round the armhole',
  'back-round-armhole': 'back round the armhole',
  'to-neck': 'towards the neck',
  'from-neck': 'away from the neck',
  'to-front': 'towards the front',
  'to-back': 'towards the back',
};
const LINE_WAYS: Readonly<Record<LineWay, string>> = {
  'to-neck': 'towards the neck',
  'from-neck': 'away from the neck',
  'to-bust-point': 'towards the bust point',
  'from-bust-point': 'away from the bust point',
  'to-blade': 'towards the shoulder blade',
  'from-blade': 'away from the shoulder blade',
  'to-front': 'towards the front',
  'to-back': 'towards the back',
};

/** Seams moved, added and judged; the map of distances between two bodies. */
export const advice: Entries<AdvicePhrases> = {
  'advice.move-points': ({ line, moves }, { say, small }) => {
    const parts = moves.map(({ point, mm, way }) => {
      const place = point === undefined ? 'its height' : `point ${point}`;
      return `${place} by ${small(mm)} ${POINT_WAYS[way]}`;
    });
    return `Move ${say(line)}: ${parts.join(', ')}.`;
  },
  'advice.add-line': ({ line }, { say }) => `Add a seam, ${say(line)}.`,
  'advice.step-move': ({ lines, mm, way }, { say, small }) =>
    `Move ${lines.map(say).join(' and ')} by ${small(mm)} ${way ? LINE_WAYS[way] : ''}`,
  'advice.step-add': ({ line }, { say }) => `Add a seam, ${say(line)}`,
  'advice.gain': ({ step, reach, near, form }, tongue) =>
    `${tongue.say(step)}: strain there falls from ${percent(near.before, tongue)} to ${percent(near.after, tongue)} (95 % of the cloth within ${tongue.small(reach)} is below that), of the whole form from ${percent(form.before, tongue)} to ${percent(form.after, tongue)}.`,
  'advice.trying-lines': 'Trying where the seams could run',
  'advice.trying-one-more': 'Trying one more seam',
  'advice.layout-unsound': ({ layout }, { say }) =>
    `The layout “${say(layout)}” cannot be cut and unrolled as it is; mend it first.`,
  'advice.no-line-helps': 'No further seam was found that lowers the strain.',
  'advice.nothing-helps': ({ most }, { exactLength }) =>
    `Neither moving the nearest seam by up to ${exactLength(most)} nor one seam more was found to lower the strain there.`,
  'advice.stopped': 'Looking for better seams was stopped.',
  'advice.region-overlaps-flat': 'Laid flat the region would overlap itself; make it smaller, or divide it.',
  'distance-map.title': 'How far the second body lies from the first',
  'distance-map.front': 'Front',
  'distance-map.side': 'Side',
  'distance-map.back': 'Back',
  'distance-map.inside': ({ end }, { length }) => `inside by ${length(end)} or more`,
  'distance-map.outside': ({ end }, { length }) => `outside by ${length(end)} or more`,
};

function percent(fraction: number, { fixed }: Tongue): string {
  return `${fixed(100 * fraction, 2)} %`;
}
