import { readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { filesOfForm } from '../../src/core/files/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import { createPipeline, type MakeOptions, makeForm, type StageId } from '../../src/core/pipeline/index.ts';
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

/** What every form here is made with; with such a clock the times told are the same too. */
const makeFresh = (tell: MakeOptions['onProgress']): Form => {
  const form = makeForm(project, {
    speaker: ENGLISH,
    targetTriangles,
    date: '2026-01-31',
    now: countingClock(),
    ...(tell ? { onProgress: tell } : {}),
  });
  if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
  return form.value;
};

const seen: { fraction: number; stage: StageId; what: string }[] = [];
/** Made from nothing once for all tests: it is what they compare with. */
let fresh: Form;
const before = structuredClone(project);
beforeAll(() => {
  fresh = makeFresh((fraction, stage, what) => seen.push({ fraction, stage, what: inEnglish(what) }));
});

describe('makeForm', () => {
  it('passes the stages in order, and its progress only rises', () => {
    const stages = ['tape', 'body', 'seams', 'panels', 'inside', 'filling', 'cutting', 'laying'];
    expect([...new Set(seen.map((s) => s.stage))]).toEqual(stages);
    const fractions = seen.map((s) => s.fraction);
    expect(fractions).toEqual(fractions.toSorted((a, b) => a - b));
    expect(fractions[0]).toBe(0);
    expect(fractions[fractions.length - 1]).toBe(1);
    expect(seen.every((s) => s.what.length > 0)).toBe(true);
    expect(Object.keys(fresh.report.timingsMs)).toEqual(stages);
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
    const [first, second] = await Promise.all(
      [fresh, makeFresh(undefined)].map((form) => filesOfForm(form, inEnglish)),
    );
    expect(first.map((file) => file.name)).toEqual([
      ...['panels.svg', 'webs.svg', 'card.svg', 'foam.svg', 'test-tube.svg', 'report.json', 'body.glb'],
    ]);
    expect(second).toEqual(first);
  });

  it('leaves the project as it was, and hands over data that can be sent between threads', () => {
    expect(project).toEqual(before);
    expect(structuredClone(fresh)).toEqual(fresh);
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
  const CHANGES: readonly {
    readonly what: string;
    readonly change?: (p: Project) => Project;
    readonly triangles?: number;
    readonly kept: readonly string[];
  }[] = [
    { what: 'nothing', kept: ['body', 'shell', 'flat', 'pieces'] },
    {
      what: 'the seam allowance',
      change: (p) => ({ ...p, cloth: { allowance: 15 } }),
      kept: ['body', 'shell', 'flat'],
    },
    { what: 'the name', change: (p) => ({ ...p, name: 'Someone' }), kept: ['body', 'shell', 'flat'] },
    {
      what: 'the blend of seam lengths',
      change: (p) => ({ ...p, seams: { ...p.seams, lengthBlend: 1 } }),
      kept: ['body', 'shell'],
    },
    { what: 'the fineness', triangles: targetTriangles + 500, kept: ['body'] },
    {
      what: 'a measure',
      change: (p) => ({ ...p, body: { ...p.body, measures: { ...p.body.measures, waistGirth: 790 } } }),
      kept: [],
    },
  ];

  // One pipeline takes all changes in turn, each beside the form before it.
  const pipeline = createPipeline();
  let [changed, fineness] = [project, targetTriangles];
  let last: Form | undefined;
  const makeNext = (): Form => {
    const made = pipeline.makeForm(changed, { speaker: ENGLISH, targetTriangles: fineness });
    if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
    return made.value;
  };

  /** Stages whose result is the very same object as before. */
  function keptStages(change: (p: Project) => Project, triangles: number): string[] {
    const a = last ?? makeNext();
    [changed, fineness] = [change(structuredClone(changed)), triangles];
    const b = makeNext();
    last = b;
    const same: [string, boolean][] = [
      ['body', a.body === b.body],
      ['shell', a.shell === b.shell],
      ['flat', a.flat === b.flat],
      ['pieces', a.pieces === b.pieces],
    ];
    return same.filter(([, isSame]) => isSame).map(([stage]) => stage);
  }

  it.each(CHANGES)(
    'when $what changes, keeps what does not depend on it',
    ({ change = (p) => p, triangles = fineness, kept }) => {
      expect(keptStages(change, triangles)).toEqual(kept);
    },
  );

  it('gives what a fresh one would give, after another body and after a stopped run', () => {
    let stage = '';
    const other = pipeline.makeForm(readDemo('petite'), { speaker: ENGLISH, targetTriangles });
    expect(other.ok).toBe(true);
    const options = { speaker: ENGLISH, targetTriangles, date: '2026-01-31' };
    const stopped = pipeline.makeForm(project, {
      ...options,
      onProgress: (_, at) => {
        stage = at;
      },
      isCancelled: () => stage === 'panels',
    });
    expect(stopped.ok).toBe(false);
    const reused = pipeline.makeForm(project, options);
    if (!reused.ok) throw new Error(inEnglish(reused.issues[0].message));
    expect(withoutTimes(reused.value)).toEqual(withoutTimes(fresh));
  });
});

const withoutTimes = (form: Form) => ({ ...form, report: { ...form.report, timingsMs: {} } });
