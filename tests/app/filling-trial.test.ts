import { describe, expect, it } from 'vitest';
import {
  AS_FORETOLD,
  createActions,
  createAppStore,
  filledInView,
  filledOrTried,
  trialIn,
  trialOf,
  triedIn,
} from '../../src/app/store/index.ts';
import { success } from '../../src/core/base/index.ts';
import type { Form, FormFilled, TriedForm } from '../../src/core/form/index.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

const filled = { name: 'foretold' } as unknown as FormFilled;
const triedWith = (name: string) => ({ filled: { name }, change: { distance: 1 } }) as unknown as TriedForm;

function openFilled() {
  const project = projectForTests();
  const store = createAppStore({ project });
  const actions = createActions(store);
  const show = (form: object) => actions.receiveForm(form as Form, project, 'full');
  show({ project, stages: ['filling'], filled });
  actions.goTo('inside');
  return { store, actions, show, project };
}

describe('a trial of the filled form', () => {
  it('is shown when it is answered, and gone on going back', () => {
    const { store, actions } = openFilled();
    expect(trialIn(store.getState())).toBe(AS_FORETOLD);
    actions.changeTrial({ stiffness: 2 });
    const trial = trialIn(store.getState());
    expect(trial).toEqual({ stiffness: 2 });
    // Until then what was foretold stays there, now coloured by how far it lies off.
    expect(filledInView(store.getState())).toBe(filled);
    const tried = triedWith('stiff');
    actions.receiveTrial(filled, trial, success(tried));
    expect(filledInView(store.getState())).toBe(tried.filled);
    actions.dropTrial();
    expect(trialIn(store.getState())).toBe(AS_FORETOLD);
    expect(filledOrTried(store.getState())).toBe(filled);
  });

  it('puts choices together, and takes them back one by one', () => {
    const { store, actions } = openFilled();
    const zone = { lower: 'waist', share: 0.7 };
    actions.changeTrial({ zone });
    actions.changeTrial({ without: 'web-left' });
    actions.changeTrial({ stiffness: 0.5 });
    expect(trialIn(store.getState())).toEqual({ zone, without: 'web-left', stiffness: 0.5 });
    actions.changeTrial({ zone: undefined });
    actions.changeTrial({ stiffness: 1 });
    expect(trialIn(store.getState())).toEqual({ without: 'web-left' });
    actions.changeTrial({ without: undefined });
    expect(trialIn(store.getState())).toBe(AS_FORETOLD);
  });

  it('takes no answer to what is not asked any more', () => {
    const { store, actions } = openFilled();
    actions.changeTrial({ stiffness: 2 });
    const before = trialIn(store.getState());
    actions.changeTrial({ stiffness: 0.5 });
    actions.receiveTrial(filled, before, success(triedWith('late')));
    expect(filledOrTried(store.getState())).toBe(filled);
  });

  it('says why nothing came of it, and shows what was foretold', () => {
    const { store, actions } = openFilled();
    actions.changeTrial({ stiffness: 2 });
    actions.receiveTrial(filled, trialIn(store.getState()), success(triedWith('stiff')));
    actions.changeTrial({ zone: { share: 0 } });
    const issues = [{ code: 'statics-stalled', path: '', message: { id: 'x' }, severity: 'error' }] as never;
    actions.receiveTrial(filled, trialIn(store.getState()), { ok: false, issues });
    expect(trialOf(store.getState())?.failure).toBe(issues);
    expect(filledOrTried(store.getState())).toBe(filled);
  });

  it('is over with the form it is about', () => {
    const { store, actions, show, project } = openFilled();
    actions.changeTrial({ stiffness: 2 });
    const trial = trialIn(store.getState());
    const other = { name: 'another' } as unknown as FormFilled;
    show({ project, stages: ['filling'], filled: other });
    expect(trialIn(store.getState())).toBe(AS_FORETOLD);
    actions.receiveTrial(filled, trial, success(triedWith('of the old form')));
    expect(filledInView(store.getState())).toBe(other);
    show({ project, stages: ['cutting'] });
    actions.changeTrial({ stiffness: 2 });
    expect(trialOf(store.getState())).toBeNull();
    expect(filledOrTried(store.getState())).toBeNull();
  });

  it('learns how the form bears a garment before anything is tried', () => {
    const { store, actions } = openFilled();
    const asItIs = triedWith('the same again');
    actions.receiveTrial(filled, AS_FORETOLD, success(asItIs));
    expect(trialOf(store.getState())?.tried).toBe(asItIs);
    expect(filledOrTried(store.getState())).toBe(filled);
    // That is no answer to what is then tried.
    actions.changeTrial({ stiffness: 2 });
    expect(triedIn(store.getState())).toBeNull();
    expect(filledOrTried(store.getState())).toBe(filled);
    // The next answer stays until the one after it is there.
    const stiff = triedWith('stiff');
    actions.receiveTrial(filled, trialIn(store.getState()), success(stiff));
    actions.changeTrial({ stiffness: 0.5 });
    expect(triedIn(store.getState())).toBe(stiff);
    expect(trialOf(store.getState())?.answered).not.toBe(trialIn(store.getState()));
  });
});
