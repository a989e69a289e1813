import { readCutting } from '../core/assembly/index.ts';
import { success } from '../core/base/index.ts';
import { exportForm } from '../core/files/index.ts';
import { makingPhrase } from '../core/making/index.ts';
import { ALLOWANCE_KINDS, type NotchShape } from '../core/pattern/index.ts';
import { type MakeForm, makeTrialShell, type Pipeline } from '../core/pipeline/index.ts';
import type { Project, ProjectCloth } from '../core/project/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { describeFilled } from './describe-filled.ts';
import { describeIssues, describeReport, describeVerdict } from './describe-form.ts';
import { describeInside } from './describe-inside.ts';
import { exitCodes } from './exit-codes.ts';
import { exportOptionsOf, type FormatOptions } from './export-options.ts';
import { type InsideCommandOptions, withInside } from './inside-options.ts';
import { makeWithProgress } from './make-with-progress.ts';
import { readProjectFile } from './read-project-file.ts';
import { tellPages } from './tell-pages.ts';
import { writeFiles } from './write-files.ts';

export interface MakeCommandOptions extends FormatOptions, InsideCommandOptions {
  readonly out: string;
  readonly triangles?: number;
  readonly allowance?: number;
  readonly layout?: string;
  readonly allowanceFor?: Readonly<Record<string, number>>;
  readonly notches?: NotchShape;
  /** Radians by panel id. */
  readonly grain?: Readonly<Record<string, number>>;
  readonly trialShell?: boolean;
}

/** Makes the form of a saved project and writes its files. */
export async function makeCommand(
  file: string,
  options: MakeCommandOptions,
  streams: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Promise<number> {
  const { stdout, stderr } = streams;
  const saved = await readProjectFile(file);
  const project = saved.ok ? withInside(saved.value, options) : saved;
  if (!project.ok) {
    stderr.write(`${describeIssues(project.issues, reader)}\n`);
    return exitCodes.errorsInProject;
  }
  const date = new Date().toISOString().slice(0, 10);
  const fineness = options.triangles === undefined ? {} : { targetTriangles: options.triangles };
  const asked = { ...fineness, now: () => performance.now(), date };
  const form = options.trialShell
    ? makeWithProgress(withOptions(project.value, options), asked, streams, reader, makeTrialForm)
    : makeWithProgress(
        withOptions(project.value, options),
        { ...asked, fills: true, lays: true },
        streams,
        reader,
        pipeline.makeForm,
      );
  if (form.issues.length > 0) stderr.write(`${describeIssues(form.issues, reader)}\n`);
  if (!form.ok) return exitCodes.errorsInProject;
  const cutting = readCutting(project.value.cutting);
  if (!cutting.ok) {
    stderr.write(`${describeIssues(cutting.issues, reader)}\n`);
    return exitCodes.errorsInProject;
  }
  const files = await exportForm(form.value, await exportOptionsOf(options, date, cutting.value, reader));
  if (files.issues.length > 0) stderr.write(`${describeIssues(files.issues, reader)}\n`);
  if (!files.ok) return exitCodes.usage;
  const written = await writeFiles(options.out, files.value);
  stdout.write(`${describeReport(form.value.report, project.value.displayUnits, reader)}\n\n`);
  const { inside, filled, hours, verdict } = form.value.report;
  if (inside) stdout.write(`${describeInside(inside, project.value.displayUnits, reader)}\n\n`);
  if (filled && inside)
    stdout.write(`${describeFilled(filled, inside, project.value.displayUnits, reader)}\n\n`);
  if (hours) stdout.write(`${reader.say(makingPhrase('work.hours', { hours: hours.all }))}\n\n`);
  if (verdict) stdout.write(`${describeVerdict(verdict, reader)}\n\n`);
  stdout.write(`${[...written, ...tellPages(files.value, reader)].join('\n')}\n`);
  const hasErrors = form.issues.some((issue) => issue.severity === 'error');
  return hasErrors ? exitCodes.errorsInProject : exitCodes.fine;
}

/** Panels alone; its report is that of a form of the person's own size. */
const makeTrialForm: MakeForm = (project, options) => {
  const made = makeTrialShell(project, options);
  return made.ok ? success(made.value.form, made.issues) : made;
};

function withOptions(project: Project, options: MakeCommandOptions): Project {
  return {
    ...project,
    seams: options.layout === undefined ? project.seams : { ...project.seams, layout: options.layout },
    cloth: {
      ...project.cloth,
      ...(options.allowance === undefined ? {} : { allowance: options.allowance }),
      ...(options.notches === undefined ? {} : { notchShape: options.notches }),
      ...(options.grain === undefined ? {} : { grain: { ...project.cloth.grain, ...options.grain } }),
      ...allowancesOf(project.cloth, options.allowanceFor ?? {}),
    },
  };
}

const KINDS: readonly string[] = ['seam', 'opening', ...ALLOWANCE_KINDS];
const MATERIALS = ['shell', 'webs', 'covers', 'arms'];

/** Allowances given by name: of a kind of edge, of a material, else of one edge. */
function allowancesOf(cloth: ProjectCloth, given: Readonly<Record<string, number>>): ProjectCloth {
  const pick = (isMeant: (name: string) => boolean) =>
    Object.fromEntries(Object.entries(given).filter(([name]) => isMeant(name)));
  if (Object.keys(given).length === 0) return {};
  return {
    allowanceByKind: { ...cloth.allowanceByKind, ...pick((name) => KINDS.includes(name)) },
    allowanceByMaterial: { ...cloth.allowanceByMaterial, ...pick((name) => MATERIALS.includes(name)) },
    allowanceByEdge: {
      ...cloth.allowanceByEdge,
      ...pick((name) => !KINDS.includes(name) && !MATERIALS.includes(name)),
    },
  };
}
