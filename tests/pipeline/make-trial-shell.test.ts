import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkOpening, openingOfTrial, orderSeams } from '../../src/core/assembly/index.ts';
import { fitBody, measuresFromPins } from '../../src/core/body/index.ts';
import { makeTrialShell } from '../../src/core/pipeline/index.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { distanceTo, lengthOf, sample } from '../pattern/brute-force.ts';

function read(name: string): Project {
  const file = path.join(import.meta.dirname, `../../shared/demos/${name}.loftseam.json`);
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  return project.value;
}

function make(project: Project) {
  const made = makeTrialShell(project, { speaker: ENGLISH, targetTriangles: 3000, date: '2026-01-31' });
  if (!made.ok) throw new Error(made.issues.map(({ message }) => inEnglish(message)).join('\n'));
  return made.value;
}

describe('a trial shell', () => {
  const project = read('average');
  // A cloth that grows by 2 %, and layers over the shell: the form's own panels would be smaller by both.
  const { form, opening } = make({
    ...project,
    inside: { ...project.inside, coverThickness: 5, measuredGrowth: 0.02 },
  });

  it('has the person’s own girths, as they were typed', () => {
    for (const id of ['hip', 'waist', 'bust']) {
      const typed = project.body.measures[`${id}Girth`];
      const level = form.report.levels.find((one) => one.id === id);
      // Chords of 3000 triangles, and hollows that a tape spans; growth and layers would take off 30 mm and more.
      expect(Math.abs((level?.lengthFlat ?? 0) - Number(typed)), id).toBeLessThan(2);
    }
  });

  it('is cut from the very body the form is made from', () => {
    const body = fitBody(project.body, undefined, { fair: true });
    expect(body.ok).toBe(true);
    if (body.ok) expect(form.body.shape).toEqual(body.value.shape);
  });

  it('is the shell alone, band and all, of cloth for trying on', () => {
    expect(new Set(form.pieces.map(({ material }) => material))).toEqual(new Set(['trial']));
    expect(form.pieces.length).toBe(form.shell.panels.length);
    expect(form.inside).toBeUndefined();
    // Webs and ties have no place on it: what is drawn are levels.
    const drawn = form.pieces.flatMap(({ levelLines }) => levelLines.map(({ id }) => id));
    expect(new Set(drawn)).toEqual(new Set(form.shell.levels.map(({ id }) => id)));
  });

  it('has 50 mm at the centre back and 25 mm at the sides (common practice of dressmaking, no source)', () => {
    const asked: Readonly<Record<string, number>> = { centreBack: 50, side: 25 };
    let judged = 0;
    for (const piece of form.pieces)
      for (const { id, points } of piece.sewLines) {
        const wanted = asked[form.shell.seams.find((seam) => seam.id === id)?.lineId ?? ''];
        if (wanted === undefined) continue;
        const ends = [points.slice(0, 2), points.slice(-2)];
        const away = sample(points, false, 10).filter(([x, y]) =>
          ends.every(([ex, ey]) => Math.hypot(x - ex, y - ey) > 2.5 * 50),
        );
        if (away.length === 0) continue;
        const found = away.map(([x, y]) => distanceTo(piece.cutLine, true, x, y));
        expect(Math.min(...found), `${piece.id} ${id}`).toBeCloseTo(wanted, 1);
        judged++;
      }
    expect(judged).toBeGreaterThanOrEqual(6);
  });

  it('opens wide enough for a head: round the neck’s edge and twice along the sewing line that stays open', () => {
    const lines = form.pieces.flatMap(({ sewLines }) => sewLines);
    const neck = lines
      .filter(({ id }) => id === 'neck')
      .reduce((sum, { points }) => sum + lengthOf(points), 0);
    const back = form.shell.seams.filter(({ lineId }) => lineId === 'centreBack').map(({ id }) => id);
    // Each is on two pieces.
    const open = lines
      .filter(({ id }) => back.includes(id))
      .reduce((sum, { points }) => sum + lengthOf(points), 0);
    expect(Math.abs(opening.girth / (neck + open) - 1)).toBeLessThan(0.02);
    // 570 mm, a large adult head, and 20 (from memory of the public surveys).
    expect(neck + open).toBeGreaterThanOrEqual(590);
    expect(opening.letsHeadThrough).toBe(true);
    const said = form.pieces.filter(({ texts }) => texts.some(({ text }) => text.includes('open from top')));
    expect(said.length).toBeGreaterThanOrEqual(2);
    // The band's one seam is named once, though it is at both its ends.
    const words = said.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
    expect(words).not.toMatch(/Leave (\w+) and \1 open/);
  });

  it('warns where no seam down the back leads to the neck', () => {
    // The line nearest to the middle then is the one between back and side, which ends at the shoulder.
    const order = orderSeams(form.shell, form.body.landmarks.neckFront.v);
    const closed = openingOfTrial(
      form.shell,
      order.filter(({ seam }) => seam.lineId !== 'centreBack'),
    );
    expect(closed.letsHeadThrough).toBe(false);
    // The neck's edge alone.
    const lines = form.pieces.flatMap(({ sewLines }) => sewLines);
    const neck = lines
      .filter(({ id }) => id === 'neck')
      .reduce((sum, { points }) => sum + lengthOf(points), 0);
    expect(Math.abs(closed.girth / neck - 1)).toBeLessThan(0.02);
    expect(checkOpening(closed)).toMatchObject([
      { code: 'head-does-not-pass', path: 'seams.layout', severity: 'warning', limit: 590 },
    ]);
    expect(checkOpening(opening)).toEqual([]);
  });
});

it('what is pinned off goes off the girth: 6 mm at each of two side seams makes a waist of 765 mm one of 753', () => {
  expect(measuresFromPins({ girth: 765, takenIn: 2 * 6 })).toBe(753);
});
