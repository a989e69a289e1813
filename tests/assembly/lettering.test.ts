import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { cornersOfText, makeText } from '../../src/core/drawing/index.ts';
import { NOTCH_SHAPES, type Piece } from '../../src/core/pattern/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

type Point = readonly [number, number];

/** Whether two segments cross, by the signs of four areas. */
function doCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) =>
    Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Every line of a piece as segments. */
function segmentsOf(piece: Piece): [Point, Point][] {
  const open = [...piece.sewLines, ...piece.levelLines, ...piece.notches, ...(piece.clips ?? [])];
  const lines: [Float64Array, boolean][] = [
    [piece.cutLine, true],
    ...(piece.cutouts ?? []).map(({ points }): [Float64Array, boolean] => [points, true]),
    ...open.map(({ points }): [Float64Array, boolean] => [points, false]),
    [piece.grainLine, false],
  ];
  return lines.flatMap(([points, closed]) => {
    const count = points.length / 2;
    return Array.from({ length: Math.max(0, closed ? count : count - 1) }, (_, i): [Point, Point] => {
      const j = (i + 1) % count;
      return [
        [points[2 * i], points[2 * i + 1]],
        [points[2 * j], points[2 * j + 1]],
      ];
    });
  });
}

describe('lettering of a whole form', () => {
  const file = path.join(import.meta.dirname, '../../shared/demos/large-bust.loftseam.json');
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(file);

  for (const notchShape of NOTCH_SHAPES) {
    it(`crosses no line, with notches of the shape ${notchShape}`, () => {
      const form = sharedPipeline.makeForm(
        { ...project.value, cloth: { ...project.value.cloth, notchShape } },
        { speaker: ENGLISH, targetTriangles: 3000 },
      );
      if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
      let texts = 0;
      for (const piece of [...form.value.pieces, ...(form.value.inside?.pieces ?? [])]) {
        const segments = segmentsOf(piece);
        for (const { x, y, text, size, anchor, angle } of piece.texts) {
          const page = cornersOfText(makeText(x, -y, text, size, { anchor, angle: -angle }));
          const corners = [0, 1, 2, 3].map((k): Point => [page[2 * k], -page[2 * k + 1]]);
          const isCrossed = segments.some(([a, b]) =>
            corners.some((corner, k) => doCross(a, b, corner, corners[(k + 1) % 4])),
          );
          expect(isCrossed, `${piece.id}: ${text}`).toBe(false);
          texts++;
        }
      }
      expect(texts).toBeGreaterThan(500);
    });
  }

  it('names every piece on the piece, small wrist plates and their covers too', () => {
    const armed = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
    const average = parseProject(readFileSync(armed, 'utf8'));
    if (!average.ok) throw new Error(armed);
    const form = sharedPipeline.makeForm(average.value, COARSE);
    if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
    expect(form.value.report.issues.filter(({ code }) => code === 'label-without-room')).toEqual([]);
    const inner = form.value.inside!.pieces;
    expect(inner.filter(({ id }) => id.startsWith('wrist-plate')).length).toBe(6);
    for (const { name, texts } of [...form.value.pieces, ...inner])
      expect(texts.map(({ text }) => text).join(' ')).toContain(inEnglish(name));
  });

  it('fits on a printed page: no label is longer than 120 mm where letters of 4 mm or more are', () => {
    const form = sharedPipeline.makeForm(project.value, { speaker: ENGLISH, targetTriangles: 3000 });
    if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
    for (const { id, texts } of form.value.pieces)
      for (const { x, y, text, size, anchor, angle } of texts) {
        const [ax, ay, bx, by] = cornersOfText(makeText(x, -y, text, size, { anchor, angle: -angle }));
        if (size > 4) expect(Math.hypot(bx - ax, by - ay), `${id}: ${text}`).toBeLessThanOrEqual(120);
      }
  });
});

it('names the cloth’s own field when an inner piece cannot have its allowance', () => {
  const file = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(file);
  const cloth = { ...project.value.cloth, allowanceByMaterial: { webs: 1 } };
  const form = sharedPipeline.makeForm({ ...project.value, cloth }, COARSE);
  expect(form.ok).toBe(false);
  expect(form.issues.map((issue) => issue.path)).toContain('cloth.allowanceByMaterial.webs');
});
