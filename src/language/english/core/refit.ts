import type { RefitPhrases } from '../../../core/refit/index.ts';
import type { Entries } from '../../catalogue.ts';

/** A form made to serve a changed body, and one core for several people. */
export const refit: Entries<RefitPhrases> = {
  'pad.name': ({ number, half, layer }) => `Pad ${number}: ${half}, layer ${layer}`,
  'pad.middle': ({ half }) => `middle of the ${half}`,
  'pad.up': 'up',
  'pad.place': ({ half, low, high, right, left }, { small }) =>
    `It reaches from ${overWaist(low, small)} to ${overWaist(high, small)}; ${across(half, right, left, small)}.`,
  'pad.on-form': ({ wadding }, { small }) =>
    `Of wadding ${small(wadding)} thick. Lay it on the form, its lines on the form's, and catch its edge down.`,
  'pad.on-pad': ({ wadding, number }, { small }) =>
    `Of wadding ${small(wadding)} thick. Lay it on pad ${number}, lines on lines, and catch its edge down.`,
  'refit.wadding-out-of-range': ({ wadding, least, most }, { exactLength }) =>
    `Wadding of ${exactLength(wadding)} cannot be used: give ${exactLength(least)} to ${exactLength(most)}.`,
  'refit.pads': ({ layers, thickness }, { small }) =>
    `pad: ${layers} ${layers === 1 ? 'layer' : 'layers'}, ${small(thickness)} at the thickest`,
  'refit.take-in': ({ letters, each, girth }, { small, length }) =>
    `take in ${letters.length === 1 ? 'seam' : 'seams'} ${letters.join(', ')} by ${small(each)} on each ply, webs beside them first unpicked: ${length(girth)} round then`,
  'refit.stays-full': ({ by }, { small }) =>
    `work filling away; it may stay too full by ${small(by)}, which no seam takes in`,
  'refit.anew': ({ why, measured, limit }, { small }) =>
    `better made anew: ${reasons[why]} ${small(measured)}, at most ${small(limit)} can be done`,
  'refit.nothing': 'serves as it is',
  'refit.above': 'Shoulders',
  'refit.verdict': ({ isAnew }) =>
    isAnew
      ? 'Make a new form: somewhere the body has changed by more than pads and seams can follow.'
      : 'The form can be changed to serve this body.',
  'refit.cover': ({ project }) => `${project}, new cover`,
  'core.too-few': ({ count }) => `A core is made for two people or more; ${count} given.`,
  'core.name': ({ names }) => `Core of ${names.join(', ')}`,
  'core.sticks-out': ({ name, by, height, limit, isRefused }, { small, length }) =>
    `The core sticks out of the body of ${name} by ${small(by)}, ${length(Math.abs(height))} ${height < 0 ? 'below' : 'above'} the waist; ${isRefused ? `${small(limit)} at most can be` : `up to ${small(limit)} would not be noticed`}. Fewer people, or people more alike, make a better core.`,
  'core.verdict': ({ name, isAnew }) =>
    isAnew
      ? `This core does not serve ${name}: make them a form of their own, or a core for the others alone.`
      : `Pads and a cover make the core ${name}.`,
  'core.smaller': ({ tapes }, { inSentence, small }) =>
    `To lie inside all of them the core is smaller than the smallest: ${tapes.map(({ name, under }) => `${inSentence(name)} by ${small(under)}`).join(', ')}. All of them wear pads there. People more alike need less.`,
};

const reasons = {
  'too-thick': 'pads would be',
  'too-much-to-take-in': 'every seam would be taken in by',
  'too-full': 'the form is too full by',
} as const;

type Small = (mm: number) => string;

function overWaist(height: number, small: Small): string {
  return `${small(Math.abs(height))} ${height < 0 ? 'below' : 'above'} the waist`;
}

/** Over the middle, or on one side of it: an end beyond the middle is told as less than nothing. */
function across(half: string, right: number, left: number, small: Small): string {
  if (right >= 0 && left >= 0)
    return `from the middle of the ${half} ${small(right)} to the wearer's right and ${small(left)} to the wearer's left`;
  const [side, near, far] = right < 0 ? ['left', right, left] : ['right', left, right];
  return `to the wearer's ${side} of the middle of the ${half}, from ${small(near)} to ${small(far)} off it`;
}
