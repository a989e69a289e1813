import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries } from '../../catalogue.ts';
import { buying } from './inside-buying.ts';
import { cautions } from './inside-cautions.ts';
import { faultsInside } from './inside-faults.ts';
import { stand } from './inside-stand.ts';
import { testTube } from './inside-test-tube.ts';

/** What holds the form in shape: webs, plates, sleeve, pole and stand. */
export const inside: Entries<InsidePhrases> = {
  ...buying,
  ...cautions,
  ...faultsInside,
  ...stand,
  ...testTube,
  'brace.tie': ({ half }) => `centre ${half} tie`,
  'brace.web': ({ side }) => `${side} web`,
  'brace.throat': ({ side }) => `${side} throat web`,
  'brace.throat-alone': 'throat web',
  'brace.strap': ({ level, place, side }, { inSentence }) =>
    `${inSentence(level)} ${place ? `${place} ` : ''}strap ${side}`,
  'brace.strap-alone': ({ level, place }, { inSentence }) =>
    `${inSentence(level)}${place ? ` ${place}` : ''}`,
  'brace.on-sleeve': ({ letter, brace }, { say }) => `${letter} ${say(brace)}`,
  'brace.centre-line': ({ half }) => `centre ${half}`,
  'brace.web-line': ({ half }) => `web line ${half}`,
  'brace.strap-line': 'strap line',
  'brace.throat-line': 'throat line',
  'plate.base': 'base plate',
  'plate.neck': 'neck plate',
  'plate.armhole': ({ side }) => `armhole plate ${side}`,
  'plate.arm': ({ side }) => `arm plate ${side}`,
  'plate.cushion': ({ side }) => `cushion plate ${side}`,
  'plate.pin-cushion': ({ side }) => `pin cushion ${side}`,
  'plate.wrist': ({ side }) => `wrist ${side}`,
  'plate.layer': ({ plate, layer, face, pole, isShort }, { say }) =>
    `${say(plate)}, ${isShort ? '' : 'layer '}${layer}${face ? ` ${face}` : ''}${pole ? ` – ${pole} out` : ''}`,
  'plate.cover': ({ plate }, { say }) => `${say(plate)} cover`,
  'plate.gathered-cover': ({ plate }, { say }) => `${say(plate)} cover: gather`,
  'plate.lid': ({ side }) => `lid stuffing ${side}`,
  'grain.flutes': 'flutes',
  'grain.up': 'up',
  'sleeve.name': 'pole sleeve',
  'sleeve.tab': ({ number }) => `sleeve tab ${number}`,
  'sleeve.tube-end': ({ above }, { exactLength }) => `pole ends ${exactLength(above)} + one plate above`,
  'neck-block.from-above': 'neck from above',
  'neck-block.from-front': 'neck front',
  'neck-block.from-side': 'neck side',
  'shoulder-support.name': ({ side }) => `shoulder support ${side}`,
  'section.centre front': 'centre front',
  'section.centre back': 'centre back',
  'section.right side': 'right side',
  'section.left side': 'left side',
  'section.right front': 'right front',
  'section.left front': 'left front',
  'section.right back': 'right back',
  'section.left back': 'left back',
};
