import type { Issue } from '../base/index.ts';

/** Issues of a stage with their paths put into the saved project: `measures.bustGirth` becomes `body.measures.bustGirth`. */
export function prefixIssues(issues: readonly Issue[], section: string): Issue[] {
  return issues.map((issue) => {
    const isPlaced = issue.path === section || issue.path.startsWith(`${section}.`);
    if (isPlaced) return issue;
    return { ...issue, path: issue.path === '' ? section : `${section}.${issue.path}` };
  });
}
