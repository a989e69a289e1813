import { areaPathsD, differenceD, FillRule, intersectD, type PathD, unionD } from 'clipper2-ts';
import type { NestItem, NestPlacement, NestPlan } from '../../src/core/nesting/index.ts';

/** Outlines are read back and judged by a polygon library; nothing of the room is called. */

export function pathOf(outline: ArrayLike<number>): PathD {
  return Array.from({ length: outline.length / 2 }, (_, i) => ({ x: outline[2 * i], y: outline[2 * i + 1] }));
}

/** Where the outline of an item comes to lie, by the definition of a placement. */
export function laidOutline({ outline, turns }: NestItem, { turn, x, y }: NestPlacement): PathD {
  const { angle, mirrored } = turns[turn];
  return pathOf(outline).map((p) => {
    const px = mirrored ? -p.x : p.x;
    return {
      x: Math.cos(angle) * px - Math.sin(angle) * p.y + x,
      y: Math.sin(angle) * px + Math.cos(angle) * p.y + y,
    };
  });
}

export function laidOf(items: readonly NestItem[], plan: NestPlan): { path: PathD; sheet: number }[] {
  return items.flatMap((item, k) => {
    const placement = plan.placements[k];
    return placement ? [{ path: laidOutline(item, placement), sheet: placement.sheet }] : [];
  });
}

/** Largest area two of them share on one sheet. */
export function worstOverlap(laid: readonly { path: PathD; sheet: number }[]): number {
  let worst = 0;
  laid.forEach((a, i) => {
    for (const b of laid.slice(0, i))
      if (a.sheet === b.sheet)
        worst = Math.max(worst, Math.abs(areaPathsD(intersectD([a.path], [b.path], FillRule.NonZero, 4))));
  });
  return worst;
}

/** Area of all that lies outside a polygon or within some that are not to be used. */
export function areaAstray(laid: readonly PathD[], cloth: PathD, flaws: readonly PathD[] = []): number {
  const out = differenceD([...laid], [cloth], FillRule.NonZero, 4);
  const on =
    flaws.length > 0
      ? intersectD([...laid], unionD([...flaws], [], FillRule.NonZero, 4), FillRule.NonZero, 4)
      : [];
  return Math.abs(areaPathsD(out)) + Math.abs(areaPathsD(on));
}

export function rightEnd(laid: readonly PathD[]): number {
  return Math.max(...laid.flatMap((path) => path.map(({ x }) => x)));
}

/** Length of the shortest way between two outlines that do not cross, from corners to edges. */
export function distanceBetween(a: PathD, b: PathD): number {
  const fromTo = (from: PathD, to: PathD): number =>
    Math.min(
      ...from.flatMap((p) =>
        to.map((q, k) => {
          const r = to[(k + 1) % to.length];
          const [ux, uy] = [r.x - q.x, r.y - q.y];
          const t = Math.min(1, Math.max(0, ((p.x - q.x) * ux + (p.y - q.y) * uy) / (ux * ux + uy * uy)));
          return Math.hypot(p.x - q.x - t * ux, p.y - q.y - t * uy);
        }),
      ),
    );
  return Math.min(fromTo(a, b), fromTo(b, a));
}
