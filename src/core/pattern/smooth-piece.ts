import { cubicSplineMoments, distanceInPlane, evaluateCubicSpline, measureAlong } from '../math/index.ts';
import type { PieceEdge, PieceInput } from './types.ts';

/** A vertex within an edge that turns by more is meant to be a corner. Ours; samples of seams 8 mm apart stay below. */
const CORNER = (35 * Math.PI) / 180;
/** How far the new chords may be from the curve, mm. */
const SAGITTA = 0.004;
/** Rounds that bring the curve to the length of the chords, and the turn (radians) below which they leave a vertex alone. */
const CORRECTIONS = 3;
const LEAST_TURN = 0.03;

/**
 * The piece with its edges as smooth curves instead of the chords they come as, in chords fine enough to pass for them
 * (0.004 mm). The curve is the cubic spline by chord length through the vertices, each moved beforehand into the curve by
 * a third of the sagitta s = κL²/8: an arc is longer than
 * its chord by L³κ²/24 to third order, and moving a curve inwards by d shortens it by κdL, which for d = κL²/24 undoes it.
 * So edges keep the length of their chords, partners stay equal whatever their curvature, and ends stay where they are.
 * Marks, and lines that end on a vertex, move with it. Straight edges come back as they are. O(n).
 */
export function smoothPiece(input: PieceInput): PieceInput {
  const moved = new Map<string, readonly [number, number]>();
  const edges = input.edges.map((edge) => smoothEdge(edge, moved));
  const levelLines = input.levelLines.map((line) => {
    const points = line.points.slice();
    for (const i of [0, points.length - 2]) {
      const place = moved.get(`${points[i]} ${points[i + 1]}`);
      if (place) points.set(place, i);
    }
    return { ...line, points };
  });
  return { ...input, edges, levelLines };
}

/** `moved` takes the new place of every vertex by its old one. */
function smoothEdge(edge: PieceEdge, moved: Map<string, readonly [number, number]>): PieceEdge {
  const { points } = edge;
  const count = points.length / 2;
  const corners = cornersWithin(points);
  const refined: number[] = [];
  const newIndex = new Array<number>(count).fill(0);
  for (let k = 0; k + 1 < corners.length; k++) {
    const [from, to] = [corners[k], corners[k + 1]];
    const nodes = moveToKeepLength(points.subarray(2 * from, 2 * to + 2));
    const stretch = refine(nodes);
    for (let i = from; i <= to; i++) {
      newIndex[i] = refined.length / 2 + stretch.nodeIndex[i - from];
      moved.set(`${points[2 * i]} ${points[2 * i + 1]}`, [nodes[2 * (i - from)], nodes[2 * (i - from) + 1]]);
    }
    // The corner itself begins the next stretch.
    const isLast = k + 2 === corners.length;
    refined.push(...(isLast ? stretch.points : stretch.points.slice(0, -2)));
  }
  return {
    ...edge,
    points: Float64Array.from(refined),
    marks: edge.marks.map((mark) => ({ ...mark, index: newIndex[mark.index] })),
  };
}

/** Both ends and every vertex between them that is a corner. */
function cornersWithin(points: Float64Array): number[] {
  const last = points.length / 2 - 1;
  const corners = [0];
  for (let i = 1; i < last; i++) {
    const [ax, ay] = [points[2 * i] - points[2 * i - 2], points[2 * i + 1] - points[2 * i - 1]];
    const [bx, by] = [points[2 * i + 2] - points[2 * i], points[2 * i + 3] - points[2 * i + 1]];
    if (Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by)) > CORNER) corners.push(i);
  }
  return [...corners, last];
}

/** The vertices moved so that the curve through them is as long as their chords. */
function moveToKeepLength(points: Float64Array): Float64Array {
  let nodes: Float64Array = points.slice();
  const chords = new Float64Array(points.length / 2);
  for (let i = 1; i < chords.length; i++) chords[i] = distanceInPlane(points, i - 1, i);
  // 1. By a third of the sagitta: κ ≈ 2 · turn / (a + b), L² ≈ ab.
  for (let i = 1; i + 1 < chords.length; i++) {
    const [a, b] = [chords[i], chords[i + 1]];
    const { turnX, turnY } = turnAt(points, i);
    nodes[2 * i] += ((a * b) / (12 * (a + b))) * turnX;
    nodes[2 * i + 1] += ((a * b) / (12 * (a + b))) * turnY;
  }
  // 2. What is left over, where the curvature changes from one chord to the next.
  for (let round = 0; round < CORRECTIONS; round++) nodes = correctLength(nodes, chords);
  return nodes;
}

