import { describe, expect, it } from 'vitest';
import { createActions, createAppStore, historyOf } from '../../src/app/store/index.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

function openStore() {
  const store = createAppStore();
  const actions = createActions(store);
  actions.openProject(projectForTests(), 'Open demo body');
  store.temporal.getState().clear();
  return { store, actions, measures: () => store.getState().project?.body.measures };
}

describe('undo', () => {
  it('names its steps and takes them back one by one', () => {
    const { store, actions, measures } = openStore();
    actions.setMeasure('waistGirth', 700, 'waist girth');
    actions.setMeasure('hipGirth', 990, 'hip girth');
    expect(historyOf(store)).toEqual({ undo: 'Set hip girth', redo: null });
    actions.undo();
    expect(measures()).toMatchObject({ waistGirth: 700, hipGirth: 1010 });
    expect(historyOf(store)).toEqual({ undo: 'Set waist girth', redo: 'Set hip girth' });
    actions.undo();
    expect(measures()).toEqual(projectForTests().body.measures);
    expect(historyOf(store).undo).toBeNull();
    actions.redo();
    actions.redo();
    expect(measures()).toMatchObject({ waistGirth: 700, hipGirth: 990 });
  });

  it('keeps which step was taken back or done again, and what it had made', () => {
    const { store, actions } = openStore();
    actions.setMeasure('waistGirth', 700, 'waist girth');
    const made = store.getState().project;
    expect(store.getState().retraced).toBeNull();
    actions.undo();
    const first = store.getState().retraced;
    expect(first).toEqual({ way: 'undo', step: 'Set waist girth', made });
    // Nothing more to take back: nothing to tell.
    actions.undo();
    expect(store.getState().retraced).toBe(first);
    actions.redo();
    expect(store.getState().retraced).toEqual({ way: 'redo', step: 'Set waist girth', made });
  });

  it('keeps of a part that is left out that it is, of one that is made nothing', () => {
    const { store, actions } = openStore();
    const inside = () => store.getState().project?.inside;
    actions.setInsidePart('throat', false, 'throat webs');
    expect(inside()).toEqual({ ...projectForTests().inside, throat: false });
    expect(historyOf(store).undo).toBe('Set throat webs');
    actions.setInsidePart('throat', true, 'throat webs');
    expect(inside()).toEqual(projectForTests().inside);
    actions.undo();
    expect(inside()).toMatchObject({ throat: false });
  });

  it('takes one visit to a field as one step', () => {
    const { store, actions, measures } = openStore();
    actions.beginEdit();
    for (const mm of [70, 707, 7070]) actions.setMeasure('waistGirth', mm, 'waist girth');
    actions.endEdit();
    actions.setMeasure('hipGirth', 990, 'hip girth');
    actions.undo();
    expect(measures()).toMatchObject({ waistGirth: 7070, hipGirth: 1010 });
    actions.undo();
    expect(measures()).toMatchObject({ waistGirth: 765 });
    expect(historyOf(store).undo).toBeNull();
  });

  it('undoes in the middle of an edit and tracks what follows', () => {
    const { store, actions, measures } = openStore();
    actions.beginEdit();
    actions.setMeasure('waistGirth', 700, 'waist girth');
    actions.undo();
    expect(measures()).toMatchObject({ waistGirth: 765 });
    actions.setMeasure('waistGirth', 710, 'waist girth');
    actions.undo();
    expect(measures()).toMatchObject({ waistGirth: 765 });
    expect(historyOf(store)).toEqual({ undo: null, redo: 'Set waist girth' });
  });

  it('makes no step of looking, pointing, drafts or equal values', () => {
    const { store, actions } = openStore();
    actions.goTo('panels');
    actions.pointAt({ kind: 'seam', id: 'a' });
    actions.turnTo('back');
    actions.setDraft('waistGirth', { text: 'x', message: 'no' });
    actions.setDraft('waistGirth', null);
    actions.setTheme('dark');
    actions.setMeasure('waistGirth', 765, 'waist girth');
    actions.setUnits('cm');
    expect(historyOf(store)).toEqual({ undo: null, redo: null });
  });

  it('drops text that cannot be used before it takes back a step', () => {
    const { store, actions, measures } = openStore();
    actions.setMeasure('waistGirth', 700, 'waist girth');
    actions.setDraft('waistGirth', { text: '7oo', message: 'not a length' });
    expect(historyOf(store).undo).toBe('what cannot be used');
    actions.undo();
    expect(store.getState().drafts).toEqual({});
    expect(measures()).toMatchObject({ waistGirth: 700 });
    actions.undo();
    expect(measures()).toMatchObject({ waistGirth: 765 });
  });

  it('brings back the project that an opened one replaced', () => {
    const { store, actions } = openStore();
    actions.openProject({ ...projectForTests(), name: 'Other' }, 'Open other.loftseam.json');
    expect(historyOf(store).undo).toBe('Open other.loftseam.json');
    actions.undo();
    expect(store.getState().project?.name).toBe(projectForTests().name);
  });
});

