import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries } from '../../catalogue.ts';
import { buying } from './inside-buying.ts';
import { cautions } from './inside-cautions.ts';
import { faultsInside } from './inside-faults.ts';
import { stand } from './inside-stand.ts';
import { testTube } from './inside-test-tube.ts';
import { HALVES, SIDES } from './sides.ts';

const FACES = { outside: 'dehors', inside: 'dedans' } as const;

/** What holds the form in shape: webs, plates, sleeve, pole and stand. */
export const inside: Entries<InsidePhrases> = {
  ...buying,
  ...cautions,
  ...faultsInside,
  ...stand,
  ...testTube,
  'brace.tie': ({ half }) => `lien milieu ${HALVES[half]}`,
  'brace.web': ({ side }) => `cloison ${SIDES[side].f}`,
  'brace.throat': ({ side }) => `cloison de gorge ${SIDES[side].f}`,
  'brace.throat-alone': 'cloison de gorge',
  'brace.strap': ({ level, place, side }, { inSentence }) =>
    `sangle ${inSentence(level)} ${place ? `${HALVES[place]} ` : ''}${SIDES[side].f}`,
  'brace.strap-alone': ({ level, place }, { inSentence }) =>
    `${inSentence(level)}${place ? ` ${HALVES[place]}` : ''}`,
  'brace.on-sleeve': ({ letter, brace }, { say }) => `${letter} ${say(brace)}`,
  'brace.centre-line': ({ half }) => `milieu ${HALVES[half]}`,
  'brace.web-line': ({ half }) => `ligne de cloison ${HALVES[half]}`,
  'brace.strap-line': 'ligne de sangle',
  'brace.throat-line': 'ligne de gorge',
  'plate.base': 'plaque de base',
  'plate.neck': 'plaque d’encolure',
  'plate.armhole': ({ side }) => `plaque d’emmanchure ${SIDES[side].f}`,
  'plate.arm': ({ side }) => `plaque de bras ${SIDES[side].f}`,
  'plate.cushion': ({ side }) => `plaque de pelote ${SIDES[side].f}`,
  'plate.pin-cushion': ({ side }) => `pelote à épingles ${SIDES[side].f}`,
  'plate.wrist': ({ side }) => `poignet ${SIDES[side].m}`,
  'plate.layer': ({ plate, layer, face, pole, isShort }, { say }) =>
    `${say(plate)}, ${isShort ? '' : 'couche '}${layer}${face ? ` ${FACES[face]}` : ''}${pole ? ` – ${pole} dehors` : ''}`,
  'plate.cover': ({ plate }, { say }) => `housse de ${say(plate)}`,
  'plate.gathered-cover': ({ plate }, { say }) => `housse de ${say(plate)}\u00a0: froncer`,
  'plate.lid': ({ side }) => `couvercle du trou ${SIDES[side].m}`,
  'grain.flutes': 'cannelures',
  'grain.up': 'haut',
  'sleeve.name': 'fourreau du tube',
  'sleeve.tab': ({ number }) => `patte de fourreau ${number}`,
  'sleeve.tube-end': ({ above }, { exactLength }) =>
    `le tube finit ${exactLength(above)} + une plaque plus haut`,
  'neck-block.from-above': 'cou vu du dessus',
  'neck-block.from-front': 'cou vu de devant',
  'neck-block.from-side': 'cou vu de côté',
  'shoulder-support.name': ({ side }) => `support d’épaule ${SIDES[side].m}`,
  'section.centre front': 'au milieu devant',
  'section.centre back': 'au milieu dos',
  'section.right side': 'sur le côté droit',
  'section.left side': 'sur le côté gauche',
  'section.right front': 'devant à droite',
  'section.left front': 'devant à gauche',
  'section.right back': 'dans le dos à droite',
  'section.left back': 'dans le dos à gauche',
};
