import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Clipper, EndType, FillRule, JoinType } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import type { Form } from '../../src/core/form/index.ts';
import type { Piece } from '../../src/core/pattern/index.ts';
import { makeForm } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { distanceTo, isInside } from '../pattern/brute-force.ts';

/** Micrometres, in which the polygon library reckons. */
const FINE = 1000;

function make(name: string): Form {
  const file = path.join(import.meta.dirname, `../../shared/demos/${name}.loftseam.json`);
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  const inside = { ...project.value.inside, recut: false };
  const form = makeForm({ ...project.value, inside }, { speaker: ENGLISH, targetTriangles: 3000 });
  if (!form.ok) throw new Error(form.issues.map(({ message }) => inEnglish(message)).join('\n'));
  return form.value;
}

const fine = (points: Float64Array) =>
  Array.from({ length: points.length / 2 }, (_, i) => ({
    x: Math.round(FINE * points[2 * i]),
    y: Math.round(FINE * points[2 * i + 1]),
  }));

/** Mean of the points, and the largest circle round it inside the closed line. */
function middleOf(points: Float64Array): { x: number; y: number; room: number } {
  const n = points.length / 2;
  let [x, y] = [0, 0];
  for (let i = 0; i < n; i++) [x, y] = [x + points[2 * i] / n, y + points[2 * i + 1] / n];
  return { x, y, room: isInside(points, x, y) ? distanceTo(points, true, x, y) : -1 };
}

describe.each(['average', 'petite', 'round-belly'])('%s', (name) => {
  const form = make(name);
  const inside = form.inside;
  if (!inside) throw new Error('no inside');
  const { pole } = inside.shape;
  const pieceOf = (id: string): Piece => {
    const piece = inside.pieces.find((one) => one.id === id);
    if (!piece) throw new Error(id);
    return piece;
  };
  const holeOf = (id: string, hole: string) => pieceOf(id).cutouts?.find((one) => one.id === hole)?.points;

  it('lets the pole through every board and foam it crosses: with play, and with no more than it needs', () => {
    for (const id of ['base-plate-1', 'base-plate-2', 'neck-plate-1', 'neck-plate-2']) {
      const hole = holeOf(id, 'pole');
      expect(hole, id).toBeDefined();
      // 0.5 to 1 mm of play on the diameter (common practice, no source); the circle's chords lie 0.02 mm inside.
      const { room } = middleOf(hole ?? new Float64Array());
      expect(room - pole.radius, id).toBeGreaterThan(0.2);
      expect(room - pole.radius, id).toBeLessThan(0.6);
    }
    // The sleeve goes with it through the neck's block: its girth round, C = 2πr.
    const { room } = middleOf(holeOf('neck-block-foot', 'pole') ?? new Float64Array());
    expect(Math.abs(room - pole.sleeveGirth / (2 * Math.PI))).toBeLessThan(0.05);
  });

  it('has the hole of the base where the pole stands: as far from front and back as in the opening, but for cloth and slope', () => {
    const opening = form.shell.openings.find(({ id }) => id === 'base');
    const ys = Array.from(opening?.vertices ?? [], (v) => form.shell.mesh.positions.slice(3 * v, 3 * v + 2))
      .filter(([x]) => Math.abs(x) < 15)
      .map(([, y]) => y);
    const hole = middleOf(holeOf('base-plate-1', 'pole') ?? new Float64Array());
    const rim = fine(pieceOf('base-plate-1').cutLine)
      .map(({ x, y }) => [x / FINE, y / FINE])
      .filter(([x]) => Math.abs(x - hole.x) < 15)
      .map(([, y]) => y);
    expect(Math.abs(Math.max(...rim) - hole.y - (Math.max(...ys) - pole.y))).toBeLessThan(6);
    expect(Math.abs(hole.y - Math.min(...rim) - (pole.y - Math.min(...ys)))).toBeLessThan(6);
  });

  it('turns the cloth of a cover in at every hole of its plate: fold on the hole, cuts up to a millimetre before it', () => {
    const plates = inside.pieces.filter(
      ({ id, cutouts }) => /-plate-1$|plate-(right|left)-1$/.test(id) && cutouts,
    );
    expect(plates.length).toBeGreaterThanOrEqual(2);
    for (const plate of plates) {
      const cover = inside.pieces.find(({ id }) => id === plate.id.replace(/-1$/, '-cover'));
      if (!cover) continue;
      // Magnets lie under the cover; everything else goes through it.
      for (const { id, points } of (plate.cutouts ?? []).filter((hole) => !hole.id.startsWith('magnet'))) {
        const fold = cover.sewLines.find((line) => line.name === `turn-${id}`);
        expect(fold, `${cover.id} ${id}`).toBeDefined();
        for (let i = 0; i < points.length; i += 2)
          expect(distanceTo(fold?.points ?? points, false, points[i], points[i + 1])).toBeLessThan(1e-6);
        const cuts = (cover.clips ?? []).filter((clip) => clip.id.includes(`-${id}`));
        expect(cuts.length).toBeGreaterThanOrEqual(5);
        for (const cut of cuts)
          for (let i = 0; i < 4; i += 2) {
            const away = distanceTo(points, true, cut.points[i], cut.points[i + 1]);
            expect(isInside(points, cut.points[i], cut.points[i + 1]) || away < 1e-6, cut.id).toBe(true);
          }
      }
    }
  });

  it('gives every tab a slot it goes through, with board on all sides (polygons by Clipper2)', () => {
    const tabs = inside.pieces.filter(({ id }) => /^tab-\d$/.test(id));
    const plate = pieceOf('base-plate-1');
    const slots = (plate.cutouts ?? []).filter(({ id }) => id.startsWith('tab-'));
    expect(slots.length).toBe(tabs.length);
    expect(tabs.length).toBeGreaterThanOrEqual(3);
    const width = Math.max(
      ...tabs[0].sewLines.flatMap(({ points }) => [...points].filter((_, i) => i % 2 === 0)),
    );
    // Side by side round the sleeve, not over each other.
    expect(4 * width).toBeLessThanOrEqual(pole.sleeveGirth);
    for (const { points } of slots) {
      const sides = [0, 1].map((k) =>
        Math.hypot(points[2 * k + 2] - points[2 * k], points[2 * k + 3] - points[2 * k + 1]),
      );
      expect(Math.max(...sides) - width).toBeGreaterThan(1);
      expect(Math.max(...sides) - width).toBeLessThan(4);
    }
    const paths = (plate.cutouts ?? []).map((hole) => fine(hole.points));
    const grown = paths.map((one) => Clipper.inflatePaths([one], 3 * FINE, JoinType.Round, EndType.Polygon));
    for (let i = 0; i < grown.length; i++) {
      const beyond = Clipper.difference(grown[i], [fine(plate.cutLine)], FillRule.NonZero);
      expect(beyond, `${plate.cutouts?.[i].id} lies in the plate`).toHaveLength(0);
      for (let j = 0; j < i; j++)
        expect(Clipper.intersect(grown[i], grown[j], FillRule.NonZero)).toHaveLength(0);
    }
  });
});
