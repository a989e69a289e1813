import { expect, it } from 'vitest';
import { MEASURES } from '../../src/core/body/index.ts';
import { TAPE_RULES } from '../../src/core/body/tapes.ts';

/** Taken by `fit-arms.ts`, and, as a pair, by the rise of the nape over the waist in `fit-body.ts`. */
const isTakenElsewhere = ({ id, group }: (typeof MEASURES)[number]) =>
  group === 'arms' || /^(nape|waist)Height$/.test(id);

it('there is a tape for every measure asked for: one without would be typed and passed over', () => {
  const passedOver = MEASURES.filter((measure) => !(measure.id in TAPE_RULES) && !isTakenElsewhere(measure));
  expect(passedOver.map(({ id }) => id)).toEqual([]);
});
