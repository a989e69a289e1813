import type { Issue } from '../base/index.ts';

/** The same issue of the right and of the left, told once of both; others as they are. */
export function joinSides(issues: readonly Issue[]): Issue[] {
  const joined: Issue[] = [];
  for (const issue of issues) {
    const other = issue.message.replace(/\bleft\b/, 'right');
    const k = joined.findIndex(({ code, message }) => code === issue.code && message === other);
    if (k < 0 || other === issue.message) joined.push(issue);
    else joined[k] = { ...joined[k], message: other.replace(/\bright\b/, 'right and left') };
  }
  return joined;
}
