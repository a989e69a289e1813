import { boundsOfPolyline } from '../math/index.ts';
import { checkPlan, type NestPlan } from '../nesting/index.ts';
import { placePiece } from './draw-lay.ts';
import type { LayRules } from './rules-of-lay.ts';
import type { LaidPiece } from './types.ts';

/** A piece that lies over another, or not wholly on what it is cut from. */
export interface LayFault {
  readonly kind: 'overlap' | 'outside';
  readonly pieces: readonly string[];
  /** mm². */
  readonly area: number;
}

/** As much as a line of a pencil's breadth along an edge: less is no fault when laid by hand, mm². */
const HAIR = 20;

/**
 * What is wrong with places found by hand: of all pieces, or with one of them alone. Two pieces that share a cut line do not lie over
 * each other. O(pieces² · points) at most; pieces far apart cost nothing.
 */
export function findFaults(rules: LayRules, placed: readonly LaidPiece[], only?: string): LayFault[] {
  const laid = placed.flatMap((place) => {
    const outline = rules.outlines.get(place.piece);
    return outline ? [{ place, box: boundsOfPolyline(placePiece(outline, place)), outline }] : [];
  });
  const faults: LayFault[] = [];
  for (const [i, a] of laid.entries()) {
    if (only === undefined || only === a.place.piece) {
      const { outside } = judge(rules, [a]);
      if (outside > HAIR) faults.push({ kind: 'outside', pieces: [a.place.piece], area: outside });
    }
    for (const b of laid.slice(0, i)) {
      if (only !== undefined && only !== a.place.piece && only !== b.place.piece) continue;
      if (a.place.sheet !== b.place.sheet || !doMeet(a.box, b.box)) continue;
      const { overlap } = judge(rules, [b, a]);
      if (overlap > HAIR)
        faults.push({ kind: 'overlap', pieces: [b.place.piece, a.place.piece], area: overlap });
    }
  }
  return faults;
}

function judge(
  { problem, ground }: LayRules,
  laid: readonly { readonly place: LaidPiece; readonly outline: Float64Array }[],
): { overlap: number; outside: number } {
  const from = ground.kind === 'roll' ? ground.usableFrom : 0;
  const items = laid.map(({ place, outline }) => ({
    id: place.piece,
    outline,
    turns: [{ angle: place.angle, mirrored: false }],
  }));
  const placements = laid.map(({ place: { x, y, sheet } }) => ({ turn: 0, sheet, x, y: y - from }));
  const plan: NestPlan = {
    placements,
    length: 0,
    sheetsUsed: 1,
    density: 0,
    bound: 0,
    evaluations: 0,
    left: [],
  };
  return checkPlan({ ...problem, items }, plan);
}

type Box = ReturnType<typeof boundsOfPolyline>;

function doMeet(a: Box, b: Box): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}
