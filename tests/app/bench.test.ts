import { describe, expect, it } from 'vitest';
import {
  type AppStore,
  createActions,
  createAppStore,
  type KeyValueStore,
  keepBench,
  placeAtBench,
  readKeptBench,
} from '../../src/app/store/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

/** A store with an order of work of three steps, of which the second may be left out. */
function storeWithSteps(done: readonly string[] = []): AppStore {
  const step = (id: string, isOptional = false) => ({ id, isOptional });
  const form = { making: { steps: [step('cloth'), step('trial', true), step('cut')] } } as unknown as Form;
  return createAppStore({ form, project: { ...projectForTests(), making: { done } }, bodyId: 'one' });
}

function storageOf(text: string | null): KeyValueStore & { text: string | null } {
  return {
    text,
    read() {
      return this.text;
    },
    write(_key, written) {
      this.text = written;
    },
  };
}

describe('the place at the bench', () => {
  it('is the first step that is not done and may not be left out, else the first of all', () => {
    expect(placeAtBench(storeWithSteps().getState())).toBe(0);
    expect(placeAtBench(storeWithSteps(['cloth']).getState())).toBe(2);
    expect(placeAtBench(storeWithSteps(['cloth', 'trial', 'cut']).getState())).toBe(0);
  });

  it('is the step last looked at, of the same body alone, as long as there is such a step', () => {
    const store = storeWithSteps(['cloth']);
    createActions(store).workAtStep('trial');
    expect(placeAtBench(store.getState())).toBe(1);
    store.setState({ bodyId: 'another' });
    expect(placeAtBench(store.getState())).toBe(2);
    store.setState({ bodyId: 'one' });
    createActions(store).workAtStep('no such step');
    expect(placeAtBench(store.getState())).toBe(2);
  });

  it('is kept in the browser, with whether it is open; another stage closes it', () => {
    const storage = storageOf(null);
    const store = storeWithSteps();
    const actions = createActions(store);
    keepBench(store, storage);
    actions.goTo('making');
    actions.workAtStep('cut');
    expect(readKeptBench(storage)).toEqual({ bodyId: 'one', stepId: 'cut', isOpen: true });
    actions.goTo('checking');
    expect(readKeptBench(storage)).toEqual({ bodyId: 'one', stepId: 'cut', isOpen: false });
    actions.goTo('making');
    expect(store.getState().bench?.isOpen).toBe(false);
  });

  it.each([null, '', 'null', '[]', '7', '{"bodyId":"one"}', '{"bodyId":1,"stepId":"cut","isOpen":true}'])(
    'is none when %j is kept',
    (text) => {
      expect(readKeptBench(storageOf(text))).toBeNull();
    },
  );

  it('is none, and is worked at all the same, where the browser keeps nothing', () => {
    const refuses = (): never => {
      throw new Error('refused');
    };
    const storage: KeyValueStore = { read: refuses, write: refuses };
    expect(readKeptBench(storage)).toBeNull();
    const store = storeWithSteps();
    keepBench(store, storage);
    createActions(store).workAtStep('cut');
    expect(store.getState().bench?.stepId).toBe('cut');
  });
});
