/** A seam whose points lie nearer to the middle plane than this in the mean is of neither side, mm. */
const MIDDLE = 10;

/** On which half of the body a line of mesh vertices runs; null in the middle, and for one that goes across. */
export function sideOfSeam(points: ArrayLike<number>, positions: Float64Array): 'right' | 'left' | null {
  let [right, left, sum] = [false, false, 0];
  for (let i = 0; i < points.length; i++) {
    const x = positions[3 * points[i]!]!;
    right ||= x > MIDDLE;
    left ||= x < -MIDDLE;
    sum += x;
  }
  if (right === left || Math.abs(sum) < MIDDLE * points.length) return null;
  return right ? 'right' : 'left';
}
