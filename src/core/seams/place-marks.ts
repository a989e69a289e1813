import type { SeamMark } from './types.ts';

/** Marks are never further apart than this, mm. */
export const MAX_MARK_GAP = 120;
/** Two marks nearer than this confuse, mm. */
export const MIN_MARK_GAP = 25;

/**
 * Marks along a seam: both ends, every level crossing not nearer than 25 mm to another mark, and balance marks spread
 * evenly so that no stretch is longer than 120 mm, as far as the points allow.
 * `along`: running length at every point, mm. `levelIds`: level crossed at a point, by index.
 */
export function placeMarks(along: Float64Array, levelIds: ReadonlyMap<number, string>): SeamMark[] {
  const last = along.length - 1;
  const end = (index: number): SeamMark => {
    const levelId = levelIds.get(index);
    return { kind: 'end', index, ...(levelId === undefined ? {} : { levelId }) };
  };
  const fixed: SeamMark[] = [end(0)];
  for (const [index, levelId] of [...levelIds].sort((a, b) => a[0] - b[0])) {
    const fromLast = along[index] - along[fixed[fixed.length - 1].index];
    if (index === last || fromLast < MIN_MARK_GAP || along[last] - along[index] < MIN_MARK_GAP) continue;
    fixed.push({ kind: 'level', levelId, index });
  }
  fixed.push(end(last));
  const marks: SeamMark[] = [fixed[0]];
  for (let i = 1; i < fixed.length; i++) {
    marks.push(...balanceBetween(along, fixed[i - 1].index, fixed[i].index), fixed[i]);
  }
  return marks;
}

function balanceBetween(along: Float64Array, from: number, to: number): SeamMark[] {
  const total = along[to] - along[from];
  for (let parts = Math.ceil(total / MAX_MARK_GAP); parts <= to - from; parts++) {
    const indices: number[] = [];
    let i = from;
    for (let k = 1; k < parts; k++) {
      const wanted = along[from] + (total * k) / parts;
      while (along[i + 1] <= wanted) i++;
      indices.push(wanted - along[i] < along[i + 1] - wanted ? i : i + 1);
    }
    const stops = [from, ...indices, to];
    const widest = Math.max(...stops.slice(1).map((stop, k) => along[stop] - along[stops[k]]));
    if (widest <= MAX_MARK_GAP) return indices.map((index) => ({ kind: 'balance', index }));
  }
  // Points further apart than the limit: every point is a mark.
  return Array.from({ length: to - from - 1 }, (_, k) => ({ kind: 'balance', index: from + k + 1 }));
}
