import { clamp } from '../math/index.ts';

/** A vertex that turns by more is a corner and stays one; drawings are sampled far finer on curves. Ours. */
const CORNER = (12 * Math.PI) / 180;
/** Points nearer to a chord than this are a straight line, mm: less than the last decimal written. */
const STRAIGHT = 0.0004;
/** A curve takes the numbers of three lines, so it must stand for at least as many. */
const FEWEST = 3;
/** Distance of the points at which a fit is judged along the polyline, mm. */
const SPACING = 2.5;
/** Newton steps that bring the parameters of the points back under the curve. */
const REPARAMETRISATIONS = 2;
/** So many tolerances off, a fit is divided rather than mended by Newton steps. */
const HOPELESS = 8;

/** Straight and cubic pieces end to end: the first point, then per piece its two control points and its end. */
export interface FittedPath {
  readonly startX: number;
  readonly startY: number;
  /** n × 6: x1 y1 x2 y2 x y, mm. Of a straight piece only the last two count. */
  readonly pieces: Float64Array;
  /** n: 1 where the piece is a cubic Bézier curve, 0 where it is straight. */
  readonly isCurve: Uint8Array;
}

/**
 * A polyline (n × 2 mm) as few cubic Bézier curves and lines that keep within `tolerance` mm of it, corners and ends kept
 * exactly. Least squares over both inner control points, ends fixed, parameters by chord length and then by Newton steps;
 * each curve as long as it can be, found by doubling and halving (fit after Schneider, An algorithm for automatically fitting
 * digitized curves, Graphics Gems, 1990; his fixed end tangents are left out because ours are no better known than the points).
 * Where that takes more numbers than the vertices themselves, these are kept. A closed polyline ends where it starts. O(n log n) as a rule.
 */
export function fitCurves(points: Float64Array, closed: boolean, tolerance: number): FittedPath {
  const ring = withoutRepeats(points, closed);
  const count = ring.length / 2;
  const pieces: number[] = [];
  const isCurve: number[] = [];
  const corners = cornersOf(ring, closed);
  for (let k = 0; k + 1 < corners.length; k++) {
    const [from, to] = [corners[k], corners[k + 1]];
    fitStretch(ring, from, to, tolerance, pieces, isCurve);
  }
  const start = count > 0 ? [ring[0], ring[1]] : [points[0], points[1]];
  return {
    startX: start[0],
    startY: start[1],
    pieces: Float64Array.from(pieces),
    isCurve: Uint8Array.from(isCurve),
  };
}

/** Without repeated points; a closed line gets its first point again at the end. */
function withoutRepeats(points: Float64Array, closed: boolean): Float64Array {
  const kept: number[] = [];
  const put = (x: number, y: number): void => {
    const end = kept.length;
    if (end > 0 && kept[end - 2] === x && kept[end - 1] === y) return;
    kept.push(x, y);
  };
  for (let i = 0; i < points.length; i += 2) put(points[i], points[i + 1]);
  if (closed && kept.length > 2) put(points[0], points[1]);
  return Float64Array.from(kept);
}

/** Indices of the ends and of every corner between them. */
function cornersOf(ring: Float64Array, closed: boolean): number[] {
  const last = ring.length / 2 - 1;
  const corners = [0];
  for (let i = 1; i < last; i++) {
    const [ax, ay] = [ring[2 * i] - ring[2 * i - 2], ring[2 * i + 1] - ring[2 * i - 1]];
    const [bx, by] = [ring[2 * i + 2] - ring[2 * i], ring[2 * i + 3] - ring[2 * i + 1]];
    if (Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by)) > CORNER) corners.push(i);
  }
  if (last > 0) corners.push(last);
  // A round hole has no corner: fitted in two halves, since a curve from a point to itself is badly posed.
  if (closed && corners.length === 2 && last > 3) return [0, last >> 1, last];
  return corners;
}

