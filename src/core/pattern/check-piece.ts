import type { Issue, Phrase } from '../base/index.ts';
import {
  boundsOfPolyline,
  isInsidePolygon,
  measureDistanceToPolyline,
  measurePolygonArea,
} from '../math/index.ts';
import type { OutlineVertex } from './offset-outline.ts';
import { type DraftOptions, PATTERN_OPTIONS } from './pattern-options.ts';
import { phrase } from './phrases.ts';
import type { PieceEdge, PieceInput } from './types.ts';
import { type AllowanceKind, usualAllowance } from './usual-allowances.ts';

/**
 * mm. A stitched seam needs `smallest` of cloth beyond it (common practice: toy makers' 1/8 in); openings may also be cut bare.
 */
export const ALLOWANCE_LIMITS = { smallest: 3, largest: PATTERN_OPTIONS.allowance.max } as const;
/** mm²: below this no piece of cloth can be handled. Ours. */
const SMALLEST_AREA = 25;
/** Spacing of edge points and of tests along edges where millimetres are enough. */
const COARSE = 4;

/** The allowance of every edge in mm, and what is wrong with them. */
export function readAllowances(
  input: PieceInput,
  options: DraftOptions,
): { allowances: number[]; issues: Issue[] } {
  const issues = new Map<string, Issue>();
  const allowances = input.edges.map((edge) => {
    const { value, path } = allowanceOf(edge, input.material, options);
    const { smallest, largest } = ALLOWANCE_LIMITS;
    const mayBeBare = edge.kind === 'opening' && value === 0;
    if (mayBeBare || (value >= smallest && value <= largest)) return value;
    const limit = value > largest ? largest : smallest;
    issues.set(path, {
      code: 'allowance-out-of-range',
      path,
      message: phrase('piece.allowance-out-of-range', { allowance: value, smallest, largest }),
      severity: 'error',
      measured: value,
      limit,
    });
    return value;
  });
  return { allowances, issues: [...issues.values()] };
}

/**
 * The most particular wish there is: for the edge, for its kind, for seam or opening, for the material; else what edges of its kind
 * usually have, else what all have.
 */
function allowanceOf(
  edge: PieceEdge,
  material: string,
  { allowance, allowanceByEdge, allowanceByKind, allowanceByMaterial, unit = 'cm' }: DraftOptions,
): { value: number; path: string } {
  const kind = edge.allowanceKind;
  const wishes: [number | undefined, string][] = [
    [allowanceByEdge?.[edge.id], `allowanceByEdge.${edge.id}`],
    [kind && allowanceByKind?.[kind], `allowanceByKind.${kind}`],
    [allowanceByKind?.[edge.kind], `allowanceByKind.${edge.kind}`],
    [allowanceByMaterial?.[material], `allowanceByMaterial.${material}`],
  ];
  for (const [value, path] of wishes) if (value !== undefined) return { value, path };
  const general = allowance ?? PATTERN_OPTIONS.allowance.usual;
  return { value: kind ? usualAllowance(kind, unit, general) : general, path: 'allowance' };
}

/** The kinds of this piece's edges whose allowance is the usual one of the kind, because nothing was typed that goes before it. */
export function kindsWithUsualAllowance(input: PieceInput, options: DraftOptions): AllowanceKind[] {
  const general = options.allowance ?? PATTERN_OPTIONS.allowance.usual;
  const kinds = input.edges.flatMap((edge) => {
    const { value, path } = allowanceOf(edge, input.material, options);
    return edge.allowanceKind && path === 'allowance' && value > general ? [edge.allowanceKind] : [];
  });
  return [...new Set(kinds)];
}

