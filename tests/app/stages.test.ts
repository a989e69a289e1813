import { describe, expect, it } from 'vitest';
import { isShown, type Layers, reaches, STAGES, stageOf } from '../../src/app/store/index.ts';
import type { Form } from '../../src/core/form/index.ts';

const none: Layers = {
  photo: false,
  mirror: false,
  levels: false,
  tapes: false,
  seams: false,
  strain: false,
  arms: false,
  veil: false,
  cloth: false,
  print: false,
};
const all = Object.fromEntries(Object.keys(none).map((id) => [id, true])) as unknown as Layers;

/**
 * Written down from what the workroom showed at each stage before there was a list of stages; the cloth’s own surface from then
 * on at all but those that look at the person.
 */
const shown = {
  tape: ['', 'tapes', 'arms'],
  body: ['', '', 'photo mirror levels tapes seams arms veil cloth'],
  seams: ['controlPoints', 'seams cloth', 'strain'],
  panels: ['', 'seams cloth', 'strain'],
  inside: ['inside', 'cloth', ''],
  cutting: ['', 'seams cloth', ''],
  laying: ['', 'seams cloth', 'print'],
  making: ['', 'seams cloth', ''],
  checking: ['', 'seams levels cloth', ''],
};

describe('the stages of the workroom', () => {
  it.each(Object.entries(shown))('show at %s what belongs to it', (id, [things, always, switched]) => {
    const stage = stageOf(id as keyof typeof shown);
    const layers = Object.keys(none) as (keyof Layers)[];
    const words = (text: string) => text.split(' ').filter(Boolean).sort();
    expect(layers.filter((layer) => isShown(stage, layer, none)).sort()).toEqual(words(always));
    expect(layers.filter((layer) => isShown(stage, layer, all)).sort()).toEqual(
      words(`${always} ${switched}`),
    );
    const others = stage.shows.filter((thing) => !(thing in none) && thing !== 'measuring');
    expect(others).toEqual(words(things));
  });

  it('stand in the order of the work', () => {
    expect(STAGES.map(({ id }) => id)).toEqual(Object.keys(shown));
  });

  it('ask for a rough form only as far as it can be seen in them', () => {
    // A draft ends with the shape, with flat panels, or with pieces.
    const missing = (...stages: string[]) =>
      STAGES.filter(({ draftTo }) => !reaches({ stages } as unknown as Form, draftTo)).map(({ id }) => id);
    expect(missing('tape', 'body', 'seams')).toEqual(['seams', 'panels', 'cutting', 'laying']);
    expect(missing('tape', 'body', 'seams', 'panels')).toEqual(['panels', 'cutting', 'laying']);
    expect(missing('tape', 'body', 'seams', 'panels', 'cutting')).toEqual([]);
  });
});
