import { doSegmentsTouch } from '../math/index.ts';
import type { Layout, Snapshot } from './layout.ts';

/**
 * True when no two outlines as given touch, in double precision and apart from all that the search computes with. Outlines inside
 * each other are not looked for. About the product of the edges in the meeting of two boxes, pair by pair.
 */
export function areApart(layout: Layout, { isLaid, stance, x, y }: Snapshot): boolean {
  const edges = Array.from({ length: layout.count }, (_, k) =>
    isLaid[k] ? edgesAt(layout.shapes[layout.bodies[k].stances[stance[k]].shape].outline, x[k], y[k]) : [],
  );
  const boxes = edges.map(boxOfEdges);
  for (let a = 0; a < edges.length; a++)
    for (let b = 0; b < a; b++) {
      if (!layout.bodies[a].moves && !layout.bodies[b].moves) continue;
      if (doMeet(boxes[a], boxes[b]) && doTouch(within(edges[a], boxes[b]), within(edges[b], boxes[a])))
        return false;
    }
  return true;
}

/** ax, ay, bx, by. */
type Edge = readonly [number, number, number, number];
type Box = readonly [left: number, bottom: number, right: number, top: number];

function edgesAt(outline: Float64Array, x: number, y: number): Edge[] {
  const n = outline.length;
  return Array.from({ length: n / 2 }, (_, i): Edge => {
    const [a, b] = [2 * i, (2 * i + 2) % n];
    return [outline[a] + x, outline[a + 1] + y, outline[b] + x, outline[b + 1] + y];
  });
}

const boxOfEdge = ([ax, ay, bx, by]: Edge): Box => [
  Math.min(ax, bx),
  Math.min(ay, by),
  Math.max(ax, bx),
  Math.max(ay, by),
];

function boxOfEdges(edges: readonly Edge[]): Box {
  return edges
    .map(boxOfEdge)
    .reduce(
      (a, b) => [Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[2], b[2]), Math.max(a[3], b[3])],
      [Infinity, Infinity, -Infinity, -Infinity] as Box,
    );
}

function doMeet(a: Box, b: Box): boolean {
  return a[0] <= b[2] && b[0] <= a[2] && a[1] <= b[3] && b[1] <= a[3];
}

function within(edges: readonly Edge[], box: Box): { edge: Edge; box: Box }[] {
  return edges.map((edge) => ({ edge, box: boxOfEdge(edge) })).filter((one) => doMeet(one.box, box));
}

function doTouch(some: ReturnType<typeof within>, others: ReturnType<typeof within>): boolean {
  return some.some((a) => others.some((b) => doMeet(a.box, b.box) && doSegmentsTouch(...a.edge, ...b.edge)));
}
