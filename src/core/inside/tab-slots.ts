import { isInsidePolygon, measureDistanceToPolyline } from '../math/index.ts';
import type { PieceLine } from '../pattern/index.ts';
import { BOARD_BESIDE_HOLE } from './plate-outline.ts';

/** Tabs hold the sleeve's lower end to the base plate; no wider than a quarter of the sleeve, so that they lie side by side. mm. */
const TAB = { most: 40, height: 90 } as const;
/** Round the pole: in front, behind, right and left. */
const TURNS = [0, 1, 2, 3] as const;
/** A tab is two layers of cloth, hemmed: its slot is so wide, and so much longer than the tab. Common practice, no source. */
const SLOT = { width: 3, play: 2 } as const;
/** From the pole's hole to the slot, mm; ours: as much board as keeps beside a filling hole. */
const FROM_POLE = 11;

export interface TabSize {
  readonly width: number;
  readonly height: number;
}

export function tabSize(sleeveGirth: number): TabSize {
  return { width: Math.min(TAB.most, Math.floor(sleeveGirth / 4)), height: TAB.height };
}

/**
 * Slots for the tabs round the pole's hole, where the plate has board enough beside them: closed rectangles n × 2 mm, in the plate's own
 * coordinates. One that would come nearer than `BOARD_BESIDE_HOLE` to the plate's edge or to another hole is left out; where the pole
 * stands at an edge there are three. `ring`: the smaller layer's edge. `pole`: middle and radius of its hole.
 */
export function placeTabSlots(
  ring: Float64Array,
  pole: { readonly x: number; readonly y: number; readonly radius: number },
  others: readonly PieceLine[],
  sleeveGirth: number,
): PieceLine[] {
  const halfLength = 0.5 * (tabSize(sleeveGirth).width + SLOT.play);
  const [near, far] = [pole.radius + FROM_POLE, pole.radius + FROM_POLE + SLOT.width];
  return TURNS.flatMap((turn): PieceLine[] => {
    const [cos, sin] = [
      [0, 1],
      [-1, 0],
      [0, -1],
      [1, 0],
    ][turn];
    // Legend: a along the slot, r away from the pole; r points up first, then left, down and right.
    const at = (a: number, r: number): number[] => [pole.x + a * sin + r * cos, pole.y - a * cos + r * sin];
    const corners = [at(-halfLength, near), at(halfLength, near), at(halfLength, far), at(-halfLength, far)];
    const points = Float64Array.from(corners.flat());
    const isClear = corners.every(([x, y]) => {
      const isInPlate =
        isInsidePolygon(ring, x, y) && measureDistanceToPolyline(ring, true, x, y) >= BOARD_BESIDE_HOLE;
      return isInPlate && others.every((hole) => isApart(hole.points, points));
    });
    return isClear ? [{ id: `tab-${turn + 1}`, name: `tab-${turn + 1}`, points }] : [];
  });
}

function isApart(hole: Float64Array, slot: Float64Array): boolean {
  for (let i = 0; i < hole.length; i += 2) {
    if (isInsidePolygon(slot, hole[i], hole[i + 1])) return false;
    if (measureDistanceToPolyline(slot, true, hole[i], hole[i + 1]) < BOARD_BESIDE_HOLE) return false;
  }
  return true;
}
