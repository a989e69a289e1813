import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesOfForm } from '../../src/core/files/index.ts';
import { createPipeline, makeForm, type StageId } from '../../src/core/pipeline/index.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';

const targetTriangles = 2000;

function readDemo(name: string): Project {
  const file = path.join(import.meta.dirname, `../../shared/demos/${name}.loftseam.json`);
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  return project.value;
}

const project = readDemo('straight');

/** A clock that counts how often it is read: time passes only where work is measured. */
function countingClock(): () => number {
  let ticks = 0;
  return () => ticks++;
}

describe('makeForm', () => {
  it('passes the stages in order, and its progress only rises', () => {
    const seen: { fraction: number; stage: StageId; what: string }[] = [];
    const form = makeForm(project, {
      speaker: ENGLISH,
      targetTriangles,
      onProgress: (fraction, stage, what) => seen.push({ fraction, stage, what: inEnglish(what) }),
      now: countingClock(),
    });
    expect(form.ok).toBe(true);
    expect([...new Set(seen.map((s) => s.stage))]).toEqual([
      'tape',
      'body',
      'seams',
      'panels',
      'inside',
      'filling',
      'cutting',
      'laying',
    ]);
    const fractions = seen.map((s) => s.fraction);
    expect(fractions).toEqual(fractions.toSorted((a, b) => a - b));
    expect(fractions[0]).toBe(0);
    expect(fractions[fractions.length - 1]).toBe(1);
    expect(seen.every((s) => s.what.length > 0)).toBe(true);
    if (form.ok)
      expect(Object.keys(form.value.report.timingsMs)).toEqual([
        'tape',
        'body',
        'seams',
        'panels',
        'inside',
        'filling',
        'cutting',
        'laying',
      ]);
  });

  it('stops where it is told to, at every stage', () => {
    for (const stage of ['body', 'seams', 'panels', 'inside'] satisfies StageId[]) {
      let reached: StageId = 'tape';
      const form = makeForm(project, {
        speaker: ENGLISH,
        targetTriangles,
        onProgress: (_, at) => {
          reached = at;
        },
        isCancelled: () => reached === stage,
      });
      expect(form.ok).toBe(false);
      expect(form.issues.map((issue) => issue.code)).toContain('cancelled');
      expect(reached).toBe(stage);
    }
  });

  it('gives the same bytes for the same project', async () => {
    const make = async () => {
      const form = makeForm(project, { speaker: ENGLISH, targetTriangles, date: '2026-01-31' });
      if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
      return filesOfForm(form.value, inEnglish);
    };
    const [first, second] = [await make(), await make()];
    expect(first.map((file) => file.name)).toEqual([
      ...[
        'panels.svg',
        'webs.svg',
        'card.svg',
        'covers.svg',
        'foam.svg',
        'test-tube.svg',
        'report.json',
        'body.glb',
      ],
    ]);
    expect(second).toEqual(first);
  });

  it('leaves the project as it was, and hands over data that can be sent between threads', () => {
    const before = structuredClone(project);
    const form = makeForm(project, { speaker: ENGLISH, targetTriangles });
    expect(project).toEqual(before);
    if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
    expect(structuredClone(form.value)).toEqual(form.value);
  });

  it('puts the paths of issues into the saved project', () => {
    const { backWaistLength: _, ...measures } = project.body.measures;
    const form = makeForm({ ...project, body: { ...project.body, measures } }, { speaker: ENGLISH });
    expect(form.ok).toBe(false);
    expect(form.issues.map((issue) => issue.path)).toContain('body.measures.backWaistLength');
  });

  it('lists the seam layouts when it does not know one', () => {
    const form = makeForm(
      { ...project, seams: { layout: 'nothing' } },
      { speaker: ENGLISH, targetTriangles },
    );
    expect(form.ok).toBe(false);
    expect(form.issues[0]).toMatchObject({ code: 'unknown-layout', path: 'seams.layout' });
    expect(inEnglish(form.issues[0].message)).toContain('upright8');
  });

  it('tells a wrong measure and a wrong layout together', () => {
    const measures = { ...project.body.measures, hipGirth: 90 };
    const form = makeForm(
      { ...project, body: { ...project.body, measures }, seams: { layout: 'nothing' } },
      { speaker: ENGLISH },
    );
    const paths = form.issues.map((issue) => issue.path);
    expect(paths).toEqual(expect.arrayContaining(['body.measures.hipGirth', 'seams.layout']));
  });
});

