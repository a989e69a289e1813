import { failure, type Result, success } from '../base/index.ts';
import { describeFileIssues } from './describe-file-issues.ts';
import { locateJsonFault } from './locate-json-fault.ts';
import { migrateProject } from './migrate-project.ts';
import { phrase } from './phrases.ts';
import { type Project, projectSchema } from './project.ts';

/**
 * Reads a saved project from its text, or checks an object already read from JSON. Older versions are brought up to
 * date; `seams`, `cloth`, `inside` and `cutting` may be absent. Fails with all issues at once: broken JSON (line and
 * column), another format, a version not understood, unknown or missing keys, wrong types, numbers out of range.
 */
export function parseProject(source: unknown): Result<Project> {
  if (typeof source !== 'string') return checkFile(source);
  const json = source.startsWith('\ufeff') ? source.slice(1) : source;
  const fault = locateJsonFault(json);
  if (!fault) return checkFile(JSON.parse(json));
  const { line, column, what } = fault;
  const message = phrase('file.not-json', { line, column, fault: what });
  return failure([{ code: 'file-not-json', path: '', message, severity: 'error' }]);
}

function checkFile(value: unknown): Result<Project> {
  const migrated = migrateProject(value);
  if (!migrated.ok) return migrated;
  const checked = projectSchema.safeParse(migrated.value);
  if (checked.success) return success(checked.data);
  return failure(describeFileIssues(checked.error.issues, migrated.value));
}