/** The smooth stretch from vertex `from` to `to`, appended to the pieces. Every piece ends in a vertex. */
function fitStretch(
  ring: Float64Array,
  from: number,
  to: number,
  tolerance: number,
  pieces: number[],
  isCurve: number[],
): void {
  const { samples, at } = sampleStretch(ring, from, to);
  const putLine = (vertex: number): void => {
    pieces.push(0, 0, 0, 0, ring[2 * (from + vertex)], ring[2 * (from + vertex) + 1]);
    isCurve.push(0);
  };
  const last = to - from;
  const tryCurve = (a: number, b: number): CubicFit | null => {
    const fit = fitCubic(samples, at[a], at[b], tolerance);
    return fit.error <= tolerance ? fit : null;
  };
  for (let a = 0; a < last; ) {
    // 1. A straight run.
    let b = a + 1;
    while (b < last && isStraight(samples, at[a], at[b + 1])) b++;
    const straightTo = b;
    // 2. The longest curve: steps that double as long as it fits, then halved until the end is found.
    let best: { readonly end: number; readonly fit: CubicFit } | null = null;
    let isGrowing = true;
    for (let step = FEWEST, end = a; step > 0 && end < last; ) {
      const trial = Math.min(last, end + step);
      const fit = trial - a >= FEWEST ? tryCurve(a, trial) : null;
      if (fit) {
        best = { end: trial, fit };
        end = trial;
      } else isGrowing = false;
      step = isGrowing ? 2 * step : step >> 1;
    }
    if (best && best.end > straightTo + 1) {
      pieces.push(...best.fit.control, samples[2 * at[best.end]], samples[2 * at[best.end] + 1]);
      isCurve.push(1);
      a = best.end;
    } else {
      putLine(straightTo);
      a = straightTo;
    }
  }
}

/** The vertices and, between them, points no farther apart than `SPACING`, at least one in every segment; `at`: vertex → sample. */
function sampleStretch(
  ring: Float64Array,
  from: number,
  to: number,
): { readonly samples: Float64Array; readonly at: readonly number[] } {
  const at = [0];
  const samples: number[] = [ring[2 * from], ring[2 * from + 1]];
  for (let i = from; i < to; i++) {
    const [ax, ay, bx, by] = [ring[2 * i], ring[2 * i + 1], ring[2 * i + 2], ring[2 * i + 3]];
    const parts = Math.max(2, Math.ceil(Math.hypot(bx - ax, by - ay) / SPACING));
    for (let k = 1; k < parts; k++) samples.push(ax + ((bx - ax) * k) / parts, ay + ((by - ay) * k) / parts);
    samples.push(bx, by);
    at.push(samples.length / 2 - 1);
  }
  return { samples: Float64Array.from(samples), at };
}

function isStraight(p: Float64Array, a: number, b: number): boolean {
  const [ax, ay] = [p[2 * a], p[2 * a + 1]];
  const [dx, dy] = [p[2 * b] - ax, p[2 * b + 1] - ay];
  const length = Math.hypot(dx, dy);
  if (length === 0) return b - a < 2;
  for (let i = a + 1; i < b; i++) {
    const [x, y] = [p[2 * i] - ax, p[2 * i + 1] - ay];
    if (Math.abs(dx * y - dy * x) > STRAIGHT * length) return false;
    const along = dx * x + dy * y;
    if (along < 0 || along > length * length) return false;
  }
  return true;
}

interface CubicFit {
  readonly control: readonly [number, number, number, number];
  /** Sample farthest from the curve. */
  readonly worst: number;
  readonly error: number;
}

/**
 * One cubic from sample a to b. Legend: p samples; t their parameters; b1, b2 the inner Bernstein polynomials
 * 3t(1−t)², 3t²(1−t); m11 m12 m22 the normal matrix; r what the fixed ends leave to the inner control points.
 */
