import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Clipper, EndType, FillRule, JoinType } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import type { Form } from '../../src/core/form/index.ts';
import type { Piece } from '../../src/core/pattern/index.ts';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { distanceTo, sample } from '../pattern/brute-force.ts';

/** What is asked for, mm: shared with nobody. Common practice, no source. */
const ASKED = { shoulder: 15, side: 20, closing: 25, armhole: 20, neck: 20, base: 25, other: 10 } as const;
/** A mitre reaches at most 2.5 allowances from its corner. */
const CORNER = 2.5 * 25 + 1;
/** Micrometres, in which the polygon library reckons. */
const FINE = 1000;

function read(name: string): Project {
  const file = path.join(import.meta.dirname, `../../shared/demos/${name}.loftseam.json`);
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  return project.value;
}

function make(project: Project, isDraft = true): Form {
  const options = { speaker: ENGLISH, targetTriangles: 3000, date: '2026-01-31', isDraft };
  const form = createPipeline().makeForm(project, options);
  if (!form.ok) throw new Error(form.issues.map(({ message }) => inEnglish(message)).join('\n'));
  return form.value;
}

/** By the line a seam was drawn along, as the layouts name it, and the opening. */
function askedOf(form: Form, edgeId: string): number {
  if (edgeId.startsWith('armhole')) return ASKED.armhole;
  if (edgeId === 'neck' || edgeId === 'base') return ASKED[edgeId];
  const line = form.shell.seams.find(({ id }) => id === edgeId)?.lineId;
  if (line === 'side' || line === 'shoulder') return ASKED[line];
  return line === 'centreBack' ? ASKED.closing : ASKED.other;
}

/** Distances from the sewing line to the cut line, away from the line's ends; empty on a short edge. */
function distances({ cutLine }: Piece, points: Float64Array): number[] {
  const ends = [points.slice(0, 2), points.slice(-2)];
  return sample(points, false, 10)
    .filter(([x, y]) => ends.every(([ex, ey]) => Math.hypot(x - ex, y - ey) > CORNER))
    .map(([x, y]) => distanceTo(cutLine, true, x, y));
}

/**
 * Nowhere nearer, and exactly that much cloth along most of the line: in a tight hollow the strips of two stretches cross each
 * other, and their outline lies farther from the deepest point. That it is their outline is judged by the polygons below.
 */
function expectAllowance(found: readonly number[], asked: number, where: string): void {
  if (found.length === 0) return;
  const sorted = found.toSorted((a, b) => a - b);
  expect(Math.abs(sorted[0] - asked), where).toBeLessThan(0.02);
  expect(Math.abs(sorted[sorted.length >> 1] - asked), where).toBeLessThan(0.02);
}

const fine = (points: Float64Array) =>
  Array.from({ length: points.length / 2 }, (_, i) => ({
    x: Math.round(FINE * points[2 * i]),
    y: Math.round(FINE * points[2 * i + 1]),
  }));

const LAYOUTS = [
  ['average', 'upright8'],
  ['petite', 'upright12BustWaist'],
  ['uneven-shoulders', 'upright8Yoke'],
] as const;

describe.each(LAYOUTS)('%s, %s', (name, layout) => {
  const project = { ...read(name), seams: { layout } };
  const form = make(project);

  it('cuts every edge of the shell its own allowance outside its sewing line', () => {
    let judged = 0;
    for (const piece of form.pieces)
      for (const { id, points } of piece.sewLines) {
        const found = distances(piece, points);
        judged += found.length;
        expectAllowance(found, askedOf(form, id), `${piece.id} ${id}`);
      }
    expect(judged).toBeGreaterThan(200);
  });

  it('has all the cloth a strip along every edge takes, and more only at corners (polygons by Clipper2)', () => {
    for (const piece of form.pieces) {
      const outline = fine(
        Float64Array.from(piece.sewLines.flatMap(({ points }) => [...points.slice(0, -2)])),
      );
      const strips = piece.sewLines.flatMap(({ id, points }) =>
        Clipper.inflatePaths([fine(points)], FINE * askedOf(form, id), JoinType.Round, EndType.Butt),
      );
      const wanted = Clipper.union([outline, ...strips], FillRule.NonZero);
      const cut = [fine(piece.cutLine)];
      const areaOf = (paths: typeof wanted) => paths.reduce((sum, p) => sum + Math.abs(Clipper.area(p)), 0);
      // Notches that stand out are none here; rounding of curves is the rest, mm².
      expect(areaOf(Clipper.difference(wanted, cut, FillRule.NonZero)) / FINE ** 2, piece.id).toBeLessThan(2);
      const corners = piece.sewLines.map(({ points }) => [FINE * points[0], FINE * points[1]]);
      const more = Clipper.difference(cut, wanted, FillRule.NonZero).filter(
        (p) => Math.abs(Clipper.area(p)) > 0.05 * FINE ** 2,
      );
      for (const { x, y } of more.flat())
        expect(Math.min(...corners.map(([a, b]) => Math.hypot(x - a, y - b))), piece.id).toBeLessThan(
          CORNER * FINE,
        );
    }
  });

  it('moves no sewing line, and partners have the same', () => {
    const kinds = ['shoulder', 'side', 'closing', 'armhole', 'neck', 'base'];
    const even = make({
      ...project,
      cloth: { allowanceByKind: Object.fromEntries(kinds.map((kind) => [kind, 10])) },
    });
    expect(even.pieces.map(({ sewLines }) => sewLines)).toEqual(form.pieces.map(({ sewLines }) => sewLines));
    for (const { id } of form.shell.seams) {
      const partners = form.pieces.flatMap((piece) =>
        piece.sewLines.filter((line) => line.id === id).map(({ points }) => distances(piece, points)),
      );
      const least = partners.filter((found) => found.length > 0).map((found) => Math.min(...found));
      if (least.length === 2) expect(Math.abs(least[0] - least[1]), id).toBeLessThan(0.02);
    }
  });
});

