/** Triangles as seen from one side, found by their place on the page. */
export interface Occluders {
  /** True when a triangle covers the page point (mm) and is nearer than `depth` by more than `tolerance` mm. */
  isHidden(x: number, y: number, depth: number, tolerance: number): boolean;
}

/** So many triangles a cell, about. */
const PER_CELL = 2;
/** Edges shared by two triangles let nothing through: barycentric slack. */
const SLACK = 1e-9;

/**
 * A grid over the page with the triangles (`seen` #V × 3 as `Projector.project` makes them) that touch each cell. Exact:
 * no pixels are in between. O(#F) to make, O(triangles over a place) to ask.
 */
export function findOccluders(seen: Float64Array, triangles: ArrayLike<number>): Occluders {
  const count = triangles.length / 3;
  const boxes = boxesOf(seen, triangles);
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let f = 0; f < count; f++) {
    minX = Math.min(minX, boxes[4 * f]);
    minY = Math.min(minY, boxes[4 * f + 1]);
    maxX = Math.max(maxX, boxes[4 * f + 2]);
    maxY = Math.max(maxY, boxes[4 * f + 3]);
  }
  if (count === 0) return { isHidden: () => false };
  const size = Math.max(Math.sqrt((PER_CELL * (maxX - minX) * (maxY - minY)) / count), 1e-6);
  const columns = Math.floor((maxX - minX) / size) + 1;
  const rows = Math.floor((maxY - minY) / size) + 1;
  const eachCell = (visit: (cell: number, f: number) => void): void => {
    for (let f = 0; f < count; f++) {
      const left = Math.floor((boxes[4 * f] - minX) / size);
      const top = Math.floor((boxes[4 * f + 1] - minY) / size);
      const right = Math.floor((boxes[4 * f + 2] - minX) / size);
      const bottom = Math.floor((boxes[4 * f + 3] - minY) / size);
      for (let row = top; row <= bottom; row++)
        for (let column = left; column <= right; column++) visit(row * columns + column, f);
    }
  };
  // Triangles of all cells in one list, those of cell c from first[c] on: a list a cell would cost more than the search.
  const first = new Uint32Array(columns * rows + 1);
  eachCell((cell) => {
    first[cell + 1]++;
  });
  for (let cell = 0; cell < columns * rows; cell++) first[cell + 1] += first[cell];
  const next = first.slice();
  const listed = new Uint32Array(first[columns * rows]);
  eachCell((cell, f) => {
    listed[next[cell]++] = f;
  });
  return {
    isHidden(x, y, depth, tolerance) {
      const column = Math.floor((x - minX) / size);
      const row = Math.floor((y - minY) / size);
      if (column < 0 || row < 0 || column >= columns || row >= rows) return false;
      const cell = row * columns + column;
      for (let i = first[cell]; i < first[cell + 1]; i++) {
        if (depthOver(seen, triangles, listed[i], x, y) > depth + tolerance) return true;
      }
      return false;
    },
  };
}

/** How near a triangle is at a place of the page; −∞ beside it and where it is seen on edge. */
function depthOver(
  seen: Float64Array,
  triangles: ArrayLike<number>,
  f: number,
  x: number,
  y: number,
): number {
  const a = 3 * triangles[3 * f];
  const b = 3 * triangles[3 * f + 1];
  const c = 3 * triangles[3 * f + 2];
  const ux = seen[b] - seen[a];
  const uy = seen[b + 1] - seen[a + 1];
  const vx = seen[c] - seen[a];
  const vy = seen[c + 1] - seen[a + 1];
  const area = ux * vy - uy * vx;
  if (Math.abs(area) < 1e-12) return -Infinity;
  const px = x - seen[a];
  const py = y - seen[a + 1];
  const s = (px * vy - py * vx) / area;
  const t = (ux * py - uy * px) / area;
  if (s < -SLACK || t < -SLACK || s + t > 1 + SLACK) return -Infinity;
  return seen[a + 2] + s * (seen[b + 2] - seen[a + 2]) + t * (seen[c + 2] - seen[a + 2]);
}

/** #F × 4: left, top, right, bottom. */
function boxesOf(seen: Float64Array, triangles: ArrayLike<number>): Float64Array {
  const boxes = new Float64Array((4 * triangles.length) / 3);
  for (let f = 0; f < triangles.length / 3; f++) {
    const a = 3 * triangles[3 * f];
    const b = 3 * triangles[3 * f + 1];
    const c = 3 * triangles[3 * f + 2];
    boxes[4 * f] = Math.min(seen[a], seen[b], seen[c]);
    boxes[4 * f + 1] = Math.min(seen[a + 1], seen[b + 1], seen[c + 1]);
    boxes[4 * f + 2] = Math.max(seen[a], seen[b], seen[c]);
    boxes[4 * f + 3] = Math.max(seen[a + 1], seen[b + 1], seen[c + 1]);
  }
  return boxes;
}
