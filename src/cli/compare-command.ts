import path from 'node:path';
import { mapDistance } from '../core/advice/index.ts';
import type { Issue } from '../core/base/index.ts';
import { compareBodies } from '../core/body/index.ts';
import { writeSvg } from '../core/export/index.ts';
import type { Pipeline } from '../core/pipeline/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { describeIssues } from './describe-form.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { formatTable } from './format-table.ts';
import { readProjectFile } from './read-project-file.ts';
import { writeFiles } from './write-files.ts';

/** Fits two projects' bodies and shows what differs, level by level and over the whole surface. */
export async function compareCommand(
  before: string,
  after: string,
  options: { readonly map?: string },
  { stdout, stderr }: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Promise<number> {
  const { say, numbers } = reader;
  const words = reader.words.compare;
  const fitted = (file: string) => fitFile(file, stderr, reader, pipeline);
  const [a, b] = [await fitted(before), await fitted(after)];
  const { sections } = compareBodies(a.body, b.body, new Float64Array(0));
  const { unit } = a;
  const show = (x: number): string => numbers.length(x, unit);
  const rows = sections.map(({ name, before: x, after: y }) => [
    say(name),
    ...(['girth', 'width', 'depth', 'z'] as const).map((k) => `${show(x[k])} → ${show(y[k])}`),
    `${y.girth >= x.girth ? '+' : '−'}${show(Math.abs(y.girth - x.girth))}`,
  ]);
  const titles = [words.level, words.girth, words.width, words.depth, words.height, words.change];
  stdout.write(
    `${formatTable(
      titles.map((title) => ({ title })),
      rows,
    )}\n\n`,
  );
  const { rms, mostOutside, mostInside, drawing } = mapDistance(a.body, b.body, say);
  stdout.write(
    `${words.distances(numbers.fixed(rms, 1), numbers.fixed(mostOutside, 1), numbers.fixed(-mostInside, 1))}\n`,
  );
  if (options.map) {
    const file = path.parse(path.resolve(options.map));
    const [written] = await writeFiles(file.dir, [{ name: file.base, content: writeSvg(drawing, { say }) }]);
    stdout.write(`${words.picture(written)}\n`);
  }
  return exitCodes.fine;
}

async function fitFile(file: string, stderr: CommandStreams['stderr'], reader: Reader, pipeline: Pipeline) {
  const refuse = (issues: readonly Issue[]) =>
    new CommandFailure(exitCodes.errorsInProject, () => describeIssues(issues, reader));
  const project = await readProjectFile(file);
  if (!project.ok) throw refuse(project.issues);
  const body = pipeline.fitBody(project.value);
  if (!body.ok) throw refuse(body.issues);
  if (body.issues.length > 0) stderr.write(`${file}\n${describeIssues(body.issues, reader)}\n`);
  return { body: body.value, unit: project.value.displayUnits };
}
