import type { ChartSurface } from '../../src/core/mesh/index.ts';

/** How a profile line bends: how often it turns from hollow to full or back, and its smallest radius, mm. */
export interface Profile {
  readonly turns: number;
  readonly radius: number;
}

/** A bend flatter than this radius counts as straight, mm. */
const FLAT = 1000;
/** Points along the profile lie so far apart, mm; its bend is that of the circle through every second three. */
const SPACING = 4;

/** Of the line u = constant between two chart heights, seen square to the plane through it and the body's axis. */
export function measureProfile(surface: ChartSurface, u: number, from: number, to: number): Profile {
  const points = spaceEvenly(flatten(surface, u, from, to));
  let turns = 0;
  let before = 0;
  let sharpest = 0;
  for (let i = 2; i < points.length - 2; i++) {
    const bend = mengerCurvature(points[i - 2], points[i], points[i + 2]);
    sharpest = Math.max(sharpest, Math.abs(bend));
    if (Math.abs(bend) < 1 / FLAT) continue;
    if (before !== 0 && Math.sign(bend) !== before) turns++;
    before = Math.sign(bend);
  }
  return { turns, radius: 1 / sharpest };
}

type Point = readonly [number, number];

function flatten(surface: ChartSurface, u: number, from: number, to: number): Point[] {
  const n = Math.round(to - from) + 1;
  const chart = Float64Array.from({ length: 2 * n }, (_, i) =>
    i % 2 === 0 ? u : from + ((to - from) * (i >> 1)) / (n - 1),
  );
  const p = surface.evaluate(chart);
  return Array.from({ length: n }, (_, i) => [
    p[3 * i] * Math.cos(u) + p[3 * i + 1] * Math.sin(u),
    p[3 * i + 2],
  ]);
}

function spaceEvenly(points: readonly Point[]): Point[] {
  const along = [0];
  for (let i = 1; i < points.length; i++) along.push(along[i - 1] + distance(points[i - 1], points[i]));
  const length = along[along.length - 1];
  const pieces = Math.floor(length / SPACING);
  let i = 0;
  return Array.from({ length: pieces + 1 }, (_, k) => {
    const at = (length * k) / pieces;
    while (i < points.length - 2 && along[i + 1] < at) i++;
    const f = (at - along[i]) / (along[i + 1] - along[i]);
    const [a, b] = [points[i], points[i + 1]];
    return [a[0] + f * (b[0] - a[0]), a[1] + f * (b[1] - a[1])];
  });
}

/** One over the radius of the circle through three points, with the sign of the turn (Menger). */
function mengerCurvature(a: Point, b: Point, c: Point): number {
  const twice = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
  return (2 * twice) / (distance(a, b) * distance(b, c) * distance(c, a));
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
