import { measurePolyline } from '../math/index.ts';
import { fairRing } from './fair-ring.ts';
import { insetRing, type PlateOutline } from './plate-outline.ts';

/** Less than this no saw and no knife keeps to, mm. */
const LEAST_STEP = 0.3;
/** A wall that leans out by more lies on the plate like a rim: there is no gap to speak of, radians. */
const MOST_LEAN = Math.PI / 4;

/** The two layers of a plate, and how the shell stands to their rims. mm, radians. */
export interface PlateRings {
  /** Flush with the shell's edge. */
  readonly outer: Float64Array;
  /** Behind it; absent where it is the same. */
  readonly inner?: Float64Array;
  /** Where the shell narrows most behind its edge; absent where it hardly does. */
  readonly bevel?: { readonly angle: number; readonly index: number; readonly step: number };
  /** Where it widens most behind its edge. */
  readonly gap?: { readonly angle: number; readonly index: number; readonly wedge: number };
}

/**
 * Outlines of a plate of two layers that lies in the opening with its outer face flush: the shell's edge as a fair curve,
 * moved all round until it is as long as the edge is when sewn (a hair's breadth: no cloth unrolls without strain), drawn in where the shell's wall leans inwards over the depth of each layer (so that no layer presses on the cloth), then
 * by `inset` all round for the cloth in between. Where the wall leans outwards the plate stays as the edge, through which
 * it has to pass. Null where nothing is left. Cost: two insets.
 */
export function plateRings(outline: PlateOutline, boardThickness: number, inset: number): PlateRings | null {
  const { lean, edge, excess } = outline;
  const by = inset + overSewn(edge, excess);
  const ringAt = (depth: number): Float64Array | null => insetRing(fairRing(drawIn(outline, depth)), by);
  const [outer, inner] = [ringAt(boardThickness / 2), ringAt(boardThickness)];
  if (!outer || !inner) return null;
  const least = lean.indexOf(Math.min(...lean));
  const step = -boardThickness * Math.tan(Math.max(lean[least], -MOST_LEAN));
  const open = lean.map((angle) => (angle <= MOST_LEAN ? angle : Number.NEGATIVE_INFINITY));
  const most = open.indexOf(Math.max(...open));
  const wedge = boardThickness * Math.tan(Math.max(0, open[most]));
  return {
    outer,
    ...(step > LEAST_STEP && { inner, bevel: { angle: -lean[least], index: least, step } }),
    ...(wedge > LEAST_STEP && { gap: { angle: lean[most], index: most, wedge } }),
  };
}

/** An opening's edge (n × 2) as a fair curve, `inset` mm inside of where it lies when sewn `excess` mm longer; null: nothing left. */
export function ringInSewnEdge(edge: Float64Array, excess: number, inset: number): Float64Array | null {
  return insetRing(fairRing(edge), inset + overSewn(edge, excess));
}

/** How far inside the fair curve the edge lies once sewn: a curve moved by d is 2πd longer, whatever its shape (Steiner). */
function overSewn(edge: Float64Array, excess: number): number {
  const sewn = measurePolyline(edge, true) + excess;
  return (measurePolyline(fairRing(edge), true) - sewn) / (2 * Math.PI);
}

/** The edge moved inwards, point by point, by what the wall has come in at the depth. */
function drawIn({ edge, lean }: PlateOutline, depth: number): Float64Array {
  const count = edge.length / 2;
  return edge.map((value, i) => {
    const k = i >> 1;
    const [before, after] = [2 * ((k + count - 1) % count), 2 * ((k + 1) % count)];
    const [tx, ty] = [edge[after] - edge[before], edge[after + 1] - edge[before + 1]];
    const inwards = Math.max(0, -depth * Math.tan(Math.max(Math.min(0, lean[k]), -MOST_LEAN)));
    return value + ((i % 2 === 0 ? -ty : tx) / Math.hypot(tx, ty)) * inwards;
  });
}
