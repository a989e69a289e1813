/** mm of paper between the points of a smoothed line. */
const SPACING = 0.25;
/** Beyond so many deviations a Gaussian bell is nothing. */
const REACH = 3;

/**
 * A page line (n × 2 mm) evenly sampled and smoothed by a Gaussian bell of `sigma` mm; the ends of an open one stay. A circle
 * of radius r shrinks by the factor exp(−σ²/2r²). O(n).
 */
export function smoothRun(points: Float64Array, closed: boolean, sigma: number): Float64Array {
  const even = sampleEvenly(points, closed);
  const count = even.length / 2;
  if (count < 4 || sigma <= 0) return even;
  const total = lengthOf(even, closed);
  const spacing = total / (closed ? count : count - 1);
  const reach = Math.min(Math.ceil((REACH * sigma) / spacing), count - 1);
  const weights = Array.from({ length: reach + 1 }, (_, k) => Math.exp(-0.5 * ((k * spacing) / sigma) ** 2));
  const smooth = new Float64Array(even.length);
  for (let i = 0; i < count; i++) {
    for (let axis = 0; axis < 2; axis++) {
      let sum = weights[0] * even[2 * i + axis];
      let mass = weights[0];
      for (let k = 1; k <= reach; k++) {
        sum += weights[k] * (valueAt(even, i - k, axis, closed) + valueAt(even, i + k, axis, closed));
        mass += 2 * weights[k];
      }
      smooth[2 * i + axis] = sum / mass;
    }
  }
  return smooth;
}

/** Beyond an end of an open line it goes on as its own image through that end. */
function valueAt(points: Float64Array, i: number, axis: number, closed: boolean): number {
  const count = points.length / 2;
  if (closed) return points[2 * ((i + count) % count) + axis];
  if (i < 0) return 2 * points[axis] - points[2 * Math.min(-i, count - 1) + axis];
  const last = count - 1;
  if (i > last) return 2 * points[2 * last + axis] - points[2 * Math.max(2 * last - i, 0) + axis];
  return points[2 * i + axis];
}

function sampleEvenly(points: Float64Array, closed: boolean): Float64Array {
  const ring = closed ? Float64Array.of(...points, points[0], points[1]) : points;
  const total = lengthOf(ring, false);
  const count = Math.max(1, Math.ceil(total / SPACING));
  const even: number[] = [ring[0], ring[1]];
  let walked = 0;
  for (let i = 2, next = 1; i < ring.length && next < count; i += 2) {
    const [dx, dy] = [ring[i] - ring[i - 2], ring[i + 1] - ring[i - 1]];
    const step = Math.hypot(dx, dy);
    for (; next < count && (next * total) / count <= walked + step; next++) {
      const t = step > 0 ? ((next * total) / count - walked) / step : 0;
      even.push(ring[i - 2] + t * dx, ring[i - 1] + t * dy);
    }
    walked += step;
  }
  if (!closed) even.push(ring[ring.length - 2], ring[ring.length - 1]);
  return Float64Array.from(even);
}

function lengthOf(points: Float64Array, closed: boolean): number {
  let length = 0;
  for (let i = 2; i < points.length; i += 2) {
    length += Math.hypot(points[i] - points[i - 2], points[i + 1] - points[i - 1]);
  }
  const n = points.length;
  return closed ? length + Math.hypot(points[0] - points[n - 2], points[1] - points[n - 1]) : length;
}
