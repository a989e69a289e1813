import type { Phrase } from '../../../core/base/index.ts';
import type { Form } from '../../../core/form/index.ts';
import { clamp, measureAlong } from '../../../core/math/index.ts';
import type { Seam } from '../../store/index.ts';

/** One side of a seam on the flat: its line from the seam's beginning to its end, and the cut line of its piece. */
export interface SeamSide {
  readonly name: Phrase;
  /** n × 2 mm, y up. */
  readonly line: Float64Array;
  /** Distance of each point from the beginning along the line, mm. */
  readonly along: Float64Array;
  /** Distances of the numbered marks, mm. */
  readonly marks: readonly number[];
  readonly cutLine: Float64Array;
}

/** Moves a plane: x' = cos·x − sin·y + dx, y' = sin·x + cos·y + dy. */
export interface Placement {
  readonly cos: number;
  readonly sin: number;
  readonly dx: number;
  readonly dy: number;
}

/** Both sides of a seam as they are cut; null when it is not between two pieces (a band closed on itself has both on one). */
export function sidesOfSeam(form: Form, seam: Seam): readonly [SeamSide, SeamSide] | null {
  if (seam.panels[0] === seam.panels[1]) return null;
  const sides = seam.panels.flatMap((panelId) => {
    const index = form.shell.panels.findIndex(({ id }) => id === panelId);
    const panel = form.shell.panels[index];
    const piece = form.pieces[index];
    const edge = panel?.edges.find(({ kind, id }) => kind === 'seam' && id === seam.id);
    if (!panel || !piece || !edge) return [];
    const { positions } = form.flat[index];
    const vertices = edge.reversed ? edge.vertices.toReversed() : edge.vertices;
    const line = new Float64Array(2 * vertices.length);
    vertices.forEach((v, i) => {
      line.set(positions.subarray(2 * v, 2 * v + 2), 2 * i);
    });
    const along = measureAlong(line);
    const last = seam.points.length - 1;
    const marks = seam.marks
      .filter(({ kind, index: at }) => kind !== 'end' && at > 0 && at < last)
      .map(({ index: at }) => along[at]);
    return [{ name: piece.name, line, along, marks, cutLine: piece.cutLine }];
  });
  const [a, b] = sides;
  return a && b ? [a, b] : null;
}

/**
 * Lays the second side against the first so that both touch `fraction` of the way along, running the same way there:
 * a piece rolled along its partner without slipping.
 */
export function rollAgainst(fixed: SeamSide, rolling: SeamSide, fraction: number): Placement {
  const a = stationAt(fixed, fraction);
  const b = stationAt(rolling, fraction);
  const turn = Math.atan2(a.uy, a.ux) - Math.atan2(b.uy, b.ux);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return { cos, sin, dx: a.x - (cos * b.x - sin * b.y), dy: a.y - (sin * b.x + cos * b.y) };
}

/** Where a side is `fraction` of its length along, and its direction there, taken over a short stretch. */
export function stationAt({ line, along }: SeamSide, fraction: number) {
  const length = along[along.length - 1];
  const at = clamp(fraction, 0, 1) * length;
  const point = pointAt(line, along, at);
  const reach = Math.min(4, length / 4);
  const before = pointAt(line, along, Math.max(0, at - reach));
  const after = pointAt(line, along, Math.min(length, at + reach));
  const [ux, uy] = [after[0] - before[0], after[1] - before[1]];
  const size = Math.hypot(ux, uy) || 1;
  return { x: point[0], y: point[1], ux: ux / size, uy: uy / size };
}

function pointAt(line: Float64Array, along: Float64Array, s: number): [number, number] {
  let i = 1;
  while (i < along.length - 1 && along[i] < s) i++;
  const span = along[i] - along[i - 1] || 1;
  const f = (s - along[i - 1]) / span;
  return [
    line[2 * i - 2] + f * (line[2 * i] - line[2 * i - 2]),
    line[2 * i - 1] + f * (line[2 * i + 1] - line[2 * i - 1]),
  ];
}