/** Whether the sew outline (ring n × 2) bounds a piece of cloth at all: right way round, not crossing itself. */
export function checkOutline(input: PieceInput, ring: Float64Array): Issue[] {
  const path = `pieces.${input.id}`;
  const piece = input.name;
  const issue = (code: string, message: Phrase, measured: number, limit: number): Issue[] => [
    { code, path, message, severity: 'error', measured, limit },
  ];
  const crossings = countSelfCrossings(ring);
  if (crossings > 0) {
    return issue(
      'outline-crosses-itself',
      phrase('piece.crosses-itself', { piece, times: crossings }),
      crossings,
      0,
    );
  }
  const area = measurePolygonArea(ring);
  if (Math.abs(area) < SMALLEST_AREA) {
    return issue(
      'outline-degenerate',
      phrase('piece.without-area', { piece, area: Math.abs(area), least: SMALLEST_AREA }),
      Math.abs(area),
      SMALLEST_AREA,
    );
  }
  if (area < 0) {
    return issue('outline-inside-out', phrase('piece.inside-out', { piece }), area, SMALLEST_AREA);
  }
  return [];
}

/** Proper crossings between non-neighbouring segments. O(n²) with a bounding-box reject. */
function countSelfCrossings(ring: Float64Array): number {
  const count = ring.length / 2;
  let crossings = 0;
  for (let i = 0; i < count; i++) {
    const [ax, ay] = [ring[2 * i], ring[2 * i + 1]];
    const iNext = (i + 1) % count;
    const [bx, by] = [ring[2 * iNext], ring[2 * iNext + 1]];
    const [minX, maxX, minY, maxY] = [Math.min(ax, bx), Math.max(ax, bx), Math.min(ay, by), Math.max(ay, by)];
    for (let j = i + 2; j < count; j++) {
      const jNext = (j + 1) % count;
      if (jNext === i) continue;
      const cx = ring[2 * j];
      const cy = ring[2 * j + 1];
      const dx = ring[2 * jNext];
      const dy = ring[2 * jNext + 1];
      if ((cx < minX && dx < minX) || (cx > maxX && dx > maxX)) continue;
      if ((cy < minY && dy < minY) || (cy > maxY && dy > maxY)) continue;
      const abc = side(ax, ay, bx, by, cx, cy);
      const abd = side(ax, ay, bx, by, dx, dy);
      const cda = side(cx, cy, dx, dy, ax, ay);
      const cdb = side(cx, cy, dx, dy, bx, by);
      if (abc * abd < 0 && cda * cdb < 0) crossings++;
    }
  }
  return crossings;
}

function side(ax: number, ay: number, bx: number, by: number, px: number, py: number): number {
  return Math.sign((bx - ax) * (py - ay) - (by - ay) * (px - ax));
}

/**
 * What is left in the middle of a piece with all allowances folded in, mm: the largest over inside points of the
 * least (distance to an edge − its allowance), negative when they cover the piece. Best point of a 24 × 24 grid,
 * refined by halving steps; a lower bound to about 0.1 mm. The grid is judged on every few millimetres of the edges. Once some
 * is sure to be left, how much is not asked further. O(600 n) at worst.
 */
function measureSpareMiddle(input: PieceInput, ring: Float64Array, allowances: readonly number[]): number {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(ring);
  let best = { x: minX, y: minY, spare: -Math.max(...allowances) };
  const exact = input.edges.map(({ points }) => points);
  const coarse = exact.map((points) => thinOut(points, COARSE));
  let lines = coarse;
  const tryPoint = (x: number, y: number): void => {
    let spare = Number.POSITIVE_INFINITY;
    for (const [i, points] of lines.entries()) {
      spare = Math.min(spare, measureDistanceToPolyline(points, false, x, y) - allowances[i]);
      if (spare <= best.spare) return;
    }
    if (isInsidePolygon(ring, x, y)) best = { x, y, spare };
  };
  for (let i = 0; i < 24; i++) {
    // No left-out point is further from the rest than that: what is spare by more on the grid is so exactly.
    for (let j = 0; j < 24 && best.spare < COARSE; j++) {
      tryPoint(minX + ((i + 0.5) / 24) * (maxX - minX), minY + ((j + 0.5) / 24) * (maxY - minY));
    }
  }
  lines = exact;
  const { x: nearX, y: nearY } = best;
  best = { ...best, spare: -Math.max(...allowances) };
  tryPoint(nearX, nearY);
  if (best.spare >= 0) return best.spare;
  for (let step = Math.max(maxX - minX, maxY - minY) / 48; step > 0.05; step /= 2) {
    const { x, y } = best;
    for (const [dx, dy] of [
      [step, 0],
      [-step, 0],
      [0, step],
      [0, -step],
    ]) {
      tryPoint(x + dx, y + dy);
    }
  }
  return best.spare;
}

