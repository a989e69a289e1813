import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Form, WorkStep } from '../../src/core/form/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { LAYOUTS } from '../../src/core/seams/index.ts';
import { DEMO_IDS } from '../body/read-demo.ts';
import { inEnglish } from '../in-english.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

function formOf(demo: string, layout?: string, inside = {}): Form {
  const raw = JSON.parse(readFileSync(`shared/demos/${demo}.loftseam.json`, 'utf8'));
  const seams = layout === undefined ? raw.seams : { layout };
  const project = parseProject(JSON.stringify({ ...raw, seams, inside: { ...raw.inside, ...inside } }));
  if (!project.ok)
    throw new Error(
      project.issues
        .map(({ message }) => message)
        .map(inEnglish)
        .join('\n'),
    );
  const form = sharedPipeline.makeForm(project.value, COARSE);
  if (!form.ok)
    throw new Error(
      form.issues
        .map(({ message }) => message)
        .map(inEnglish)
        .join('\n'),
    );
  return form.value;
}

const orderOfWork = (form: Form): readonly WorkStep[] => form.making?.steps ?? [];

const shellSeams = (steps: readonly WorkStep[]) =>
  steps.flatMap(({ seams }) => seams).filter(({ kind }) => kind === 'shell');

/**
 * Judges by the triangles alone: the panels' meshes with their points made one along the seams sewn so far.
 * Per part: V − E + F, which is 1 for a disk (Euler). Knows nothing of corners or seam ends.
 */
function partsAfter(form: Form, sewn: ReadonlySet<string>): number[] {
  const { panels } = form.shell;
  const offset = panels.map((_, i) => panels.slice(0, i).reduce((sum, p) => sum + p.sourceVertex.length, 0));
  const total = panels.reduce((sum, p) => sum + p.sourceVertex.length, 0);
  const one = Int32Array.from({ length: total }, (_, i) => i);
  const root = (i: number): number => {
    while (one[i] !== i) i = one[i];
    return i;
  };
  for (const seam of form.shell.seams) {
    if (!sewn.has(seam.id)) continue;
    // Copies of the seam's points, told apart by the edge they lie on: a panel may meet itself.
    const copies = panels.flatMap((panel, i) =>
      panel.edges
        .filter((edge) => edge.kind === 'seam' && edge.id === seam.id)
        .map((edge) => new Map([...edge.vertices].map((v) => [panel.sourceVertex[v], offset[i] + v]))),
    );
    for (const [source, a] of copies[0]) {
      const b = copies[1].get(source);
      if (b !== undefined) one[root(a)] = root(b);
    }
  }
  const part = Int32Array.from({ length: total }, (_, i) => i);
  const partOf = (i: number): number => {
    while (part[i] !== i) i = part[i];
    return i;
  };
  const edges = new Map<string, number>();
  const faces: number[] = [];
  panels.forEach((panel, i) => {
    const { triangles } = panel.mesh;
    for (let t = 0; t < triangles.length; t += 3) {
      const corners = [0, 1, 2].map((k) => root(offset[i] + triangles[t + k]));
      corners.forEach((a, k) => {
        const b = corners[(k + 1) % 3];
        edges.set(a < b ? `${a}-${b}` : `${b}-${a}`, a);
        part[partOf(a)] = partOf(b);
      });
      faces.push(corners[0]);
    }
  });
  const euler = new Map<number, number>();
  const add = (vertex: number, by: number) => {
    const key = partOf(vertex);
    euler.set(key, (euler.get(key) ?? 0) + by);
  };
  for (const vertex of new Set(Array.from({ length: total }, (_, i) => root(i)))) add(vertex, 1);
  for (const vertex of edges.values()) add(vertex, -1);
  for (const vertex of faces) add(vertex, 1);
  return [...euler.values()];
}

/** Seams whose points lie on a level's loop. */
function seamsAcross(form: Form, levelId: string): string[] {
  const level = form.shell.levels.find(({ id }) => id === levelId);
  const loop = new Set(level?.vertices);
  return form.shell.seams
    .filter(({ points, alongLevel }) => alongLevel !== levelId && points.some((v) => loop.has(v)))
    .map(({ id }) => id);
}

