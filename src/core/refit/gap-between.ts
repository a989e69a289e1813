import { cross, dot, type Vector } from '../math/index.ts';
import type { ChartSurface } from '../mesh/index.ts';

const STEPS = 12;
/** mm: the straight line meets the other surface that exactly. */
const MET = 1e-4;

/**
 * How far the surface `to` lies outside `from` (negative: inside), straight out along the normal of `from`, mm, at chart points
 * n × 2 (u, v). Newton's method from the same place of the chart; where the line meets nothing, as beyond an edge, the shift of
 * that place along the normal. O(n).
 */
export function gapBetween(from: ChartSurface, to: ChartSurface, chart: Float64Array): Float64Array {
  const gaps = new Float64Array(chart.length / 2);
  for (let i = 0; i < gaps.length; i++) {
    const [u, v] = [chart[2 * i], chart[2 * i + 1]];
    const { point, normal } = frameAt(from, u, v);
    gaps[i] = alongNormal(to, u, v, point, normal);
  }
  return gaps;
}

/** A point of the surface and its outward unit normal, by central differences. */
export function frameAt(surface: ChartSurface, u: number, v: number): { point: Vector; normal: Vector } {
  const [h, k] = [1e-4, 1e-2];
  const [low, high] = surface.vRange;
  const [above, below] = [Math.min(v + k, high), Math.max(v - k, low)];
  const p = surface.evaluate(Float64Array.of(u, v, u + h, v, u - h, v, u, above, u, below));
  const [ax, ay, az] = [p[3] - p[6], p[4] - p[7], p[5] - p[8]];
  const [bx, by, bz] = [p[9] - p[12], p[10] - p[13], p[11] - p[14]];
  const [x, y, z] = [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
  const size = Math.hypot(x, y, z);
  return { point: [p[0], p[1], p[2]], normal: [x / size, y / size, z / size] };
}

function alongNormal(to: ChartSurface, u0: number, v0: number, p: Vector, n: Vector): number {
  const [low, high] = to.vRange;
  const [h, k] = [1e-5, 1e-3];
  let [u, v, s] = [u0, v0, 0];
  let first = 0;
  for (let step = 0; step < STEPS; step++) {
    const forward = v + k > high ? -k : k;
    const q = to.evaluate(Float64Array.of(u, v, u + h, v, u, v + forward));
    const off = [0, 1, 2].map((a) => q[a] - p[a] - s * n[a]);
    if (step === 0) first = n[0] * off[0] + n[1] * off[1] + n[2] * off[2];
    if (Math.hypot(...off) < MET) return s;
    const alongU = [0, 1, 2].map((a) => (q[3 + a] - q[a]) / h) as unknown as Vector;
    const alongV = [0, 1, 2].map((a) => (q[6 + a] - q[a]) / forward) as unknown as Vector;
    const move = solveThree([alongU, alongV, [-n[0], -n[1], -n[2]]], [-off[0], -off[1], -off[2]]);
    if (!move) break;
    u += Math.max(-0.3, Math.min(0.3, move[0]));
    v = Math.max(low, Math.min(high, v + Math.max(-60, Math.min(60, move[1]))));
    s += move[2];
  }
  return first;
}

/** Cramer's rule on three columns; null where they lie in a plane. */
function solveThree([a, b, c]: readonly [Vector, Vector, Vector], right: Vector): Vector | null {
  const volume = dot(a, cross(b, c));
  if (Math.abs(volume) < 1e-12) return null;
  return [
    dot(right, cross(b, c)) / volume,
    dot(a, cross(right, c)) / volume,
    dot(a, cross(b, right)) / volume,
  ];
}
