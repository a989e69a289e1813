/**
 * npm run strain-table [-- --triangles N] [--body WORD] [--layout WORD]
 * Prints the strain of every suggested layout on every demo body: with what no length held would have (free), the worst
 * mark and level, and the time of cutting and unrolling. Ends with 1 when anything could not be made.
 */
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { Command } from 'commander';
import { measureFormStrain } from '../core/flatten/index.ts';
import { createPipeline } from '../core/pipeline/index.ts';
import { LAYOUTS } from '../core/seams/index.ts';
import { createReader } from './create-reader.ts';
import { formatTable } from './format-table.ts';
import { readProjectFile } from './read-project-file.ts';

const options = new Command('strain-table')
  .option('--triangles <n>', 'of each form', '20000')
  .option('--body <word>', 'only demo bodies whose file name contains it', '')
  .option('--layout <word>', 'only layouts whose id contains it', '')
  .parse()
  .opts<{ triangles: string; body: string; layout: string }>();

const demos = path.join(import.meta.dirname, '../../shared/demos');
const pipeline = createPipeline();
const { speaker, say } = await createReader('en');
const percent = (fraction: number): string => (100 * fraction).toFixed(2);
const rows: string[][] = [];
let missed = 0;
for (const file of readdirSync(demos)
  .filter((name) => name.includes(options.body))
  .sort()) {
  const project = await readProjectFile(path.join(demos, file));
  for (const layout of LAYOUTS.filter(({ id }) => id.includes(options.layout))) {
    const body = path.basename(file, '.loftseam.json');
    if (!project.ok) {
      missed++;
      continue;
    }
    const made = pipeline.makeForm(
      { ...project.value, seams: { layout: layout.id } },
      {
        speaker,
        targetTriangles: Number(options.triangles),
        now: () => performance.now(),
        compareFree: true,
      },
    );
    if (!made.ok) {
      missed++;
      rows.push([
        body,
        layout.id,
        made.issues[0] ? say(made.issues[0].message) : 'not made',
        ...Array<string>(8).fill(''),
      ]);
      continue;
    }
    const { flat, report, shell } = made.value;
    const { rms, p95, p99 } = measureFormStrain(
      shell.panels.map((panel) => panel.mesh),
      flat,
    );
    const areas = report.panels.reduce((sum, panel) => sum + panel.area3d, 0);
    const free = Math.sqrt(
      report.panels.reduce((sum, panel) => sum + panel.area3d * (panel.strain.freeRms ?? 0) ** 2, 0) / areas,
    );
    const gap = Math.max(...report.seams.map((seam) => seam.maxMarkGap));
    const level = Math.max(...report.levels.map((one) => Math.abs(one.lengthFlat - one.length3d)));
    const { seams = 0, panels = 0 } = report.timingsMs;
    rows.push([
      body,
      layout.id,
      String(report.panels.length),
      percent(rms),
      percent(free),
      percent(p95),
      percent(p99),
      gap.toExponential(0),
      level.toExponential(0),
      seams.toFixed(0),
      panels.toFixed(0),
    ]);
  }
}
const right = 'right' as const;
const titles = [
  'panels',
  'rms %',
  'free rms %',
  'p95 %',
  'p99 %',
  'mark mm',
  'level mm',
  'cut ms',
  'unroll ms',
];
const columns = [{ title: 'body' }, { title: 'layout' }, ...titles.map((title) => ({ title, align: right }))];
process.stdout.write(`${formatTable(columns, rows)}\n`);
process.exitCode = missed > 0 ? 1 : 0;
