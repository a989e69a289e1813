import { describe, expect, it } from 'vitest';
import type { Form } from '../../src/core/form/index.ts';
import { orderOfWork } from '../../src/core/making/index.ts';
import { LAYOUTS } from '../../src/core/seams/index.ts';
import { formToMake } from './form-to-make.ts';

/** The fewest parts, as a form cut for its filling has them: no order of work depends on the filling itself. */
const simple = (demo: string, layout?: string, inside = {}): Form =>
  formToMake(demo, layout, { recut: true, ...inside });

const piecesOf = (form: Form): string[] => (form.inside?.pieces ?? []).map(({ id }) => id);
const stepsOf = (form: Form): string[] => (form.making?.steps ?? []).map(({ id }) => id);

describe('the order of work of a form of the fewest parts', () => {
  it.each(LAYOUTS.map(({ id }) => id))(
    'can be followed on the layout %s, its last seam laddered',
    (layout) => {
      const form = simple('straight', layout);
      const { planned, faults } = orderOfWork(form);
      expect(faults).toEqual([]);
      const joins = planned.flatMap(({ ops }) => ops.filter((op) => op.does === 'join'));
      // Every seam of the shell once, by the shell's own list.
      const shell = form.shell.seams.map(({ id }) => id);
      expect(
        joins
          .map(({ joint }) => joint)
          .filter((id) => shell.includes(id))
          .toSorted(),
      ).toEqual(shell.toSorted());
      expect(joins.filter(({ how }) => how === 'packed')).toEqual([]);
      expect(joins.some(({ how }) => how === 'ladder')).toBe(true);
    },
  );

  it('has neither covers, magnets nor cushions, but tape round every rim that is sewn to', () => {
    const form = simple('straight');
    expect(piecesOf(form).filter((id) => /cover|cushion|magnet/.test(id))).toEqual([]);
    expect(stepsOf(form)).toContain('bind');
    for (const id of ['covers', 'magnets', 'cushions', 'sew-arms']) expect(stepsOf(form)).not.toContain(id);
    const bind = form.making?.steps.find(({ id }) => id === 'bind');
    expect(bind?.pieces.map(({ id }) => id)).toEqual([
      'base-plate-1',
      'neck-plate-1',
      'armhole-plate-right-1',
      'armhole-plate-left-1',
    ]);
    const bought = form.inside?.materials ?? [];
    expect(bought.some(({ id }) => id === 'covers')).toBe(false);
    // Round all four rims, by the boards as they are cut, and a tenth more.
    const around = (form.inside?.pieces ?? [])
      .filter(({ id }) => bind?.pieces.some((piece) => piece.id === id))
      .reduce((sum, { cutLine }) => sum + roundOf(cutLine), 0);
    expect(bought.find(({ id }) => id === 'binding')?.quantity).toBeCloseTo((1.1 * around) / 1000, 6);
  });

  it('keeps covers where arms meet the plates, and where they are asked for', () => {
    const arms = simple('average');
    expect(piecesOf(arms)).toContain('armhole-plate-right-cover');
    expect(orderOfWork(arms).faults).toEqual([]);
    const asked = simple('straight', undefined, { plateCovers: 'with' });
    expect(piecesOf(asked)).toContain('base-plate-cover');
    expect(stepsOf(asked)).not.toContain('bind');
    expect(orderOfWork(asked).faults).toEqual([]);
    const mixed = simple('average', undefined, { plateCovers: 'without' });
    expect(stepsOf(mixed)).toEqual(expect.arrayContaining(['covers', 'bind']));
    expect(orderOfWork(mixed).faults).toEqual([]);
  });

  // 45 minutes for about 70 cm laddered, 25 to pack, 5 hours to fill, 2 to lace: estimates, no source.
  it('takes hours that add up, fewer than with all parts', () => {
    const form = simple('straight');
    const { steps = [], hours = 0 } = form.making ?? {};
    const sum = steps.reduce((all, step) => all + (step.isOptional ? 0 : step.hours), 0);
    expect(hours).toBeCloseTo(sum, 9);
    expect(form.report.hours?.all).toBe(hours);
    const all = formToMake('straight', undefined, { parts: 'all', recut: true }).making?.hours ?? 0;
    expect(all - hours).toBeGreaterThan(5);
    const filling = steps.filter(({ id }) => id.startsWith('fill-'));
    expect(filling.reduce((sumOf, step) => sumOf + step.hours, 0)).toBeGreaterThan(3);
    expect(filling.reduce((sumOf, step) => sumOf + step.hours, 0)).toBeLessThan(7);
    const last = steps.find(({ id }) => id === 'turn-out')?.hours ?? 0;
    expect(last).toBeGreaterThan(0.6);
    expect(last).toBeLessThan(1.5);
  });
});

function roundOf(points: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < points.length; i += 2) {
    const j = (i + 2) % points.length;
    sum += Math.hypot(points[j] - points[i], points[j + 1] - points[i + 1]);
  }
  return sum;
}
