import { describe, expect, test } from 'vitest';
import { orderOfWork, type ProvenOrder, provenStep } from '../../src/core/making/index.ts';
import { checkOrder, HEAD_GIRTH, ORDER_RULES, TOOLS } from '../../src/core/sewing/index.ts';
import { formToMake, without } from './form-to-make.ts';
import { SPOILT } from './spoilt-orders.ts';

const form = formToMake('average');
const order: ProvenOrder = orderOfWork(form);
const { input } = order.work;
const good = order.planned.map(provenStep);

describe('an order that is proven', () => {
  test('has no fault', () => {
    expect(order.faults).toEqual([]);
  });

  test('is told wrong, and where, when it is: every rule by one of today’s faults at least', () => {
    expect([...new Set(SPOILT.map(({ rule }) => rule))].sort()).toEqual([...ORDER_RULES].sort());
  });

  test.each(SPOILT)('$rule: $what', ({ rule, at, steps = (same) => same, given = (same) => same }) => {
    const faults = checkOrder(given(input), steps(good));
    const found = faults.filter((fault) => fault.rule === rule);
    expect(found.length).toBeGreaterThan(0);
    if (at !== undefined) expect(found.map(({ step }) => step)).toContain(at);
  });
});

describe('what a form may lack', () => {
  const isOfArms = (id: string) => /^(arm-|cushion-|wrist-)/.test(id);
  const arms = [
    { of: 'arms', form },
    { of: 'no arms', form: without(form, isOfArms) },
  ];
  const parts = [
    { what: 'everything', isLeftOut: () => false, kinds: [] as string[] },
    { what: 'no cushions', isLeftOut: (id: string) => id.startsWith('cushion-'), kinds: [] },
    {
      what: 'no covers',
      isLeftOut: (id: string) => id.endsWith('-cover') && !id.startsWith('cushion'),
      kinds: [],
    },
    {
      what: 'no supports and no neck block',
      isLeftOut: (id: string) => /^(shoulder-support|neck-block)/.test(id),
      kinds: [],
    },
    {
      what: 'no straps, throat webs or tabs',
      isLeftOut: (id: string) => id.startsWith('tab-'),
      kinds: ['strap', 'throat'],
    },
    { what: 'no webs', isLeftOut: () => false, kinds: ['web', 'strap'] },
  ];

  test.each(arms.flatMap((arm) => parts.map((part) => ({ ...arm, ...part }))))(
    'is proven with $of, $what',
    ({ form: whole, isLeftOut, kinds }) => {
      const { faults, planned } = orderOfWork(without(whole, isLeftOut, kinds));
      expect(faults).toEqual([]);
      const has = (id: string) => planned.some(({ step }) => step.id === id);
      expect(has('sew-arms')).toBe(has('arms'));
    },
  );

  test('without plates it cannot be filled and stood: the step that fails is named', () => {
    const bare = without(form, (id) => /-plate-|^lid-|-cover$|^cushion/.test(id));
    const { faults } = orderOfWork(bare);
    expect(faults.map(({ step }) => step)).toContain('rest');
  });

  test('thick cloth is not packed: the last seam is laddered, and the figures say why', () => {
    const thick = { ...form.project, inside: { ...form.project.inside, clothThickness: 2.5 } };
    const { faults, planned } = orderOfWork({ ...form, project: thick });
    expect(faults).toEqual([]);
    const closing = planned.find(({ step }) => step.id === 'turn-out')!;
    expect(closing.ops.filter((op) => op.does === 'join').map(({ how }) => how)).toEqual([
      'ladder',
      'ladder',
    ]);
    const why = closing.step.text.find(({ id }) => id === 'step.turn-out.why-ladder')!;
    // 537 mm and less round, and the roll grows with the root of the thickness: under 2.
    expect(why.values.ratio).toBeLessThan(2);
    expect(why.values.ratio).toBeGreaterThan(1);
  });
});

describe('the limits of hands and heads', () => {
  /*
   * ANSUR II, 2012 (NATICK/TR-15/007), from memory, mm: head circumference 561 ± 19 of women, 574 ± 16 of men;
   * hand circumference 187 ± 9 of women, 212 ± 10 of men (means and standard deviations, rounded).
   */
  const WOMEN = { head: [561, 19], hand: [187, 9] } as const;
  const MEN = { head: [574, 16], hand: [212, 10] } as const;
  /** Percentiles of a normal distribution, in standard deviations over the mean: 1.282 for 90, 1.645 for 95. */
  const high = ([mean, deviation]: readonly [number, number]) => mean + 1.645 * deviation;

  test('the opening for a head passes nine in ten women, and the middle of men with ease', () => {
    expect(HEAD_GIRTH).toBeGreaterThan(MEN.head[0] + 10);
    expect(HEAD_GIRTH).toBeGreaterThan(WOMEN.head[0] + 1.282 * WOMEN.head[1]);
  });

  test('the gate of fingers and hand lets all but the largest hands through', () => {
    expect(TOOLS.fingers.girth).toBeGreaterThan(high(MEN.hand));
    expect(TOOLS.hand.girth).toBeGreaterThan(1.2 * high(MEN.hand));
    // What makes the old trial shell impossible: no neck passes either's smallest head (5th percentile).
    expect(input.gates.neck).toBeLessThan(WOMEN.head[0] - 1.645 * WOMEN.head[1]);
  });
});
