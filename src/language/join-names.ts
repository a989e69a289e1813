/** Stays outside a pair of words: `right, left` of `…right, 1` and `…left, 1` are one pair and one comma. */
const ENDING = /[,;:.]$/u;

/**
 * Two names as one: word by word where only words differ (`side back right`, `side back left` → `side back right/left`), else both with
 * a plus between them. The same name twice stays as it is.
 */
export function joinNames(a: string, b: string): string {
  if (a === b) return a;
  const [own, other] = [a.split(' '), b.split(' ')];
  const isWordWise = own.length === other.length && own.some((word, i) => word === other[i]);
  if (!isWordWise) return `${a} + ${b}`;
  return own.map((word, i) => (word === other[i] ? word : pairWords(word, other[i]))).join(' ');
}

function pairWords(a: string, b: string): string {
  const ending = ENDING.exec(a)?.[0] ?? '';
  return ending !== '' && b.endsWith(ending) ? `${a.slice(0, -1)}/${b}` : `${a}/${b}`;
}
