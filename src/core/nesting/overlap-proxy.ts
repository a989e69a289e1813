/**
 * Shapes as the overlap of two is asked of them, all in one memory, single precision, by fours. A shape is a place in `heads`:
 * 0 bytes to its circles, 1 fours of circles, 2 bytes to its edges, 3 fours of edges, 4 bytes to the boxes of the fours of edges,
 * 5 how many circles.
 * Circles of a four: x × 4, y × 4, radius × 4; missing ones lie far off with radius 0. Edges: x × 4, y × 4 of the beginnings,
 * x × 4, y × 4 of the ends; missing ones lie far off. Boxes: left, bottom, −right, −top.
 */
export interface ShapeMemory {
  readonly buffer: ArrayBuffer;
  readonly heads: Int32Array;
  /** All of the memory, as numbers of four bytes. */
  readonly floats: Float32Array;
}

/** Words of a head. */
export const HEAD = 8;
const CIRCLE_FOUR = 12;
const EDGE_FOUR = 16;
const f = Math.fround;

/**
 * How far shapes a and b (places in `heads`) overlap, b moved by (dx, dy): a sum over pairs of circles that grows with how
 * deep they meet, positive where the shapes share a point (circles meet, or edges touch), else the negative of that sum. Square
 * length. Where circles meet, the sum is broken off once it is more than `enough`. Every number is single precision and lanes are summed in the order of the kernel, which gives the same bits.
 * Sources: arXiv:2509.13329 (inscribed circles as measure of overlap, and its decay beyond touching).
 */
export function overlapProxy(
  memory: ShapeMemory,
  a: number,
  b: number,
  dx: number,
  dy: number,
  epsilon: number,
  enough: number,
): number {
  const circles = sumOverCircles(memory, a, b, dx, dy, epsilon, enough);
  if (circles > 0) return circles;
  return doOutlinesTouch(memory, a, b, dx, dy) ? -circles : circles;
}

/** Negative where no two circles meet; only so far as it is `enough`. */
function sumOverCircles(
  { heads, floats }: ShapeMemory,
  a: number,
  b: number,
  dx: number,
  dy: number,
  epsilon: number,
  enough: number,
): number {
  const startA = heads[a] >> 2;
  const startB = heads[b] >> 2;
  const endB = startB + CIRCLE_FOUR * heads[b + 1];
  const square = f(epsilon * epsilon);
  const twice = f(2 * epsilon);
  let s0 = 0;
  let s1 = 0;
  let s2 = 0;
  let s3 = 0;
  let meets = false;
  let sum = 0;
  const term = (at: number, x: number, y: number, r: number): number => {
    const ux = f(floats[at] - x);
    const uy = f(floats[at + 4] - y);
    const other = floats[at + 8];
    const depth = f(f(r + other) - f(Math.sqrt(f(f(ux * ux) + f(uy * uy)))));
    if (depth > 0) meets = true;
    const decayed = depth >= epsilon ? depth : f(square / f(twice - depth));
    return f(Math.min(r, other) * decayed);
  };
  for (let k = 0; k < heads[a + 5]; k++) {
    const at = startA + CIRCLE_FOUR * (k >> 2) + (k & 3);
    const x = f(floats[at] - dx);
    const y = f(floats[at + 4] - dy);
    const r = floats[at + 8];
    for (let to = startB; to < endB; to += CIRCLE_FOUR) {
      s0 = f(s0 + term(to, x, y, r));
      s1 = f(s1 + term(to + 1, x, y, r));
      s2 = f(s2 + term(to + 2, x, y, r));
      s3 = f(s3 + term(to + 3, x, y, r));
    }
    sum = f(f(s0 + s2) + f(s1 + s3));
    if (meets && sum > enough) break;
  }
  return meets ? sum : -sum;
}

function doOutlinesTouch({ heads, floats }: ShapeMemory, a: number, b: number, dx: number, dy: number) {
  const startA = heads[a + 2] >> 2;
  const endA = startA + EDGE_FOUR * heads[a + 3];
  const startB = heads[b + 2] >> 2;
  const boxesA = heads[a + 4] >> 2;
  const boxesB = heads[b + 4] >> 2;
  const countB = heads[b + 3];
  // The box of all of b stands behind the boxes of its fours.
  const whole = boxesB + 4 * countB;
  const left = f(floats[whole] + dx);
  const bottom = f(floats[whole + 1] + dy);
  const right = -f(floats[whole + 2] - dx);
  const top = -f(floats[whole + 3] - dy);
  for (let four = startA, box = boxesA; four < endA; four += EDGE_FOUR, box += 4) {
    if (floats[box] > right || -floats[box + 2] < left) continue;
    if (floats[box + 1] > top || -floats[box + 3] < bottom) continue;
    for (let at = four; at < four + 4; at++) {
      const px = f(floats[at] - dx);
      const py = f(floats[at + 4] - dy);
      const qx = f(floats[at + 8] - dx);
      const qy = f(floats[at + 12] - dy);
      const x0 = Math.min(px, qx);
      const x1 = Math.max(px, qx);
      const y0 = Math.min(py, qy);
      const y1 = Math.max(py, qy);
      if (floats[whole] > x1 || -floats[whole + 2] < x0) continue;
      if (floats[whole + 1] > y1 || -floats[whole + 3] < y0) continue;
      for (let n = 0; n < countB; n++) {
        const other = boxesB + 4 * n;
        if (floats[other] > x1 || -floats[other + 2] < x0) continue;
        if (floats[other + 1] > y1 || -floats[other + 3] < y0) continue;
        if (doesEdgeTouch(floats, startB + EDGE_FOUR * n, px, py, qx, qy, x0, y0, x1, y1)) return true;
      }
    }
  }
  return false;
}

/** Edge pq with its box against four edges rs: ends on both sides of the other's line or on it, and the boxes meet. */
function doesEdgeTouch(
  floats: Float32Array,
  four: number,
  px: number,
  py: number,
  qx: number,
  qy: number,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
): boolean {
  const vx = f(qx - px);
  const vy = f(qy - py);
  for (let at = four; at < four + 4; at++) {
    const rx = floats[at];
    const ry = floats[at + 4];
    const sx = floats[at + 8];
    const sy = floats[at + 12];
    if (Math.min(rx, sx) > x1 || Math.max(rx, sx) < x0) continue;
    if (Math.min(ry, sy) > y1 || Math.max(ry, sy) < y0) continue;
    const ax = f(rx - px);
    const ay = f(ry - py);
    const o1 = f(f(vx * ay) - f(vy * ax));
    const o2 = f(f(vx * f(sy - py)) - f(vy * f(sx - px)));
    if (f(o1 * o2) > 0) continue;
    const wx = f(sx - rx);
    const wy = f(sy - ry);
    const o3 = f(f(wy * ax) - f(wx * ay));
    const o4 = f(f(wx * f(qy - ry)) - f(wy * f(qx - rx)));
    if (f(o3 * o4) <= 0) return true;
  }
  return false;
}
