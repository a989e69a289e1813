/** What is advised is cut and unrolled anew here, finer, and measured without the advice's own figures. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { adviseZone } from '../../src/core/advice/index.ts';
import { surfaceOfProject } from '../../src/core/assembly/index.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';
import { findLayout, listControlPoints, type SeamLayout } from '../../src/core/seams/index.ts';
import { inEnglish } from '../in-english.ts';
import { sharedPipeline } from '../shared-pipeline.ts';

const file = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
const read = parseProject(readFileSync(file, 'utf8'));
if (!read.ok) throw new Error(inEnglish(read.issues[0].message));
const project: Project = read.value;
const fitted = sharedPipeline.fitBody(project);
if (!fitted.ok) throw new Error(inEnglish(fitted.issues[0].message));
const body = fitted.value;
const surface = surfaceOfProject(project, body);
const layout = findLayout('upright8') as SeamLayout;

/** Root mean square of all strains within 60 mm of a chart place, 8000 triangles. */
function rmsNear(tried: SeamLayout, place: { u: number; v: number }): number {
  const cut = sharedPipeline.previewSeams(
    { ...project, seams: { ...project.seams, lines: tried.lines } },
    { targetTriangles: 8000 },
  );
  if (!cut.ok) throw new Error(inEnglish(cut.issues[0].message));
  const [x, y, z] = surface.evaluate(Float64Array.of(place.u, place.v));
  let [sum, count] = [0, 0];
  for (const [d, { mesh }] of cut.value.shell.panels.entries()) {
    for (let f = 0; f < mesh.triangles.length / 3; f++) {
      const v = 3 * mesh.triangles[3 * f];
      const [px, py, pz] = mesh.positions.subarray(v, v + 3);
      if (Math.hypot(px - x, py - y, pz - z) > 60) continue;
      const { major, minor } = cut.value.flat[d].strain;
      sum += major[f] ** 2 + minor[f] ** 2;
      count += 2;
    }
  }
  return Math.sqrt(sum / count);
}

it('advises what lowers the strain beside the bust point, best first, and changes nothing itself', () => {
  const { u, v } = body.landmarks.bustPointRight;
  const place = { u: u - 0.15, v: v - 15 };
  const kept = structuredClone(layout);
  const advice = adviseZone(surface, body, layout, place);
  if (!advice.ok) throw new Error(inEnglish(advice.issues[0].message));
  expect(layout).toEqual(kept);
  expect(advice.value.length).toBeGreaterThan(0);
  const before = rmsNear(layout, place);
  for (const { layout: advised, near, message } of advice.value) {
    expect(near.after).toBeLessThan(near.before);
    expect(inEnglish(message)).toContain(`${(100 * near.after).toFixed(2)} %`);
    expect(rmsNear(advised, place)).toBeLessThan(before);
  }
  const afters = advice.value.map(({ near }) => near.after);
  expect(afters).toEqual(afters.toSorted((a, b) => a - b));
});

it('says the same of a place and of its mirror image, and moves by the mm it tells', () => {
  const { u, v } = body.landmarks.bustPointRight;
  const ask = (at: number) => {
    const advice = adviseZone(surface, body, layout, { u: at, v });
    if (!advice.ok) throw new Error(inEnglish(advice.issues[0].message));
    return advice.value;
  };
  const [right, left] = [ask(u - 0.05), ask(Math.PI - u + 0.05)];
  expect(left.map(({ message }) => message)).toEqual(right.map(({ message }) => message));
  for (const { kind, layout: advised, lineId, mm } of right) {
    if (kind === 'add') {
      expect(advised.lines.length).toBe(layout.lines.length + 1);
      continue;
    }
    const [was, is] = [layout, advised].map((one) => {
      const points = listControlPoints(surface, body, one);
      if (!points.ok) throw new Error(inEnglish(points.issues[0].message));
      return points.value.filter((point) => point.lineId === lineId).map(({ position }) => position);
    });
    const moved = was.map((p, k) => Math.hypot(p[0] - is[k][0], p[1] - is[k][1], p[2] - is[k][2]));
    expect(Math.max(...moved)).toBeCloseTo(mm, 6);
  }
});

it('refuses a layout that cannot be cut', () => {
  const faulty = { ...layout, lines: [...layout.lines, { ...layout.lines[1], id: 'again' }] };
  const advice = adviseZone(surface, body, faulty, { u: 1, v: 100 });
  expect(advice.ok).toBe(false);
  expect(advice.issues[0].code).toBe('layout-unsound');
});
