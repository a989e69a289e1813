import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries } from '../../catalogue.ts';
import { buying } from './inside-buying.ts';
import { cautions } from './inside-cautions.ts';
import { faultsInside } from './inside-faults.ts';
import { stand } from './inside-stand.ts';
import { testTube } from './inside-test-tube.ts';
import { HALVES, SIDES } from './sides.ts';

const FACES = { outside: 'außen', inside: 'innen' } as const;

/** What holds the form in shape: webs, plates, sleeve, pole and stand. */
export const inside: Entries<InsidePhrases> = {
  ...buying,
  ...cautions,
  ...faultsInside,
  ...stand,
  ...testTube,
  'brace.tie': ({ half }) => (half === 'front' ? 'Band vordere Mitte' : 'Band hintere Mitte'),
  'brace.web': ({ side }) => `Steg ${SIDES[side]}`,
  'brace.throat': ({ side }) => `Halssteg ${SIDES[side]}`,
  'brace.throat-alone': 'Halssteg',
  'brace.strap': ({ level, place, side }, { inSentence }) =>
    `Gurt ${inSentence(level)} ${place ? `${HALVES[place]} ` : ''}${SIDES[side]}`,
  'brace.strap-alone': ({ level, place }, { inSentence }) =>
    `${inSentence(level)}${place ? ` ${HALVES[place]}` : ''}`,
  'brace.on-sleeve': ({ letter, brace }, { say }) => `${letter} ${say(brace)}`,
  'brace.centre-line': ({ half }) => (half === 'front' ? 'vordere Mitte' : 'hintere Mitte'),
  'brace.web-line': ({ half }) => `Steglinie ${HALVES[half]}`,
  'brace.strap-line': 'Gurtlinie',
  'brace.throat-line': 'Halssteglinie',
  'plate.base': 'Bodenplatte',
  'plate.neck': 'Halsplatte',
  'plate.armhole': ({ side }) => `Armlochplatte ${SIDES[side]}`,
  'plate.arm': ({ side }) => `Armplatte ${SIDES[side]}`,
  'plate.cushion': ({ side }) => `Kissenplatte ${SIDES[side]}`,
  'plate.pin-cushion': ({ side }) => `Nadelkissen ${SIDES[side]}`,
  'plate.wrist': ({ side }) => `Handgelenk ${SIDES[side]}`,
  'plate.layer': ({ plate, layer, face, pole, isShort }, { say }) =>
    `${say(plate)}, ${isShort ? '' : 'Lage '}${layer}${face ? ` ${FACES[face]}` : ''}${pole ? ` – ${pole} außen` : ''}`,
  'plate.cover': ({ plate }, { say }) => `Bezug für ${say(plate)}`,
  'plate.gathered-cover': ({ plate }, { say }) => `Bezug für ${say(plate)}: einkräuseln`,
  'plate.lid': ({ side }) => `Deckel der Füllöffnung ${SIDES[side]}`,
  'grain.flutes': 'Wellen',
  'grain.up': 'oben',
  'sleeve.name': 'Rohrtunnel',
  'sleeve.tab': ({ number }) => `Tunnellasche ${number}`,
  'sleeve.tube-end': ({ above }, { exactLength }) => `Rohr endet ${exactLength(above)} + eine Platte höher`,
  'neck-block.from-above': 'Hals von oben',
  'neck-block.from-front': 'Hals von vorn',
  'neck-block.from-side': 'Hals von der Seite',
  'shoulder-support.name': ({ side }) => `Schulterstütze ${SIDES[side]}`,
  'section.centre front': 'in der vorderen Mitte',
  'section.centre back': 'in der hinteren Mitte',
  'section.right side': 'an der rechten Seite',
  'section.left side': 'an der linken Seite',
  'section.right front': 'vorn rechts',
  'section.left front': 'vorn links',
  'section.right back': 'hinten rechts',
  'section.left back': 'hinten links',
};
