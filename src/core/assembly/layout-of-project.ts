import { failure, type Issue, plain, type Result, success } from '../base/index.ts';
import type { Project } from '../project/index.ts';
import { findLayout, LAYOUTS, type SeamLayout, type SeamLine } from '../seams/index.ts';

/** What is wrong with the seam layout a project asks for. */
export function checkLayout(project: Project): readonly Issue[] {
  return layoutOf(project).issues;
}

/** The layout asked for, or the first one offered. */
export function layoutOf(project: Project): Result<SeamLayout> {
  const id = project.seams.layout;
  const { lines } = project.seams;
  if (lines !== undefined) return ownLayout(lines);
  const layout = id === undefined ? LAYOUTS[0] : findLayout(id);
  if (layout !== undefined) return success(layout);
  const known = LAYOUTS.map((l) => l.id).join(', ');
  const message = `There is no seam layout called “${id}”. There are: ${known}.`;
  return failure([
    { code: 'unknown-layout', path: 'seams.layout', message: plain(message), severity: 'error' },
  ]);
}

/** Lines a maker drew; two of one id could not be told apart in messages. */
function ownLayout(lines: readonly SeamLine[]): Result<SeamLayout> {
  const twice = lines.filter((line, i) => lines.findIndex((other) => other.id === line.id) !== i);
  if (twice.length > 0) {
    return failure(
      twice.map((line) => ({
        code: 'line-id-twice',
        path: `seams.lines.${line.id}`,
        message: plain(`There are two seam lines with the id “${line.id}”; give each its own.`),
        severity: 'error',
      })),
    );
  }
  return success({ id: 'own', name: plain('Own layout'), description: plain(''), lines });
}
