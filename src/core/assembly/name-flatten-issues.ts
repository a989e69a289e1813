import type { Issue, Phrase } from '../base/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import { nameKeptPaths, nameWithLetter } from './flatten-problem.ts';
import { phrase } from './phrases.ts';

/**
 * Flattening counts disks and paths; a maker knows panels, levels and seams. Puts their names into paths and messages:
 * `disks.2` becomes `panels.sideFrontRight`.
 */
export function nameFlattenIssues(issues: readonly Issue[], shell: SeamedShell): Issue[] {
  return issues.map((issue) => {
    const [kind, index] = issue.path.split('.');
    const panel = kind === 'disks' ? shell.panels[Number(index)] : undefined;
    if (panel) return named(issue, `panels.${panel.id}`, panel.name);
    const kept = kind === 'keptPaths' ? nameKeptPaths(shell)[Number(index)] : undefined;
    if (kept) return named(issue, 'panels', kept.name);
    const seam = kind === 'joins' ? shell.seams[Number(index)] : undefined;
    if (seam) return named(issue, `lines.${seam.lineId}`, nameWithLetter(seam));
    return issue;
  });
}

function named(issue: Issue, path: string, of: Phrase): Issue {
  return { ...issue, path, message: phrase('fault.of', { of, fault: issue.message }) };
}
