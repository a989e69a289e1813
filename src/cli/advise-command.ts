import { adviseZone } from '../core/advice/index.ts';
import { layoutOf, surfaceOfProject } from '../core/assembly/index.ts';
import { wordsOf } from '../core/base/index.ts';
import { worstZones } from '../core/form/index.ts';
import { createPipeline } from '../core/pipeline/index.ts';
import { describeIssues } from './describe-form.ts';
import { englishSpeaker } from './english-speaker.ts';
import { exitCodes } from './exit-codes.ts';
import { readProjectFile } from './read-project-file.ts';
import type { CommandStreams } from './run.ts';
import { showProgress } from './show-progress.ts';

/** Fine enough to find the places; advice is judged on a coarser mesh still. */
const TRIANGLES = 6000;

/** For the places where the cloth is asked for more than it takes, worst first: what would help, tried out. */
export async function adviseCommand(
  file: string,
  options: { readonly zones: number; readonly layout?: string },
  { stdout, stderr }: CommandStreams,
): Promise<number> {
  const read = await readProjectFile(file);
  if (!read.ok) {
    stderr.write(`${describeIssues(read.issues)}\n`);
    return exitCodes.errorsInProject;
  }
  const project =
    options.layout === undefined
      ? read.value
      : { ...read.value, seams: { ...read.value.seams, layout: options.layout } };
  const progress = showProgress(stderr);
  const form = createPipeline().makeForm(project, {
    speaker: englishSpeaker,
    targetTriangles: TRIANGLES,
    isDraft: true,
    onProgress: progress.onProgress,
  });
  progress.end();
  const layout = layoutOf(project);
  if (!form.ok || !layout.ok) {
    stderr.write(`${describeIssues(form.issues)}\n`);
    return exitCodes.errorsInProject;
  }
  const zones = worstZones(form.value, options.zones);
  if (zones.length === 0) stdout.write('Nowhere is the cloth asked for more than it takes.\n');
  const surface = surfaceOfProject(project, form.value.body);
  for (const { message, place } of zones) {
    const advice = adviseZone(surface, form.value.body, layout.value, place);
    const lines = advice.ok ? advice.value.map((one) => `  - ${wordsOf(one.message)}`) : [];
    stdout.write(`${[wordsOf(message), ...lines].join('\n')}\n`);
    if (advice.issues.length > 0)
      stdout.write(
        `  ${advice.issues
          .map((issue) => issue.message)
          .map(wordsOf)
          .join(' ')}\n`,
      );
  }
  return exitCodes.fine;
}
