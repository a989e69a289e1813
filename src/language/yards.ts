const EIGHTHS = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'] as const;

/** Yards as cloth is sold by them, in eighths: `1 1/8`. */
export function inYards(yards: number): string {
  const eighths = Math.round(8 * yards);
  const [whole, part] = [Math.floor(eighths / 8), EIGHTHS[eighths % 8]];
  if (whole === 0) return part === '' ? '0' : part;
  return part === '' ? String(whole) : `${whole} ${part}`;
}
