import { withUsual } from '../base/index.ts';
import { type DrawingItem, makePath } from '../drawing/index.ts';
import { LAYING_OPTIONS } from './laying-options.ts';
import type { LayView, Stock } from './types.ts';

/** Motifs nearer than this on the page, mm, are not drawn one by one: every so many is. */
const NEAREST = 3;
const TINT = { stroke: '#b9b2a4', strokeWidth: 0.25 } as const;
/** Corners of a drawn dot. */
const DOT = 12;

/** The middles of stripes and motifs over a view, thin, as they lie on the cloth. */
export function drawPrint(
  { print = {} }: Stock,
  { length, width }: LayView,
  scale: number,
  onPage: (points: Float64Array) => Float64Array,
): DrawingItem[] {
  const { kind, across, along, firstAcross, firstAlong } = withUsual(LAYING_OPTIONS.print, print);
  if (kind === 'plain') return [];
  const xs = middles(firstAlong, along, length, scale);
  const ys = middles(firstAcross, across, width, scale);
  const path = (...points: number[]): DrawingItem =>
    makePath(onPage(Float64Array.from(points)), { style: TINT });
  if (kind === 'dots' || kind === 'photo') {
    const radius = Math.min(along || across, across || along) / 6;
    return xs.flatMap((x) => ys.map((y) => dot(x, y, radius, kind === 'photo', onPage)));
  }
  return [
    ...(kind === 'stripesAlong' ? [] : xs.map((x) => path(x, 0, x, width))),
    ...(kind === 'stripesAcross' ? [] : ys.map((y) => path(0, y, length, y))),
  ];
}

/** Places of the middles of a repeat from 0 to `end`; of many, every second, third … one. */
function middles(first: number, repeat: number, end: number, scale: number): number[] {
  if (repeat <= 0) return [];
  const step = repeat * Math.ceil((NEAREST * scale) / repeat);
  const found: number[] = [];
  for (let at = first - step * Math.floor(first / step); at <= end; at += step) found.push(at);
  return found;
}

/** A motif's middle: round, or with a point to its top where it has one. */
function dot(
  x: number,
  y: number,
  radius: number,
  hasTop: boolean,
  onPage: (points: Float64Array) => Float64Array,
): DrawingItem {
  const points = Float64Array.from({ length: 2 * DOT }, (_, i) => {
    const angle = (Math.PI * (i - (i % 2))) / DOT;
    const reach = hasTop && i < 2 ? 2 * radius : radius;
    return i % 2 === 0 ? x + reach * Math.cos(angle) : y + reach * Math.sin(angle);
  });
  return makePath(onPage(points), { closed: true, style: TINT });
}
