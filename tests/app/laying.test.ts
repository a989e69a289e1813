import { describe, expect, it, vi } from 'vitest';
import type { PageCalls } from '../../src/app/calls/index.ts';
import { layWhenSeen } from '../../src/app/lay-when-seen.ts';
import { printOnPanels } from '../../src/app/scene/print-on-panels.ts';
import { layOut } from '../../src/app/services/lay-out.ts';
import {
  type ClothPhoto,
  createActions,
  createAppStore,
  cropRepeat,
  historyOf,
  keepClothPhoto,
  keptPlaces,
  layInView,
  repeatOfPhoto,
  repeatShift,
  scaleClothPhoto,
  turnOn,
  usesOfForm,
} from '../../src/app/store/index.ts';
import { placeName } from '../../src/app/views/laying/place-name.ts';
import { layWhileWanted } from '../../src/app/worker/lay-while-wanted.ts';
import type { Form } from '../../src/core/form/index.ts';
import { type LaidPiece, type LayPlan, type LayTask, layAll } from '../../src/core/laying/index.ts';
import type { Project } from '../../src/core/project/index.ts';
import { rectangle } from '../laying/rectangles.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

const UP = -Math.PI / 2;
const webs = ['throat', 'bust', 'waist'].map((id) => rectangle(id, 120, 200, { material: 'webs' }));

/** As much of a form as laying looks at. */
function formOf(pieces = webs): Form {
  return {
    pieces: [rectangle('sleeve', 120, 200, { material: 'arms' })],
    inside: { pieces },
    flat: [{}],
  } as unknown as Form;
}

/** A worker that searches in this thread, told step by step what the page wants. */
function openLaying() {
  const store = createAppStore({ stage: 'laying' });
  const actions = createActions(store);
  actions.openProject(projectForTests(), 'Open demo body');
  store.temporal.getState().clear();
  actions.lookAtUse('webs');
  const asked: LayTask[] = [];
  const asksOfTrial: Project[] = [];
  const worker: Pick<PageCalls, 'layPieces' | 'trialPieces'> = {
    trialPieces: async (project) => {
      asksOfTrial.push(project);
      return { ok: true, value: [rectangle('sleeve', 130, 210, { material: 'trial' })], issues: [] };
    },
    layPieces: (task, onLaid) => {
      asked.push(task);
      return Promise.resolve().then(() => layWhileWanted(task, onLaid));
    },
  };
  const show = (form: Form) =>
    store.setState({ form, formOf: store.getState().project, formQuality: 'full' });
  const seen = () => layInView(store.getState(), 'webs');
  const plan = (): LayPlan => {
    const found = seen()?.plan;
    if (!found) throw new Error('nothing is laid');
    return found;
  };
  const stockOf = () => store.getState().project?.laying?.webs;
  return { store, actions, worker, asked, asksOfTrial, show, seen, plan, stockOf };
}

const settled = (store: ReturnType<typeof createAppStore>) =>
  vi.waitFor(() => expect(store.getState().layWork.search).toBeNull());

