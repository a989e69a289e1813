/** What the average demo body must keep to. Figures are goals of ours, no source; lengths are read off the flat panels. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { measureFormStrain } from '../../src/core/flatten/index.ts';
import { createPipeline, makeForm } from '../../src/core/pipeline/index.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';

function readDemo(name: string): Project {
  const file = path.join(import.meta.dirname, `../../shared/demos/${name}.loftseam.json`);
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  return project.value;
}

const project = readDemo('average');

describe('strain of the average body, hollows bridged, 20 000 triangles', () => {
  it.each([
    ['upright12', 0.022, 0.035],
    // The goal is 1.6 %, and not met: 1.73 % with a back line that keeps near the shoulder blade. Lines that gave 1.63 %, and
    // 1.58 % on this body alone, swept out along the armhole and left a sliver there that nobody would sew.
    ['upright12Bust', 0.0175, 0.03],
    ['upright16', 0.017, 0.032],
  ])('%s', (layout, p95, p99) => {
    const made = makeForm({ ...project, seams: { layout } }, { speaker: ENGLISH, isDraft: true });
    if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
    const { report, flat, shell } = made.value;
    const strain = measureFormStrain(
      shell.panels.map((panel) => panel.mesh),
      flat,
    );
    expect(strain.p95).toBeLessThanOrEqual(p95);
    expect(strain.p99).toBeLessThanOrEqual(p99);
    for (const seam of report.seams) expect(seam.maxMarkGap).toBeLessThan(0.2);
    for (const level of report.levels) expect(Math.abs(level.lengthFlat - level.length3d)).toBeLessThan(0.2);
    expect(report.panels.every((panel) => panel.flipped === 0)).toBe(true);
  });
});

/** The large bust of 1130 mm, every measure grown evenly. */
function withBustOf(girth: number): Project {
  const { body, ...rest } = readDemo('large-bust');
  const factor = girth / (body.measures.bustGirth as number);
  const measures = Object.fromEntries(
    Object.entries(body.measures).map(([id, value]) => [
      id,
      typeof value === 'number' ? factor * value : { left: factor * value.left, right: factor * value.right },
    ]),
  );
  return { ...rest, body: { figure: body.figure, measures } };
}

it.each([
  ['upright12', 0.026],
  ['upright12Bust', 0.022],
])('strain of a bust of 1300 mm, %s', (layout, p95) => {
  const { body, seams, ...rest } = withBustOf(1300);
  const cut = createPipeline().previewSeams(
    { ...rest, body, seams: { ...seams, layout } },
    { targetTriangles: 20_000 },
  );
  if (!cut.ok) throw new Error(inEnglish(cut.issues[0].message));
  expect(cut.value.strain.p95).toBeLessThanOrEqual(p95);
  expect(cut.value.flat.every(({ strain }) => strain.summary.flipped === 0)).toBe(true);
});
