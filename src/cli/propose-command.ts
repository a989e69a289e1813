import path from 'node:path';
import { proposeLine, proposeMoves, type SeamProposal } from '../core/advice/index.ts';
import { layoutOf, surfaceOfProject } from '../core/assembly/index.ts';
import { failure, type Result, success } from '../core/base/index.ts';
import type { FormStrain } from '../core/flatten/index.ts';
import type { Pipeline } from '../core/pipeline/index.ts';
import { type Project, serializeProject } from '../core/project/index.ts';
import type { SeamLayout } from '../core/seams/index.ts';
import type { Numbers } from '../language/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { describeIssues } from './describe-form.ts';
import { exitCodes } from './exit-codes.ts';
import { formatTable } from './format-table.ts';
import { readProjectFile } from './read-project-file.ts';
import { showProgress } from './show-progress.ts';
import { writeFiles } from './write-files.ts';

export interface ProposeCommandOptions {
  /** p95 wanted, per cent. */
  readonly strain: number;
  readonly mostPanels?: number;
  readonly layout?: string;
  /** Where to write the project with the proposed lines. */
  readonly out?: string;
}

/** For the form as a whole: lines moved, then lines added one by one, until the strain wanted or no more panels are allowed. */
export async function proposeCommand(
  file: string,
  options: ProposeCommandOptions,
  { stdout, stderr }: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Promise<number> {
  const { say, numbers } = reader;
  const words = reader.words.propose;
  const read = await readProjectFile(file);
  if (!read.ok) {
    stderr.write(`${describeIssues(read.issues, reader)}\n`);
    return exitCodes.errorsInProject;
  }
  const project: Project =
    options.layout === undefined
      ? read.value
      : { ...read.value, seams: { ...read.value.seams, layout: options.layout } };
  const progress = showProgress(stderr, reader);
  const found = propose(project, options, pipeline, (fraction, what) =>
    progress.onProgress(fraction, 'seams', what),
  );
  progress.end();
  if (!found.ok) {
    stderr.write(`${describeIssues(found.issues, reader)}\n`);
    return exitCodes.errorsInProject;
  }
  const { before, steps } = found.value;
  const rows = [
    rowOf(words.asItIs, before, numbers),
    ...steps.map((step, k) => rowOf(words.afterStep(k + 1), step.after, numbers)),
  ];
  const columns = [{ title: '' }, { title: words.strain, align: 'right' as const }];
  const told = steps.map(({ changes }, k) => `${k + 1}. ${changes.map(say).join('\n   ')}\n`);
  stdout.write(`${told.join('')}\n${formatTable(columns, rows)}\n`);
  const last = steps[steps.length - 1];
  const reached = (last?.after ?? before).p95;
  const wanted = numbers.mark(`${options.strain}`);
  const isReached = 100 * reached <= options.strain;
  stdout.write(
    `${isReached ? words.reached(wanted) : words.notReached(wanted, numbers.fixed(100 * reached, 2))}\n`,
  );
  if (options.out !== undefined && last) {
    const target = path.parse(path.resolve(options.out));
    const better: Project = { ...project, seams: { ...project.seams, lines: last.layout.lines } };
    const [written] = await writeFiles(target.dir, [
      { name: target.base, content: serializeProject(better) },
    ]);
    stdout.write(`${written}\n`);
  }
  return exitCodes.fine;
}

interface Proposals {
  readonly before: FormStrain;
  readonly steps: readonly SeamProposal[];
}

const MOST_STEPS = 6;

function propose(
  project: Project,
  { strain, mostPanels }: ProposeCommandOptions,
  pipeline: Pipeline,
  onProgress: NonNullable<Parameters<typeof proposeMoves>[3]>['onProgress'],
): Result<Proposals> {
  const body = pipeline.fitBody(project);
  const layout = layoutOf(project);
  if (!body.ok) return body;
  if (!layout.ok) return layout;
  const surface = surfaceOfProject(project, body.value);
  const shared = {
    strainLimit: strain / 100,
    ...(mostPanels === undefined ? {} : { mostPanels }),
    ...(onProgress ? { onProgress } : {}),
  };
  const moved = proposeMoves(surface, body.value, layout.value, shared);
  if (!moved.ok) return failure(moved.issues);
  const steps: SeamProposal[] = moved.value.changes.length > 0 ? [moved.value] : [];
  let best: { layout: SeamLayout; strain: FormStrain } = {
    layout: moved.value.layout,
    strain: moved.value.after,
  };
  while (best.strain.p95 > shared.strainLimit && steps.length < MOST_STEPS) {
    const added = proposeLine(surface, body.value, best.layout, shared);
    if (!added.ok) break;
    steps.push(added.value);
    best = { layout: added.value.layout, strain: added.value.after };
  }
  return success({ before: moved.value.before, steps });
}

function rowOf(what: string, { p95 }: FormStrain, { fixed }: Numbers): string[] {
  return [what, fixed(100 * p95, 2)];
}
