/** Letters that count: 0 → A, 25 → Z, 26 → AA, 701 → ZZ, 702 → AAA. `index` is a whole number from 0. */
export function letterOf(index: number): string {
  const rest = Math.floor(index / 26);
  return (rest > 0 ? letterOf(rest - 1) : '') + String.fromCharCode(65 + (index % 26));
}
