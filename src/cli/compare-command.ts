import path from 'node:path';
import { mapDistance } from '../core/advice/index.ts';
import { formatLength, wordsOf } from '../core/base/index.ts';
import { compareBodies } from '../core/body/index.ts';
import { writeSvg } from '../core/export/index.ts';
import { createPipeline } from '../core/pipeline/index.ts';
import { describeIssues } from './describe-form.ts';
import { englishSpeaker } from './english-speaker.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { formatTable } from './format-table.ts';
import { readProjectFile } from './read-project-file.ts';
import type { CommandStreams } from './run.ts';
import { writeFiles } from './write-files.ts';

/** Fits two projects' bodies and shows what differs, level by level and over the whole surface. */
export async function compareCommand(
  before: string,
  after: string,
  options: { readonly map?: string },
  { stdout, stderr }: CommandStreams,
): Promise<number> {
  const [a, b] = [await fitFile(before, stderr), await fitFile(after, stderr)];
  const { sections } = compareBodies(a.body, b.body, new Float64Array(0));
  const { unit } = a;
  const show = (x: number): string => formatLength(x, unit);
  const rows = sections.map(({ name, before: x, after: y }) => [
    wordsOf(name),
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
  const { rms, mostOutside, mostInside, drawing } = mapDistance(a.body, b.body);
  stdout.write(
    `Over the whole surface the second body lies ${rms.toFixed(1)} mm (root mean square) from the first: at most ${mostOutside.toFixed(1)} mm outside and ${(-mostInside).toFixed(1)} mm inside it.\n`,
  );
  if (options.map) {
    const file = path.parse(path.resolve(options.map));
    const [written] = await writeFiles(file.dir, [
      { name: file.base, content: writeSvg(drawing, englishSpeaker) },
    ]);
    stdout.write(`Picture of the distances: ${written}\n`);
  }
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