describe('laying while it is looked at', () => {
  it('lays the trial shell’s own pieces, asked for once, when they are wanted', async () => {
    const { store, actions, worker, asksOfTrial, show } = openLaying();
    layWhenSeen(store, actions, worker);
    const form = formOf();
    show(form);
    const trial = () => layInView(store.getState(), 'trial');
    expect(usesOfForm(store.getState().form)).toContain('trial');
    expect([trial(), asksOfTrial.length]).toEqual([null, 0]);
    actions.setStock('trial', { isLaid: true }, 'lay it');
    // The same form serves: laying changes no piece.
    show(form);
    await vi.waitFor(() => expect(trial()?.isSearched).toBe(true));
    // 210 mm long about its middle as the trial’s, not 200 as the form’s.
    expect(trial()?.rules.pieces.map(({ id }) => id)).toEqual(['sleeve']);
    expect(trial()?.task.pieces.map(({ cutLine }) => Math.max(...cutLine))).toEqual([105]);
    expect(asksOfTrial.length).toBe(1);
  });

  it('lays by itself once the form is there, and keeps nothing of it unasked', async () => {
    const { store, actions, worker, show, seen, stockOf } = openLaying();
    layWhenSeen(store, actions, worker);
    show(formOf());
    await vi.waitFor(() => expect(seen()?.isSearched).toBe(true));
    expect(seen()?.plan?.placed.map(({ piece }) => piece)).toEqual(['throat', 'bust', 'waist']);
    expect(seen()?.isKept).toBe(false);
    expect(stockOf()).toBeUndefined();
    expect(historyOf(store).undo).toBeNull();
  });

  it('does not show a plan of other pieces or other cloth as of these', async () => {
    const { store, actions, worker, show, seen } = openLaying();
    layWhenSeen(store, actions, worker);
    show(formOf());
    await vi.waitFor(() => expect(seen()?.isSearched).toBe(true));
    actions.goTo('making');
    actions.setStock('webs', { stockWidth: 600 }, 'cloth');
    expect(seen()?.plan).toBeNull();
    actions.undo();
    expect(seen()?.plan).not.toBeNull();
    show(formOf(webs.slice(1)));
    expect(seen()?.plan).toBeNull();
  });

  it('ends a search whose cloth is changed under it, and begins one for what is there', async () => {
    const { store, actions, worker, asked, show, seen } = openLaying();
    layWhenSeen(store, actions, worker);
    const form = formOf();
    show(form);
    expect(store.getState().layWork.search).not.toBeNull();
    actions.setStock('webs', { stockWidth: 600 }, 'cloth');
    expect(store.getState().layWork.search?.of.stock).toEqual({});
    show(form);
    await vi.waitFor(() => expect(asked.filter(({ use }) => use === 'webs')).toHaveLength(2));
    await vi.waitFor(() => expect(seen()?.isSearched).toBe(true));
    expect(seen()?.plan?.ground.width).toBe(600);
  });

  it('goes on from the plan that is there with more to spend, and never shows a longer one', async () => {
    const { store, actions, worker, asked, show, seen, plan } = openLaying();
    layWhenSeen(store, actions, worker);
    show(formOf());
    await vi.waitFor(() => expect(seen()?.isSearched).toBe(true));
    await settled(store);
    const before = plan();
    layOut(store, actions, worker).layFurther('webs');
    await settled(store);
    const last = asked.at(-1);
    expect(last?.budget).toBeGreaterThanOrEqual(4 * (asked.find(({ use }) => use === 'webs')?.budget ?? 0));
    expect(last?.stock.placed).toEqual(before.placed);
    expect(plan().length).toBeLessThanOrEqual(before.length);
  });

  it('shows what was found so far when it is stopped', async () => {
    const { store, actions, show, seen } = openLaying();
    const task = layInView({ ...store.getState(), form: formOf() }, 'webs')?.task;
    const found = task && layAll(task);
    if (!found?.ok) throw new Error('nothing is laid');
    let goesOn: boolean | undefined;
    const worker: Pick<PageCalls, 'layPieces'> = {
      layPieces: async (_task, onLaid) => {
        await onLaid({ plan: found.value, share: 0.2 });
        services.stopLaying();
        goesOn = await onLaid({ plan: { ...found.value, length: 1 }, share: 0.4 });
        return found;
      },
    };
    const services = layOut(store, actions, worker);
    show(formOf());
    services.layRest('webs');
    await vi.waitFor(() => expect(goesOn).toBe(false));
    expect(seen()?.plan?.length).toBe(found.value.length);
    expect(store.getState().layWork.search).toBeNull();
  });

  it('tells what another cloth would take, and leaves all as it is', async () => {
    const { store, actions, worker, show, stockOf } = openLaying();
    show(formOf());
    const { tryStock } = layOut(store, actions, worker);
    // Of 120 × 200 along the grain, three lie abreast on 400 and more, two on 300: then 200 and 400 long.
    expect((await tryStock('webs', { stockWidth: 400 }))?.length).toBeCloseTo(200, 0);
    expect((await tryStock('webs', { stockWidth: 300 }))?.length).toBeCloseTo(400, 0);
    expect(await tryStock('webs', { stockWidth: 110 })).toBeNull();
    expect(stockOf()).toBeUndefined();
  });
});

