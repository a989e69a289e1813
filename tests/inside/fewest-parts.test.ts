import { describe, expect, it } from 'vitest';
import type { Form } from '../../src/core/form/index.ts';
import type { InsideOptions } from '../../src/core/inside/index.ts';
import { formToMake } from '../making/form-to-make.ts';

const make = (demo: string, inside: InsideOptions = {}): Form =>
  formToMake(demo, undefined, { recut: true, ...inside });
const braces = (form: Form): string[] => (form.inside?.shape.braces ?? []).map(({ id }) => id);
const FEWEST = [
  ...['tie-front', 'tie-back', 'web-right', 'web-left', 'strap-bust-right', 'strap-bust-left'],
  ...['throat-right', 'throat-left'],
];

describe('the fewest parts inside', () => {
  it('are two ties, two webs, a pair of straps at the bust and throat webs', () => {
    expect(braces(make('straight'))).toEqual(FEWEST);
  });

  it('are more where the section under the bust swells much', () => {
    const form = make('rounded-back');
    expect(braces(form).filter((id) => id.startsWith('strap-underbust'))).toHaveLength(2);
    const part = form.inside?.parts.find(({ id }) => id === 'underbust');
    expect(part).toMatchObject({ isIn: true, isNeeded: true });
    const left = make('rounded-back', { strapsAt: { underbust: 'without' } });
    expect(braces(left)).toEqual(FEWEST);
  });

  it('are all where panels are not cut for the filling, or all are wanted', () => {
    expect(braces(make('straight', { recut: false })).length).toBeGreaterThan(FEWEST.length);
    expect(braces(make('straight', { parts: 'all' }))).toEqual(braces(make('straight', { recut: false })));
  });

  it('can be chosen one by one', () => {
    const own = braces(make('straight', { strapsAt: { hip: 'with', bust: 'without' }, throat: false }));
    expect(own).toEqual([...FEWEST.slice(0, 4), 'strap-hip-right', 'strap-hip-left']);
    expect(braces(make('straight', { straps: false }))).toEqual([...FEWEST.slice(0, 4), ...FEWEST.slice(6)]);
    const all = braces(make('straight', { parts: 'all', strapsAt: { bust: 'without' } }));
    expect(all.filter((id) => id.startsWith('strap-bust'))).toEqual([]);
  });

  it('are told with what each further one costs', () => {
    const parts = make('straight').inside?.parts ?? [];
    expect(parts.map(({ id, isIn }) => [id, isIn])).toEqual([
      ['throat', true],
      ['hip', false],
      ['underbust', false],
      ['bust', true],
    ]);
    for (const { hours } of parts) {
      expect(hours).toBeGreaterThan(0.5);
      expect(hours).toBeLessThan(2);
    }
  });
});
