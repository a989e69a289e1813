type Point = readonly [x: number, y: number];

/**
 * Length of a tape pulled tight round points in a plane: the perimeter of their convex hull. Gift wrapping
 * (R. A. Jarvis, Information Processing Letters 2, 1973), chosen because it shares nothing with the program.
 * `shortfall` is how much longer a smooth curve through the hull's corners is: an arc of turn θ over a chord h is
 * longer than it by hθ²/24 (series of θ/2 / sin θ/2), summed with the turn at each corner shared by its two sides. A side
 * over a hollow is taut in the air and no arc.
 */
export function hullPerimeter(points: readonly Point[]): {
  readonly perimeter: number;
  readonly shortfall: number;
} {
  const start = points.reduce((best, p) =>
    p[0] < best[0] || (p[0] === best[0] && p[1] < best[1]) ? p : best,
  );
  const corners: Point[] = [];
  let here = start;
  do {
    corners.push(here);
    let next = here === points[0] ? points[1] : points[0];
    for (const p of points) {
      const turn = (next[0] - here[0]) * (p[1] - here[1]) - (next[1] - here[1]) * (p[0] - here[0]);
      const isFarther = distance(here, p) > distance(here, next);
      if (p !== here && (turn < 0 || (turn === 0 && isFarther))) next = p;
    }
    here = next;
  } while (here !== start);
  const sides = corners.map((a, i) => {
    const b = corners[(i + 1) % corners.length];
    const length = distance(a, b);
    const isTaut = points.some((p) => liesUnder(p, a, b));
    return { length, bent: isTaut ? 0 : length, angle: Math.atan2(b[1] - a[1], b[0] - a[0]) };
  });
  let shortfall = 0;
  sides.forEach((side, i) => {
    const before = sides.at(i - 1)!;
    const turn = Math.atan2(Math.sin(side.angle - before.angle), Math.cos(side.angle - before.angle));
    shortfall += (((side.bent + before.bent) / 2) * turn ** 2) / 24;
  });
  return { perimeter: sides.reduce((sum, side) => sum + side.length, 0), shortfall };
}

/** True when a point lies in the hollow that the side from a to b goes over. */
function liesUnder(p: Point, a: Point, b: Point): boolean {
  const [x, y] = [b[0] - a[0], b[1] - a[1]];
  const square = x * x + y * y;
  const along = ((p[0] - a[0]) * x + (p[1] - a[1]) * y) / square;
  const off = Math.abs((p[1] - a[1]) * x - (p[0] - a[0]) * y) / square;
  return along > 0.05 && along < 0.95 && off < 0.5;
}

/**
 * Length of a tape pulled tight from the first point to the last over all points between, which lie on the positive
 * x side of it: from each point straight on to the one most to the outside.
 */
export function stretchedLength(points: readonly Point[]): number {
  let length = 0;
  let here = 0;
  while (here < points.length - 1) {
    let next = here + 1;
    for (let i = here + 2; i < points.length; i++) {
      const a = points[here];
      const n = points[next];
      const p = points[i];
      const turn = (n[0] - a[0]) * (p[1] - a[1]) - (n[1] - a[1]) * (p[0] - a[0]);
      if (turn <= 0) next = i;
    }
    length += distance(points[here], points[next]);
    here = next;
  }
  return length;
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