function checkOrder(form: Form): void {
  const steps = orderOfWork(form);
  const place = new Map(steps.map(({ id }, i) => [id, i]));

  // 1. Steps have names of their own, and none needs what comes later.
  expect(place.size).toBe(steps.length);
  steps.forEach((step, i) => {
    for (const need of step.needs)
      expect(place.get(need) ?? Infinity, `${step.id} needs ${need}`).toBeLessThan(i);
  });

  // 2. Every seam of the shell exactly once.
  const order = shellSeams(steps).map(({ id }) => id);
  expect(order.toSorted()).toEqual(form.shell.seams.map(({ id }) => id).toSorted());

  // 3. What is said to lie flat does, by the triangles; and front and back all do.
  const sewn = new Set<string>();
  for (const seam of shellSeams(steps)) {
    const ringsBefore = partsAfter(form, sewn).reduce((sum, euler) => sum + 1 - euler, 0);
    sewn.add(seam.id);
    const parts = partsAfter(form, sewn);
    const rings = parts.reduce((sum, euler) => sum + 1 - euler, 0);
    expect(
      parts.every((euler) => euler === 1),
      seam.id,
    ).toBe(seam.isFlat);
    expect(rings > ringsBefore, seam.id).toBe(seam.closesRing);
  }
  for (const id of ['sew-front', 'sew-back']) {
    const own = steps[place.get(id) ?? -1]?.seams ?? [];
    expect(own.length).toBeGreaterThan(0);
    expect(own.every(({ isFlat }) => isFlat)).toBe(true);
  }
  // The finished shell is one sphere less base, neck and two armholes: 2 − 4.
  expect(partsAfter(form, sewn)).toEqual([-2]);

  // 4. Webs and sleeve while everything lies flat and every girth is open; the closing seams last.
  const closing = place.get('sew-closing') ?? -1;
  const inner = ['sew-sleeve', 'sew-inner-front', 'sew-inner-back'].map((id) => place.get(id) ?? Infinity);
  const before = shellSeams(steps.slice(0, Math.max(...inner)));
  expect(before.every(({ isFlat }) => isFlat)).toBe(true);
  const sewnBeforeClosing = new Set(shellSeams(steps.slice(0, closing)).map(({ id }) => id));
  for (const { id } of form.shell.levels) {
    if (id === 'upperChest') continue;
    const across = seamsAcross(form, id);
    expect(across.length, id).toBeGreaterThan(0);
    expect(
      across.every((seam) => sewnBeforeClosing.has(seam)),
      `${id} is still open`,
    ).toBe(false);
  }
  const last = order[order.length - 1];
  expect(steps[closing].seams.map(({ id }) => id)).toContain(last);
  expect(shellSeams(steps.slice(closing + 1))).toEqual([]);
  // Every edge of webs and ties that is sewn to the shell comes before the shell is closed.
  expect(Math.max(...inner)).toBeLessThan(closing);

  // 5. Every edge of every brace once, by its letter: on the sleeve with its partner, else one seam of its own.
  const { braces } = form.inside!.shape;
  for (const { id, to } of braces) {
    const { sewLines } = form.inside!.pieces.find((piece) => piece.id === id)!;
    const edges = sewLines.filter(({ name }) => /^[A-Z]{1,3}$/.test(name));
    expect(edges.length, id).toBeGreaterThanOrEqual(2);
    for (const { id: edge, name: letter } of edges) {
      const onSleeve = to === 'sleeve' && edge.startsWith('sleeve-');
      const places = steps.flatMap((step, k) =>
        step.seams
          .filter((seam) => (onSleeve ? seam.letter === letter : seam.id === `${id}/${edge}`))
          .map(() => k),
      );
      expect(places.length, `${id} ${letter}`).toBe(1);
      expect(places[0]).toBeLessThan(closing);
      expect(steps[places[0]].pieces.some((piece) => piece.id === id)).toBe(true);
    }
  }
  // Throat webs go on to the sleeve before it is closed, then to the front while that still lies open.
  for (const { id } of braces.filter(({ kind }) => kind === 'throat')) {
    const homes = ['sew-sleeve', 'sew-inner-front', 'sew-inner-back'].filter((step) =>
      steps[place.get(step) ?? -1].pieces.some((piece) => piece.id === id),
    );
    expect(homes).toEqual(['sew-sleeve', 'sew-inner-front']);
    const checks = steps[place.get('sew-inner-front') ?? -1].checks;
    expect(checks.filter((check) => check.id.startsWith(id)).length).toBe(2);
  }
}

