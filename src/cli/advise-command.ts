import { adviseZone } from '../core/advice/index.ts';
import { layoutOf, surfaceOfProject } from '../core/assembly/index.ts';
import { worstZones } from '../core/form/index.ts';
import type { Pipeline } from '../core/pipeline/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { describeIssues } from './describe-form.ts';
import { exitCodes } from './exit-codes.ts';
import { makeWithProgress } from './make-with-progress.ts';
import { readProjectFile } from './read-project-file.ts';

/** Fine enough to find the places; advice is judged on a coarser mesh still. */
const TRIANGLES = 6000;

/** For the places where the cloth is asked for more than it takes, worst first: what would help, tried out. */
export async function adviseCommand(
  file: string,
  options: { readonly zones: number; readonly layout?: string },
  streams: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Promise<number> {
  const { stdout, stderr } = streams;
  const { say, words } = reader;
  const read = await readProjectFile(file);
  if (!read.ok) {
    stderr.write(`${describeIssues(read.issues, reader)}\n`);
    return exitCodes.errorsInProject;
  }
  const project =
    options.layout === undefined
      ? read.value
      : { ...read.value, seams: { ...read.value.seams, layout: options.layout } };
  const form = makeWithProgress(
    project,
    { targetTriangles: TRIANGLES, isDraft: true },
    streams,
    reader,
    pipeline,
  );
  const layout = layoutOf(project);
  if (!form.ok || !layout.ok) {
    stderr.write(`${describeIssues(form.issues, reader)}\n`);
    return exitCodes.errorsInProject;
  }
  const zones = worstZones(form.value, options.zones);
  if (zones.length === 0) stdout.write(`${words.advise.nowhere}\n`);
  const surface = surfaceOfProject(project, form.value.body);
  for (const { message, place } of zones) {
    const advice = adviseZone(surface, form.value.body, layout.value, place);
    const lines = advice.ok ? advice.value.map((one) => `  - ${say(one.message)}`) : [];
    stdout.write(`${[say(message), ...lines].join('\n')}\n`);
    if (advice.issues.length > 0)
      stdout.write(`  ${advice.issues.map((issue) => say(issue.message)).join(' ')}\n`);
  }
  return exitCodes.fine;
}
