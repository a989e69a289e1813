import { assertInvariant, type Phrase, verbatim } from '../base/index.ts';
import { measureAlong, nearestAlong } from '../math/index.ts';
import { bothOf, nameOfEdge, openingOf } from './name-opening.ts';
import type { NotchShape } from './pattern-options.ts';
import { phrase } from './phrases.ts';
import type { PieceEdge, PieceLine, PieceMark } from './types.ts';
import { type Station, stationAlong } from './walk-polyline.ts';

/** Depth of a slit, mm, where a third of the allowance does not forbid it (common practice for a loaded seam: 2–3 mm). */
const SLIT_DEPTH = 3;
/** A slit deeper than this share of the allowance weakens the seam (common practice). */
const DEEPEST_SHARE = 1 / 3;
/** Between two slits of a notch, mm. */
const PAIR_SPACING = 5;
/** Slits of a notch along the edge: one at the front, two at the back, three at the centre back (common practice). mm. */
const OFFSETS = {
  front: [0],
  back: [-PAIR_SPACING / 2, PAIR_SPACING / 2],
  'centre-back': [-PAIR_SPACING, 0, PAIR_SPACING],
} as const;
/** The bar of a T, along the edge, mm. */
const BAR = 4;
/** A point outwards: its base along the cut edge and its height, mm (common practice). */
const POINT_BASE = 6;
const POINT_HEIGHT = 4;
/** Half the chord over which the edge's direction is taken, mm. */
const DIRECTION_REACH = 1;

export interface Notch {
  readonly edge: PieceEdge;
  readonly mark: PieceMark;
  /** Letter and number, the same on both partners; for an opening its id and the number. */
  readonly name: string;
  /** The same as it is lettered. */
  readonly words: Phrase;
  /** Distance of the mark along its edge, mm. */
  readonly along: number;
  /** One slit, or up to three side by side; each from the cut edge inwards (2 × 2), a T with its bar. Empty where nothing is slit. */
  readonly slits: readonly PieceLine[];
  /** Half of what the notch takes up along the edge, mm. */
  readonly reach: number;
  /** Where points stand out of the cut line, with the outward direction; empty for slits. */
  readonly points: readonly Station[];
}

/**
 * Notches of one edge. A mark at an edge's end gets none: the corner itself is the mark, and a slit there
 * would weaken it. Where the allowance is 0 there is nothing to slit and only the name is kept.
 */
export function placeNotches(
  edge: PieceEdge,
  allowance: number,
  cutLine: Float64Array,
  shape: NotchShape,
): Notch[] {
  const along = measureAlong(edge.points);
  const last = along.length - 1;
  for (const { index } of edge.marks) {
    const isPoint = Number.isInteger(index) && index >= 0 && index <= last;
    assertInvariant(isPoint, 'pattern', `marks of edge ${edge.id} are points 0 to ${last}`, index);
  }
  const depth = Math.min(SLIT_DEPTH, allowance * DEEPEST_SHARE);
  const width = { slit: 0, t: BAR, outward: POINT_BASE }[shape];
  // Bars and points must not run into each other.
  const widen = shape === 'slit' ? 1 : (width + 2) / PAIR_SPACING;
  const offsets = OFFSETS[edge.bodyHalf].map((offset) => offset * widen);
  return edge.marks
    .filter((mark) => mark.index > 0 && mark.index < last)
    .map((mark) => {
      const name = edge.letter ? `${edge.letter}${mark.number}` : `${openingOf(edge.id)} ${mark.number}`;
      const words = edge.letter
        ? verbatim(bothOf(name, twinNameOf(edge, mark)))
        : edge.marks.length === 1
          ? phrase('piece.edge-middle', { edge: nameOfEdge(edge) })
          : phrase('piece.edge-mark', { edge: nameOfEdge(edge), number: mark.number });
      const slits: PieceLine[] = [];
      const points: Station[] = [];
      for (const [i, offset] of offsets.entries()) {
        const station = stationAlong(edge.points, along, along[mark.index] + offset, DIRECTION_REACH);
        const slit = depth > 0 ? slitAt(station, depth, cutLine) : null;
        if (!slit) continue;
        const suffix = offsets.length > 1 ? `/${i + 1}` : '';
        const id = `${name.replaceAll(' ', '-')}${suffix}`;
        if (shape === 'outward') points.push({ ...station, x: slit[0], y: slit[1] });
        else slits.push({ id, name, points: slit });
        if (shape === 't') slits.push({ id: `${id}/bar`, name, points: barAt(slit, station) });
      }
      const reach = Math.max(...offsets) + width / 2;
      return { edge, mark, name, words, along: along[mark.index], slits, reach, points };
    });
}

