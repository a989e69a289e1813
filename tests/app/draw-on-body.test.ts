/** Points drawn on the body: what they catch on, the seam they become, and the steps they make. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { catchPlace, surfaceDrawnOn } from '../../src/app/store/catch-place.ts';
import { createActions, createAppStore, historyOf } from '../../src/app/store/index.ts';
import { lineFromPoints, traceDrawnLine } from '../../src/app/store/line-from-points.ts';
import type { Form } from '../../src/core/form/index.ts';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { findLayout, type SeamLine } from '../../src/core/seams/index.ts';
import { words as english } from '../../src/language/english/app.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

const file = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
const read = parseProject(readFileSync(file, 'utf8'));
if (!read.ok) throw new Error(inEnglish(read.issues[0].message));
const project = { ...read.value, seams: { layout: 'upright8' } };
const { lines } = findLayout('upright8')!;
const pipeline = createPipeline();
const make = (own: readonly SeamLine[]): Form => {
  const options = { speaker: ENGLISH, targetTriangles: 3000, isDraft: true };
  const made = pipeline.makeForm({ ...project, seams: { lines: own } }, options);
  if (!made.ok)
    throw new Error(
      made.issues
        .map(({ message }) => message)
        .map(inEnglish)
        .join(' '),
    );
  return made.value;
};
const form = make(lines);
const { landmarks, levels, shape } = form.body;
const [low] = shape.vRange;
const level = (id: string) => levels.find((one) => one.id === id)!.v;
const at = (u: number, v: number) => ({ u, v, caughtOn: '' });

/** mm from a drawn point to the nearest vertex of a seam. */
function distanceTo(made: Form, lineId: string, point: { u: number; v: number }): number {
  const [x, y, z] = surfaceDrawnOn(made).evaluate(Float64Array.of(point.u, point.v));
  const { positions } = made.shell.mesh;
  const seams = made.shell.seams.filter((seam) => seam.lineId === lineId);
  expect(seams.length).toBeGreaterThan(0);
  return Math.min(
    ...seams.flatMap((seam) =>
      Array.from(seam.points, (v) =>
        Math.hypot(positions[3 * v] - x, positions[3 * v + 1] - y, positions[3 * v + 2] - z),
      ),
    ),
  );
}

/** mm from a point in space to a polyline n × 3. */
function measureDistanceToPolyline(point: ArrayLike<number>, line: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 3 < line.length; i += 3) {
    const along = [0, 1, 2].map((k) => line[i + 3 + k] - line[i + k]);
    const to = [0, 1, 2].map((k) => point[k] - line[i + k]);
    const dot = (a: number[], b: number[]) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    const t = Math.max(0, Math.min(1, dot(to, along) / dot(along, along)));
    least = Math.min(least, Math.hypot(...to.map((x, k) => x - t * along[k])));
  }
  return least;
}

describe('a line drawn on the body', () => {
  it('becomes a seam through the points, in whichever order they were drawn', () => {
    const points = [at(1.25, level('bust') - 20), at(1.25, level('waist')), at(1.3, low + 9)];
    const top = at(1.2, landmarks.neckFront.v);
    const line = lineFromPoints(form, [top, ...points], lines, english.ownLines);
    if (!line.ok) throw new Error(inEnglish(line.issues[0].message));
    expect(line.value.through).toHaveLength(4);
    const made = make([...lines, line.value]);
    expect(made.shell.panels.length).toBe(form.shell.panels.length + 2);
    // Vertices of a seam lie some 20 mm apart on so coarse a mesh: the nearest is within half of that.
    for (const point of points.slice(0, 2)) expect(distanceTo(made, 'own1', point)).toBeLessThan(11);
  });

  it('is shown where it will be cut, not straight in the chart', () => {
    const points = [at(1.2, low + 9), at(1.4, level('waist')), at(1.2, landmarks.neckFront.v)];
    const line = lineFromPoints(form, points, lines, english.ownLines);
    const shown = traceDrawnLine(form, points, english.ownLines);
    if (!line.ok || !shown) throw new Error('no line');
    const made = make([...lines, line.value]);
    const places = surfaceDrawnOn(made).evaluate(shown);
    const { positions } = made.shell.mesh;
    const seams = made.shell.seams.filter(
      (seam) => seam.lineId === 'own1' && !/Left|left/.test(inEnglish(seam.name)),
    );
    const vertices = seams.flatMap((seam) => Array.from(seam.points)).filter((v) => positions[3 * v] > 0);
    expect(vertices.length).toBeGreaterThan(10);
    // Chords of 2 mm: at the crease of the neck's base they leave the curve by a tenth of a millimetre.
    for (const v of vertices) {
      const distance = measureDistanceToPolyline(positions.subarray(3 * v, 3 * v + 3), places);
      expect(distance).toBeLessThan(0.2);
    }
    // Half way up to the waist the straight line of the chart lies elsewhere.
    const half = (low + level('waist')) / 2;
    const i = shown.findIndex((value, k) => k % 2 === 1 && value > half);
    expect(140 * Math.abs(shown[i - 1] - (1.2 + 1.4) / 2)).toBeGreaterThan(2);
    expect(
      traceDrawnLine(form, [at(1.25, low + 5), at(1.25, level('waist') + 60)], english.ownLines),
    ).toBeNull();
  });

  it('becomes a level seam when it goes round rather than up', () => {
    const height = level('waist') + 40;
    const points = [at(Math.PI / 2 - 0.02, height), at(landmarks.armpitRight.u + 0.02, height + 4)];
    const line = lineFromPoints(form, points, lines, english.ownLines);
    if (!line.ok) throw new Error(inEnglish(line.issues[0].message));
    expect(line.value.alongHeight).toBeDefined();
    const made = make([...lines, line.value]);
    const seams = made.shell.seams.filter((seam) => seam.lineId === 'own1');
    expect(seams.length).toBeGreaterThan(0);
    expect(seams.every((seam) => seam.isLevel)).toBe(true);
    const spreadOf = (values: Float64Array, stride: number) => {
      const found = seams.flatMap((seam) => Array.from(seam.points, (v) => values[stride * v + stride - 1]));
      return Math.max(...found) - Math.min(...found);
    };
    expect(spreadOf(made.shell.chart, 2)).toBeLessThan(1e-9);
    // Rows of the chart between the body's levels are level to a millimetre.
    expect(spreadOf(made.shell.mesh.positions, 3)).toBeLessThan(1);
  });

  it('is refused with a loose end, and with one point', () => {
    const loose = lineFromPoints(
      form,
      [at(1.25, low + 5), at(1.25, level('waist') + 60)],
      lines,
      english.ownLines,
    );
    expect(loose.ok).toBe(false);
    expect(inEnglish(loose.issues[0].message)).toContain('Both ends must lie on something');
    expect(lineFromPoints(form, [at(1.1, low)], lines, english.ownLines).ok).toBe(false);
  });

  it('takes a name no other line has', () => {
    const own = { id: 'own1', name: 'own line 1', side: 'right', through: [] } as const;
    const line = lineFromPoints(
      form,
      [at(1.1, low + 5), at(1.1, shape.vRange[1] - 5)],
      [...lines, own],
      english.ownLines,
    );
    expect(line.ok && line.value.id).toBe('own2');
  });
});

