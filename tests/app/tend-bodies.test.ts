import { describe, expect, it } from 'vitest';
import { tendBodies } from '../../src/app/services/tend-bodies.ts';
import {
  type BodyDatabase,
  createActions,
  createAppStore,
  historyOf,
  type KeptBody,
  type KeptCard,
} from '../../src/app/store/index.ts';
import { parseProject, serializeProject } from '../../src/core/project/index.ts';
import { wardrobe } from '../../src/language/english/wardrobe.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

const PICTURE = { front: 'M0 0', side: 'M1 1', seams: '' };

/** The calls that are asked here, on maps. */
function cabinet() {
  const bodies = new Map<string, KeptBody>();
  const cards = new Map<string, KeptCard>();
  const database: Pick<BodyDatabase, 'list' | 'put' | 'putCard'> = {
    list: async () => ({ bodies: [...bodies.values()], cards, unreadable: [] }),
    put: async (body) => void bodies.set(body.id, body),
    putCard: async (card) => void cards.set(card.id, card),
  };
  return { bodies, cards, database: database as BodyDatabase };
}

function tend() {
  const store = createAppStore();
  const actions = createActions(store);
  const { bodies, cards, database } = cabinet();
  let count = 0;
  const tending = tendBodies({
    ...{ store, actions, words: wardrobe },
    opened: async () => database,
    worker: { scatterBody: async () => null },
    newId: () => `new ${++count}`,
    today: () => '2026-11-30',
  });
  const keep = (change: object = {}): KeptBody => {
    const project = { ...projectForTests(), name: 'Odile', ...change };
    const body = { id: 'a', name: project.name, at: 1, text: serializeProject(project) };
    bodies.set('a', body);
    return body;
  };
  const fileOf = (id: string) => {
    const read = parseProject(bodies.get(id)?.text ?? '');
    if (!read.ok) throw new Error(`${id} cannot be read`);
    return read.value;
  };
  return { store, actions, tending, bodies, cards, keep, fileOf };
}

describe('tending bodies', () => {
  it('begins a version with the same measures and nothing done, and names the first as the same person’s', async () => {
    const { tending, bodies, keep, fileOf } = tend();
    const entry = { date: '2026-03-14', state: 'filled', levels: {} };
    await tending.beginVersion(
      keep({ making: { done: ['use'] }, checking: { entries: [entry] } }),
      'over the corset',
    );
    expect([...bodies.keys()]).toEqual(['a', 'new 1']);
    const version = fileOf('new 1');
    expect(version).toEqual({
      ...projectForTests(),
      name: 'Odile, over the corset',
      person: { name: 'Odile', label: 'over the corset' },
    });
    expect(bodies.get('new 1')?.name).toBe(version.name);
    // Of the first nothing else changes, not even when it was last changed.
    expect(fileOf('a')).toMatchObject({ person: { name: 'Odile' }, making: { done: ['use'] } });
    expect(bodies.get('a')?.at).toBe(1);
  });

  it('begins a version of a version on the card of the person', async () => {
    const { tending, keep, fileOf } = tend();
    await tending.beginVersion(keep({ name: 'x', person: { name: 'Odile', label: 'corset' } }), 'May');
    expect(fileOf('new 1')).toMatchObject({ name: 'Odile, May', person: { name: 'Odile', label: 'May' } });
    expect(fileOf('a').person).toEqual({ name: 'Odile', label: 'corset' });
  });

  it('takes the open body as it is on the page, and renames it by a step that can be undone', async () => {
    const { store, actions, tending, keep, fileOf } = tend();
    const body = keep();
    actions.openProject({ ...projectForTests(), name: 'Odile' }, 'Open', { id: 'a' });
    actions.setMeasure('waistGirth', 700, 'waist girth');
    await tending.beginVersion(body, 'May');
    expect(fileOf('new 1').body.measures.waistGirth).toBe(700);
    expect(store.getState().project?.person).toEqual({ name: 'Odile' });
    expect(historyOf(store).undo).toBe('Rename');
    actions.undo();
    expect(store.getState().project).toMatchObject({
      name: 'Odile',
      body: { measures: { waistGirth: 700 } },
    });
    expect(store.getState().project).not.toHaveProperty('person');
  });

  it('makes no step of a name that stays, and takes a person away again', async () => {
    const { store, actions, tending, keep, fileOf } = tend();
    const person = { name: 'Odile', label: 'corset' };
    const body = keep({ person });
    actions.openProject({ ...projectForTests(), name: 'Odile', person }, 'Open', { id: 'a' });
    store.temporal.getState().clear();
    await tending.rename(body, { name: 'Odile', person });
    expect(historyOf(store).undo).toBeNull();
    await tending.rename(body, { name: 'Bram' });
    expect(fileOf('a')).toMatchObject({ name: 'Bram' });
    expect(fileOf('a').person).toBeUndefined();
    expect(store.getState().project?.person).toBeUndefined();
  });

  it('tells a copy apart on the card of its person too', async () => {
    const { tending, keep, fileOf } = tend();
    await tending.duplicate(keep({ person: { name: 'Odile', label: 'corset' }, making: { done: ['use'] } }));
    expect(fileOf('new 1')).toMatchObject({
      name: 'Odile, copy',
      person: { name: 'Odile', label: 'corset, copy' },
      making: { done: ['use'] },
    });
  });

  it('says why a body that cannot be read is not copied, and leaves it', async () => {
    const { tending, bodies } = tend();
    const hurt = { id: 'hurt', name: 'Hurt', at: 1, text: '{"format":' };
    bodies.set('hurt', hurt);
    await expect(tending.duplicate(hurt)).rejects.toThrow(/JSON|end|text/i);
    await expect(tending.beginVersion(hurt, 'May')).rejects.toThrow();
    expect([...bodies.values()]).toEqual([hurt]);
  });

  it('puts a picture by for a body that is there and has none, and keeps what is known of its steps', async () => {
    const { tending, cards, keep } = tend();
    keep();
    await tending.putPicture('gone', PICTURE);
    expect(cards.size).toBe(0);
    cards.set('a', { id: 'a', picture: null, steps: ['use'] });
    await tending.putPicture('a', PICTURE);
    await tending.putPicture('a', { ...PICTURE, front: 'M9 9' });
    expect(cards.get('a')).toEqual({ id: 'a', picture: PICTURE, steps: ['use'] });
  });
});
