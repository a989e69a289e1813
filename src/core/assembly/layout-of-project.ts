import { failure, type Issue, type Result, success, verbatim } from '../base/index.ts';
import type { Project } from '../project/index.ts';
import { findLayout, LAYOUTS, type SeamLayout, type SeamLine } from '../seams/index.ts';
import { phrase } from './phrases.ts';

/** What is wrong with the seam layout a project asks for. */
export function checkLayout(project: Project): readonly Issue[] {
  return layoutOf(project).issues;
}

/** The layout asked for, or the first one offered. */
export function layoutOf(project: Project): Result<SeamLayout> {
  const id = project.seams.layout;
  const { lines } = project.seams;
  if (lines !== undefined) return ownLayout(lines);
  if (id === undefined) return success(LAYOUTS[0]);
  const layout = findLayout(id);
  if (layout !== undefined) return success(layout);
  const message = phrase('layout.unknown', { layout: id, known: LAYOUTS.map((known) => known.id) });
  return failure([{ code: 'unknown-layout', path: 'seams.layout', message, severity: 'error' }]);
}

/** Lines a maker drew; two of one id could not be told apart in messages. */
function ownLayout(lines: readonly SeamLine[]): Result<SeamLayout> {
  const twice = lines.filter((line, i) => lines.findIndex((other) => other.id === line.id) !== i);
  if (twice.length > 0) {
    return failure(
      twice.map((line) => ({
        code: 'line-id-twice',
        path: `seams.lines.${line.id}`,
        message: phrase('layout.line-id-twice', { line: line.id }),
        severity: 'error',
      })),
    );
  }
  return success({ id: 'own', name: phrase('layout.own'), description: verbatim(''), lines });
}
