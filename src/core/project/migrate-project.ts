import { failure, plain, type Result, success } from '../base/index.ts';
import { projectFormat, projectVersion } from './project.ts';

/** Brings a file of version n to version n + 1; the key is n. The first change of the format adds the first entry. */
const migrations: Readonly<Record<number, (file: Record<string, unknown>) => Record<string, unknown>>> = {};

/**
 * Brings any understood version of the file to the current one, step by step. Checks only `format` and `version`;
 * the rest is left to the schema. Fails with `file-wrong-format` or `file-unknown-version`.
 */
export function migrateProject(raw: unknown): Result<Record<string, unknown>> {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    return refuse('file-wrong-format', '', 'The file holds no project: it must be one object in braces { }.');
  }
  let file = raw as Record<string, unknown>;
  if (file.format !== projectFormat) {
    const found = file.format === undefined ? 'is missing' : `is ${JSON.stringify(file.format)}`;
    return refuse('file-wrong-format', 'format', `format ${found}; a project file says "${projectFormat}".`);
  }
  const oldest = Math.min(projectVersion, ...Object.keys(migrations).map(Number));
  const version = file.version;
  if (!Number.isInteger(version) || (version as number) < oldest || (version as number) > projectVersion) {
    const understood = oldest === projectVersion ? `${projectVersion}` : `${oldest} to ${projectVersion}`;
    const found = version === undefined ? 'is missing' : `is ${JSON.stringify(version)}`;
    return refuse(
      'file-unknown-version',
      'version',
      `version ${found}; this program understands ${understood}.`,
    );
  }
  for (let v = version as number; v < projectVersion; v++) file = migrations[v](file);
  return success(file);
}

function refuse(code: string, path: string, message: string): Result<Record<string, unknown>> {
  return failure([{ code, path, message: plain(message), severity: 'error' }]);
}