const speech = { words: english, say: inEnglish };

describe('a place pointed at', () => {
  const near = { u: landmarks.bustPointLeft.u + 0.01, v: landmarks.bustPointLeft.v + 2 };

  it('catches on a landmark of its own side for a region, and on the right one for a line', () => {
    const region = catchPlace(form, 'region', near, 8, speech);
    expect(region.u).toBeCloseTo(landmarks.bustPointLeft.u, 6);
    expect(region.v).toBeCloseTo(landmarks.bustPointLeft.v, 6);
    expect(region.caughtOn).toMatch(/bust/);
    expect(catchPlace(form, 'line', near, 8, speech).u).toBeCloseTo(landmarks.bustPointRight.u, 6);
  });

  it('stays where it is when catching is off', () => {
    const free = catchPlace(form, 'region', near, 0, speech);
    expect(Math.cos(free.u - near.u)).toBeCloseTo(1, 12);
    expect(free.v).toBeCloseTo(near.v, 9);
    expect(free.caughtOn).toBe('');
  });
});

describe('drawing', () => {
  const openStore = () => {
    const store = createAppStore();
    const actions = createActions(store);
    actions.openProject(projectForTests(), 'Open');
    store.temporal.getState().clear();
    return { store, actions };
  };

  it('is undone point by point, with moves of one point as one step', () => {
    const { store, actions } = openStore();
    actions.addDrawnPoint('region', at(1, 100));
    actions.addDrawnPoint('region', at(1.2, 100));
    for (const v of [101, 102, 103]) actions.moveDrawnPoint('region', 1, at(1.2, v));
    expect(historyOf(store).undo).toBe('Move point 2 of the region');
    actions.undo();
    expect(store.getState().drawn.region[1]).toEqual(at(1.2, 100));
    expect(historyOf(store).undo).toBe('Draw point 2 of the region');
    actions.undo();
    expect(store.getState().drawn.region).toHaveLength(1);
    actions.redo();
    expect(store.getState().drawn.region).toHaveLength(2);
    actions.clearDrawn('region');
    expect(historyOf(store).undo).toBe('Wipe the region away');
    expect(store.getState().project).toEqual(projectForTests());
  });

  it('drags as one step, and a sewn line leaves the drawing in the same step', () => {
    const { store, actions } = openStore();
    actions.addDrawnPoint('line', at(1, 0));
    actions.holdDrawnPoint(0, at(1, 10));
    actions.holdDrawnPoint(0, at(1, 20));
    expect(store.getState().drawn.line[0]).toEqual(at(1, 0));
    actions.letDrawnPointGo('line');
    expect(store.getState().drawn.line[0]).toEqual(at(1, 20));
    actions.sewDrawnLine(lines, 'Sew in own line 1');
    expect(store.getState().drawn.line).toEqual([]);
    actions.undo();
    expect(store.getState().drawn.line).toEqual([at(1, 20)]);
    expect(store.getState().project?.seams).toEqual({});
  });
});
