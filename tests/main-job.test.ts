import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { DOMParser } from '@xmldom/xmldom';
import SVGPathCommander from 'svg-path-commander';
import { describe, expect, it } from 'vitest';
import { writeSvg } from '../src/core/export/index.ts';
import type { Form } from '../src/core/form/index.ts';
import { createPipeline, makeForm } from '../src/core/pipeline/index.ts';
import { type Project, parseProject } from '../src/core/project/index.ts';
import { LAYOUTS } from '../src/core/seams/index.ts';
import { ENGLISH, inEnglish } from './in-english.ts';
import { isCampaign } from './is-campaign.ts';
import { hullPerimeter, stretchedLength } from './oracles/tape-over-points.ts';
import { sharedPipeline } from './shared-pipeline.ts';
import {
  contradictsItself,
  firstMeasureIds,
  projectFromSurveyRow,
  readSurvey,
  type SurveyFile,
} from './survey/project-from-survey-row.ts';

// The job: from a person's measures to panels whose sewn form measures the same. Limits in mm.
const demoTriangles = 12_000;
const surveyTriangles = 3000;
const tapeLimit = 0.5;
const partnerLimit = 0.1;
const markLimit = 0.2;
const levelLimit = 0.5;
const fileLimit = 0.05;
const backLimit = 1;
/** How closely a smooth girth can be told from mesh points, beside a share of what their chords leave out. */
const girthLimit = 0.3;
const chordShare = 0.5;

const demoFolder = path.join(import.meta.dirname, '../shared/demos');
const demos = readdirSync(demoFolder)
  .filter((file) => file.endsWith('.loftseam.json'))
  .map((file) => [file.replace('.loftseam.json', ''), readDemo(file)] as const);

