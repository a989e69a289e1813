import { assertInvariant } from '../base/index.ts';
import { nameOfOpening } from './name-opening.ts';
import type { PieceEdge, PieceLine, PieceMark } from './types.ts';
import { measureAlong, type Station, stationAlong } from './walk-polyline.ts';

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
/** Half the chord over which the edge's direction is taken, mm. */
const DIRECTION_REACH = 1;

export interface Notch {
  readonly edge: PieceEdge;
  readonly mark: PieceMark;
  /** Letter and number, the same on both partners. */
  readonly name: string;
  /** Distance of the mark along its edge, mm. */
  readonly along: number;
  /** One slit, or up to three side by side; each from the cut edge inwards (2 × 2). Empty where nothing may be slit. */
  readonly slits: readonly PieceLine[];
}

/**
 * Notches of one edge. A mark at an edge's end gets none: the corner itself is the mark, and a slit there
 * would weaken it. Where the allowance is 0 there is nothing to slit and only the name is kept.
 */
export function placeNotches(edge: PieceEdge, allowance: number, cutLine: Float64Array): Notch[] {
  const along = measureAlong(edge.points);
  const last = along.length - 1;
  for (const { index } of edge.marks) {
    const isPoint = Number.isInteger(index) && index >= 0 && index <= last;
    assertInvariant(isPoint, 'pattern', `marks of edge ${edge.id} are points 0 to ${last}`, index);
  }
  const depth = Math.min(SLIT_DEPTH, allowance * DEEPEST_SHARE);
  const offsets = OFFSETS[edge.bodyHalf];
  return edge.marks
    .filter((mark) => mark.index > 0 && mark.index < last)
    .map((mark) => {
      const name = edge.letter ? `${edge.letter}${mark.number}` : `${nameOfOpening(edge.id)} ${mark.number}`;
      const slits: PieceLine[] = [];
      for (const [i, offset] of offsets.entries()) {
        const station = stationAlong(edge.points, along, along[mark.index] + offset, DIRECTION_REACH);
        const points = depth > 0 ? slitAt(station, depth, cutLine) : null;
        const suffix = offsets.length > 1 ? `/${i + 1}` : '';
        if (points) slits.push({ id: `${name.replaceAll(' ', '-')}${suffix}`, name, points });
      }
      return { edge, mark, name, along: along[mark.index], slits };
    });
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
