import type { GaugePhrases } from '../../../core/gauge/index.ts';
import type { Entries } from '../../catalogue.ts';

/** Gauges of card: what stands on them, how they are held, what is wrong with what was asked for. */
export const gauge: Entries<GaugePhrases> = {
  'gauge.ring': ({ level }, { inSentence }) => `Half ring: ${inSentence(level)}`,
  'gauge.profile': ({ side }) => `Side view: ${side}`,
  'gauge.tip': ({ side, from }, { small }) =>
    from === 0
      ? `The ${side} tip ends at the middle of the ${side}.`
      : `The ${side} tip ends ${small(from)} before the middle of the ${side}, where the form is deepest, so that it can be put on.`,
  'gauge.hold-ring': ({ level, height }, { inSentence, length }) =>
    `Hold it level at the line of the ${inSentence(level)}, ${length(height)} over the base edge all round.`,
  'gauge.hold-profile': 'Hold it upright in the middle, its foot level with the base edge.',
  'gauge.clearance': ({ clearance }, { small }) =>
    clearance === 0
      ? 'Right when it lies on all along.'
      : `Right when a gap of ${small(clearance)} shows all along.`,
  'gauge.height': ({ level, height }, { say, lengthAlone }) => `${say(level)}, ${lengthAlone(height)}`,
  'gauge.side-of-form': 'side',
  'gauge.front-to-back': 'front to back',
  'gauge.upright': 'upright',
  'gauge.unknown-level': ({ name, known }) =>
    `There is no gauge called “${name}”. There are: ${known.join(', ')}.`,
  'gauge.out-of-range': ({ option, value, least, most }, { exactLength }) =>
    option === 'clearance'
      ? `Gauges cannot have a clearance of ${exactLength(value)}: give ${exactLength(least)} to ${exactLength(most)}.`
      : `Gauges cannot have a strip of ${exactLength(value)}: give ${exactLength(least)} to ${exactLength(most)}.`,
  'gauge.level-open': ({ level }, { say }) =>
    `At the level “${say(level)}” the form has no outline that closes round its middle, so there is no half ring for it.`,
  'gauge.how.hold':
    'Hold a half ring level at its line from the side, a lamp behind it, and bring the tips to front and back as far as they go by themselves. Never press it on. Then the other half.',
  'gauge.how.wide': ({ gap, girth }, { small }) =>
    `Where light shows wider than the clearance, the form is flat: work filling in behind that place. ${small(gap)} more all round is ${small(girth)} of girth: this zone needs more filling.`,
  'gauge.how.tight':
    'Where it touches before the tips are in their places, the form is too full: work filling away from there. If it touches all round, take some out.',
  'gauge.how.uneven':
    'Touches at front and back and gapes at the sides, or the other way round, while the tape reads right: that is shape, not amount. Move filling along, or change the ties as Checking says.',
  'gauge.how.side':
    'The side views stand upright in the middle, foot level with the base edge. The gap tells of bust, belly, seat and back what a tape cannot.',
};