function readDemo(file: string): Project {
  const project = parseProject(readFileSync(path.join(demoFolder, file), 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  return project.value;
}

/**
 * `npm run campaign` makes every layout on every demo and seventy people of the survey, each with its inside. The unit tests
 * take every layout on two of the demos, in turns, and twenty-one people. The inside takes more than half of the time of a
 * form, and nothing here measures it: it is made with every demo, with every layout on one body and with every third person.
 * The body of a form without it is fitted from nothing: by a pipeline that has fitted no other.
 */

function make(
  project: Project,
  isWhole = isCampaign,
  targetTriangles = surveyTriangles,
  pipeline = createPipeline(),
): Form {
  const options = { speaker: ENGLISH, targetTriangles, date: '2026-01-31', isDraft: !isWhole };
  const form = pipeline.makeForm(project, options);
  if (!form.ok) throw new Error(form.issues.map((i) => `${i.path}: ${inEnglish(i.message)}`).join('\n'));
  return form.value;
}

function expectSound(form: Form): void {
  const { report } = form;
  for (const tape of report.tapes) {
    const residual = tape.got - tape.target;
    if (tape.status === 'estimated' || Math.abs(residual) <= tapeLimit) continue;
    const named = report.issues.find((issue) => issue.path === `body.measures.${tape.id}`);
    expect(named, `${tape.id} is off by ${residual.toFixed(2)} mm and must be named`).toBeDefined();
    expect(named?.measured).toBeTypeOf('number');
    expect(named?.message).toMatch(/measure/i);
  }
  for (const { id, lengthsFlat, length3d, maxMarkGap } of report.seams) {
    expect(Math.abs(lengthsFlat[0] - lengthsFlat[1]), `partners of ${id}`).toBeLessThanOrEqual(partnerLimit);
    expect(maxMarkGap, `marks of ${id}`).toBeLessThanOrEqual(markLimit);
    expect(Math.abs(lengthsFlat[0] / length3d - 1), `${id} flat against body`).toBeLessThan(0.1);
  }
  expect(report.levels.map((level) => level.id)).toEqual(expect.arrayContaining(['hip', 'waist', 'bust']));
  for (const { id, length3d, lengthFlat } of report.levels) {
    expect(Math.abs(lengthFlat - length3d), `level ${id}`).toBeLessThanOrEqual(levelLimit);
  }
  for (const panel of report.panels) {
    expect(panel.flipped, `flipped triangles of ${panel.id}`).toBe(0);
    expect(panel.areaFlat / panel.area3d).toBeGreaterThan(0.9);
    expect(panel.areaFlat / panel.area3d).toBeLessThan(1.1);
  }
  expect(everyNumberIsFinite(form)).toBe(true);
}

function everyNumberIsFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (ArrayBuffer.isView(value)) return (value as Float64Array).every(Number.isFinite);
  if (typeof value === 'object' && value !== null) return Object.values(value).every(everyNumberIsFinite);
  return true;
}

/**
 * Tapes read again with nothing of the fit: the convex outline of the mesh points of a level, and the taut line over
 * the mesh points of the centre back seam.
 */
function expectTapesOnTheMesh(form: Form): void {
  const { shell, body } = form;
  const { positions } = shell.mesh;
  let seen = 0;
  for (const tape of body.tapes) {
    const level = shell.levels.find(({ id }) => `${id}Girth` === tape.id);
    if (!level) continue;
    seen++;
    const ring = Array.from(level.vertices, (v) => [positions[3 * v], positions[3 * v + 1]] as const);
    const { perimeter, shortfall } = hullPerimeter(ring);
    const limit = girthLimit + chordShare * shortfall;
    expect(Math.abs(perimeter + shortfall - tape.got), tape.id).toBeLessThan(limit);
  }
  expect(seen).toBeGreaterThanOrEqual(3);
  const back = body.tapes.find(({ id }) => id === 'backWaistLength');
  expect(Math.abs(stretchedLength(spineOf(form)) - back!.got), 'backWaistLength').toBeLessThan(backLimit);
}

/** Centre back from the waist up to the nape in the plane of symmetry: x backwards, y up. */
function spineOf({ shell, body }: Form): [number, number][] {
  const { positions } = shell.mesh;
  const seam = shell.seams.find(({ lineId }) => lineId === 'centreBack');
  const waist = body.levels.find(({ id }) => id === 'waist');
  if (!seam || !waist) throw new Error('the layout has a centre back seam and the body a waist');
  const napeV = body.landmarks.neckBack.v;
  const spine: [number, number][] = [];
  let previous = { v: Number.NEGATIVE_INFINITY, x: 0, y: 0 };
  for (const vertex of seam.points) {
    const here = {
      v: shell.chart[2 * vertex + 1],
      x: -positions[3 * vertex + 1],
      y: positions[3 * vertex + 2],
    };
    if (here.v >= waist.v - 1e-6 && here.v <= napeV) spine.push([here.x, here.y]);
    // The nape need not be a mesh point: taken on the edge it lies on.
    if (previous.v < napeV && here.v > napeV) {
      const t = (napeV - previous.v) / (here.v - previous.v);
      spine.push([previous.x + t * (here.x - previous.x), previous.y + t * (here.y - previous.y)]);
    }
    previous = here;
  }
  return spine;
}

describe('demo projects', () => {
  it.each(demos)('%s becomes panels that sew together and measure as asked', (_, project) => {
    const form = make(project, true, demoTriangles, sharedPipeline);
    expectSound(form);
    expectTapesOnTheMesh(form);
    expectFileToMatch(form);
  });
});

describe('every seam layout', () => {
  const cases = demos.flatMap(([name, project], d) => {
    // One memory for each demo, so that its body is fitted once for all layouts.
    const pipeline = createPipeline();
    const layouts = LAYOUTS.map(({ id }, l) => [id, l] as const);
    const taken = layouts.filter(([, l]) => isCampaign || l % 4 === d % 4);
    return taken.map(([id, l]) => {
      const isWhole = isCampaign || l % demos.length === d;
      const memory = isWhole ? sharedPipeline : pipeline;
      const makeIt = () => make({ ...project, seams: { layout: id } }, isWhole, surveyTriangles, memory);
      return [id, name, makeIt] as const;
    });
  });

  it.each(cases)('%s on %s', (_, __, makeIt) => {
    const form = makeIt();
    expectSound(form);
    expectFileToMatch(form);
  });
});

/** The written sheet, read by an XML parser and a path library: it holds every seam twice, as long as reported. */
function expectFileToMatch(form: Form): void {
  const [{ drawing }] = form.drawings;
  const parser = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  });
  const root = parser.parseFromString(writeSvg(drawing, ENGLISH), 'image/svg+xml').documentElement!;
  const [, , width, height] = root.getAttribute('viewBox')!.split(' ').map(Number);
  expect(root.getAttribute('width')).toBe(`${width}mm`);
  expect(root.getAttribute('height')).toBe(`${height}mm`);
  const paths = new Map(
    Array.from(
      root.getElementsByTagName('path'),
      (p) => [p.getAttribute('id'), p.getAttribute('d')!] as const,
    ),
  );
  for (const seam of form.report.seams) {
    const lengths = seam.panels.map((panel) => {
      const d = paths.get(`${panel}/sew/${seam.letter}`);
      expect(d, `${panel}/sew/${seam.letter}`).toBeDefined();
      return new SVGPathCommander(d!).getTotalLength();
    });
    for (const side of [0, 1]) {
      expect(Math.abs(lengths[side] - seam.lengthsFlat[side]), `seam ${seam.id}`).toBeLessThanOrEqual(
        fileLimit,
      );
    }
  }
}

