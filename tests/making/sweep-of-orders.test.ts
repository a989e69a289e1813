import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Form } from '../../src/core/form/index.ts';
import { planMaking } from '../../src/core/making/index.ts';
import { LAYOUTS } from '../../src/core/seams/index.ts';
import { isCampaign } from '../is-campaign.ts';
import { formToMake, without } from './form-to-make.ts';
import { checkOrder } from './judge-order.ts';

const { measures } = JSON.parse(readFileSync('shared/demos/average.loftseam.json', 'utf8')).body;
const ARM = ['upperArmGirth', 'elbowGirth', 'wristGirth', 'shoulderToElbow', 'elbowToWrist'];
/** The asymmetric demo with the arms of another. */
const arms = Object.fromEntries(ARM.map((id) => [id, measures[id]]));

/** A body alike on both sides, and one that is not; each takes other layouts where not all are taken. */
const BODIES = [
  { demo: 'average', third: 1, measures: {} },
  { demo: 'uneven-shoulders', third: 0, measures: arms },
] as const;
const layouts = LAYOUTS.map(({ id }) => id);
const cases = BODIES.flatMap((body) =>
  layouts.flatMap((layout, l) =>
    isCampaign || l % 3 === body.third ? [[body.demo, layout, body] as const] : [],
  ),
);

/** The form with arms and pin cushions, with arms alone, and without either. */
const ENDS: Record<string, (form: Form) => Form> = {
  'arms and cushions': (form) => form,
  'arms alone': (form) => without(form, (id) => id.startsWith('cushion')),
  'no arms': (form) => without(form, (id) => /^(arm|wrist|cushion)-/.test(id)),
};

describe.each(cases)('orders of work of %s on %s', (demo, layout, { measures: own }) => {
  // Of parts and covers each layout takes half, the next one the other, where not all are taken.
  for (const recut of [true, false])
    for (const plateCovers of ['with', 'without'].filter(
      (kind) => isCampaign || (kind === 'with') === (recut === (layouts.indexOf(layout) % 2 === 0)),
    ))
      for (const [name, end] of Object.entries(ENDS))
        it(`can be followed: ${recut ? 'fewest' : 'all'} parts, plates ${plateCovers} covers, ${name}`, () => {
          const whole = formToMake(demo, layout, { recut, plateCovers }, own);
          const form = end(whole);
          const has = (start: string): boolean =>
            form.inside?.pieces.some(({ id }) => id.startsWith(start)) ?? false;
          expect(has('arm-front'), 'arms').toBe(name !== 'no arms');
          expect(has('cushion-'), 'cushions').toBe(name === 'arms and cushions');
          const { making, issues } = planMaking(form);
          expect(issues).toEqual([]);
          checkOrder({ ...form, making });
        });
});

describe('what cannot be built', () => {
  it('is told with the step that fails, by the title of one there is', () => {
    const form = formToMake('average');
    const bare = without(form, (id) => /-plate-|^lid-|-cover$|^cushion/.test(id));
    // The centre back in the neck band alone: below it nothing is open behind, and the webs' back edges lie far from any edge.
    const lines = LAYOUTS.find(({ id }) => id === 'upright12')?.lines.map((line) =>
      line.id === 'centreBack'
        ? { ...line, through: [{ landmark: 'neckBack' }, { landmark: 'neckTopBack' }] }
        : line,
    );
    const shut = formToMake('average', lines);
    for (const { making, issues } of [planMaking(bare), planMaking(shut)]) {
      expect(issues.length).toBeGreaterThan(0);
      const titles = making.steps.map(({ title }) => title);
      for (const { code, message } of issues) {
        expect(code).toBe('order-of-work');
        expect(titles).toContainEqual((message.values as { step: unknown }).step);
      }
    }
  });
});
