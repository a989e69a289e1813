import { type Issue, plain, wordsOf } from '../base/index.ts';

/** The same issue of the right and of the left, told once of both; others as they are. */
export function joinSides(issues: readonly Issue[]): Issue[] {
  const joined: Issue[] = [];
  for (const issue of issues) {
    const other = wordsOf(issue.message).replace(/\bleft\b/, 'right');
    const k = joined.findIndex(({ code, message }) => code === issue.code && wordsOf(message) === other);
    if (k < 0 || other === wordsOf(issue.message)) joined.push(issue);
    else joined[k] = { ...joined[k], message: plain(other.replace(/\bright\b/, 'right and left')) };
  }
  return joined;
}
