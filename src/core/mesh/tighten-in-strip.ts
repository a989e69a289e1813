import { clamp, distanceInSpace } from '../math/index.ts';
import { nextHalfedge, previousHalfedge } from './halfedges.ts';
import { positionOnMesh, type SurfacePoint } from './locate-on-mesh.ts';
import type { Mesh } from './mesh.ts';
import { pointOnHalfedge } from './point-on-halfedge.ts';

/** The shortest way inside one strip of triangles. */
export interface TautPath {
  /** Points where it crosses the halfedges, with both ends, n × 3 mm. */
  readonly points: Float64Array;
  readonly length: number;
  readonly bends: readonly Bend[];
}

/** A corner of the strip the way leans on. */
export interface Bend {
  readonly vertex: number;
  /** Index of a crossed halfedge that ends there. */
  readonly crossing: number;
  /** Angle on the strip's side, at least π. */
  readonly inside: number;
}

interface Corner {
  readonly x: number;
  readonly y: number;
  /** −1 at both ends of the way. */
  readonly vertex: number;
  readonly crossing: number;
}

/**
 * Unfolds the triangles between the crossed halfedges into the plane and pulls a string tight from end to end (the
 * funnel of Lee and Preparata 1984, Networks 14). Exact for the strip. O(#strip), rarely more.
 */
export function tightenInStrip(
  mesh: Mesh,
  strip: readonly number[],
  from: SurfacePoint,
  to: SurfacePoint,
): TautPath {
  const { gates, start, end } = unfoldStrip(mesh, strip, from, to);
  const corners = pullString(gates, start, end);
  const points: number[] = [...positionOnMesh(mesh, from)];
  let length = 0;
  const bends: Bend[] = [];
  for (let i = 0; i + 1 < corners.length; i++) {
    const [p, q] = [corners[i], corners[i + 1]];
    length += Math.hypot(q.x - p.x, q.y - p.y);
    for (let g = p.crossing + 1; g <= Math.min(q.crossing, strip.length - 1); g++) {
      points.push(...pointOnHalfedge(mesh, strip[g], crossingFraction(gates[g], p, q)));
    }
    if (i > 0)
      bends.push({ vertex: p.vertex, crossing: p.crossing, inside: angleOutside(corners[i - 1], p, q) });
  }
  points.push(...positionOnMesh(mesh, to));
  return { points: Float64Array.from(points), length, bends };
}

/** Ends of one crossed halfedge in the plane; seen along the way. */
interface Gate {
  readonly left: Corner;
  readonly right: Corner;
}

function unfoldStrip(mesh: Mesh, strip: readonly number[], from: SurfacePoint, to: SurfacePoint) {
  const { triangles } = mesh;
  const side = (h: number) => edgeLength(mesh, h);
  // Corners of the present triangle in the plane, by vertex.
  const first = 3 * from.triangle;
  let placed = new Map<number, readonly [number, number]>();
  placed.set(triangles[first], [0, 0]);
  placed.set(triangles[first + 1], [side(first), 0]);
  placed.set(
    triangles[first + 2],
    apexOver([0, 0], [side(first), 0], side(first), side(first + 1), side(first + 2)),
  );
  const pointIn = ({ triangle, weights }: SurfacePoint): Corner => {
    let [x, y] = [0, 0];
    for (let k = 0; k < 3; k++) {
      const [u, v] = placed.get(triangles[3 * triangle + k])!;
      x += weights[k] * u;
      y += weights[k] * v;
    }
    return { x, y, vertex: -1, crossing: -1 };
  };
  const start = pointIn(from);
  const gates: Gate[] = [];
  let triangle = from.triangle;
  strip.forEach((h, crossing) => {
    const [a, b] = [triangles[h], triangles[nextHalfedge(h)]];
    const [pa, pb] = [placed.get(a)!, placed.get(b)!];
    gates.push({
      left: { x: pb[0], y: pb[1], vertex: b, crossing },
      right: { x: pa[0], y: pa[1], vertex: a, crossing },
    });
    const after = crossing + 1 < strip.length ? Math.floor(strip[crossing + 1] / 3) : to.triangle;
    const twin = halfedgeBetween(triangles, after, b, a);
    const apex = triangles[previousHalfedge(twin)];
    const place = apexOver(pb, pa, side(twin), side(nextHalfedge(twin)), side(previousHalfedge(twin)));
    placed = new Map([
      [a, pa],
      [b, pb],
      [apex, place],
    ]);
    triangle = after;
  });
  return { gates, start, end: { ...pointIn({ ...to, triangle }), crossing: strip.length } };
}

