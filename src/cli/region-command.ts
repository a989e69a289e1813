import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { picturePatch, unrollRegion } from '../core/advice/index.ts';
import { surfaceOfProject } from '../core/assembly/index.ts';
import { formatLength } from '../core/base/index.ts';
import { writeSvg } from '../core/export/index.ts';
import { createPipeline } from '../core/pipeline/index.ts';
import { describeIssues } from './describe-form.ts';
import { englishSpeaker } from './english-speaker.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { readProjectFile } from './read-project-file.ts';
import type { CommandStreams } from './run.ts';
import { faultInWords, writeFiles } from './write-files.ts';

/** Unrolls a region drawn on the body, tells its strain and writes it in true size. */
export async function regionCommand(
  file: string,
  loopFile: string,
  options: { readonly out?: string },
  { stdout, stderr }: CommandStreams,
): Promise<number> {
  const project = await readProjectFile(file);
  const loop = await readLoop(loopFile);
  const body = project.ok ? createPipeline().fitBody(project.value) : project;
  const region =
    project.ok && body.ok
      ? unrollRegion(surfaceOfProject(project.value, body.value), body.value, loop)
      : undefined;
  const issues = [...body.issues, ...(region?.issues ?? [])];
  if (issues.length > 0) stderr.write(`${describeIssues(issues)}\n`);
  if (!project.ok || !region?.ok) return exitCodes.errorsInProject;
  const { rms, p95, p99, min, max, area3d } = region.value.flat.strain.summary;
  const percent = (x: number): string => `${(100 * x).toFixed(2)} %`;
  const unit = project.value.displayUnits;
  stdout.write(
    `Region of ${(area3d / 100).toFixed(0)} cm²: strain rms ${percent(rms)}, p95 ${percent(p95)}, p99 ${percent(p99)}, ` +
      `from ${percent(min)} to ${percent(max)}.\nRound it ${formatLength(region.value.length3d, unit)} on the body, ` +
      `${formatLength(region.value.lengthFlat, unit)} on the flat piece.\n`,
  );
  if (options.out !== undefined) {
    const target = path.parse(path.resolve(options.out));
    const [written] = await writeFiles(target.dir, [
      {
        name: target.base,
        content: writeSvg(picturePatch(region.value, 'Region', englishSpeaker.say), englishSpeaker),
      },
    ]);
    stdout.write(`${written}\n`);
  }
  return exitCodes.fine;
}

async function readLoop(file: string): Promise<Float64Array> {
  let text: string;
  try {
    text = await readFile(file, 'utf8');
  } catch (error) {
    const reason = faultInWords((error as NodeJS.ErrnoException).code ?? '', error);
    throw new CommandFailure(exitCodes.cannotReadOrWrite, `Cannot read ${file}: ${reason}.`);
  }
  const points = parsePoints(text);
  if (points) return Float64Array.from(points.flat());
  const wanted = 'it must be a list of points, [[u, v], …], u in radians, v in mm from the base';
  throw new CommandFailure(exitCodes.errorsInProject, `Cannot use ${file}: ${wanted}.`);
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
