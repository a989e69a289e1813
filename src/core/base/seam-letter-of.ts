/**
 * Letters that are read one way only, however the piece lies. Left out: those that are another letter or a figure when turned (N and Z,
 * M and W, C and U), and those taken for a figure (I, O).
 */
const LETTERS = 'ABCDEFGHJKLPQRSTVXY';

/** The letter of a seam: 0 → A, 18 → Y, 19 → AA. `index` is a whole number from 0. */
export function seamLetterOf(index: number): string {
  const rest = Math.floor(index / LETTERS.length);
  return (rest > 0 ? seamLetterOf(rest - 1) : '') + LETTERS[index % LETTERS.length];
}
