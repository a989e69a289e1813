import { failure, type Phrase, type Result, success } from '../base/index.ts';
import { phrase } from './phrases.ts';
import { projectFormat, projectVersion } from './project.ts';

/** Brings a file of version n to version n + 1; the key is n. The first change of the format adds the first entry. */
const migrations: Readonly<Record<number, (file: Record<string, unknown>) => Record<string, unknown>>> = {};

/**
 * Brings any understood version of the file to the current one, step by step. Checks only `format` and `version`;
 * the rest is left to the schema. Fails with `file-wrong-format` or `file-unknown-version`.
 */
export function migrateProject(raw: unknown): Result<Record<string, unknown>> {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    return refuse('file-wrong-format', '', phrase('file.no-project'));
  }
  let file = raw as Record<string, unknown>;
  if (file.format !== projectFormat) {
    const message = phrase('file.wrong-format', { ...foundAs(file.format), format: projectFormat });
    return refuse('file-wrong-format', 'format', message);
  }
  const oldest = Math.min(projectVersion, ...Object.keys(migrations).map(Number));
  const version = file.version;
  if (!Number.isInteger(version) || (version as number) < oldest || (version as number) > projectVersion) {
    const message = phrase('file.unknown-version', { ...foundAs(version), oldest, newest: projectVersion });
    return refuse('file-unknown-version', 'version', message);
  }
  for (let v = version as number; v < projectVersion; v++) file = migrations[v](file);
  return success(file);
}

function foundAs(value: unknown): { readonly found?: string } {
  return value === undefined ? {} : { found: JSON.stringify(value) };
}

function refuse(code: string, path: string, message: Phrase): Result<Record<string, unknown>> {
  return failure([{ code, path, message, severity: 'error' }]);
}
