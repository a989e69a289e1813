import { boundsOfPolyline } from '../math/index.ts';

/** x, y, radius of each, 3 numbers a circle. */
export type Circles = Float64Array;

/**
 * Circles inside a simple polygon (n × 2), the largest first, none meeting one before it: each is found by dividing squares
 * whose circle could still be the best (as Garcia-Castellanos and Lombardo, Scottish Geographical Journal 123, 2007, look for
 * the point farthest from any coast). Stops at `most`, or when one is smaller than `smallest` of the first. A circle may fall
 * short of the largest there is by 2 %, or by a ten-thousandth of the polygon's longer side: in a strip as thin as a fold, all
 * places along it are as good.
 */
export function inscribedCircles(outline: Float64Array, most: number, smallest: number): Circles {
  const found: number[] = [];
  while (found.length < 3 * most) {
    const best = largestCircle(outline, found);
    if (best.radius <= 0 || (found.length > 0 && best.radius < smallest * found[2])) break;
    found.push(best.x, best.y, best.radius);
  }
  return Float64Array.from(found);
}

/** Share of the longer side that a larger circle would not be looked for. */
const SLACK = 1e-4;

interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

interface Cell extends Circle {
  readonly half: number;
  /** No circle about a point of the cell is larger. */
  readonly most: number;
}

function largestCircle(outline: Float64Array, others: readonly number[]): Circle {
  const cellAt = (x: number, y: number, half: number): Cell => {
    const radius = radiusAt(outline, others, x, y);
    return { x, y, radius, half, most: radius + half * Math.SQRT2 };
  };
  let open = firstCells(outline, cellAt);
  let best: Circle = open[0];
  const slack = SLACK * longerSide(outline);
  while (open.length > 0) {
    for (const cell of open) if (cell.radius > best.radius) best = cell;
    const least = best.radius > 0 ? Math.max(best.radius * 1.02, best.radius + slack) : 0;
    open = open
      .filter(({ most }) => most > least)
      .flatMap(({ x, y, half }) => {
        const h = half / 2;
        return [
          cellAt(x - h, y - h, h),
          cellAt(x + h, y - h, h),
          cellAt(x - h, y + h, h),
          cellAt(x + h, y + h, h),
        ];
      });
    if (open.length > 0 && open[0].half < 1e-4 * Math.max(best.radius, 1e-3 * open[0].most)) break;
  }
  return best;
}

/** Squares over the box, and the middle of the longest stretch across it, which lies inside. */
function firstCells(outline: Float64Array, cellAt: (x: number, y: number, half: number) => Cell): Cell[] {
  const { minX: x0, minY: y0, maxX: x1, maxY: y1 } = boundsOfPolyline(outline);
  const side = Math.max(Math.min(x1 - x0, y1 - y0), Math.max(x1 - x0, y1 - y0) / 64);
  const cells: Cell[] = [];
  for (let x = x0; x < x1; x += side)
    for (let y = y0; y < y1; y += side) cells.push(cellAt(x + side / 2, y + side / 2, side / 2));
  return cells;
}

function longerSide(outline: Float64Array): number {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(outline);
  return Math.max(maxX - minX, maxY - minY);
}

/** Distance to the outline or to the nearest circle of those before, negative outside. */
function radiusAt(outline: Float64Array, others: readonly number[], x: number, y: number): number {
  let square = Infinity;
  let inside = false;
  const n = outline.length;
  let [ax, ay] = [outline[n - 2] - x, outline[n - 1] - y];
  for (let i = 0; i < n; i += 2) {
    const bx = outline[i] - x;
    const by = outline[i + 1] - y;
    const ux = bx - ax;
    const uy = by - ay;
    if (ay > 0 !== by > 0 && ax - (ay * ux) / uy > 0) inside = !inside;
    const t = -(ax * ux + ay * uy) / (ux * ux + uy * uy);
    const s = t > 0 ? Math.min(t, 1) : 0;
    const px = ax + s * ux;
    const py = ay + s * uy;
    square = Math.min(square, px * px + py * py);
    ax = bx;
    ay = by;
  }
  let radius = (inside ? 1 : -1) * Math.sqrt(square);
  for (let k = 0; k < others.length; k += 3) {
    const dx = others[k] - x;
    const dy = others[k + 1] - y;
    radius = Math.min(radius, Math.sqrt(dx * dx + dy * dy) - others[k + 2]);
  }
  return radius;
}
