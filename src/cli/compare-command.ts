import { formatLength } from '../core/base/index.ts';
import { type Body, compareBodies } from '../core/body/index.ts';
import { createPipeline } from '../core/pipeline/index.ts';
import { describeIssues } from './describe-form.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { formatTable } from './format-table.ts';
import { readProjectFile } from './read-project-file.ts';
import type { CommandStreams } from './run.ts';

/** Fits two projects' bodies and shows what differs, level by level and over the whole surface. */
export async function compareCommand(
  before: string,
  after: string,
  { stdout, stderr }: CommandStreams,
): Promise<number> {
  const [a, b] = [await fitFile(before, stderr), await fitFile(after, stderr)];
  const { sections, outward } = compareBodies(a.body, b.body, gridOver(a.body));
  const { unit } = a;
  const show = (x: number): string => formatLength(x, unit);
  const rows = sections.map(({ name, before: x, after: y }) => [
    name,
    ...(['girth', 'width', 'depth', 'z'] as const).map((k) => `${show(x[k])} → ${show(y[k])}`),
    `${y.girth >= x.girth ? '+' : '−'}${show(Math.abs(y.girth - x.girth))}`,
  ]);
  const titles = ['level', 'girth', 'width', 'depth', 'height over waist', 'girth changes by'];
  stdout.write(
    `${formatTable(
      titles.map((title) => ({ title })),
      rows,
    )}\n\n`,
  );
  const squares = outward.reduce((sum, x) => sum + x * x, 0);
  const [inMost, outMost] = [Math.min(...outward), Math.max(...outward)];
  stdout.write(
    `Over the whole surface the second body lies ${Math.sqrt(squares / outward.length).toFixed(1)} mm (root mean square) from the first: at most ${outMost.toFixed(1)} mm outside and ${(-inMost).toFixed(1)} mm inside it.\n`,
  );
  return exitCodes.fine;
}

async function fitFile(file: string, stderr: CommandStreams['stderr']) {
  const project = await readProjectFile(file);
  if (!project.ok) throw new CommandFailure(exitCodes.errorsInProject, describeIssues(project.issues));
  const body = createPipeline().fitBody(project.value);
  if (!body.ok) throw new CommandFailure(exitCodes.errorsInProject, describeIssues(body.issues));
  if (body.issues.length > 0) stderr.write(`${file}\n${describeIssues(body.issues)}\n`);
  return { body: body.value, unit: project.value.displayUnits };
}

/** Even in the chart, from base to neck base, off the armholes. */
function gridOver(body: Body): Float64Array {
  const points: number[] = [];
  const [low, high] = [body.shape.vRange[0], body.landmarks.neckFront.v];
  for (let v = low; v <= high; v += 5) {
    for (let i = 0; i < 144; i++) {
      const u = (2 * Math.PI * i) / 144;
      const inArm = v > body.landmarks.armpitRight.v && Math.abs(Math.sin(u)) < 0.6;
      if (!inArm) points.push(u, v);
    }
  }
  return Float64Array.from(points);
}
