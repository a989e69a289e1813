import { expect } from 'vitest';
import type { Form, WorkStep } from '../../src/core/form/index.ts';
import { inEnglish } from '../in-english.ts';

export const orderOfWork = (form: Form): readonly WorkStep[] => form.making?.steps ?? [];

export const shellSeams = (steps: readonly WorkStep[]) =>
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

/** Judges an order of work by graphs of seams and pieces of its own; what proves orders while they are made is not asked. */
export function checkOrder(form: Form): void {
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
  // A back of two halves without seams of their own has no step.
  expect(steps[place.get('sew-front') ?? -1]?.seams.length).toBeGreaterThan(0);
  for (const id of ['sew-front', 'sew-back']) {
    const own = steps[place.get(id) ?? -1]?.seams ?? [];
    expect(own.every(({ isFlat }) => isFlat)).toBe(true);
  }
  // The finished shell is one sphere less base, neck and two armholes: 2 − 4.
  expect(partsAfter(form, sewn)).toEqual([-2]);

  // 4. The last seam lies in the middle of the back, and until it is sewn the shell is open there from base to neck.
  const last = order[order.length - 1];
  const closing = steps.findIndex(({ seams }) => seams.some(({ id }) => id === last));
  expect(shellSeams(steps.slice(closing + 1))).toEqual([]);
  const closed = shellSeams(steps.slice(closing, closing + 1)).map(({ id }) => id);
  const { positions } = form.shell.mesh;
  const points = form.shell.seams.filter(({ id }) => closed.includes(id)).flatMap((seam) => [...seam.points]);
  for (const v of points) {
    expect(Math.abs(positions[3 * v])).toBeLessThan(30);
    expect(positions[3 * v + 1]).toBeLessThan(0);
  }
  for (const opening of ['base', 'neck']) {
    const edge = form.shell.openings.find(({ id }) => id === opening)?.vertices ?? [];
    expect(
      points.some((v) => [...edge].includes(v)),
      opening,
    ).toBe(true);
  }
  for (const { id } of form.shell.levels) {
    expect(
      seamsAcross(form, id).some((seam) => closed.includes(seam)),
      id,
    ).toBe(true);
  }

  // 5. Every edge of every brace once, by its id, before the shell is closed but for those on the last seam's allowances.
  const { braces } = form.inside!.shape;
  const stepsOf = (seam: string) =>
    steps.flatMap(({ seams }, k) => (seams.some(({ id }) => id === seam) ? [k] : []));
  for (const { id } of braces) {
    const { sewLines } = form.inside!.pieces.find((piece) => piece.id === id)!;
    const edges = sewLines.filter(({ name }) => /^[A-Z]{1,3}$/.test(name));
    expect(edges.length, id).toBeGreaterThanOrEqual(2);
    for (const { id: edge, name: letter } of edges) {
      const inSleeve = steps[place.get('sew-sleeve') ?? -1].seams;
      const caught =
        edge === `sleeve-${id}` &&
        inSleeve.some((seam) => seam.id === 'pole-sleeve/sleeve-closing' && seam.letter === letter);
      const own = stepsOf(caught ? 'pole-sleeve/sleeve-closing' : `${id}/${edge}`);
      expect(own.length, `${id} ${letter}`).toBe(1);
      expect(own[0]).toBeLessThan(closed.includes(edge) ? closing + 2 : closing);
      expect(steps[own[0]].pieces.some((piece) => piece.id === id)).toBe(true);
    }
  }
  // Throat webs go on to the sleeve before it is closed, then to the front while that still lies open.
  for (const { id } of braces.filter(({ kind }) => kind === 'throat')) {
    const homes = steps.filter(
      ({ id: step, pieces }) => step.startsWith('sew-') && pieces.some((p) => p.id === id),
    );
    expect(homes.map((step) => step.id)).toEqual(['sew-sleeve', 'sew-inner-front']);
    const checks = steps[place.get('sew-inner-front') ?? -1].checks;
    expect(checks.filter((check) => check.id.startsWith(id)).length).toBe(2);
  }

  // 6. Every piece is cut in one step and used in a later one; every seam has a name of its own, and a letter of the shell one seam.
  const cutting = ['cut', 'boards', 'test-tube'].map((id) => steps[place.get(id) ?? -1]);
  for (const { id } of [...form.pieces, ...form.inside!.pieces]) {
    const homes = cutting.filter(({ pieces }) => pieces.some((piece) => piece.id === id));
    expect(homes.map((step) => step.id).length, id).toBe(1);
    const used = steps.filter(
      ({ pieces }, k) => k >= steps.indexOf(homes[0]) && pieces.some((piece) => piece.id === id),
    );
    expect(used.length, `${id} is used`).toBeGreaterThan(
      homes[0].id === 'test-tube' || /^neck-block/.test(id) ? 0 : 1,
    );
  }
  const names = steps.flatMap(({ seams }) => seams.map(({ name }) => inEnglish(name)));
  expect(names.filter((name, k) => names.indexOf(name) !== k)).toEqual([]);
  const letters = shellSeams(steps).map(({ letter }) => letter);
  expect(new Set(letters).size).toBe(letters.length);

  // 7. A caution stands once, where a thing is first done that calls for it.
  const told = steps.flatMap(({ id, cautions }) => cautions.map((caution) => `${caution.id} at ${id}`));
  expect(new Set(told.map((one) => one.split(' ')[0])).size).toBe(told.length);
  expect(form.report.issues.filter(({ code }) => code === 'order-of-work')).toEqual([]);
}