describe('people of the 1988 survey', () => {
  const evenly = <T>(list: readonly T[], count: number) =>
    Array.from({ length: count }, (_, i) => list[Math.floor(((i + 0.5) * list.length) / count)]);
  const consistent = (file: SurveyFile) => readSurvey(file).filter((row) => !contradictsItself(row));
  const withWhole = (rows: ReturnType<typeof readSurvey>) =>
    rows.map((row, i) => [row.row, row, isCampaign || i % 3 === 0] as const);
  const women = withWhole(evenly(consistent('survey1988-women'), isCampaign ? 50 : 15));
  const men = withWhole(evenly(consistent('survey1988-men'), isCampaign ? 20 : 6));

  it.each(women)('woman on line %i', (_, row, isWhole) => {
    const form = make(projectFromSurveyRow(row, 'bust'), isWhole);
    expectSound(form);
    expectTapesOnTheMesh(form);
  });

  it.each(men)('man on line %i', (_, row, isWhole) => {
    const form = make(projectFromSurveyRow(row, 'chest'), isWhole);
    expectSound(form);
    expectTapesOnTheMesh(form);
  });

  it('names the wrong number in a row that contradicts itself', () => {
    const rows = readSurvey('survey1988-women').filter(contradictsItself);
    expect(rows).toHaveLength(1);
    const form = makeForm(projectFromSurveyRow(rows[0], 'bust'), {
      speaker: ENGLISH,
      targetTriangles: surveyTriangles,
    });
    // Hip level minus waist level: the measure the wrong waist height went into.
    const named = form.issues
      .filter((issue) => issue.code === 'measure-implausible')
      .map((issue) => issue.path);
    expect(named).toEqual(['body.measures.waistToHip']);
  });

  it.each([...women.slice(0, 5), ...men.slice(0, 5)])(
    'line %i with only the five first measures',
    (_, row, isWhole) => {
      const figure = women.some(([, woman]) => woman === row) ? 'bust' : 'chest';
      const form = make(projectFromSurveyRow(row, figure, firstMeasureIds), isWhole);
      expectSound(form);
      const estimated = form.report.tapes.filter((tape) => tape.status === 'estimated');
      expect(estimated.length).toBeGreaterThan(0);
      for (const tape of estimated) expect(tape.spread).toBeGreaterThan(0);
      const asked = form.report.tapes.filter((tape) => tape.status !== 'estimated').map((tape) => tape.id);
      expect(asked.toSorted()).toEqual([...firstMeasureIds].toSorted());
    },
  );
});
