import { type Phrase, plain } from '../base/index.ts';
export interface Caution {
  readonly id: string;
  readonly title: Phrase;
  readonly text: Phrase;
}

/** Shown in the app and printed: where the work can hurt. Common workshop practice. */
export const CAUTIONS: readonly Caution[] = [
  {
    id: 'blades',
    title: plain('Blades'),
    text: plain(
      'Close rotary and craft knives after every cut, cut away from your body, wear a cut-resistant glove on the holding hand, and count needles and pins before filling. A needle may break in many layers: protect your eyes.',
    ),
  },
  {
    id: 'iron',
    title: plain('Hot iron'),
    text: plain(
      'Fusing needs 130 to 160 °C: burns skin and melts polyester fibre. Let fused cloth cool flat, and never iron over magnets or hot-melt glue.',
    ),
  },
  {
    id: 'glue',
    title: plain('Glue'),
    text: plain(
      'Solvent and spray glues are flammable and harm when breathed: open windows, no flame, a mask for organic vapours. Wood glue, fusible web and stitches do without.',
    ),
  },
  {
    id: 'dust',
    title: plain('Fibre and dust'),
    text: plain(
      'Tear fibre and cut foam outdoors or with a mask, and vacuum afterwards. Never laser-cut PVC or vinyl: it gives off chlorine.',
    ),
  },
  {
    id: 'magnets',
    title: plain('Magnets'),
    text: plain(
      'Two swallowed magnets can pierce the gut and kill: sew them in, count them, keep them from children and animals. Keep them 15 cm from pacemakers and other implants, and do not handle them if you have one. They only locate an arm; a peg or strap carries it.',
    ),
  },
  {
    id: 'tipping',
    title: plain('Tipping'),
    text: plain(
      'Test the loaded form on a slope of 10° with somebody ready to catch it (our own criterion, no standard). Lock castors, and keep heavy trains from pulling to one side.',
    ),
  },
  {
    id: 'lifting',
    title: plain('Lifting'),
    text: plain(
      'A filled form with garment and ballast can weigh over 20 kg: lift it by the pole and the foot, with two people.',
    ),
  },
  {
    id: 'fire',
    title: plain('Fire'),
    text: plain(
      'Polyester fibre melts, drips and burns: keep the form from lamps, heaters and candles. For display, follow the local code and ask the venue; this program certifies nothing.',
    ),
  },
  {
    id: 'rigging',
    title: plain('Hanging and stages'),
    text: plain('Anything hung over people, or part of a stage structure, needs a licensed person.'),
  },
];

/** The cautions that work with these pieces calls for, by their material and id, in the order of `CAUTIONS`. */
export function cautionsFor(
  pieces: readonly { readonly id: string; readonly material: string }[],
): Caution[] {
  const has = (...materials: string[]): boolean =>
    pieces.some(({ material }) => materials.includes(material));
  const stands = pieces.some(({ id }) => id.startsWith('base-plate'));
  const isWanted: Readonly<Record<string, boolean>> = {
    blades: pieces.length > 0,
    iron: has('shell', 'webs', 'covers', 'arms', 'test-tube'),
    glue: has('card', 'foam'),
    // Everything sewn is filled in the end.
    dust: has('shell', 'arms', 'foam', 'card', 'test-tube'),
    magnets: pieces.some(({ id }) => id.startsWith('arm-plate') || id.startsWith('cushion-plate')),
    tipping: stands,
    lifting: stands,
    fire: has('shell', 'arms', 'foam', 'test-tube'),
    rigging: stands,
  };
  return CAUTIONS.filter(({ id }) => isWanted[id]);
}
