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
  'buy.card': ({ thickness }, { exact }) =>
    `corrugated card for the plates, ${exact(thickness)} mm thick once both layers are glued`,
  'buy.card.note': 'flutes (the waves in the card) of the two layers crossing',
  'buy.foam': 'firm foam for the neck block',
  'buy.foam.note': 'cut by the three templates',
  'buy.tube': ({ diameter }, { exact }) =>
    `pole: a tube, outside ${exact(diameter)} mm (measure with calipers)`,
  'buy.tube.note': ({ insideForm }, { fixed }) =>
    `from floor to neck plate; ${fixed(insideForm, 0)} mm of it inside the form`,
  'buy.thread': 'strong polyester thread',
  'buy.thread.note': 'every seam sewn twice',
  'buy.cord': 'waxed cord',
  'buy.cord.note': 'to lace plate covers and close the last opening',
  'buy.fill': 'polyester fibre',
  'buy.fill.note': ({ low, high }, tongue) =>
    `${kilogramsAndPounds(low, high, 'to', tongue)} firm, and a fifth to spare`,
  'buy.arms': 'cloth and interfacing for the arms',
  'buy.arms.note': 'as the shell',
  'buy.arm-fill': 'polyester fibre for the arms',
  'buy.arm-fill.note': ({ low, high }, tongue) =>
    `${kilogramsAndPounds(low, high, 'to', tongue)}, softer above the elbow; beside that of the torso`,
  'buy.magnets': 'disc magnets that locate arms and pin cushions',
  'buy.magnets.note': 'sewn in and counted; keep from children and 15 cm from implants',
  'buy.pegs': 'wooden pegs that carry the arms',
  'buy.pegs.note': 'glued into the arm’s plate',
};
