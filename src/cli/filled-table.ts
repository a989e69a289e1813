/**
 * npm run filled [-- --triangles N] [--body WORD] [--pressure KPA] [--tube PERCENT] [--without KINDS]
 *   [--unrolled] [--free-armholes] [--survey N] [--inside LIST]
 * Prints what the filled form of every demo body is in space beside what was asked: girth, width and depth over the cloth at every
 * level, distances to the body, what webs and seams carry. `--tube`: growth of the test tube, which is taken off the
 * panels. `--inside`: as of `make`, so `--inside parts=all`. `--without`: kinds of braces left out of the filling. `--unrolled`: panels are not cut for the filling. `--survey`: instead
 * of the demos, N people of the survey of 1988, women and men in turn. Ends with 1 when anything could not be made.
 */
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { Command } from 'commander';
import type { Issue, Result } from '../core/base/index.ts';
import {
  type FilledGiven,
  type FilledMeasures,
  type FilledPlace,
  filledProblem,
  loadOfFilling,
  measureFilled,
} from '../core/filled/index.ts';
import { createPipeline } from '../core/pipeline/index.ts';
import { type Project, parseProject } from '../core/project/index.ts';
import { findEquilibrium } from '../core/statics/index.ts';
import { createReader } from './create-reader.ts';
import { formatTable } from './format-table.ts';
import { addInsideOption, type InsideCommandOptions, withInside } from './inside-options.ts';
import { readProjectFile } from './read-project-file.ts';
import { measuresOfRow, readSurveyRows } from './survey-columns.ts';

const reader = await createReader('en');
const { speaker, say } = reader;
const command = new Command('filled')
  .option('--triangles <n>', 'of each form', '6000')
  .option('--body <word>', 'only demo bodies whose file name contains it', '')
  .option('--pressure <kPa>', 'of the filling', '3')
  .option('--tube <percent>', 'growth of the test tube', '0.7557')
  .option('--without <kinds>', 'leave out: tie, web, strap, throat, by commas', '')
  .option('--unrolled', 'panels as unrolled, not cut for the filling', false)
  .option('--free-armholes', 'armhole boards held by nothing but the cloth', false)
  .option('--survey <n>', 'people of the survey of 1988 instead of the demos', '0');
addInsideOption(command, reader);
const options = command.parse().opts<
  InsideCommandOptions & {
    triangles: string;
    body: string;
    pressure: string;
    tube: string;
    without: string;
    unrolled: boolean;
    freeArmholes: boolean;
    survey: string;
  }
>();

const shared = path.join(import.meta.dirname, '../../shared');
const pipeline = createPipeline();
const left = options.without.split(',');

interface Named {
  readonly body: string;
  readonly project: Result<Project>;
}

async function* demos(): AsyncGenerator<Named> {
  const folder = path.join(shared, 'demos');
  for (const file of readdirSync(folder).sort())
    if (file.includes(options.body))
      yield {
        body: path.basename(file, '.loftseam.json'),
        project: await readProjectFile(path.join(folder, file)),
      };
}

/** Every so many rows of both files, as a home measurer would have taken them. */
function* people(count: number): Generator<Named> {
  const files = [
    ['women', 'bust'],
    ['men', 'chest'],
  ] as const;
  for (let k = 0; k < count; k++) {
    const [name, figure] = files[k % 2];
    const rows = readSurveyRows(path.join(shared, `survey/survey1988-${name}.csv`));
    const row = rows[Math.floor(((Math.floor(k / 2) + 0.5) * rows.length) / Math.ceil(count / 2))];
    const measures = measuresOfRow(row, figure);
    const body = `${name}, row ${row.row}`;
    const parts = { body: { figure, measures }, seams: {}, cloth: {}, inside: {}, cutting: {} };
    yield {
      body,
      project: parseProject({
        format: 'loftseam-project',
        version: 1,
        name: body,
        displayUnits: 'cm',
        ...parts,
      }),
    };
  }
}

/** A form, ready to be filled. */
function formOf(project: Project): FilledGiven | readonly Issue[] {
  const inside = { ...project.inside, measuredGrowth: Number(options.tube) / 100 };
  const made = pipeline.makeForm(
    { ...project, inside },
    {
      speaker,
      targetTriangles: Number(options.triangles),
      fills: !options.unrolled,
      now: () => performance.now(),
    },
  );
  if (!made.ok || !made.value.inside) return made.issues;
  const { shell, flat } = made.value;
  const { shape } = made.value.inside;
  const braces = shape.braces.filter(({ kind }) => !left.includes(kind));
  return { shell, flat, inside: { ...shape, braces }, options: inside };
}

