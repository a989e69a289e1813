import { failure, type Result, success } from '../base/index.ts';
import { describeFileIssues } from './describe-file-issues.ts';
import { locateJsonFault } from './locate-json-fault.ts';
import { migrateProject } from './migrate-project.ts';
import { type Project, projectSchema } from './project.ts';

/**
 * Reads a saved project from its text, or checks an object already read from JSON. Older versions are brought up to
 * date; `seams`, `cloth`, `inside` and `cutting` may be absent. Fails with all issues at once: broken JSON (line and
 * column), another format, a version not understood, unknown or missing keys, wrong types, numbers out of range.
 */
export function parseProject(source: unknown): Result<Project> {
  if (typeof source === 'string') return parseText(source);
  const migrated = migrateProject(source);
  if (!migrated.ok) return migrated;
  const checked = projectSchema.safeParse(migrated.value);
  if (checked.success) return success(checked.data);
  return failure(describeFileIssues(checked.error.issues, migrated.value));
}

function parseText(text: string): Result<Project> {
  const json = text.startsWith('\ufeff') ? text.slice(1) : text;
  const fault = locateJsonFault(json);
  if (fault) {
    return failure([
      {
        code: 'file-not-json',
        path: '',
        message: `The file is not readable JSON: line ${fault.line}, column ${fault.column}: ${fault.message}.`,
        severity: 'error',
      },
    ]);
  }
  const value: unknown = JSON.parse(json);
  if (typeof value !== 'string') return parseProject(value);
  return parseProject({});
}
