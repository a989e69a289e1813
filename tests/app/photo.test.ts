/** Photos under the body: outline without perspective, two-point scale, and where they are kept. */
import { describe, expect, it, vi } from 'vitest';
import { addPhotos } from '../../src/app/services/add-photos.ts';
import {
  type AppState,
  createActions,
  createAppStore,
  markAtPlace,
  type Photo,
  placeNewPhoto,
  placeOfMark,
  scaleByMarks,
  silhouetteOfMesh,
} from '../../src/app/store/index.ts';
import { keepPhotos } from '../../src/app/store/keep-photos.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

const photo: Photo = {
  side: 'front',
  name: 'front.jpg',
  file: new Blob(['x']),
  width: 600,
  height: 1000,
  mmPerPixel: 2,
  x: 30,
  z: 200,
  opacity: 0.7,
  isFlipped: false,
};

describe('two points and their distance', () => {
  it('scale the photo, and the middle between them stays where it was', () => {
    const marks = [
      [200, 100],
      [500, 500],
    ] as const;
    // 3-4-5: the marks are 500 pixels apart; 750 mm make 1.5 mm a pixel.
    const scaled = scaleByMarks(photo, marks, 750)!;
    expect(scaled.mmPerPixel).toBeCloseTo(1.5, 12);
    const after = { ...photo, ...scaled };
    const [a, b] = marks.map((mark) => placeOfMark(after, mark));
    expect(Math.hypot(b[0] - a[0], b[1] - a[1])).toBeCloseTo(750, 9);
    const middle = [350, 300] as const;
    const [before, now] = [placeOfMark(photo, middle), placeOfMark(after, middle)];
    expect(now[0]).toBeCloseTo(before[0], 9);
    expect(now[1]).toBeCloseTo(before[1], 9);
  });

  it('are refused when they are one point', () => {
    expect(
      scaleByMarks(
        photo,
        [
          [100, 100],
          [105, 105],
        ],
        300,
      ),
    ).toBeNull();
  });

  it('are read back from where they lie, and stay on the photo', () => {
    expect(markAtPlace(photo, placeOfMark(photo, [12, 900]))).toEqual([12, 900]);
    expect(markAtPlace(photo, [1e6, -1e6])).toEqual([600, 1000]);
  });
});

it('a new photo lies round the body’s middle', () => {
  const place = placeNewPhoto(1000, { left: -100, right: 300, low: -200, high: 400 });
  expect(place).toMatchObject({ x: 100, z: 100 });
  expect(1000 * place.mmPerPixel).toBeGreaterThan(600);
});

describe('the outline seen straight on', () => {
  it('of a cone is as wide as its circle at every height, and leans as it leans', () => {
    // Circles of radius 100 − z/4 about (20, z/10), z = 0…200.
    const [round, rows] = [90, 11];
    const positions = new Float64Array(3 * round * rows);
    const triangles: number[] = [];
    for (let j = 0; j < rows; j++) {
      for (let i = 0; i < round; i++) {
        const [angle, z] = [(2 * Math.PI * i) / round, 20 * j];
        const r = 100 - z / 4;
        positions.set([20 + r * Math.cos(angle), z / 10 + r * Math.sin(angle), z], 3 * (j * round + i));
        if (j + 1 === rows) continue;
        const [a, b] = [j * round + i, j * round + ((i + 1) % round)];
        triangles.push(a, b, b + round, a, b + round, a + round);
      }
    }
    const mesh = { positions, triangles: Uint32Array.from(triangles) };
    const [front, side] = [silhouetteOfMesh(mesh, 'front'), silhouetteOfMesh(mesh, 'side')];
    for (const [k, z] of front.heights.entries()) {
      const r = 100 - z / 4;
      // 90 points a circle: a chord's sagitta is r (1 − cos 2°) < 0.07 mm.
      expect(Math.abs(front.left[k] - (-20 - r))).toBeLessThan(0.07);
      expect(Math.abs(front.right[k] - (-20 + r))).toBeLessThan(0.07);
      expect(Math.abs(side.right[k] - (z / 10 + r))).toBeLessThan(0.07);
    }
  });
});

describe('a photo chosen before there is a form', () => {
  const body = (store: ReturnType<typeof createAppStore>) => {
    const positions = Float64Array.of(-100, 0, -200, 100, 0, -200, 0, 0, 400);
    const closedMesh = { positions, triangles: Uint32Array.of(0, 1, 2) };
    store.setState({ form: { closedMesh } as unknown as AppState['form'] });
  };

  it('lies under the form as soon as that is there', async () => {
    vi.stubGlobal('createImageBitmap', async () => ({ width: 600, height: 1000, close: () => {} }));
    const store = createAppStore();
    const added = addPhotos(store, createActions(store)).addPhoto(new File(['x'], 'front.jpg'), 'front');
    await Promise.resolve();
    expect(store.getState().photos.front).toBeNull();
    body(store);
    await added;
    expect(store.getState().photos.front).toMatchObject({ name: 'front.jpg', x: 0, z: 100 });
    vi.unstubAllGlobals();
  });

  it('is refused at once when it is too large', async () => {
    const store = createAppStore();
    const large = Object.defineProperty(new File(['x'], 'large.jpg'), 'size', { value: 50_000_000 });
    await addPhotos(store, createActions(store)).addPhoto(large, 'front');
    expect(store.getState().notices.map(({ text }) => text)).toEqual([
      expect.stringContaining('50.0 MB; a photo may have 30 MB at most'),
    ]);
  });
});

describe('keeping photos', () => {
  it('puts each beside its body, and brings them back with it', async () => {
    vi.useFakeTimers();
    const store = createAppStore();
    const actions = createActions(store);
    actions.openProject(projectForTests(), 'Open', { id: 'one', isDemo: true });
    const kept = new Map<string, Photo>();
    const database = {
      photosOf: async (id: string) => ({
        photos: { front: kept.get(`${id} front`) ?? null, side: kept.get(`${id} side`) ?? null },
        unreadable: [],
      }),
      putPhoto: async (id: string, side: string, one: Photo | null) =>
        void (one ? kept.set(`${id} ${side}`, one) : kept.delete(`${id} ${side}`)),
    };
    const onTrouble = vi.fn();
    keepPhotos(store, actions, database, { onTrouble, onUnreadable: onTrouble });
    await vi.advanceTimersByTimeAsync(10);
    actions.addPhoto(photo);
    expect(store.getState()).toMatchObject({ stage: 'body', asOpened: null, view: { name: 'front' } });
    actions.changePhoto('front', { x: 5 });
    await vi.advanceTimersByTimeAsync(1000);
    expect(kept.get('one front')).toMatchObject({ x: 5 });
    actions.openProject(projectForTests(), 'Open', { id: 'two' });
    await vi.advanceTimersByTimeAsync(1000);
    expect(store.getState().photos.front).toBeNull();
    expect(kept.size).toBe(1);
    actions.openProject(projectForTests(), 'Open', { id: 'one' });
    await vi.advanceTimersByTimeAsync(1000);
    expect(store.getState().photos.front).toMatchObject({ x: 5 });
    actions.removePhoto('front');
    await vi.advanceTimersByTimeAsync(1000);
    expect(kept.size).toBe(0);
    expect(onTrouble).not.toHaveBeenCalled();
    vi.useRealTimers();
  });
});