describe('a project that came by another way than a file', () => {
  // Limits as written in the table of options; narrower ones would shut out saved files.
  it.each([
    [{ tubeDiameter: 400 }, 'inside.tubeDiameter', 400, 200],
    [{ tubeDiameter: -1 }, 'inside.tubeDiameter', -1, 5],
    [{ clothThickness: Number.NaN }, 'inside.clothThickness', Number.NaN, 0.1],
    [{ testTube: { measure2: 1e9 } }, 'inside.testTube.measure2', 1e9, 900],
  ])('is refused where a number of the inside is beyond its limits: %o', (inside, path, measured, limit) => {
    const made = makeForm({ ...project, inside }, { speaker: ENGLISH, targetTriangles });
    expect(made.ok).toBe(false);
    expect(made.issues).toHaveLength(1);
    expect(made.issues[0]).toMatchObject({ path, severity: 'error', measured, limit });
    expect(inEnglish(made.issues[0].message)).toContain(String(limit));
  });
});

describe('createPipeline', () => {
  /** Stages whose result is the very same object as before. */
  function keptStages(change: (p: Project) => Project, changeTriangles = 0): string[] {
    const pipeline = createPipeline();
    const first = pipeline.makeForm(project, { speaker: ENGLISH, targetTriangles });
    const second = pipeline.makeForm(change(structuredClone(project)), {
      speaker: ENGLISH,
      targetTriangles: targetTriangles + changeTriangles,
    });
    if (!first.ok || !second.ok) throw new Error('both must succeed');
    const [a, b] = [first.value, second.value];
    const same: [string, boolean][] = [
      ['body', a.body === b.body],
      ['shell', a.shell === b.shell],
      ['flat', a.flat === b.flat],
      ['pieces', a.pieces === b.pieces],
    ];
    return same.filter(([, isSame]) => isSame).map(([stage]) => stage);
  }

  it.each([
    ['nothing', (p: Project) => p, 0, ['body', 'shell', 'flat', 'pieces']],
    [
      'the seam allowance',
      (p: Project) => ({ ...p, cloth: { allowance: 15 } }),
      0,
      ['body', 'shell', 'flat'],
    ],
    ['the name', (p: Project) => ({ ...p, name: 'Someone' }), 0, ['body', 'shell', 'flat']],
    [
      'the blend of seam lengths',
      (p: Project) => ({ ...p, seams: { ...p.seams, lengthBlend: 1 } }),
      0,
      ['body', 'shell'],
    ],
    ['the fineness', (p: Project) => p, 500, ['body']],
    [
      'a measure',
      (p: Project) => ({ ...p, body: { ...p.body, measures: { ...p.body.measures, waistGirth: 790 } } }),
      0,
      [],
    ],
  ])('when %s changes, keeps what does not depend on it', (_, change, triangles, kept) => {
    expect(keptStages(change, triangles)).toEqual(kept);
  });

  it('gives what a fresh one would give', () => {
    const pipeline = createPipeline();
    pipeline.makeForm(readDemo('petite'), { speaker: ENGLISH, targetTriangles });
    const reused = pipeline.makeForm(project, { speaker: ENGLISH, targetTriangles });
    expect(reused).toEqual(makeForm(project, { speaker: ENGLISH, targetTriangles }));
  });

  it('does not remember a stopped run', () => {
    const pipeline = createPipeline();
    let stage = '';
    const stopped = pipeline.makeForm(project, {
      speaker: ENGLISH,
      targetTriangles,
      onProgress: (_, at) => {
        stage = at;
      },
      isCancelled: () => stage === 'panels',
    });
    expect(stopped.ok).toBe(false);
    expect(pipeline.makeForm(project, { speaker: ENGLISH, targetTriangles })).toEqual(
      makeForm(project, { speaker: ENGLISH, targetTriangles }),
    );
  });
});
