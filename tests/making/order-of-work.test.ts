import { describe, expect, test } from 'vitest';
import { LAYOUTS } from '../../src/core/seams/index.ts';
import { DEMO_IDS } from '../body/read-demo.ts';
import { formToMake } from './form-to-make.ts';
import { checkOrder, orderOfWork, shellSeams } from './judge-order.ts';

describe('order of work', () => {
  test.each(LAYOUTS.map(({ id }) => id))('layout %s can be sewn in it', (layout) => {
    checkOrder(formToMake('uneven-shoulders', layout));
  });

  test.each(DEMO_IDS)('demo %s can be sewn in it', (demo) => {
    checkOrder(formToMake(demo));
  });

  test('webs on the seams of the sides come after these, and none lies on an open seam', () => {
    const form = formToMake('average', 'upright6', { webPlaces: 'seams' });
    checkOrder(form);
    const inner = orderOfWork(form).filter(({ id }) => id.startsWith('sew-inner'));
    const onPrincessBack = inner
      .flatMap(({ seams }) => seams)
      .filter(({ id }) => id.includes('princessBack'));
    expect(onPrincessBack.length).toBe(2);
    expect(onPrincessBack.some(({ note }) => note !== undefined)).toBe(false);
  });

  test('numbers are those of this form', () => {
    const form = formToMake('average', 'upright8Waist');
    const steps = orderOfWork(form);
    const check = (step: string, id: string) =>
      steps.find((s) => s.id === step)?.checks.find((c) => c.id === id)?.value ?? Number.NaN;
    for (const { id, lengthFlat } of form.report.levels) {
      // Front and back together go round; the empty shell laid flat is half of it.
      expect(check('sew-front', `width-${id}`) + check('sew-back', `width-${id}`)).toBeCloseTo(lengthFlat, 3);
      expect(2 * check('turn-out', `flat-${id}`)).toBeCloseTo(lengthFlat, 6);
      expect(check('sew-side', `flat-${id}`)).toBeCloseTo(lengthFlat, 6);
    }
    // The bust girth that was typed, within what a tape reads.
    const typed = form.project.body.measures.bustGirth as number;
    expect(check('fill-bust-underbust', 'girth-bust')).toBeCloseTo(typed, 0);
    // Both edges of every seam, as a tape would take them on the flat panels.
    for (const seam of shellSeams(steps)) {
      expect(Math.abs(seam.lengths[0] - seam.lengths[1]), seam.id).toBeLessThan(1);
    }
    // A web's edge is as long as the line it is sewn to.
    const pairs = steps
      .flatMap(({ seams }) => seams)
      .filter((s) => s.kind === 'inner' && s.lengths.length === 2);
    expect(pairs.length).toBeGreaterThan(3);
    for (const { id, lengths } of pairs) expect(Math.abs(lengths[0] - lengths[1]), id).toBeLessThan(1);
    // A plate is 2π times the cloth in between (three layers of 0.6 mm) shorter round than the seam line (Steiner).
    const roundPlate = check('boards', 'plate-base') + 2 * Math.PI * 1.8;
    expect(Math.abs(roundPlate - check('boards', 'edge-base'))).toBeLessThan(0.5);
    // Zones hold all the filling there is.
    const mass = steps.flatMap(({ checks }) => checks).filter(({ id }) => id === 'mass');
    const fill = form.inside?.fill;
    expect(mass.reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(
      ((fill?.low ?? 0) + (fill?.high ?? 0)) / 2,
      6,
    );
    expect(check('print', 'bar-across')).toBe(180);
    expect(check('print', 'bar-up')).toBe(200);
  });

  test('cautions stand where it can hurt first, and steps where people break what comes later', () => {
    const steps = orderOfWork(formToMake('average'));
    const at = (caution: string) =>
      steps.filter(({ cautions }) => cautions.some(({ id }) => id === caution)).map(({ id }) => id);
    expect(at('iron')).toEqual(['cloth']);
    expect(at('blades')).toEqual(['test-tube']);
    expect(at('dust')).toEqual(['test-tube']);
    expect(at('glue')).toEqual(['boards']);
    expect(at('magnets')).toEqual(['magnets']);
    expect(at('fire')).toEqual(['fill-top-upperChest']);
    expect(at('lifting')).toEqual(['rest']);
    expect(at('tipping')).toEqual(['use']);
    expect(at('rigging')).toEqual(['use']);
    const place = (id: string) => steps.findIndex((step) => step.id === id);
    const order = [
      ...[
        'cloth',
        'test-tube',
        'print',
        'trial',
        'cut',
        'mark',
        'sew-front',
        'sew-sleeve',
        'sew-inner-front',
      ],
      ...['sew-side', 'sew-inner-back', 'sew-closing', 'turn-out', 'boards', 'magnets', 'covers', 'sew-arms'],
      ...['fill-arms', 'supports', 'pole', 'fill-top-upperChest', 'close', 'rest', 'lids', 'stand', 'arms'],
    ].map(place);
    expect(order.every((at, k) => at >= 0 && (k === 0 || at > order[k - 1]))).toBe(true);
  });
});
