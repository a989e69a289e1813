import type { Form } from '../core/form/index.ts';
import { makeForm } from '../core/pipeline/index.ts';
import { describeIssues } from './describe-form.ts';
import { englishSpeaker } from './english-speaker.ts';
import { readProjectFile } from './read-project-file.ts';
import type { CommandStreams } from './run.ts';
import { showProgress } from './show-progress.ts';

/** The form of a saved project, with issues and progress told on stderr; null when it has errors that stop it. */
export async function makeWithIssues(file: string, { stderr }: CommandStreams): Promise<Form | null> {
  const project = await readProjectFile(file);
  if (!project.ok) {
    stderr.write(`${describeIssues(project.issues)}\n`);
    return null;
  }
  const progress = showProgress(stderr);
  const form = makeForm(project.value, { speaker: englishSpeaker, onProgress: progress.onProgress });
  progress.end();
  if (form.issues.length > 0) stderr.write(`${describeIssues(form.issues)}\n`);
  return form.ok ? form.value : null;
}
