import { describe, expect, it, vi } from 'vitest';
import { keepPictures } from '../../src/app/keep-pictures.ts';
import { arePicturesAwaited, createActions, createAppStore } from '../../src/app/store/index.ts';
import { outlineShape } from '../../src/app/worker/outline-shape.ts';
import { createShapeSketcher } from '../../src/app/worker/sketch-shape.ts';
import { fitBody, shapeCategoriesOf } from '../../src/core/body/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import type { Project } from '../../src/core/project/index.ts';
import { LAYOUTS } from '../../src/core/seams/index.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

const OUTLINE = Float64Array.of(0, 0, 1, 0, 1, 1);
const SKETCH = { lines: [OUTLINE], strain: 0.02, cloth: 1400, hours: 9 };

/** A page with pictures kept, and a worker that answers when it is let. */
function openOn(project: Project) {
  const store = createAppStore({ project });
  const actions = createActions(store);
  const waiting: (() => void)[] = [];
  const answer = <T>(value: T) => new Promise<T>((done) => waiting.push(() => done(value)));
  const worker = {
    sketchLayout: vi.fn((_project: Project, id: string) => answer(id === 'upright8' ? null : SKETCH)),
    sketchShape: vi.fn((_project: Project, _category: string, _choice: string | null) => answer(OUTLINE)),
    outlineShape: vi.fn((_project: Project, _category: string, _choice: string | null) => answer(OUTLINE)),
  };
  keepPictures(store, actions, worker);
  const letAnswer = async (count: number) => {
    for (let i = 0; i < count; i++) {
      waiting.shift()?.();
      await new Promise((done) => setTimeout(done));
    }
  };
  const make = (quality: 'quick' | 'full', stages: string[] = []) =>
    actions.receiveForm({ project, stages } as unknown as Form, store.getState().project!, quality);
  const isReady = () => !arePicturesAwaited(store.getState());
  return { store, worker, letAnswer, make, isReady };
}

describe('small pictures of what may be chosen', () => {
  const project = projectForTests();
  const categories = shapeCategoriesOf('bust', {});
  const count = categories.reduce((sum, { choices }) => sum + choices.length + 1, 0);

  it('of layouts are asked for from the first rough form on, and awaited to the last, fitting or not', async () => {
    const { store, worker, letAnswer, make, isReady } = openOn(project);
    store.setState({ stage: 'seams' });
    expect(worker.sketchLayout).not.toHaveBeenCalled();
    make('quick');
    await letAnswer(LAYOUTS.length - 1);
    expect(isReady()).toBe(false);
    await letAnswer(1);
    expect(isReady()).toBe(true);
    expect(worker.sketchLayout.mock.calls.map(([, id]) => id)).toEqual(LAYOUTS.map(({ id }) => id));
    expect(store.getState().sketches?.layouts.upright8).toBeNull();
  });

  it('of shape come roughly first, those seen first before others; better ones when nothing else is waited for', async () => {
    const { store, worker, letAnswer, make, isReady } = openOn(project);
    store.setState({ stage: 'body' });
    make('quick');
    await letAnswer(count - 1);
    expect(isReady()).toBe(false);
    await letAnswer(1);
    expect(isReady()).toBe(true);
    const asked = worker.sketchShape.mock.calls.map(([, category]) => category);
    expect(new Set(asked)).toEqual(new Set(categories.map(({ id }) => id)));
    const partOf = new Map<string, string>(categories.map(({ id, part }) => [id, part]));
    const lastSeen = asked.findLastIndex((id) => /^(posture|belly)$/.test(partOf.get(id) ?? ''));
    expect(asked.findIndex((id) => !/^(posture|belly)$/.test(partOf.get(id) ?? ''))).toBe(lastSeen + 1);
    make('full');
    await letAnswer(3);
    expect(worker.outlineShape).not.toHaveBeenCalled();
    make('full', ['filling']);
    await letAnswer(count);
    expect(worker.outlineShape).toHaveBeenCalledTimes(count);
    await letAnswer(3);
    make('full', ['filling']);
    expect(worker.outlineShape).toHaveBeenCalledTimes(count);
    expect(worker.sketchShape).toHaveBeenCalledTimes(count);
  });

  it('are left when something else is looked at, and gone on with later; another body has pictures of its own', async () => {
    const { store, worker, letAnswer, make, isReady } = openOn(project);
    store.setState({ stage: 'seams' });
    make('quick');
    await letAnswer(2);
    store.setState({ stage: 'tape' });
    await letAnswer(5);
    expect(worker.sketchLayout).toHaveBeenCalledTimes(3);
    expect(isReady()).toBe(true);
    const other = { ...project, body: { ...project.body } };
    store.setState({ stage: 'seams', project: other });
    expect(isReady()).toBe(false);
    await letAnswer(3);
    expect(worker.sketchLayout).toHaveBeenCalledTimes(3);
    make('quick');
    await letAnswer(LAYOUTS.length);
    expect(isReady()).toBe(true);
    expect(store.getState().sketches?.body).toBe(other.body);
  });
});

describe('a shape sketched', () => {
  const { body: input } = projectForTests();
  const fitted = fitBody(input, undefined, { fair: true });
  if (!fitted.ok) throw new Error('no body');
  const sketch = createShapeSketcher();

  it('is the body itself without a choice, and as the present answer makes it', () => {
    const now = outlineShape(input, fitted.value, 'belly', null)!;
    expect(sketch(input, fitted.value, 'belly', null)).toEqual(now);
    const usual = shapeCategoriesOf('bust', {}).find(({ id }) => id === 'belly')!.usual as string;
    const same = sketch(input, fitted.value, 'belly', usual)!;
    expect(mostApart(same, now)).toBeLessThan(0.5);
    expect(sketch(input, fitted.value, 'no such question', null)).toBeNull();
  });

  // What it stands for until then is the outline of the body fitted anew and made smooth.
  it.each(['belly', 'seat', 'waistSection'])('shows what the choices of %s do', (category) => {
    const now = outlineShape(input, fitted.value, category, null)!;
    const { choices } = shapeCategoriesOf('bust', {}).find(({ id }) => id === category)!;
    for (const { id } of choices) {
      const finer = outlineShape(input, fitted.value, category, id)!;
      const effect = mostApart(finer, now);
      expect(mostApart(sketch(input, fitted.value, category, id)!, finer), id).toBeLessThan(
        Math.max(2, 0.4 * effect),
      );
    }
  });
});

/** Of points with the same number, mm. */
function mostApart(a: Float64Array, b: Float64Array): number {
  let most = 0;
  for (let i = 0; i < a.length; i += 2) most = Math.max(most, Math.hypot(a[i] - b[i], a[i + 1] - b[i + 1]));
  return most;
}
