import type { NamedSection } from '../simulate/index.ts';
import { type DesignedBrace, depthOfShell } from '../supports/index.ts';
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
    const made = { at: nearestAlong(loop, x, y), x, y };
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
    const next = order[k + 1]?.at ?? order[0].at + loop.length;
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

interface Loop {
  /** n × 2, counter-clockwise. */
  readonly points: Float64Array;
  /** Running length at every point, mm. */
  readonly along: Float64Array;
  readonly length: number;
}

function readLoop(form: Form, vertices: Uint32Array): Loop {
  const { positions } = form.shell.mesh;
  const raw = Float64Array.from({ length: 2 * vertices.length }, (_, i) => {
    return positions[3 * vertices[i >> 1] + (i % 2)];
  });
  const points = signedArea(raw) < 0 ? reversed(raw) : raw;
  const along = new Float64Array(vertices.length);
  const step = (k: number): number => {
    const m = (k + 1) % vertices.length;
    return Math.hypot(points[2 * m] - points[2 * k], points[2 * m + 1] - points[2 * k + 1]);
  };
  for (let k = 1; k < along.length; k++) along[k] = along[k - 1] + step(k - 1);
  return { points, along, length: along[along.length - 1] + step(along.length - 1) };
}

function reversed(points: Float64Array): Float64Array {
  const n = points.length / 2;
  return points.map((_, i) => points[2 * (n - 1 - (i >> 1)) + (i % 2)]);
}

function signedArea(points: Float64Array): number {
  let twice = 0;
  for (let a = 0; a < points.length; a += 2) {
    const b = (a + 2) % points.length;
    twice += points[a] * points[b + 1] - points[b] * points[a + 1];
  }
  return twice / 2;
}

/** Running length at the loop's place nearest to a point. */
function nearestAlong({ points, along }: Loop, x: number, y: number): number {
  let best = Number.POSITIVE_INFINITY;
  let found = 0;
  const n = along.length;
  for (let k = 0; k < n; k++) {
    const m = (k + 1) % n;
    const [dx, dy] = [points[2 * m] - points[2 * k], points[2 * m + 1] - points[2 * k + 1]];
    const squared = dx * dx + dy * dy;
    const t = Math.min(1, Math.max(0, ((x - points[2 * k]) * dx + (y - points[2 * k + 1]) * dy) / squared));
    const away = Math.hypot(points[2 * k] + t * dx - x, points[2 * k + 1] + t * dy - y);
    if (away < best) {
      best = away;
      found = along[k] + t * Math.sqrt(squared);
    }
  }
  return found;
}
