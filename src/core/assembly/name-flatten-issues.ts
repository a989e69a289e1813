import { type Issue, plain, wordsOf } from '../base/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import { nameKeptPaths } from './flatten-problem.ts';

/**
 * Flattening counts disks and paths; a maker knows panels, levels and seams. Puts their names into paths and messages:
 * `disks.2` becomes `panels.sideFrontRight`.
 */
export function nameFlattenIssues(issues: readonly Issue[], shell: SeamedShell): Issue[] {
  return issues.map((issue) => {
    const [kind, index] = issue.path.split('.');
    const panel = kind === 'disks' ? shell.panels[Number(index)] : undefined;
    if (panel) return named(issue, `panels.${panel.id}`, wordsOf(panel.name));
    const kept = kind === 'keptPaths' ? nameKeptPaths(shell)[Number(index)] : undefined;
    if (kept) return named(issue, 'panels', wordsOf(kept.name));
    const seam = kind === 'joins' ? shell.seams[Number(index)] : undefined;
    if (seam) return named(issue, `lines.${seam.lineId}`, `seam ${seam.letter}, ${wordsOf(seam.name)}`);
    return issue;
  });
}

function named(issue: Issue, path: string, name: string): Issue {
  return {
    ...issue,
    path,
    message: plain(`${name[0].toUpperCase()}${name.slice(1)}: ${wordsOf(issue.message)}`),
  };
}
