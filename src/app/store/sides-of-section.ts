import { convexHull } from '../../core/math/index.ts';
import type { Section } from './section-of-mesh.ts';

/** One side of a level section, from the body's middle plane outward. mm. */
export interface SideOfSection {
  /** As a taut tape takes it, from the middle in front to the middle behind. */
  readonly girth: number;
  readonly width: number;
  /** From the foremost to the hindmost of this side. */
  readonly depth: number;
}

/** A section divided by the middle plane x = 0; null where it lies wholly on one side. O(points · log points). */
export function sidesOfSection({
  stretches,
}: Section): { readonly right: SideOfSection; readonly left: SideOfSection } | null {
  const hull = Array.from(convexHull(stretches), (v) => [stretches[2 * v], stretches[2 * v + 1]] as const);
  const right = measureSide(hull);
  const left = measureSide(hull.map(([x, y]) => [-x, y]));
  return right && left ? { right, left } : null;
}

/** The part of a closed hull with x ≥ 0. The foremost and hindmost points of a side lie on the hull, or where it crosses. */
function measureSide(hull: readonly (readonly [number, number])[]): SideOfSection | null {
  let [girth, width, back, front] = [0, 0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const reach = (x: number, y: number) => {
    width = Math.max(width, x);
    back = Math.min(back, y);
    front = Math.max(front, y);
  };
  hull.forEach(([x0, y0], i) => {
    const [x1, y1] = hull[(i + 1) % hull.length];
    if (x0 < 0 && x1 < 0) return;
    // Where the edge begins and ends within this side, as shares of its length.
    const crossing = x0 / (x0 - x1);
    const from = x0 < 0 ? crossing : 0;
    const to = x1 < 0 ? crossing : 1;
    girth += (to - from) * Math.hypot(x1 - x0, y1 - y0);
    for (const share of [from, to]) reach(x0 + share * (x1 - x0), y0 + share * (y1 - y0));
  });
  return width > 0 && front > back ? { girth, width, depth: front - back } : null;
}
