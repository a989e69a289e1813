/** An oval with half axes a and b about (x, y), counter-clockwise, n × 2; `isClosed` repeats the first point. mm. */
export function makeOval(x: number, y: number, a: number, b: number, isClosed = false): Float64Array {
  const count = Math.max(24, Math.ceil(Math.max(a, b) * 1.2));
  const points: number[] = [];
  for (let i = 0; i < count + (isClosed ? 1 : 0); i++) {
    const angle = (2 * Math.PI * i) / count;
    points.push(x + a * Math.cos(angle), y + b * Math.sin(angle));
  }
  return Float64Array.from(points);
}
