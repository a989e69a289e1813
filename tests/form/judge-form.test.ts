/**
 * The verdict on a whole form. What its cloth is asked for is worked out here anew, from where each triangle's threads go; the limits of
 * cotton are typed in (warp +2 / −1.5 %, weft +3 / −1.5 %, bias +8 / −3 %: common practice, no source, as the table says).
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Issue } from '../../src/core/base/index.ts';
import { type Form, judgeForm, worstZones } from '../../src/core/form/index.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';
import { inEnglish } from '../in-english.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

function formOf(demo: string, layout: string): Form {
  const file = path.join(import.meta.dirname, `../../shared/demos/${demo}.loftseam.json`);
  const read = parseProject(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(demo);
  const project: Project = { ...read.value, seams: { layout } };
  const made = sharedPipeline.makeForm(project, { ...COARSE, upTo: 'panels' });
  if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
  return made.value;
}

type Panel = Form['shell']['panels'][number];

/** How far the greatest of four threads of a triangle goes over its limit: 1 is all the cloth takes. */
function usageOf({ mesh: { positions, triangles } }: Panel, flat: Float64Array, f: number): number {
  const [a, b, c] = triangles.subarray(3 * f, 3 * f + 3);
  const [ux, uy] = [flat[2 * b] - flat[2 * a], flat[2 * b + 1] - flat[2 * a + 1]];
  const [vx, vy] = [flat[2 * c] - flat[2 * a], flat[2 * c + 1] - flat[2 * a + 1]];
  const area = ux * vy - uy * vx;
  // A thread (x, y) of the flat triangle is s·u + t·v there, and the same of the sides on the body.
  const stretch = (x: number, y: number): number => {
    const [s, t] = [(x * vy - y * vx) / area, (ux * y - uy * x) / area];
    const on = [0, 1, 2].map((k) => {
      const side = (to: number) => positions[3 * to + k] - positions[3 * a + k];
      return s * side(b) + t * side(c);
    });
    return Math.hypot(...on) / Math.hypot(x, y) - 1;
  };
  const share = (strain: number, most: number, least: number) =>
    strain >= 0 ? strain / most : -strain / least;
  return Math.max(
    share(stretch(0, 1), 0.02, 0.015),
    share(stretch(1, 0), 0.03, 0.015),
    share(stretch(1, 1), 0.08, 0.03),
    share(stretch(1, -1), 0.08, 0.03),
  );
}

function areaOf({ mesh: { positions, triangles } }: Panel, f: number): number {
  const [a, b, c] = [0, 1, 2].map((k) =>
    positions.subarray(3 * triangles[3 * f + k], 3 * triangles[3 * f + k] + 3),
  );
  const [p, q] = [b, c].map((point) => [0, 1, 2].map((k) => point[k] - a[k]));
  return 0.5 * Math.hypot(p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]);
}

/** mm² of each place that is over twice what the cloth takes, largest first; triangles of a place share sides. */
function placesOf(panel: Panel, flat: Float64Array): number[] {
  const { triangles } = panel.mesh;
  const over = new Set(
    Array.from({ length: triangles.length / 3 }, (_, f) => f).filter((f) => usageOf(panel, flat, f) > 2),
  );
  const atSide = new Map<string, number[]>();
  const sidesOf = (f: number) =>
    [0, 1, 2].map((k) => [triangles[3 * f + k], triangles[3 * f + ((k + 1) % 3)]].toSorted().join());
  for (const f of over) for (const side of sidesOf(f)) atSide.set(side, [...(atSide.get(side) ?? []), f]);
  const areas: number[] = [];
  for (const start of over) {
    const place = [start];
    over.delete(start);
    for (const f of place)
      for (const next of sidesOf(f).flatMap((side) => atSide.get(side) ?? []))
        if (over.delete(next)) place.push(next);
    areas.push(place.reduce((sum, f) => sum + areaOf(panel, f), 0));
  }
  return areas.toSorted((a, b) => b - a);
}

/** Places of 10 cm² and more, of right halves and middles. */
function seenOn({ shell, flat }: Form): number[] {
  return shell.panels
    .flatMap((panel, i) => (panel.mirrorOf === undefined ? placesOf(panel, flat[i].positions) : []))
    .filter((area) => area >= 1000)
    .toSorted((a, b) => b - a);
}