/** The ends and, between them, points at least `spacing` mm apart. */
function thinOut(points: Float64Array, spacing: number): Float64Array {
  const kept: number[] = [points[0], points[1]];
  for (let i = 2; i < points.length - 2; i += 2) {
    const end = kept.length;
    if (Math.hypot(points[i] - kept[end - 2], points[i + 1] - kept[end - 1]) >= spacing)
      kept.push(points[i], points[i + 1]);
  }
  kept.push(points[points.length - 2], points[points.length - 1]);
  return Float64Array.from(kept);
}

/** What the allowance does to a sound outline: closes a hollow, or covers the piece when folded in. */
export function checkAllowance(
  input: PieceInput,
  ring: Float64Array,
  allowances: readonly number[],
  holes: readonly Float64Array[],
): Issue[] {
  const path = `pieces.${input.id}`;
  const issues: Issue[] = [];
  const spare = measureSpareMiddle(input, ring, allowances);
  if (spare < 0) {
    issues.push({
      code: 'allowance-covers-piece',
      path,
      message: phrase('piece.covered-by-allowance', { piece: input.name, overlap: -2 * spare }),
      severity: 'error',
      measured: spare,
      limit: 0,
    });
  }
  if (holes.length > 0) {
    const area = Math.abs(measurePolygonArea(holes[0]));
    issues.push({
      code: 'allowance-closes-hollow',
      path,
      message: phrase('piece.hollow-closed', { piece: input.name, area }),
      severity: 'error',
      measured: holes.length,
      limit: 0,
    });
  }
  return issues;
}

/** Along a hollow corner two strips share some cloth; past this many allowances the corner is a slot. Ours. */
const LONGEST_SHARED = 4;

/**
 * Where an edge's own cut line has vanished because strips of two stretches lie over each other, as in a slot:
 * the longest such stretch, reported when it is too long to be the inside of a corner. The caller may still cut,
 * but must snip. O(n · m).
 */
export function checkSharedCloth(
  input: PieceInput,
  vertices: readonly OutlineVertex[],
  cutLine: Float64Array,
): Issue[] {
  let run = 0;
  let longest = 0;
  const widest = Math.max(...vertices.map(({ allowance }) => allowance));
  const lengths = vertices.map((from, k) => {
    const to = vertices[(k + 1) % vertices.length];
    return Math.hypot(to.x - from.x, to.y - from.y);
  });
  const covered: boolean[] = [];
  let since = COARSE;
  vertices.forEach((from, k) => {
    const to = vertices[(k + 1) % vertices.length];
    since += lengths[k];
    if (since < COARSE) covered.push(covered[k - 1]);
    else {
      since = 0;
      const x = (from.x + to.x) / 2 + (from.allowance * (to.y - from.y)) / lengths[k];
      const y = (from.y + to.y) / 2 - (from.allowance * (to.x - from.x)) / lengths[k];
      covered.push(isInsidePolygon(cutLine, x, y) && measureDistanceToPolyline(cutLine, true, x, y) > 0.05);
    }
  });
  // Twice round, so that a stretch over the starting point counts whole.
  for (let k = 0; k < 2 * vertices.length; k++) {
    run = covered[k % vertices.length] ? run + lengths[k % vertices.length] : 0;
    longest = Math.max(longest, run);
  }
  const limit = LONGEST_SHARED * widest;
  if (longest <= limit) return [];
  return [
    {
      code: 'allowances-overlap',
      path: `pieces.${input.id}`,
      message: phrase('piece.allowances-overlap', { piece: input.name, length: longest }),
      severity: 'warning',
      measured: longest,
      limit,
    },
  ];
}
