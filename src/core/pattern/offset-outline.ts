import { FillRule, unionD } from 'clipper2-ts';
import { measurePolygonArea } from '../math/index.ts';

/** A sharp corner's allowance is cut square at this many allowances from the corner. Ours; keeps 48° and more whole. */
export const MITRE_LIMIT = 2.5;
/** A turn inside one edge counts as a corner (mitred) from here on, below as part of a curve (rounded). Ours. */
const CORNER_TURN = Math.PI / 6;
/** How far the chords of a rounded turn may fall short of the allowance, mm. */
const ARC_SAGITTA = 0.002;
/** Decimals kept by the union: 0.0001 mm. */
const UNION_DECIMALS = 4;

export interface OutlineVertex {
  readonly x: number;
  readonly y: number;
  /** Allowance of the segment that leaves this vertex, mm. */
  readonly allowance: number;
  /** True where two edges meet. */
  readonly isCorner: boolean;
}

export interface OffsetOutline {
  /** Counter-clockwise, n × 2 mm. */
  readonly outer: Float64Array;
  /** Hollows that the allowance closed, as polygons. */
  readonly holes: readonly Float64Array[];
}

/**
 * Grows a simple counter-clockwise outline outwards, each segment by its own allowance. The result is the
 * union of the outline, one strip per segment (allowance wide, square ended) and a wedge per convex corner:
 * mitre, blunted mitre, arc, or step where the allowances differ too much for a mitre to respect both.
 * Every part is wound the same way, so the raw contour has positive winding exactly on that union, which the
 * Boolean library then extracts (0.0001 mm grid). Cost O(n log n) plus self-crossings.
 * Precondition: no zero-length segment, simple outline.
 */
export function offsetOutline(vertices: readonly OutlineVertex[]): OffsetOutline {
  const raw: { x: number; y: number }[] = [];
  const count = vertices.length;
  for (let i = 0; i < count; i++) {
    const before = vertices[(i + count - 1) % count];
    const after = vertices[(i + 1) % count];
    for (const point of joinStrips(before, vertices[i], after)) raw.push(point);
  }
  const paths = unionD([raw], [], FillRule.Positive, UNION_DECIMALS).map((path) =>
    Float64Array.from(path.flatMap(({ x, y }) => [x, y])),
  );
  const areas = paths.map(measurePolygonArea);
  let outerIndex = 0;
  for (let i = 1; i < paths.length; i++) if (areas[i] > areas[outerIndex]) outerIndex = i;
  return {
    outer: startNear(paths[outerIndex] ?? new Float64Array(0), vertices[0].x, vertices[0].y),
    holes: paths.filter((_, i) => areas[i] < 0),
  };
}

/**
 * Points of the raw contour round one vertex p.
 * Legend: d, e unit directions in and out; n, m their outward (right-hand) normals; a, b allowances.
 */
function joinStrips(
  before: OutlineVertex,
  p: OutlineVertex,
  after: OutlineVertex,
): { x: number; y: number }[] {
  const a = before.allowance;
  const b = p.allowance;
  const d = direction(before, p);
  const e = direction(p, after);
  const n = { x: d.y, y: -d.x };
  const m = { x: e.y, y: -e.x };
  const at = (u: { x: number; y: number }, length: number) => ({
    x: p.x + length * u.x,
    y: p.y + length * u.y,
  });
  const cos = d.x * e.x + d.y * e.y;
  const sin = d.x * e.y - d.y * e.x;
  const turn = Math.atan2(sin, cos);

  // 1. Straight on, same allowance.
  if (Math.abs(turn) < 1e-9 && a === b) return [at(n, a)];
  // 2. Hollow corner: both square strip ends meet at p; the union keeps their outer side.
  if (turn < 0) return [at(n, a), { x: p.x, y: p.y }, at(m, b)];
  // 3. Part of a curve.
  if (a === b && !p.isCorner && turn < CORNER_TURN) {
    const excess = a * (1 / Math.cos(turn / 2) - 1);
    return excess <= ARC_SAGITTA ? [mitreTip(p, n, m, a)] : arcPoints(p, n, turn, a);
  }
  // 4. Allowances so different that one strip's line would cut into the other strip: step at p.
  if (a < b * cos) return [at(m, a / cos), at(m, b)];
  if (b < a * cos) return [at(n, a), at(n, b / cos)];
  // 5. Mitre where the offset lines cross: t along d from the end of the first strip.
  const t = (b - a * cos) / sin;
  const tip = { x: a * n.x + t * d.x, y: a * n.y + t * d.y };
  const reach = Math.hypot(tip.x, tip.y);
  const limit = MITRE_LIMIT * Math.max(a, b);
  if (reach <= limit) return [{ x: p.x + tip.x, y: p.y + tip.y }];
  // 6. Too sharp: square to the line from p to the tip, at the limit.
  const c = Number.isFinite(reach) ? { x: tip.x / reach, y: tip.y / reach } : d;
  const along = (limit - a * (n.x * c.x + n.y * c.y)) / (d.x * c.x + d.y * c.y);
  const back = (limit - b * (m.x * c.x + m.y * c.y)) / (e.x * c.x + e.y * c.y);
  return [
    { x: p.x + a * n.x + along * d.x, y: p.y + a * n.y + along * d.y },
    { x: p.x + b * m.x + back * e.x, y: p.y + b * m.y + back * e.y },
  ];
}

function direction(from: OutlineVertex, to: OutlineVertex): { x: number; y: number } {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

function mitreTip(
  p: OutlineVertex,
  n: { x: number; y: number },
  m: { x: number; y: number },
  allowance: number,
): { x: number; y: number } {
  const scale = allowance / (1 + n.x * m.x + n.y * m.y);
  return { x: p.x + scale * (n.x + m.x), y: p.y + scale * (n.y + m.y) };
}

function arcPoints(
  p: OutlineVertex,
  n: { x: number; y: number },
  turn: number,
  radius: number,
): { x: number; y: number }[] {
  const largestStep = 2 * Math.acos(1 - ARC_SAGITTA / radius);
  const steps = Math.max(1, Math.ceil(turn / largestStep));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const cos = Math.cos((turn * i) / steps);
    const sin = Math.sin((turn * i) / steps);
    return { x: p.x + radius * (n.x * cos - n.y * sin), y: p.y + radius * (n.x * sin + n.y * cos) };
  });
}

/** The same ring, beginning at its vertex nearest to (x, y), so that output does not hang on the library's start. */
function startNear(ring: Float64Array, x: number, y: number): Float64Array {
  let best = 0;
  for (let i = 2; i < ring.length; i += 2) {
    if (Math.hypot(ring[i] - x, ring[i + 1] - y) < Math.hypot(ring[best] - x, ring[best + 1] - y)) best = i;
  }
  return Float64Array.from(ring, (_, i) => ring[(i + best) % ring.length]);
}