describe('places kept', () => {
  const laid = (piece: string, x: number, more: Partial<LaidPiece> = {}): LaidPiece => ({
    ...{ piece, x, y: 100, angle: UP, sheet: 0, isHeld: false },
    ...more,
  });
  const three = [laid('throat', 100), laid('bust', 300), laid('waist', 500)];

  it('are one named step of undo each, and shown as they are', () => {
    const { store, actions, show, seen, plan } = openLaying();
    show(formOf());
    actions.placePieces('webs', keptPlaces(three), 'Keep the lay plan');
    expect(seen()?.isKept).toBe(true);
    expect(plan().length).toBe(600);
    actions.placePieces('webs', keptPlaces(plan().placed, laid('waist', 640)), 'Move waist');
    expect(plan().length).toBe(740);
    expect(historyOf(store).undo).toBe('Move waist');
    actions.undo();
    expect(plan().length).toBe(600);
    expect(historyOf(store)).toEqual({ undo: 'Keep the lay plan', redo: 'Move waist' });
    actions.undo();
    expect(store.getState().project).toEqual(projectForTests());
  });

  it('stay for locked pieces alone when the cloth changes, and for all when it only shrinks', () => {
    const { actions, show, seen, stockOf } = openLaying();
    show(formOf());
    const [a, b, c] = three;
    actions.placePieces('webs', keptPlaces([a, { ...b, isHeld: true }, c]), 'Lock bust');
    actions.setStock('webs', { shrinkage: 0.05 }, 'cloth');
    expect(stockOf()?.placed).toHaveLength(3);
    actions.setStock('webs', { stockWidth: 900 }, 'cloth');
    expect(stockOf()?.placed).toEqual([{ piece: 'bust', x: 300, y: 100, angle: UP, isHeld: true }]);
    expect(seen()?.plan).toBeNull();
  });

  it('leave no trace in the project when all is as usual again', () => {
    const { store, actions } = openLaying();
    actions.setClothPrint('shell', { kind: 'checks', along: 80 }, 'print');
    expect(store.getState().project?.laying).toEqual({ shell: { print: { kind: 'checks', along: 80 } } });
    actions.setClothPrint('shell', { kind: undefined, along: undefined }, 'print');
    expect(store.getState().project).toEqual(projectForTests());
  });

  it('are turned about the middle of the piece', () => {
    const { show, seen } = openLaying();
    show(formOf());
    const rules = seen()?.rules;
    if (!rules) throw new Error('nothing to lay');
    // Half a turn of a rectangle about its own middle, which is its origin: it stays.
    const turned = turnOn(rules, laid('bust', 300));
    expect(Math.cos(turned.angle - UP)).toBeCloseTo(-1, 9);
    expect([turned.x, turned.y]).toEqual([300, 100]);
  });
});

describe('a print dragged over the plan', () => {
  it('moves its first motif where it is met nowhere', () => {
    const print = { kind: 'dots', along: 200, across: 90, firstAlong: 150, meets: 'no' } as const;
    expect(repeatShift(print, 70, -10)).toEqual({ firstAlong: 20, firstAcross: 80 });
  });

  it('moves the motif on the body where it is met: to the far end is up, to the upper selvedge the wearer’s right', () => {
    const print = { kind: 'checks', along: 80, across: 60 } as const;
    expect(repeatShift(print, 15, 12)).toEqual({ shiftUp: 15, shiftAcross: -12 });
    expect(repeatShift({ ...print, shiftUp: 35 }, 15, 0)).toEqual({ shiftUp: -30, shiftAcross: 0 });
  });
});

