import path from 'node:path';
import { flattenRegion, picturePatch } from '../core/advice/index.ts';
import { surfaceOfProject } from '../core/assembly/index.ts';
import { writeSvg } from '../core/export/index.ts';
import type { Pipeline } from '../core/pipeline/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { describeIssues } from './describe-form.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { readProjectFile, readTextFile } from './read-project-file.ts';
import { writeFiles } from './write-files.ts';

/** Unrolls a region drawn on the body, tells its strain and writes it in true size. */
export async function regionCommand(
  file: string,
  loopFile: string,
  options: { readonly out?: string },
  { stdout, stderr }: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Promise<number> {
  const { numbers } = reader;
  const words = reader.words.region;
  const project = await readProjectFile(file);
  const loop = await readLoop(loopFile);
  const body = project.ok ? pipeline.fitBody(project.value) : project;
  const region =
    project.ok && body.ok
      ? flattenRegion(surfaceOfProject(project.value, body.value), body.value, loop)
      : undefined;
  const issues = [...body.issues, ...(region?.issues ?? [])];
  if (issues.length > 0) stderr.write(`${describeIssues(issues, reader)}\n`);
  if (!project.ok || !region?.ok) return exitCodes.errorsInProject;
  const { p95, min, max, area3d } = region.value.flat.strain.summary;
  const percent = (x: number): string => numbers.fixed(100 * x, 2);
  const [body3d, flat] = [region.value.length3d, region.value.lengthFlat].map((mm) =>
    numbers.length(mm, project.value.displayUnits),
  );
  const found = words.found(numbers.fixed(area3d / 100, 0), percent(p95), percent(min), percent(max));
  stdout.write(`${found}\n${words.round(body3d, flat)}\n`);
  if (options.out !== undefined) {
    const target = path.parse(path.resolve(options.out));
    const [written] = await writeFiles(target.dir, [
      { name: target.base, content: writeSvg(picturePatch(region.value, words.title, reader.say), reader) },
    ]);
    stdout.write(`${written}\n`);
  }
  return exitCodes.fine;
}

async function readLoop(file: string): Promise<Float64Array> {
  const points = parsePoints(await readTextFile(file));
  if (points) return Float64Array.from(points.flat());
  throw new CommandFailure(exitCodes.errorsInProject, ({ refusals }) => refusals.files.noPoints(file));
}

function parsePoints(text: string): number[][] | undefined {
  try {
    const read: unknown = JSON.parse(text);
    const isPoint = (point: unknown): point is number[] =>
      Array.isArray(point) && point.length === 2 && point.every((x) => Number.isFinite(x));
    return Array.isArray(read) && read.every(isPoint) ? read : undefined;
  } catch {
    return undefined;
  }
}
