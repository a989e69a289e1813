/** How far the chords of an oval may lie inside it, mm: a pole's hole is true to a tenth of its play. */
const SAGITTA = 0.02;

/** An oval with half axes a and b about (x, y), counter-clockwise, n × 2; `isClosed` repeats the first point. mm. */
export function makeOval(x: number, y: number, a: number, b: number, isClosed = false): Float64Array {
  // Chords nowhere further than the sagitta inside the curve, and a point at each end of both axes.
  const count = 4 * Math.ceil(Math.PI / (4 * Math.acos(1 - SAGITTA / Math.max(a, b))));
  const points: number[] = [];
  for (let i = 0; i < count + (isClosed ? 1 : 0); i++) {
    const angle = (2 * Math.PI * i) / count;
    points.push(x + a * Math.cos(angle), y + b * Math.sin(angle));
  }
  return Float64Array.from(points);
}