/** The mark's name on the twin of the piece; none without one. */
function twinNameOf({ letter, twinLetter }: PieceEdge, { twinNumber }: PieceMark): string | undefined {
  return twinNumber === undefined ? undefined : `${twinLetter ?? letter}${twinNumber}`;
}

/** The outward points of a notch as lines of their own: base, tip, base. */
export function drawNotchPoints({ name, points }: Notch): PieceLine[] {
  const half = POINT_BASE / 2;
  return points.map(({ x, y, dx, dy }, i) => ({
    id: `${name.replaceAll(' ', '-')}${points.length > 1 ? `/${i + 1}` : ''}`,
    name,
    points: Float64Array.of(
      ...[x - half * dx, y - half * dy],
      ...[x + POINT_HEIGHT * dy, y - POINT_HEIGHT * dx],
      ...[x + half * dx, y + half * dy],
    ),
  }));
}

/** Across the inner end of a slit, along the edge. */
function barAt(slit: Float64Array, { dx, dy }: Station): Float64Array {
  const [x, y, h] = [slit[2], slit[3], BAR / 2];
  return Float64Array.of(x - h * dx, y - h * dy, x + h * dx, y + h * dy);
}

/**
 * The cut line (closed, n × 2) with a point standing out at every notch that has one: its base on the line, its tip on the
 * outward normal. Vertices of the line under a base are left out. O(n · points).
 */
export function pointOutwards(cutLine: Float64Array, notches: readonly Notch[]): Float64Array {
  const stations = notches.flatMap(({ points }) => points);
  if (stations.length === 0) return cutLine;
  const count = cutLine.length / 2;
  const ring = Float64Array.of(...cutLine, cutLine[0], cutLine[1]);
  const along = measureAlong(ring);
  const length = along[count];
  const round = (s: number): number => ((s % length) + length) % length;
  const at = (s: number): [number, number] => {
    const { x, y } = stationAlong(ring, along, round(s), DIRECTION_REACH);
    return [x, y];
  };
  const half = POINT_BASE / 2;
  const places = stations.map((station) => ({ station, s: nearestAlong(ring, false, station.x, station.y) }));
  const kept = Array.from({ length: count }, (_, i) => i)
    .filter((i) => places.every(({ s }) => Math.abs(round(along[i] - s + length / 2) - length / 2) > half))
    .map((i) => ({ s: along[i], xy: [ring[2 * i], ring[2 * i + 1]] as [number, number] }));
  const added = places.flatMap(({ station: { x, y, dx, dy }, s }) => [
    { s: round(s - half), xy: at(s - half) },
    { s: round(s), xy: [x + POINT_HEIGHT * dy, y - POINT_HEIGHT * dx] as [number, number] },
    { s: round(s + half), xy: at(s + half) },
  ]);
  return Float64Array.from([...kept, ...added].sort((a, b) => a.s - b.s).flatMap(({ xy }) => xy));
}

/** From where the outward normal of the edge meets the cut line, `depth` mm back towards the edge. */
function slitAt(station: Station, depth: number, cutLine: Float64Array): Float64Array | null {
  const nx = station.dy;
  const ny = -station.dx;
  let reach = Number.POSITIVE_INFINITY;
  for (let i = 0, j = cutLine.length - 2; i < cutLine.length; j = i, i += 2) {
    const ex = cutLine[i] - cutLine[j];
    const ey = cutLine[i + 1] - cutLine[j + 1];
    const cross = nx * ey - ny * ex;
    if (cross === 0) continue;
    const wx = cutLine[j] - station.x;
    const wy = cutLine[j + 1] - station.y;
    const t = (wx * ey - wy * ex) / cross;
    const s = (wx * ny - wy * nx) / cross;
    if (t > 0 && s >= 0 && s <= 1) reach = Math.min(reach, t);
  }
  if (!Number.isFinite(reach)) return null;
  const end = reach - depth;
  return Float64Array.of(
    station.x + reach * nx,
    station.y + reach * ny,
    station.x + end * nx,
    station.y + end * ny,
  );
}