const signed = (x: number, digits = 1): string => `${x < 0 ? '−' : '+'}${Math.abs(x).toFixed(digits)}`;
const placeInWords = ({ distance, over, where }: FilledPlace): string =>
  `${signed(distance, 0)} ${where}, over ${over ?? 'the base'}`;

function sizesOf(body: string, { levels }: FilledMeasures): string[] {
  const cells = levels.map(({ asked, found }) =>
    (['girth', 'width', 'depth'] as const).map((size) => signed(found[size] - asked[size])).join(' '),
  );
  return [body, ...cells];
}

function summaryOf(body: string, measures: FilledMeasures, steps: number, ms: number): string[] {
  const { distance, throat, pulls, seams, boards } = measures;
  const most = pulls.toSorted((a, b) => b.pull - a.pull)[0];
  const peak = pulls.toSorted((a, b) => b.peak - a.peak)[0];
  const seam = Math.max(...seams.map((one) => one.peak));
  const turned = Math.max(...boards.filter(({ id }) => id.startsWith('armhole')).map((one) => one.turned));
  return [
    body,
    distance.rms.toFixed(1),
    (100 * distance.within).toFixed(1),
    placeInWords(distance.worst),
    signed(throat.distance, 0),
    most ? `${most.id} ${most.pull.toFixed(0)}` : '',
    peak ? `${peak.id} ${peak.peak.toFixed(0)}` : '',
    `${Math.min(...seams.map((one) => one.mean)).toFixed(1)}–${Math.max(...seams.map((one) => one.mean)).toFixed(1)}, ${seam.toFixed(0)}`,
    ((180 / Math.PI) * turned).toFixed(1),
    `${steps} / ${ms.toFixed(0)}`,
  ];
}

const sizes: string[][] = [];
const summaries: string[][] = [];
let levels: readonly string[] = [];
let missed = 0;
const count = Number(options.survey);
for await (const { body, project } of count > 0 ? people(count) : demos()) {
  const changed = project.ok ? withInside(project.value, options) : project;
  const form = changed.ok ? formOf(changed.value) : changed.issues;
  const refuse = (issues: readonly Issue[]): void => {
    missed++;
    const worst = issues.find(({ severity }) => severity === 'error') ?? issues[0];
    summaries.push([body, worst ? say(worst.message) : 'not made', ...Array<string>(8).fill('')]);
  };
  if (!('shell' in form)) {
    refuse(form);
    continue;
  }
  const load = { ...loadOfFilling(form.options), pressure: Number(options.pressure) / 1000 };
  const filled = filledProblem(form, { load, areArmholesFree: options.freeArmholes });
  // Of the processor, so that a busy machine counts less.
  const start = process.cpuUsage();
  const balance = findEquilibrium(filled.problem);
  const ms = process.cpuUsage(start).user / 1000;
  if (!balance.ok) {
    refuse(balance.issues);
    continue;
  }
  const measures = measureFilled(filled, balance.value);
  levels = measures.levels.map(({ id }) => id);
  sizes.push(sizesOf(body, measures));
  summaries.push(summaryOf(body, measures, balance.value.steps, ms));
}

const right = 'right' as const;
const ofSizes = [{ title: 'body' }, ...levels.map((title) => ({ title, align: right }))];
const ofSummaries = [
  { title: 'body' },
  { title: 'rms', align: right },
  { title: '% in 8 mm', align: right },
  { title: 'worst' },
  { title: 'throat', align: right },
  { title: 'most N' },
  { title: 'peak N/cm' },
  { title: 'seams N/cm', align: right },
  { title: 'armhole °', align: right },
  { title: 'steps / ms of processor', align: right },
];
const unequal =
  levels.length > 0
    ? formatTable(
        ofSizes,
        sizes.filter(({ length }) => length === ofSizes.length),
      )
    : '';
process.stdout.write(`Girth, width, depth, filled less asked, mm\n${unequal}\n\n`);
process.stdout.write(`${formatTable(ofSummaries, summaries)}\n`);
process.exitCode = missed > 0 ? 1 : 0;