describe('usual allowances by kind of edge', () => {
  const words = (piece: Piece | undefined) => piece?.texts.map(({ text }) => text).join(' ') ?? '';

  it('are exact fractions of an inch where lengths are inches, and told so', () => {
    const form = make({ ...read('average'), displayUnits: 'in', cloth: { allowance: (3 / 8) * 25.4 } });
    const side = form.shell.seams.find(({ lineId }) => lineId === 'side');
    const piece = form.pieces.find(({ sewLines }) => sewLines.some(({ id }) => id === side?.id));
    const line = piece?.sewLines.find(({ id }) => id === side?.id);
    if (!piece || !line) throw new Error('no side');
    // 3/4 in = 19.05 mm.
    for (const distance of distances(piece, line.points))
      expect(Math.abs(distance - 19.05)).toBeLessThan(0.02);
    expect(words(piece)).toContain('3/4 in (19 mm)');
    expect(words(piece)).toContain('1 in (25.4 mm)');
    expect(words(piece)).toContain('3/8 in (9.5 mm)');
  });

  it('give way to what is typed for the kind, and to a wider general one', () => {
    const typed = make({ ...read('average'), cloth: { allowance: 22, allowanceByKind: { side: 7 } } });
    for (const piece of typed.pieces)
      for (const { id, points } of piece.sewLines) {
        const asked = askedOf(typed, id) === ASKED.side && !id.startsWith('arm') && id !== 'neck' ? 7 : 22;
        const wanted = asked === 22 ? Math.max(22, askedOf(typed, id)) : asked;
        expectAllowance(distances(piece, points), wanted, id);
      }
  });

  it('are withdrawn on all pieces, and said, where one has no room', () => {
    const form = make({ ...read('average'), seams: { layout: 'upright6' } });
    const said = form.report.issues.filter(({ code }) => code === 'usual-allowance-withdrawn');
    expect(said).toMatchObject([
      { path: 'cloth.allowanceByKind.armhole', severity: 'warning', measured: 10 },
    ]);
    for (const piece of form.pieces)
      for (const { id, points } of piece.sewLines)
        if (id.startsWith('armhole')) expectAllowance(distances(piece, points), 10, id);
    // Every other kind keeps its own.
    const base = form.pieces.flatMap((piece) =>
      piece.sewLines.filter(({ id }) => id === 'base').flatMap(({ points }) => distances(piece, points)),
    );
    expect(base.length).toBeGreaterThan(20);
    expectAllowance(base, 25, 'base');
  });

  it('are 12 mm at webs, 15 mm at ends of ties and straps, 30 mm over the edge of a large plate', () => {
    const form = make(read('average'), false);
    const pieces = form.inside?.pieces ?? [];
    const widthOf = (piece: Piece, index: number) => {
      const { points } = piece.sewLines[index];
      const k = 2 * Math.floor(points.length / 4);
      const [x, y] = [(points[k] + points[k - 2]) / 2, (points[k + 1] + points[k - 1]) / 2];
      return distanceTo(piece.cutLine, true, x, y);
    };
    const seams = (start: RegExp) =>
      pieces
        .filter(({ id }) => start.test(id))
        .flatMap((piece) =>
          piece.sewLines.flatMap(({ name }, i) => (/^[A-Z]+$/.test(name) ? [widthOf(piece, i)] : [])),
        );
    for (const [start, asked] of [
      [/^(web|throat)-/, 12],
      [/^(tie|strap)/, 15],
      [/^pole-sleeve$/, 10],
    ] as const) {
      const found = seams(start);
      expect(found.length, `${start}`).toBeGreaterThan(1);
      for (const width of found) expect(width, `${start}`).toBeCloseTo(asked, 2);
    }
    const cover = pieces.find(({ id }) => id === 'base-plate-cover');
    if (!cover) throw new Error('no cover');
    for (let i = 0; i < 4; i++) expect(widthOf(cover, i)).toBeCloseTo(30, 1);
  });
});