/** The cubic spline by chord length through the nodes; without moments it is the chords. */
interface Curve {
  readonly nodes: Float64Array;
  readonly along: Float64Array;
  readonly axes: readonly Float64Array[];
  readonly moments: readonly Float64Array[] | null;
}

function curveThrough(nodes: Float64Array): Curve {
  const along = measureAlong(nodes);
  const axes = [0, 1].map((axis) => nodes.filter((_, i) => i % 2 === axis));
  const isRising = along.every((s, i) => i === 0 || s > along[i - 1]);
  const moments =
    isRising && along.length > 2 ? axes.map((values) => cubicSplineMoments(along, values)) : null;
  return { nodes, along, axes, moments };
}

/** Points on the curve between node i − 1 and node i, as many as the sagitta asks for, ending with node i. */
function pointsBetween({ nodes, along, axes, moments }: Curve, i: number): number[] {
  const points: number[] = [];
  if (moments) {
    const length = along[i] - along[i - 1];
    // s = κL²/8 with κ from the larger of the second derivatives at both nodes.
    const [mx, my] = moments;
    const bend = Math.max(Math.hypot(mx[i - 1], my[i - 1]), Math.hypot(mx[i], my[i]));
    const parts = Math.max(1, Math.ceil(length * Math.sqrt(bend / (8 * SAGITTA))));
    for (let k = 1; k < parts; k++) {
      const s = along[i - 1] + (length * k) / parts;
      points.push(...axes.map((values, axis) => evaluateCubicSpline(along, values, moments[axis], s)));
    }
  }
  points.push(nodes[2 * i], nodes[2 * i + 1]);
  return points;
}

/** Points on the curve through the nodes, the nodes among them. */
function refine(nodes: Float64Array): { points: number[]; nodeIndex: number[] } {
  const curve = curveThrough(nodes);
  const points = [nodes[0], nodes[1]];
  const nodeIndex = [0];
  for (let i = 1; i < nodes.length / 2; i++) {
    points.push(...pointsBetween(curve, i));
    nodeIndex.push(points.length / 2 - 1);
  }
  return { points, nodeIndex };
}

/** The nodes moved once more, so that the curve through them comes nearer to the lengths of the chords. */
function correctLength(nodes: Float64Array, chords: Float64Array): Float64Array {
  const curve = curveThrough(nodes);
  const count = nodes.length / 2;
  const excess = new Float64Array(count);
  for (let i = 1; i < count; i++) {
    let [x, y] = [nodes[2 * i - 2], nodes[2 * i - 1]];
    const points = pointsBetween(curve, i);
    for (let k = 0; k < points.length; k += 2) {
      excess[i] += Math.hypot(points[k] - x, points[k + 1] - y);
      [x, y] = [points[k], points[k + 1]];
    }
    excess[i] -= chords[i];
  }
  const moved = nodes.slice();
  for (let i = 1; i + 1 < count; i++) {
    const { turnX, turnY } = turnAt(nodes, i);
    // A move by d into a turn θ shortens by dθ; where it hardly turns, a move would not help.
    const squared = turnX * turnX + turnY * turnY;
    const factor = (0.5 * (excess[i] + excess[i + 1])) / (squared + LEAST_TURN * LEAST_TURN);
    moved[2 * i] += factor * turnX;
    moved[2 * i + 1] += factor * turnY;
  }
  return moved;
}

/** Change of the unit direction at a node: it points into the curve and is as long as the turn, in radians. */
function turnAt(points: Float64Array, i: number): { turnX: number; turnY: number } {
  const [ax, ay] = [points[2 * i] - points[2 * i - 2], points[2 * i + 1] - points[2 * i - 1]];
  const [bx, by] = [points[2 * i + 2] - points[2 * i], points[2 * i + 3] - points[2 * i + 1]];
  const [a, b] = [Math.hypot(ax, ay), Math.hypot(bx, by)];
  return a === 0 || b === 0 ? { turnX: 0, turnY: 0 } : { turnX: bx / b - ax / a, turnY: by / b - ay / a };
}
