import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries } from '../../catalogue.ts';

type Cautions = {
  readonly [Id in keyof InsidePhrases as Id extends `caution.${string}` ? Id : never]: InsidePhrases[Id];
};

/** Where the work can hurt. */
export const cautions: Entries<Cautions> = {
  'caution.blades.title': 'Blades',
  'caution.blades.text':
    'Close rotary and craft knives after every cut, cut away from your body, wear a cut-resistant glove on the holding hand, and count needles and pins before filling. A needle may break in many layers: protect your eyes.',
  'caution.iron.title': 'Hot iron',
  'caution.iron.text':
    'Fusing needs 130 to 160 °C: burns skin, and flattens and glazes polyester, which melts at about 255 °C. Let fused cloth cool flat, and never iron over magnets or hot-melt glue.',
  'caution.glue.title': 'Glue',
  'caution.glue.text':
    'Solvent and spray glues are flammable and harm when breathed: open windows, no flame, a mask for organic vapours. Wood glue, fusible web and stitches do without.',
  'caution.dust.title': 'Fibre and dust',
  'caution.dust.text':
    'Tear fibre and cut foam outdoors or with a mask, and vacuum afterwards. Never laser-cut PVC or vinyl: it gives off hydrogen chloride, which burns lungs and eyes.',
  'caution.magnets.title': 'Magnets',
  'caution.magnets.text':
    'Two swallowed magnets can pierce the gut and kill: sew them in, count them, keep them from children and animals. Keep them 15 cm from pacemakers and other implants, and do not handle them if you have one. They only locate an arm; a peg or strap carries it.',
  'caution.tipping.title': 'Tipping',
  'caution.tipping.text':
    'Test the loaded form on a slope of 10° with somebody ready to catch it (our own criterion, no standard). Lock castors, and keep heavy trains from pulling to one side.',
  'caution.lifting.title': 'Lifting',
  'caution.lifting.text':
    'A filled form with garment and ballast can weigh over 20 kg: lift it by the pole and the foot, with two people.',
  'caution.fire.title': 'Fire',
  'caution.fire.text':
    'Polyester fibre melts, drips and burns: keep the form from lamps, heaters and candles. For display, follow the local code and ask the venue; this program certifies nothing.',
  'caution.rigging.title': 'Hanging and stages',
  'caution.rigging.text': 'Anything hung over people, or part of a stage structure, needs a licensed person.',
};
