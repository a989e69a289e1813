import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  createActions,
  createAppStore,
  type KeyValueStore,
  keepProject,
  readEarlierStates,
  readKeptProject,
  readKeptTheme,
  readUnreadableHistory,
  setAsideUnreadable,
} from '../../src/app/store/index.ts';
import { parseProject, serializeProject } from '../../src/core/project/index.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

function memoryStorage() {
  const entries = new Map<string, string>();
  const storage: KeyValueStore = {
    read: (key) => entries.get(key) ?? null,
    write: (key, text) => void entries.set(key, text),
  };
  return { storage, entries };
}

function start(storage: KeyValueStore) {
  const store = createAppStore();
  const actions = createActions(store);
  const onKept = vi.fn();
  const onTrouble = vi.fn();
  actions.openProject(projectForTests(), 'Open');
  const keeper = keepProject(store, storage, serializeProject, { onKept, onTrouble });
  return { store, actions, keeper, onKept, onTrouble };
}

describe('keeping the project between visits', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('writes within two seconds of a change, and reads back the same project', () => {
    const { storage } = memoryStorage();
    const { store, actions, onKept } = start(storage);
    actions.setMeasure('waistGirth', 700, 'waist girth');
    vi.advanceTimersByTime(2000);
    expect(onKept).toHaveBeenCalled();
    const read = parseProject(readKeptProject(storage));
    expect(read).toMatchObject({ ok: true, value: store.getState().project });
  });

  it('does not wait for a pause: steady changes are kept while they come', () => {
    const { storage } = memoryStorage();
    const { actions } = start(storage);
    for (let waist = 700; waist < 720; waist++) {
      actions.setMeasure('waistGirth', waist, 'waist girth');
      vi.advanceTimersByTime(200);
    }
    // Four seconds of changes, none followed by more than a fifth of one; at most two may be lost.
    const read = parseProject(readKeptProject(storage) ?? '');
    expect(read.ok && Number(read.value.body.measures.waistGirth)).toBeGreaterThanOrEqual(710);
  });

  it('writes what is waiting at once when the page closes', () => {
    const { storage } = memoryStorage();
    const { actions, keeper } = start(storage);
    actions.renameProject('Closing');
    keeper.flush();
    expect(readKeptProject(storage)).toContain('"Closing"');
  });

  it('keeps the light, and takes unknown words as the computer’s own', () => {
    const { storage, entries } = memoryStorage();
    const { actions, keeper } = start(storage);
    actions.setTheme('dark');
    keeper.flush();
    expect(readKeptTheme(storage)).toBe('dark');
    for (const key of entries.keys()) entries.set(key, 'purple');
    expect(readKeptTheme(storage)).toBe('system');
  });

  it('tells once when storage is full and goes on trying', () => {
    const { storage: good } = memoryStorage();
    let isFull = true;
    const storage: KeyValueStore = {
      read: good.read,
      write(key, text) {
        if (isFull) throw new Error('quota exceeded');
        good.write(key, text);
      },
    };
    const { actions, onTrouble, onKept } = start(storage);
    for (const mm of [700, 710, 720]) {
      actions.setMeasure('waistGirth', mm, 'waist girth');
      vi.advanceTimersByTime(2000);
    }
    expect(onTrouble).toHaveBeenCalledExactlyOnceWith('quota exceeded');
    isFull = false;
    actions.setMeasure('waistGirth', 730, 'waist girth');
    vi.advanceTimersByTime(2000);
    expect(onKept).toHaveBeenCalledOnce();
    expect(readKeptProject(storage)).toContain('730');
  });

  it('counts storage that refuses to be read as empty, and puts unreadable text aside', () => {
    const refusing: KeyValueStore = {
      read() {
        throw new Error('denied');
      },
      write() {
        throw new Error('denied');
      },
    };
    expect(readKeptProject(refusing)).toBeNull();
    expect(readKeptTheme(refusing)).toBe('system');
    expect(setAsideUnreadable(refusing, '{')).toBe(false);
    const { storage, entries } = memoryStorage();
    expect(setAsideUnreadable(storage, '{broken')).toBe(true);
    expect([...entries.values()]).toEqual(['{broken']);
    expect(readKeptProject(storage)).toBeNull();
  });

  it('keeps the last ten states, one a minute, newest first, each readable', () => {
    const { storage } = memoryStorage();
    const { actions } = start(storage);
    vi.advanceTimersByTime(2000);
    for (let minute = 1; minute <= 12; minute++) {
      vi.advanceTimersByTime(61_000);
      actions.setMeasure('waistGirth', 700 + minute, 'waist girth');
      vi.advanceTimersByTime(2000);
      actions.setMeasure('waistGirth', 710 + minute, 'waist girth');
      vi.advanceTimersByTime(2000);
    }
    const states = readEarlierStates(storage);
    expect(states.map(({ text }) => JSON.parse(text).body.measures.waistGirth)).toEqual([
      722, 721, 720, 719, 718, 717, 716, 715, 714, 713,
    ]);
    expect(parseProject(states[9].text).ok).toBe(true);
  });

  it('keeps states of two bodies of one name apart, though they change in the same minute', () => {
    const { storage } = memoryStorage();
    const { store, actions, keeper } = start(storage);
    actions.setMeasure('waistGirth', 700, 'waist girth');
    keeper.flush();
    store.setState({ bodyId: 'other' });
    actions.setMeasure('waistGirth', 800, 'waist girth');
    keeper.flush();
    const waists = readEarlierStates(storage).map(({ text }) => JSON.parse(text).body.measures.waistGirth);
    expect(waists).toEqual([800, 700]);
  });

  it('never leaves the text of one body under the id of another, wherever storage gives up', () => {
    const { storage, entries } = memoryStorage();
    let writesLeft = Number.POSITIVE_INFINITY;
    const tight: KeyValueStore = {
      read: storage.read,
      write(key, text) {
        if (writesLeft-- <= 0 && text !== '') throw new Error('quota exceeded');
        storage.write(key, text);
      },
    };
    const { store, actions, keeper } = start(tight);
    keeper.flush();
    const first = store.getState().bodyId;
    for (const limit of [0, 1, 2]) {
      writesLeft = limit;
      actions.openProject({ ...projectForTests(), name: `Other ${limit}` }, 'Open', { id: `other${limit}` });
      keeper.flush();
      const [name, id] = [
        JSON.parse(readKeptProject(storage) ?? '').name,
        entries.get('loftseam.project.body') ?? '',
      ];
      const owner = name === projectForTests().name ? first : `other${name.split(' ')[1]}`;
      expect(['', owner]).toContain(id);
    }
  });

  it('gives out a history of which something cannot be read, and puts no two broken texts in one place', () => {
    const { storage, entries } = memoryStorage();
    expect(readUnreadableHistory(storage)).toBeNull();
    const good = { at: 1, name: 'Good', text: '{}' };
    entries.set('loftseam.earlier', JSON.stringify([good]));
    expect(readUnreadableHistory(storage)).toBeNull();
    for (const broken of ['[{"at": 1', '{}', 'null', JSON.stringify([good, { at: 'then' }])]) {
      entries.set('loftseam.earlier', broken);
      expect(readUnreadableHistory(storage)).toBe(broken);
    }
    expect(readEarlierStates(storage)).toEqual([good]);
    entries.clear();
    for (const text of ['a', 'b', 'a']) expect(setAsideUnreadable(storage, text)).toBe(true);
    expect([...entries.values()].sort()).toEqual(['a', 'b']);
  });

  it('takes a broken history as none, and full storage as no trouble while the project is kept', () => {
    const { storage, entries } = memoryStorage();
    const tight: KeyValueStore = {
      read: storage.read,
      write(key, text) {
        if (key === 'loftseam.earlier') throw new Error('quota exceeded');
        storage.write(key, text);
      },
    };
    const { keeper, onTrouble } = start(tight);
    keeper.flush();
    expect(onTrouble).not.toHaveBeenCalled();
    entries.set('loftseam.earlier', '{"at": 1');
    expect(readEarlierStates(storage)).toEqual([]);
  });
});
