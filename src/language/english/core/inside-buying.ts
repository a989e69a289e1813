import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries } from '../../catalogue.ts';
import { kilogramsAndPounds } from '../../kilograms-and-pounds.ts';

type Buying = {
  readonly [Id in keyof InsidePhrases as Id extends `buy.${string}` ? Id : never]: InsidePhrases[Id];
};

/** The list to buy by. */
export const buying: Entries<Buying> = {
  'buy.shell': 'shell cloth',
  'buy.shell.note': 'firm woven cotton; wash and press before cutting',
  'buy.interfacing': 'woven fusible interfacing',
  'buy.interfacing.note': 'fuse before cutting out: fused cloth shrinks',
  'buy.webs': 'cloth for webs, ties and sleeve',
  'buy.webs.note': 'the same firm cloth, grain upright',
  'buy.covers': 'cloth for the covers of the plates',
  'buy.card': ({ thickness }, { exactLength }) =>
    `corrugated card for the plates, ${exactLength(thickness)} thick once both layers are glued`,
  'buy.card.note': 'flutes (the waves in the card) of the two layers crossing',
  'buy.foam': 'firm foam for the neck block',
  'buy.foam.note': ({ width, depth, height }, { small }) =>
    `a block of at least ${small(width)} × ${small(depth)} × ${small(height)}; cut by the three templates`,
  'buy.tube': ({ diameter }, { exactLength }) =>
    `pole: a tube, outside ${exactLength(diameter)} (measure with calipers)`,
  'buy.tube.note': ({ insideForm, isHeightAssumed }, { small }) =>
    `from floor to neck plate; ${small(insideForm)} of it inside the form${isHeightAssumed ? '; the height of the waist is assumed, nobody measured it: measure before you saw' : ''}`,
  'buy.thread': 'strong polyester thread',
  'buy.thread.note': 'every seam sewn twice',
  'buy.cord': 'waxed cord',
  'buy.cord.note': 'to lace plates and close the last opening',
  'buy.binding': 'strong cotton tape',
  'buy.binding.note': ({ width }, { length }) => `${length(width)} wide, round the rims of the plates`,
  'buy.fill': 'polyester fibre',
  'buy.fill.note': ({ low, high, assumed }, tongue) =>
    `${kilogramsAndPounds(low, high, 'to', tongue)} firm, and a fifth to spare; ${assumed ? `assumed at ${assumed.low} to ${assumed.high} kg a cubic metre (no source): weigh what the test tube takes` : 'by the weight of what the test tube took'}; practice reports ${kilogramsAndPounds(2.5, 5, 'to', tongue)} a torso (no source)`,
  'buy.arms': 'cloth and interfacing for the arms',
  'buy.arms.note': 'as the shell',
  'buy.arm-fill': 'polyester fibre for the arms',
  'buy.arm-fill.note': ({ low, high }, tongue) =>
    `${kilogramsAndPounds(low, high, 'to', tongue)}, softer above the elbow; beside that of the torso`,
  'buy.magnets': 'disc magnets that locate arms and pin cushions',
  'buy.magnets.note': ({ diameter }, { exactLength }) =>
    `${exactLength(diameter)} across, as the plates are drawn; sewn in and counted; keep from children and 15 cm from implants`,
  'buy.pegs': 'wooden pegs that carry the arms',
  'buy.pegs.note': ({ diameter }, { exactLength }) =>
    `${exactLength(diameter)} thick; glued into the arm’s plate`,
  'buy.collar': 'clamping collars; a pin through the pole stops turning',
  'buy.collar.note': ({ diameter }, { exactLength }) =>
    `for a tube of ${exactLength(diameter)}: the upper one carries the neck plate, the lower one the base plate and with it the form`,
  'buy.disc': 'disc of plywood between base plate and lower collar',
  'buy.disc.note': ({ diameter }, { exactLength }) =>
    `${exactLength(80)} across at least, ${exactLength(6)} thick, with a hole for a tube of ${exactLength(diameter)}: it spreads the load on the board`,
  'buy.packing': 'packing between tube and the pole inside it',
  'buy.packing.note': ({ thickness }, { small, exactLength }) =>
    `${small(thickness)} thick all round, ${exactLength(60)} high, at either end of where they lie in each other: cork, tape or a turned sleeve, so that nothing rattles`,
  'buy.foot': 'foot with its ballast',
  'buy.foot.note': ({ legs, radius }, { small }) =>
    `${legs} legs that reach ${small(radius)} from the pole, as heavy as this in all; see what tips it. Castors with guards or caps, so that they catch no hem`,
  'buy.glue': 'wood glue for the layers of card',
  'buy.glue.note': 'about 200 g a square metre; dry flat under weights',
  'buy.needles': 'needles: a packet',
  'buy.needles.note':
    'for the machine size 90 to 100 for firm cloth; by hand a curved one and one of 12 cm or longer',
  'buy.tape': 'sticky tape for the paper, a roll',
  'buy.tape.note': 'clear or masking tape; not over lines that are cut by machine',
  'buy.test-tube': 'cloth and interfacing for the test tube',
  'buy.test-tube.note': ({ low, high }, tongue) =>
    `of the same cloth as the shell; takes ${kilogramsAndPounds(low, high, 'to', tongue)} of the filling, which is used again`,
};