/** Third corner to the left of p → q, from the lengths pq, q–apex and apex–p. */
function apexOver(
  p: readonly [number, number],
  q: readonly [number, number],
  base: number,
  fromQ: number,
  fromP: number,
): [number, number] {
  const along = (base * base + fromP * fromP - fromQ * fromQ) / (2 * base);
  const up = Math.sqrt(Math.max(0, fromP * fromP - along * along));
  const [ux, uy] = [(q[0] - p[0]) / base, (q[1] - p[1]) / base];
  return [p[0] + along * ux - up * uy, p[1] + along * uy + up * ux];
}

/** Straight stretches from end to end; corners where the string leans on a gate post. */
function pullString(gates: readonly Gate[], start: Corner, end: Corner): Corner[] {
  const corners: Corner[] = [start];
  const all: readonly Gate[] = [...gates, { left: end, right: end }];
  let apex = start;
  let left = start;
  let right = start;
  for (let i = 0; i < all.length; i++) {
    const gate = all[i];
    // A post that stays tightens nothing; asking would mislead when the apex lies between both posts.
    if (!isSame(right, gate.right) && (isSame(right, apex) || turn(apex, right, gate.right) >= 0)) {
      if (isSame(right, apex) || isSame(left, apex) || turn(apex, left, gate.right) < 0) {
        right = gate.right;
      } else {
        corners.push(left);
        i = left.crossing;
        apex = left;
        right = left;
        continue;
      }
    }
    if (!isSame(left, gate.left) && (isSame(left, apex) || turn(apex, left, gate.left) <= 0)) {
      if (isSame(left, apex) || isSame(right, apex) || turn(apex, right, gate.left) > 0) {
        left = gate.left;
      } else {
        corners.push(right);
        i = right.crossing;
        apex = right;
        left = right;
      }
    }
  }
  if (corners[corners.length - 1] !== end) corners.push(end);
  return corners;
}

/** The same corner of the mesh, or the same end of the way. */
function isSame(a: Corner, b: Corner): boolean {
  return a === b || (a.vertex !== -1 && a.vertex === b.vertex && a.x === b.x && a.y === b.y);
}

/** Twice the area of o, a, b; positive when b lies to the left of o → a. */
function turn(o: Corner, a: Corner, b: Corner): number {
  return (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);
}

/** 2π less the angle p, corner, q: what the strip leaves on its own side. */
function angleOutside(p: Corner, corner: Corner, q: Corner): number {
  const [ax, ay] = [p.x - corner.x, p.y - corner.y];
  const [bx, by] = [q.x - corner.x, q.y - corner.y];
  return 2 * Math.PI - Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
}

/** Where the line p → q crosses the gate, from its right end (0) to its left (1). */
function crossingFraction({ left, right }: Gate, p: Corner, q: Corner): number {
  const toRight = turn(p, q, right);
  const toLeft = turn(p, q, left);
  if (toRight === toLeft) return q.vertex === right.vertex ? 0 : 1;
  return clamp(toRight / (toRight - toLeft), 0, 1);
}

function edgeLength({ positions, triangles }: Mesh, h: number): number {
  return distanceInSpace(positions, triangles[h], triangles[nextHalfedge(h)]);
}

function halfedgeBetween(triangles: Uint32Array, triangle: number, from: number, to: number): number {
  for (let h = 3 * triangle; h < 3 * triangle + 3; h++) {
    if (triangles[h] === from && triangles[nextHalfedge(h)] === to) return h;
  }
  return 3 * triangle;
}
