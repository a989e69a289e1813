import type { ShellNumber, StaticsPhrases } from '../../../core/statics/index.ts';
import type { Entries } from '../../catalogue.ts';

const NUMBERS: Readonly<Record<ShellNumber, string>> = {
  pressure: 'the pressure of the filling, in N/mm²,',
  warp: 'the stiffness of the cloth along the warp, in N/mm,',
  weft: 'the stiffness of the cloth along the weft, in N/mm,',
  shear: 'the shear stiffness of the cloth, in N/mm,',
  poisson: 'the share by which the cloth narrows when pulled',
  pushed: 'the share of stiffness kept where cloth is pushed',
  'strand-stiffness': 'the stiffness of a strand of web or tie, in N/mm,',
  'strip-stiffness': 'the stiffness of a seam, in N/mm,',
  'strand-length': 'the length of a strand of web or tie, in mm,',
  'strip-length': 'the length of a stretch of seam, in mm,',
  tolerance: 'the force that may be left over',
};

/** A filled shell in balance. */
export const statics: Entries<StaticsPhrases> = {
  'statics.number': ({ name, value, least, most, place }, { exact }) =>
    `The filled form cannot be foretold: ${NUMBERS[name]} is ${exact(value)} at place ${place}; it must be from ${exact(least)} to ${exact(most)}.`,
  'statics.flat-rest': ({ triangle }) =>
    `The filled form cannot be foretold: triangle ${triangle} of the cut panels has no area or lies face down.`,
  'statics.not-closed': ({ edges }) =>
    `The filled form cannot be foretold: the shell is open, or sewn the wrong way round, at ${edges} edges.`,
  'statics.no-volume': ({ volume }, { plain }) =>
    `The filled form cannot be foretold: the shell starts with a volume of ${plain(volume / 1e6, 3)} l, flat or inside out.`,
  'statics.idle-link': ({ link }) =>
    `Strand ${link} can never be taut: its ends cannot move apart. Leave it out, or tie it to something else.`,
  'statics.slack-cloth': ({ share, most }, { percent }) =>
    `${percent(share, 0)} of the cloth hangs slack, more than ${percent(most, 0)}: the filling does not press it out, and its shape there is not foretold.`,
  'statics.slack-strands': ({ loose, of }) =>
    `${loose} of ${of} strands of webs and ties hang slack and hold nothing.`,
  'statics.stalled': ({ steps, force }, { exact }) =>
    `The filled form found no balance in ${steps} steps: a force of ${exact(Number(force.toPrecision(2)))} N is left. The last sound shape is kept.`,
  'statics.everted': 'The shell would turn inside out when filled. The last sound shape is kept.',
  'statics.stopped': 'Foretelling the filled form was stopped. The last sound shape is kept.',
};