function fitCubic(p: Float64Array, a: number, b: number, tolerance: number): CubicFit {
  const count = b - a + 1;
  const t = new Float64Array(count);
  for (let i = 1; i < count; i++) {
    const k = 2 * (a + i);
    t[i] = t[i - 1] + Math.sqrt((p[k] - p[k - 2]) ** 2 + (p[k + 1] - p[k - 1]) ** 2);
  }
  for (let i = 1; i < count; i++) t[i] /= t[count - 1];
  const [x0, y0, x3, y3] = [p[2 * a], p[2 * a + 1], p[2 * b], p[2 * b + 1]];
  let fit: CubicFit = { control: [x0, y0, x3, y3], worst: (a + b) >> 1, error: Number.POSITIVE_INFINITY };
  for (let round = 0; round <= REPARAMETRISATIONS; round++) {
    // 1. Least squares with these parameters.
    let [m11, m12, m22, r1x, r1y, r2x, r2y] = [0, 0, 0, 0, 0, 0, 0];
    for (let i = 1; i < count - 1; i++) {
      const s = 1 - t[i];
      const b1 = 3 * t[i] * s * s;
      const b2 = 3 * t[i] * t[i] * s;
      const b0 = s * s * s;
      const b3 = t[i] * t[i] * t[i];
      const rx = p[2 * (a + i)] - b0 * x0 - b3 * x3;
      const ry = p[2 * (a + i) + 1] - b0 * y0 - b3 * y3;
      m11 += b1 * b1;
      m12 += b1 * b2;
      m22 += b2 * b2;
      r1x += b1 * rx;
      r1y += b1 * ry;
      r2x += b2 * rx;
      r2y += b2 * ry;
    }
    const det = m11 * m22 - m12 * m12;
    if (!(det > 1e-14)) return fit;
    const x1 = (m22 * r1x - m12 * r2x) / det;
    const y1 = (m22 * r1y - m12 * r2y) / det;
    const x2 = (m11 * r2x - m12 * r1x) / det;
    const y2 = (m11 * r2y - m12 * r1y) / det;

    // 2. How far off it is; far off, it is divided rather than mended.
    let error = 0;
    let worst = a;
    for (let i = 1; i < count - 1; i++) {
      const s = 1 - t[i];
      const b0 = s * s * s;
      const b1 = 3 * t[i] * s * s;
      const b2 = 3 * t[i] * t[i] * s;
      const b3 = t[i] * t[i] * t[i];
      const ex = b0 * x0 + b1 * x1 + b2 * x2 + b3 * x3 - p[2 * (a + i)];
      const ey = b0 * y0 + b1 * y1 + b2 * y2 + b3 * y3 - p[2 * (a + i) + 1];
      const off = Math.sqrt(ex * ex + ey * ey);
      if (off > error) {
        error = off;
        worst = a + i;
      }
    }
    if (error < fit.error) fit = { control: [x1, y1, x2, y2], worst, error };
    if (error <= tolerance || error > HOPELESS * tolerance) return fit;

    // 3. Newton: (B(t) − p)·B′(t) = 0.
    for (let i = 1; i < count - 1; i++) {
      const u = t[i];
      const s = 1 - u;
      const ex = s * s * s * x0 + 3 * u * s * s * x1 + 3 * u * u * s * x2 + u * u * u * x3 - p[2 * (a + i)];
      const ey =
        s * s * s * y0 + 3 * u * s * s * y1 + 3 * u * u * s * y2 + u * u * u * y3 - p[2 * (a + i) + 1];
      const dx = 3 * (s * s * (x1 - x0) + 2 * u * s * (x2 - x1) + u * u * (x3 - x2));
      const dy = 3 * (s * s * (y1 - y0) + 2 * u * s * (y2 - y1) + u * u * (y3 - y2));
      const ddx = 6 * (s * (x2 - 2 * x1 + x0) + u * (x3 - 2 * x2 + x1));
      const ddy = 6 * (s * (y2 - 2 * y1 + y0) + u * (y3 - 2 * y2 + y1));
      const slope = dx * dx + dy * dy + ex * ddx + ey * ddy;
      if (slope > 0) t[i] = clamp(u - (ex * dx + ey * dy) / slope, 0, 1);
    }
  }
  return fit;
}
