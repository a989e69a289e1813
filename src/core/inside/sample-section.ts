import type { SectionBalance } from './solve-section.ts';

/**
 * Points along the arcs of a balanced sleeve (n × 2, closed, counter-clockwise from point 0), each span in `pieces`
 * equal parts of cloth, or as many as `pieces[k]` says for span k.
 */
export function sampleSection(balance: SectionBalance, pieces: number | readonly number[]): Float64Array {
  const { points, arcs } = balance;
  const out: number[] = [];
  for (let k = 0; k < arcs.length; k++) {
    const a = 2 * k;
    const b = 2 * ((k + 1) % arcs.length);
    const count = typeof pieces === 'number' ? pieces : pieces[k];
    const { halfAngle, radius } = arcs[k];
    const turn = Math.atan2(points[b + 1] - points[a + 1], points[b] - points[a]);
    for (let i = 0; i < count; i++) {
      // Direction of the arc swings from turn − φ to turn + φ, bulging to the right of the chord.
      const angle = turn - halfAngle + (2 * halfAngle * i) / count;
      const first = turn - halfAngle;
      out.push(
        points[a] + radius * (Math.sin(angle) - Math.sin(first)),
        points[a + 1] - radius * (Math.cos(angle) - Math.cos(first)),
      );
    }
  }
  return Float64Array.from(out);
}
