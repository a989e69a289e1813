import { type Issue, isPhrase, type Phrase } from '../base/index.ts';

/** Numbers that differ by less are told alike, mm. */
const ALIKE = 0.05;

/** The same issue of the right and of the left (`side` among what its message is given), told once of both; others as they are. */
export function joinSides(issues: readonly Issue[]): Issue[] {
  const joined: Issue[] = [];
  for (const issue of issues) {
    const k = joined.findIndex(({ code, message }) => {
      return code === issue.code && areSides(message, issue.message);
    });
    if (k < 0) joined.push(issue);
    else joined[k] = { ...joined[k], message: ofBothSides(joined[k].message) };
  }
  return joined;
}

function ofBothSides({ id, values }: Phrase): Phrase {
  return { id, values: { ...values, side: 'both' } };
}

/** True when the one says of the right what the other says of the left. */
function areSides(right: Phrase, left: Phrase): boolean {
  const isPair = right.values.side === 'right' && left.values.side === 'left';
  return isPair && areAlike(ofBothSides(right), ofBothSides(left));
}

function areAlike(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) < ALIKE;
  if (!isPhrase(a) || !isPhrase(b)) return a === b;
  const keys = Object.keys({ ...a.values, ...b.values });
  return a.id === b.id && keys.every((key) => areAlike(a.values[key], b.values[key]));
}
