import { adviseZone, createPipeline, type Form, layoutOf, surfaceOfProject } from '../core/pipeline/index.ts';
import { describeIssues } from './describe-form.ts';
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
    const lines = advice.ok ? advice.value.map((one) => `  - ${one.message}`) : [];
    stdout.write(`${[message, ...lines].join('\n')}\n`);
    if (advice.issues.length > 0)
      stdout.write(`  ${advice.issues.map((issue) => issue.message).join(' ')}\n`);
  }
  return exitCodes.fine;
}

/** Of all panels but mirror images, by strain over limit; without the advice words guessed for reading. */
function worstZones({ report, shell }: Form, count: number) {
  return report.panels
    .flatMap(({ cloth }, i) =>
      shell.panels[i].mirrorOf === undefined
        ? cloth.zones.map((zone) => ({ zone, panel: shell.panels[i] }))
        : [],
    )
    .toSorted((a, b) => Math.abs(b.zone.strain) / b.zone.limit - Math.abs(a.zone.strain) / a.zone.limit)
    .slice(0, count)
    .map(({ zone, panel }) => ({
      message: zone.message,
      place: { u: panel.chart[2 * zone.vertex], v: panel.chart[2 * zone.vertex + 1] },
    }));
}
