import type { Say } from '../base/index.ts';
import { isInsidePolygon, measureAlong } from '../math/index.ts';
import { isBoxFree, type Taken } from './free-space.ts';
import { nameOfEdge } from './name-opening.ts';
import type { Notch } from './place-notches.ts';
import { boxOfPieceText, centreText } from './text-box.ts';
import type { PieceEdge, PieceText } from './types.ts';
import { stationAlong } from './walk-polyline.ts';

const MARK_SIZES = [5, 4.5, 4, 3.5, 3, 2.5];
const LETTER_SIZES = [9, 8, 7, 6, 5, 4];
/** mm kept between a mark's name and the lines on either side of it, and its own slit. */
const MARK_CLEARANCE = 0.7;
/** One letter per this many mm of edge, at least one. */
const LETTER_SPACING = 320;

/**
 * The name of a notch beside it: in the allowance where that is wide enough (it vanishes in the seam), else just
 * inside the sew line. Null when nothing legible fits.
 */
export function nameNotch(notch: Notch, allowance: number, taken: Taken, say: Say): PieceText | null {
  const name = say(notch.words);
  const along = measureAlong(notch.edge.points);
  const { reach } = notch;
  for (const isInAllowance of [true, false]) {
    for (const size of MARK_SIZES) {
      if (isInAllowance && size + 2 * MARK_CLEARANCE > allowance) continue;
      const outwards = isInAllowance ? allowance / 2 : -(size / 2 + 1.5);
      const width = boxOfPieceText(centreText(0, 0, name, size, 0)).width;
      const nearest = isInAllowance ? reach + 1.2 + width / 2 : 0;
      for (const extra of [0, 1, 2, 4, 6]) {
        for (const sign of extra + nearest === 0 ? [1] : [1, -1]) {
          const shift = sign * (nearest + extra);
          const station = stationAlong(notch.edge.points, along, notch.along + shift, width / 2);
          const text = centreText(
            station.x + outwards * station.dy,
            station.y - outwards * station.dx,
            name,
            size,
            Math.atan2(station.dy, station.dx),
          );
          const box = boxOfPieceText(text);
          if (isInAllowance === isInsidePolygon(taken.ring, box.x, box.y)) continue;
          if (isBoxFree(taken, box, 1)) return text;
        }
      }
    }
  }
  return null;
}

/**
 * Seam letters (or opening names) along an edge just inside its sew line, spread evenly, each moved along until
 * it is clear.
 */
export function letterEdge(edge: PieceEdge, taken: Taken, say: Say): PieceText[] {
  const along = measureAlong(edge.points);
  const length = along[along.length - 1];
  const count = Math.max(1, Math.round(length / LETTER_SPACING));
  const label = say(nameOfEdge(edge));
  const sizes = edge.letter ? LETTER_SIZES : LETTER_SIZES.filter((size) => size <= 6);
  const texts: PieceText[] = [];
  for (let k = 0; k < count; k++) {
    const wanted = ((k + 0.5) / count) * length;
    const text = findPlace(edge, along, label, sizes, wanted, length / count / 2, taken);
    if (!text) continue;
    texts.push(text);
    taken.boxes.push(boxOfPieceText(text));
  }
  return texts;
}

function findPlace(
  edge: PieceEdge,
  along: Float64Array,
  label: string,
  sizes: readonly number[],
  wanted: number,
  slack: number,
  taken: Taken,
): PieceText | null {
  for (const size of sizes) {
    const width = boxOfPieceText(centreText(0, 0, label, size, 0)).width;
    for (let shift = 0; shift <= slack; shift += 4) {
      for (const sign of shift === 0 ? [1] : [1, -1]) {
        for (const inset of [1.5, 2.5, 4, 6]) {
          const station = stationAlong(edge.points, along, wanted + sign * shift, width / 2);
          const inwards = inset + size / 2;
          const text = centreText(
            station.x - inwards * station.dy,
            station.y + inwards * station.dx,
            label,
            size,
            Math.atan2(station.dy, station.dx),
          );
          const box = boxOfPieceText(text);
          if (isInsidePolygon(taken.ring, box.x, box.y) && isBoxFree(taken, box, 1.5)) return text;
        }
      }
    }
  }
  return null;
}

/** A level line's name resting on the line, near one of its ends first. Null when nothing legible fits. */
export function nameLevel(name: string, points: Float64Array, taken: Taken): PieceText | null {
  const along = measureAlong(points);
  const length = along[along.length - 1];
  for (const size of [5, 4, 3.5, 3, 2.5]) {
    const width = boxOfPieceText(centreText(0, 0, name, size, 0)).width;
    for (const fraction of [0.72, 0.28, 0.8, 0.2, 0.64, 0.36, 0.56, 0.44, 0.5, 0.88, 0.12]) {
      for (const sign of [1, -1]) {
        const station = stationAlong(points, along, fraction * length, width / 2);
        const angle = Math.atan2(station.dy, station.dx);
        for (const lift of [1, 2]) {
          const up = (sign * (size + 2 * lift)) / 2;
          const text = centreText(
            station.x - up * station.dy,
            station.y + up * station.dx,
            name,
            size,
            angle,
          );
          const box = boxOfPieceText(text);
          if (isInsidePolygon(taken.ring, box.x, box.y) && isBoxFree(taken, box, 1.5)) return text;
        }
      }
    }
  }
  return null;
}