describe('the verdict on a form', () => {
  it.each([
    ['average', 'upright8', 'wrinkles'],
    ['average', 'upright12Bust', 'sound'],
    ['large-bust', 'upright8', 'wrinkles'],
  ] as const)('%s in %s: %s', (demo, layout, kind) => {
    const form = formOf(demo, layout);
    const seen = seenOn(form);
    expect(seen.length > 0).toBe(kind === 'wrinkles');
    const { verdict, panels } = form.report;
    expect(verdict?.kind).toBe(kind);
    if (kind === 'sound') {
      expect(verdict?.worst).toBeUndefined();
      return;
    }
    const told = panels.flatMap(({ cloth }, i) =>
      form.shell.panels[i].mirrorOf === undefined ? cloth.seen.map(({ area }) => area) : [],
    );
    expect(told.length).toBe(seen.length);
    for (const [i, area] of told.toSorted((a, b) => b - a).entries()) expect(area).toBeCloseTo(seen[i], 3);
    expect(inEnglish(verdict!.message)).toContain(seen.length === 1 ? 'one place' : `${seen.length} places`);
    // The worst place of all lists is one and the same.
    const [first] = worstZones(form, 1);
    expect(first).toMatchObject({ panelId: verdict?.worst?.panelId, place: verdict?.worst?.place });
  });

  it('has one figure of strain: as much of the cloth is strained less as it says', () => {
    const { shell, flat, report } = formOf('average', 'upright8');
    let [below, all] = [0, 0];
    for (const [i, panel] of shell.panels.entries())
      for (let f = 0; f < panel.mesh.triangles.length / 3; f++)
        for (const strain of [flat[i].strain.major[f], flat[i].strain.minor[f]]) {
          const area = areaOf(panel, f);
          all += area;
          if (Math.abs(strain) <= report.strain!) below += area;
        }
    expect(below / all).toBeGreaterThan(0.945);
    expect(below / all).toBeLessThan(0.955);
  });

  const sound = () => formOf('average', 'upright12Bust');

  it('says that it cannot be sewn, and why, where anything stops it', () => {
    const { report, shell } = sound();
    const message = { id: 'verbatim', values: { text: 'the webs cross' } };
    const judged = (issues: readonly Issue[]) => judgeForm({ ...report, issues }, shell);
    const warning: Issue = { code: 'some-doubt', path: 'cloth', message, severity: 'warning' };
    expect(judged([warning])?.kind).toBe('sound');
    const error: Issue = { ...warning, code: 'webs-cross', path: 'inside.tubeDiameter', severity: 'error' };
    expect(judged([warning, error])).toMatchObject({
      kind: 'cannot',
      path: 'inside.tubeDiameter',
      code: 'webs-cross',
    });
    expect(inEnglish(judged([error])!.message)).toBe('Cannot be sewn so. the webs cross');
    // A warning among the others, but nothing can be built without an order.
    expect(judged([{ ...warning, code: 'order-of-work', path: '' }])?.kind).toBe('cannot');
  });

  it('says that it cannot be sewn where a piece folds over or partners differ', () => {
    const { report, shell } = sound();
    const panels = report.panels.map((panel, i) => (i === 2 ? { ...panel, flipped: 1 } : panel));
    const folded = judgeForm({ ...report, panels }, shell);
    expect(folded).toMatchObject({ kind: 'cannot', path: 'seams', worst: { panelId: panels[2].id } });
    const seams = report.seams.map((seam, i) => (i === 1 ? { ...seam, maxMarkGap: 0.8 } : seam));
    const apart = judgeForm({ ...report, seams }, shell);
    expect(apart?.kind).toBe('cannot');
    expect(inEnglish(apart!.message)).toContain(`seam ${seams[1].letter} do not meet`);
    expect(inEnglish(apart!.message)).toContain('0.8 mm');
    // What a thread is thick is no fault.
    const near = report.seams.map((seam) => ({ ...seam, maxMarkGap: 0.4 }));
    expect(judgeForm({ ...report, seams: near }, shell)?.kind).toBe('sound');
  });
});