describe('order of work', () => {
  test.each(LAYOUTS.map(({ id }) => id))('layout %s can be sewn in it', (layout) => {
    checkOrder(formOf('uneven-shoulders', layout));
  });

  test.each(DEMO_IDS)('demo %s can be sewn in it', (demo) => {
    checkOrder(formOf(demo));
  });

  test('webs on seams, one of them still open, are told so', () => {
    const form = formOf('average', 'upright6', { webPlaces: 'seams' });
    checkOrder(form);
    const inner = orderOfWork(form).filter(({ id }) => id.startsWith('sew-inner'));
    const onPrincessBack = inner
      .flatMap(({ seams }) => seams)
      .filter(({ id }) => id.includes('princessBack'));
    expect(onPrincessBack.length).toBe(2);
    for (const { note } of onPrincessBack) expect(note && inEnglish(note)).toContain('one edge alone');
  });

  test('numbers are those of this form', () => {
    const form = formOf('average', 'upright8Waist');
    const steps = orderOfWork(form);
    const check = (step: string, id: string) =>
      steps.find((s) => s.id === step)?.checks.find((c) => c.id === id)?.value ?? Number.NaN;
    for (const { id, lengthFlat } of form.report.levels) {
      // Front and back together go round; the empty shell laid flat is half of it.
      expect(check('sew-front', `width-${id}`) + check('sew-back', `width-${id}`)).toBeCloseTo(lengthFlat, 3);
      expect(2 * check('sew-closing', `flat-${id}`)).toBeCloseTo(lengthFlat, 6);
    }
    // The bust girth that was typed, within what a tape reads.
    const typed = form.project.body.measures.bustGirth as number;
    expect(check('fill-bust-underbust', 'girth-bust')).toBeCloseTo(typed, 0);
    // Both edges of every seam, as a tape would take them on the flat panels.
    for (const seam of shellSeams(steps)) {
      expect(Math.abs(seam.lengths[0] - seam.lengths[1]), seam.id).toBeLessThan(1);
    }
    // A web's edge is as long as the line it is sewn to.
    const pairs = steps
      .flatMap(({ seams }) => seams)
      .filter((s) => s.kind === 'inner' && s.lengths.length === 2);
    expect(pairs.length).toBeGreaterThan(3);
    for (const { id, lengths } of pairs) expect(Math.abs(lengths[0] - lengths[1]), id).toBeLessThan(1);
    // A plate is 2π times the cloth in between (three layers of 0.6 mm) shorter round than the seam line (Steiner).
    const roundPlate = check('boards', 'plate-base') + 2 * Math.PI * 1.8;
    expect(Math.abs(roundPlate - check('boards', 'edge-base'))).toBeLessThan(0.5);
    // Zones hold all the filling there is.
    const mass = steps.flatMap(({ checks }) => checks).filter(({ id }) => id === 'mass');
    const fill = form.inside?.fill;
    expect(mass.reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(
      ((fill?.low ?? 0) + (fill?.high ?? 0)) / 2,
      6,
    );
    expect(check('print', 'bar-across')).toBe(180);
    expect(check('print', 'bar-up')).toBe(200);
  });

  test('cautions stand where it can hurt', () => {
    const steps = orderOfWork(formOf('average'));
    const has = (step: string, caution: string) =>
      steps.find(({ id }) => id === step)?.cautions.some(({ id }) => id === caution) ?? false;
    expect(has('cut', 'blades')).toBe(true);
    expect(has('cloth', 'iron')).toBe(true);
    expect(has('boards', 'glue')).toBe(true);
    expect(has('magnets', 'magnets')).toBe(true);
    expect(has('stand', 'tipping')).toBe(true);
    expect(has('fill-top-upperChest', 'dust')).toBe(true);
    // What people break: fuse before cutting, plates and pole before filling, polarity before glue, print before cloth.
    const place = (id: string) => steps.findIndex((step) => step.id === id);
    expect(place('print')).toBeLessThan(place('cloth'));
    expect(place('cloth')).toBeLessThan(place('cut'));
    expect(place('magnets')).toBeLessThan(place('plates'));
    expect(place('pole')).toBeLessThan(place('fill-top-upperChest'));
    expect(place('trial')).toBeLessThan(place('cut'));
  });
});