describe('edits', () => {
  it('leave the former project untouched', () => {
    const { store, actions } = openStore();
    const before = store.getState().project;
    const text = JSON.stringify(before);
    actions.setMeasure('shoulderDrop', { left: 40, right: 60 }, 'shoulder drop');
    actions.setShape('belly', 'full', 'belly');
    actions.setLayout('upright12', 'twelve');
    actions.setAllowance(12);
    actions.setLengthBlend(0.5);
    expect(JSON.stringify(before)).toBe(text);
    expect(store.getState().project).toMatchObject({
      body: { measures: { shoulderDrop: { left: 40, right: 60 } }, shape: { belly: 'full' } },
      seams: { layout: 'upright12', lengthBlend: 0.5 },
      cloth: { allowance: 12 },
    });
  });

  it('forget a measure when it is cleared', () => {
    const { actions, measures } = openStore();
    actions.setMeasure('shoulderDrop', 50, 'shoulder drop');
    actions.setMeasure('shoulderDrop', null, 'shoulder drop');
    expect(measures()).not.toHaveProperty('shoulderDrop');
  });

  it('drop drafts when another project is opened', () => {
    const { store, actions } = openStore();
    actions.setDraft('waistGirth', { text: '7o', message: 'not a length' });
    actions.openProject(projectForTests(), 'Open');
    expect(store.getState().drafts).toEqual({});
  });
});

describe('notices', () => {
  it('that last stay beside the next, each once; the others give way', () => {
    const { store, actions } = openStore();
    const texts = () => store.getState().notices.map(({ text }) => text);
    actions.tell({ tone: 'warning', text: 'full', isLasting: true });
    actions.tell({ tone: 'plain', text: 'saved' });
    actions.tell({ tone: 'warning', text: 'refused', isLasting: true });
    actions.tell({ tone: 'warning', text: 'full', isLasting: true });
    expect(texts()).toEqual(['refused', 'full']);
    actions.tell({ tone: 'plain', text: 'saved again' });
    actions.tell(null);
    expect(texts()).toEqual(['refused', 'full']);
    actions.closeNotice(store.getState().notices[0]!);
    expect(texts()).toEqual(['full']);
  });
});

describe('a body open in two tabs', () => {
  it('goes on as a copy under an id of its own, which is no undo step', () => {
    const { store, actions } = openStore();
    const { bodyId } = store.getState();
    actions.goOnAsCopy();
    expect(store.getState().bodyId).not.toBe(bodyId);
    expect(store.getState().project?.name).toBe(`${projectForTests().name}, copy`);
    expect(historyOf(store)).toEqual({ undo: null, redo: null });
  });
});

describe('pointing', () => {
  it('does not stir the views when the same thing is pointed at again', () => {
    const { store, actions } = openStore();
    let changes = 0;
    store.subscribe(() => {
      changes += 1;
    });
    actions.pointAt({ kind: 'seam', id: 'a' });
    actions.pointAt({ kind: 'seam', id: 'a' });
    actions.pointAt(null);
    actions.pointAt(null);
    expect(changes).toBe(2);
  });
});

describe('paper and machine', () => {
  it('are kept in the project, taken away with undefined, and cost no step when nothing changes', () => {
    const { store, actions } = openStore();
    actions.setCutting({ paper: 'letter', kerf: 0.2 }, 'paper');
    actions.setCutting({ kerf: undefined }, 'width of the cut');
    expect(store.getState().project?.cutting).toEqual({ paper: 'letter' });
    expect(historyOf(store).undo).toBe('Set width of the cut');
    actions.setCutting({ paper: 'letter' }, 'paper again');
    expect(historyOf(store).undo).toBe('Set width of the cut');
    actions.setCloth({ notchShape: 't' }, 'shape of notches');
    expect(store.getState().project?.cloth.notchShape).toBe('t');
    actions.undo();
    actions.undo();
    actions.undo();
    expect(store.getState().project?.cutting).toEqual(projectForTests().cutting);
  });
});
