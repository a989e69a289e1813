import type { Layout } from './layout.ts';

/**
 * Lays every body not yet laid on an endless strip, the longest first, one above the other in columns behind what lies there: a
 * poor plan, but valid, and at once. The body must fit the strip in one of its turns.
 */
export function layInColumns(layout: Layout, gap: number): void {
  const lengthOf = (body: number): number => layout.shapes[stanceOf(layout, body).shape].halfWidth;
  const open = [...layout.bodies.keys()]
    .filter((body) => !layout.isLaid[body])
    .sort((a, b) => lengthOf(b) - lengthOf(a));
  let left = behindAll(layout);
  let bottom = 0;
  const place = { x: 0, y: 0 };
  for (const body of open) {
    const { turn, shape } = stanceOf(layout, body);
    const { halfWidth, halfHeight } = layout.shapes[shape];
    if (!tryAt(layout, body, turn, left + halfWidth, bottom + halfHeight, place)) {
      left = behindAll(layout) + 1e-6 * halfWidth + gap;
      bottom = 0;
      const period = layout.bodies[body].stances[turn].latticeX?.period ?? halfWidth;
      for (let k = 0; !tryAt(layout, body, turn, left + halfWidth + k * period, halfHeight, place); k++);
    }
    bottom = place.y + halfHeight * (1 + 1e-6) + gap;
  }
}

/** Right end of all that lies there. */
function behindAll(layout: Layout): number {
  let right = 0;
  for (let k = 0; k < layout.count; k++) if (layout.isLaid[k]) right = Math.max(right, layout.rightOf(k));
  return right;
}

/** Lays the body at the place nearest to this if it meets nobody there. */
function tryAt(
  layout: Layout,
  body: number,
  turn: number,
  x: number,
  y: number,
  place: { x: number; y: number },
): boolean {
  if (!layout.fit(body, turn, 0, x, y, place)) return false;
  layout.aim(body);
  if (layout.judge(body, turn, place.x, place.y, 0) > 0) return false;
  layout.lay(body, turn, place.x, place.y);
  return true;
}

/** The turn that fits the strip and takes least of its length. */
function stanceOf(layout: Layout, body: number) {
  const place = { x: 0, y: 0 };
  const { stances } = layout.bodies[body];
  const fitting = stances.filter((_, k) => layout.fit(body, k, 0, 0, 0, place));
  const lengthOf = ({ shape }: (typeof stances)[number]): number => layout.shapes[shape].halfWidth;
  return fitting.reduce((a, b) => (lengthOf(b) < lengthOf(a) ? b : a));
}
