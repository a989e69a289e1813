import { measureAlong } from '../math/index.ts';
import type { Notch } from './place-notches.ts';
import type { PieceEdge, PieceLine } from './types.ts';
import { type Station, stationAlong } from './walk-polyline.ts';

/** A hollow edge is clipped every 6 to 13 mm (common teaching); wide, because the seam bears the filling's pull. mm. */
const SPACING = 12;
/** A clip ends this far from the stitches (common practice for a loaded seam: no closer than 3 mm). */
const KEEP = 4;
/** Turned over a hollow edge, the allowance's rim must stretch by allowance ÷ radius; woven cloth gives up from here on. Ours. */
const LARGEST_STRETCH = 0.05;
/** Curvature is taken over this much edge on either side, mm. */
const REACH = 10;
/** Room kept to notches and to the edge's ends, mm. */
const CLEAR = 8;

/**
 * Where the allowance of an edge has to be clipped so that it turns flat: marks across the allowance on the hollow
 * stretches too tight for the cloth to stretch round. Drawn, not cut: they are snipped after sewing. An allowance too
 * narrow to be clipped safely gets none. O(length / spacing · points).
 */
export function placeClips(edge: PieceEdge, allowance: number, notches: readonly Notch[]): PieceLine[] {
  if (edge.kind !== 'seam' || allowance < KEEP + 3) return [];
  const along = measureAlong(edge.points);
  const length = along[along.length - 1];
  const clips: PieceLine[] = [];
  for (let s = CLEAR + REACH; s <= length - CLEAR - REACH; s += SPACING) {
    if (bendAt(edge.points, along, s) * allowance > -LARGEST_STRETCH) continue;
    if (notches.some((notch) => notch.edge === edge && Math.abs(notch.along - s) < CLEAR)) continue;
    const { x, y, dx, dy } = stationAlong(edge.points, along, s, REACH / 2);
    const points = Float64Array.of(x + KEEP * dy, y - KEEP * dx, x + allowance * dy, y - allowance * dx);
    clips.push({ id: `${edge.letter || edge.id}/${clips.length + 1}`, name: 'clip', points });
  }
  return clips;
}

/** Turn per mm; negative where the piece is hollow, because it is run round counter-clockwise. */
function bendAt(points: Float64Array, along: Float64Array, s: number): number {
  const before: Station = stationAlong(points, along, s - REACH, REACH / 2);
  const after: Station = stationAlong(points, along, s + REACH, REACH / 2);
  const turn = Math.atan2(
    before.dx * after.dy - before.dy * after.dx,
    before.dx * after.dx + before.dy * after.dy,
  );
  return turn / (2 * REACH);
}
