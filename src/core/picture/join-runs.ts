import type { SeenRun } from './split-visible.ts';

/** Ends nearer than this are one, mm of paper. */
const NEAR = 1;

/** A run under way: its line and whether it closed on itself. */
interface Joined {
  points: Float64Array;
  closed: boolean;
}

/**
 * Outlines whose ends nearly meet made one line, nearest ends first: a contour that passes into a border leaves no gap. Of
 * each line only its own order matters, so the same runs give the same lines. O(n³) in the open runs, of which there are few.
 */
export function joinRuns(runs: readonly SeenRun[]): SeenRun[] {
  const done = runs.filter(({ closed }) => closed);
  const open: Joined[] = runs
    .filter(({ closed }) => !closed)
    .map(({ points }) => ({ points, closed: false }));
  for (;;) {
    const pair = nearestEnds(open);
    if (!pair) return [...done, ...open];
    const { a, b, atStartOfA, atStartOfB } = pair;
    if (a === b) {
      open[a].closed = true;
      done.push(...open.splice(a, 1));
      continue;
    }
    const head = atStartOfA ? turned(open[a].points) : open[a].points;
    const tail = atStartOfB ? open[b].points : turned(open[b].points);
    open[a] = { points: Float64Array.of(...head, ...tail), closed: false };
    open.splice(b, 1);
  }
}

interface EndPair {
  readonly a: number;
  readonly b: number;
  readonly atStartOfA: boolean;
  readonly atStartOfB: boolean;
}

function nearestEnds(open: readonly Joined[]): EndPair | null {
  let best: EndPair | null = null;
  let least = NEAR;
  const offer = (pair: EndPair): void => {
    const [ax, ay] = endOf(open[pair.a].points, pair.atStartOfA);
    const [bx, by] = endOf(open[pair.b].points, pair.atStartOfB);
    const far = Math.hypot(ax - bx, ay - by);
    if (far < least) [least, best] = [far, pair];
  };
  for (let a = 0; a < open.length; a++) {
    // A line as short as this would close on itself at once.
    if (open[a].points.length > 8) offer({ a, b: a, atStartOfA: true, atStartOfB: false });
    for (let b = a + 1; b < open.length; b++)
      for (const atStartOfA of [true, false])
        for (const atStartOfB of [true, false]) offer({ a, b, atStartOfA, atStartOfB });
  }
  return best;
}

function endOf(points: Float64Array, atStart: boolean): [number, number] {
  const i = atStart ? 0 : points.length - 2;
  return [points[i], points[i + 1]];
}

function turned(points: Float64Array): Float64Array {
  const back = new Float64Array(points.length);
  for (let i = 0; i < points.length; i += 2) {
    back[i] = points[points.length - 2 - i];
    back[i + 1] = points[points.length - 1 - i];
  }
  return back;
}
