import { type SectionProblem, sampleSection, solveSection } from '../inside/index.ts';
import { boundsOfPolyline } from '../math/index.ts';

/** A filled row as it is held inside: the cloth, its ties, and how much of a change each tie takes. */
export interface HeldSection {
  readonly problem: SectionProblem;
  /** Parallel to the ties: 1 = takes the whole change, 0.5 = half of it (two ties in line share it), 0 = left alone. */
  readonly shares: readonly number[];
}

export interface TieChange {
  /** Of the whole way from front to back, mm; negative = shorter. */
  readonly change: number;
  /** By which width and depth of the row change with it, mm. */
  readonly width: number;
  readonly depth: number;
}

/** No tie is changed by more than this, mm: then the trouble is elsewhere. */
const MOST = 40;
const POINTS = 40;
const FIRST = 2.5;

/**
 * By how much the ties from front to back are to be lengthened or shortened so that the row gets `depthChange` deeper
 * (negative: shallower), found by balancing the row again and again (`solveSection`, bisection: depth rises with the ties'
 * length until they hang slack). Null where no change up to 40 mm brings it, or a balance is not found. About 12 balances.
 */
export function findTieChange(section: HeldSection, depthChange: number): TieChange | null {
  const before = sizeWith(section, 0);
  if (!before || !section.shares.some((share) => share > 0)) return null;
  const wanted = before.depth + depthChange;
  // Outwards in growing steps until the wanted depth lies between two of them.
  const sign = Math.sign(depthChange);
  let [inner, outer] = [0, sign * FIRST];
  for (;;) {
    const size = sizeWith(section, outer);
    if (!size) return null;
    if (sign * (size.depth - wanted) >= 0) break;
    if (Math.abs(outer) >= MOST) return null;
    [inner, outer] = [outer, 2 * outer];
  }
  let [low, high] = [Math.min(inner, outer), Math.max(inner, outer)];
  for (let i = 0; i < 20 && high - low > 0.02; i++) {
    const middle = 0.5 * (low + high);
    const size = sizeWith(section, middle);
    if (!size) return null;
    if (size.depth < wanted) low = middle;
    else high = middle;
  }
  const change = 0.5 * (low + high);
  const after = sizeWith(section, change);
  return after && { change, width: after.width - before.width, depth: after.depth - before.depth };
}

/** Width and depth of the balanced row with its ties changed; null when it finds no balance. */
function sizeWith({ problem, shares }: HeldSection, change: number): { width: number; depth: number } | null {
  const ties = problem.ties.map((tie, j) => ({
    ...tie,
    length: Math.max(5, tie.length + change * (shares[j] ?? 0)),
  }));
  const balance = solveSection({ ...problem, ties });
  if (!balance.converged) return null;
  const box = boundsOfPolyline(sampleSection(balance, POINTS));
  return { width: box.maxX - box.minX, depth: box.maxY - box.minY };
}