describe('a photo of the cloth', () => {
  const photo: ClothPhoto = {
    ...{ name: 'cloth.jpg', file: new Blob(['cloth']), width: 1200, height: 900 },
    ...{ mmPerPixel: null, repeat: null },
  };

  it('is scaled by two points: the sides of 3 and 4 hundred pixels are 5 hundred apart', () => {
    const scaled = scaleClothPhoto(
      photo,
      [
        [100, 200],
        [400, 600],
      ],
      250,
    );
    expect(scaled?.mmPerPixel).toBe(0.5);
    expect(scaled && repeatOfPhoto(scaled)).toEqual({ along: 450, across: 600 });
    expect(
      scaleClothPhoto(
        photo,
        [
          [5, 5],
          [9, 8],
        ],
        250,
      ),
    ).toBeNull();
    expect(repeatOfPhoto(photo)).toBeNull();
  });

  it('has the repeat dragged out on it, from any corner to the other and never beyond it', () => {
    const repeat = cropRepeat(photo, [500, 700], [100, 300]);
    expect(repeat).toEqual({ x: 100, y: 300, width: 400, height: 400 });
    expect(repeatOfPhoto({ ...photo, mmPerPixel: 0.25, repeat })).toEqual({ along: 100, across: 100 });
    expect(cropRepeat(photo, [-50, -50], [2000, 100])).toEqual({ x: 0, y: 0, width: 1200, height: 100 });
    expect(cropRepeat(photo, [10, 10], [12, 300])).toBeNull();
  });

  it('is kept with its body and brought back, and another body has its own', async () => {
    const kept = new Map<string, ClothPhoto>();
    const database = {
      clothPhotoOf: async (id: string) => kept.get(id) ?? null,
      putClothPhoto: async (id: string, one: ClothPhoto | null) => {
        if (one) kept.set(id, one);
        else kept.delete(id);
      },
    };
    const store = createAppStore();
    const actions = createActions(store);
    actions.openProject(projectForTests(), 'Open', { id: 'one' });
    keepClothPhoto(store, database, () => {});
    actions.setClothPhoto(photo);
    actions.openProject(projectForTests(), 'Open', { id: 'two' });
    expect(store.getState().clothPhoto).toBeNull();
    await vi.waitFor(() => expect(kept.get('one')).toEqual(photo));
    actions.openProject(projectForTests(), 'Open', { id: 'one' });
    await vi.waitFor(() => expect(store.getState().clothPhoto).toEqual(photo));
    actions.setClothPhoto(null);
    await vi.waitFor(() => expect(kept.has('one')).toBe(false));
  });
});

describe('the print on the body', () => {
  it('lies on each panel as on its piece: a panel with its top to the far end has the print upright', () => {
    const panels = [{ id: 'front' }, { id: 'back' }];
    // The motif's place, 100 above it, and 30 to the right of it as the piece is seen.
    const flat = [
      { positions: Float64Array.of(0, 20, 0, 120, 30, 20) },
      { positions: Float64Array.of(1, 2) },
    ];
    const form = { shell: { panels }, flat } as unknown as Form;
    const plan = {
      placed: [{ piece: 'front', x: 470, y: 260, angle: UP, sheet: 0, isHeld: false }],
    } as unknown as LayPlan;
    const tile = { along: 200, across: 60, firstAlong: 90, firstAcross: 20 };
    const [front, back] = printOnPanels(form, plan, tile as Parameters<typeof printOnPanels>[2]);
    // At 490 along, 260 across: two repeats and four from the first motif, whose middle is the tile's.
    expect([...front].map((at) => Math.round(1e4 * at) / 1e4)).toEqual([2.5, 4.5, 3, 4.5, 2.5, 4]);
    expect([...back]).toEqual([0, 0]);
  });
});

describe('a name on a piece', () => {
  it('stands where there is room, in more rows where it is narrow, and nowhere where it has none', () => {
    const oblong = (width: number, height: number) =>
      Float64Array.of(0, 0, width, 0, width, height, 0, height);
    expect(placeName(oblong(200, 40), 'centre front left', 10)).toMatchObject({
      rows: ['centre front left'],
      x: 100,
    });
    expect(placeName(oblong(50, 80), 'centre front left', 10).rows).toEqual(['centre', 'front', 'left']);
    expect(placeName(oblong(200, 8), 'centre front left', 10).rows).toEqual([]);
  });
});
