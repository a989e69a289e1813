import { type DesignedBrace, depthOfShell } from '../inside/index.ts';
import { measurePolygonArea, measurePolyline, nearestAlong, reversePolyline } from '../math/index.ts';
import type { NamedSection } from '../simulate/index.ts';
import type { Form } from './types.ts';

/** Held places nearer than this are one, mm. */
const SAME_PLACE = 1;

/**
 * The row of a level as it is held inside the finished form: the level's loop cut at the places where braces are sewn on,
 * and every brace as a tie. Ties that pull at the sleeve share a change by halves, webs take the whole of it, side straps
 * none. Null for levels without braces, and for drafts. O(loop × braces).
 */
export function sectionOfLevel(form: Form, levelId: string): NamedSection | null {
  const level = form.shell.levels.find(({ id }) => id === levelId);
  const braces = form.inside?.shape.braces ?? [];
  const rungs = braces.flatMap((brace) =>
    brace.rungs.filter((rung) => rung.levelId === levelId).map((rung) => ({ brace, rung })),
  );
  if (!level || rungs.length === 0) return null;
  const loop = readLoop(form, level.vertices);
  const held: { at: number; x: number; y: number }[] = [];
  const place = ([x, y]: readonly [number, number, number]): { x: number; y: number } => {
    const known = held.find((h) => Math.hypot(h.x - x, h.y - y) < SAME_PLACE);
    if (known) return known;
    const made = { at: nearestAlong(loop, true, x, y), x, y };
    held.push(made);
    return made;
  };
  const ends = rungs.map(({ brace, rung }) => ({
    from: place(rung.from),
    to: brace.to === 'sleeve' ? ([rung.to[0], rung.to[1]] as const) : place(rung.to),
  }));
  const order = held.toSorted((a, b) => a.at - b.at);
  if (order.length < 2) return null;
  const spans = Float64Array.from(order, ({ at }, k) => {
    const next = order[k + 1]?.at ?? order[0].at + measurePolyline(loop, true);
    return next - at;
  });
  const indexOf = (point: { x: number; y: number }): number =>
    order.findIndex(({ x, y }) => x === point.x && y === point.y);
  return {
    problem: {
      spans,
      start: Float64Array.from(order.flatMap(({ x, y }) => [x, y])),
      ties: ends.map(({ from, to }, k) => ({
        from: indexOf(from),
        to: 'x' in to ? indexOf(to) : to,
        // The loop is the body's, so the ties are told as long as the body's own.
        length:
          rungs[k].rung.length + (rungs[k].brace.to === 'sleeve' ? 1 : 2) * depthOfShell(form.project.inside),
      })),
    },
    shares: rungs.map(({ brace }) => shareOf(brace)),
    names: rungs.map(({ brace }) => brace.name),
  };
}

function shareOf({ kind }: DesignedBrace): number {
  return kind === 'web' ? 1 : kind === 'tie' ? 0.5 : 0;
}

/** The level line seen from above, n × 2, counter-clockwise. */
function readLoop(form: Form, vertices: Uint32Array): Float64Array {
  const { positions } = form.shell.mesh;
  const raw = Float64Array.from({ length: 2 * vertices.length }, (_, i) => {
    return positions[3 * vertices[i >> 1] + (i % 2)];
  });
  return measurePolygonArea(raw) < 0 ? reversePolyline(raw) : raw;
}
