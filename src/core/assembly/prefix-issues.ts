import type { Issue } from '../base/index.ts';

/** Issues of a stage with their paths put into the saved project: `measures.bustGirth` becomes `body.measures.bustGirth`. */
export function prefixIssues(issues: readonly Issue[], section: string): Issue[] {
  return issues.map((issue) => {
    // Inner pieces are cut with the cloth's allowances.
    const isPlaced = issue.path === section || [section, 'cloth'].some((s) => issue.path.startsWith(`${s}.`));
    if (isPlaced) return issue;
    return { ...issue, path: issue.path === '' ? section : `${section}.${issue.path}` };
  });
}
