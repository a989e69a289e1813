import type { Form } from '../../core/form/index.ts';
import { type Highlight, markId } from '../store/index.ts';

/** How near a line must be to be meant, mm; a mark must be nearer. */
const REACH = 7;
const MARK_REACH = 5;

/** What of the body is pointed at, besides panels. */
export interface Pointable {
  readonly seams: boolean;
  readonly tapes: boolean;
  readonly levels: boolean;
}

/** The mark, seam, level or tape that runs past a point of a panel; else the panel itself, when seams are shown. */
export function nearestThing(
  form: Form,
  panelId: string,
  point: readonly [number, number, number],
  shown: Pointable,
): Highlight | null {
  const { seams, levels, mesh } = form.shell;
  let best: Highlight | null = null;
  let least = REACH;
  const offer = (distance: number, highlight: Highlight) => {
    if (distance >= least) return;
    least = distance;
    best = highlight;
  };
  if (shown.levels) {
    for (const { id, vertices } of levels) {
      offer(nearestOf(mesh.positions, point, vertices).distance, { kind: 'level', id, isFromBody: true });
    }
  }
  if (shown.tapes) {
    for (const [id, points] of Object.entries(form.body.tapePaths)) {
      offer(nearestOf(points, point).distance, { kind: 'tape', id, isFromBody: true });
    }
  }
  if (!shown.seams) return best;
  for (const seam of seams) {
    if (!seam.panels.includes(panelId)) continue;
    const { distance } = nearestOf(mesh.positions, point, seam.points);
    if (distance >= least) continue;
    offer(distance, { kind: 'seam', id: seam.id, isFromBody: true });
    const marks = innerMarks(seam);
    const found = nearestOf(mesh.positions, point, marks);
    if (found.distance < MARK_REACH)
      best = { kind: 'mark', id: markId(seam.id, found.index + 1), isFromBody: true };
  }
  return best ?? { kind: 'panel', id: panelId, isFromBody: true };
}

/** Shell vertices of the numbered marks of a seam, in order. */
export function innerMarks(seam: Form['shell']['seams'][number]): Uint32Array {
  const last = seam.points.length - 1;
  const inner = seam.marks
    .filter(({ kind, index }) => kind !== 'end' && index > 0 && index < last)
    .sort((a, b) => a.index - b.index);
  return Uint32Array.from(inner, ({ index }) => seam.points[index]!);
}

/** Nearest stretch of a polyline (`vertices` into `positions`, or all of them in order): its distance and number. */
function nearestOf(
  positions: Float64Array,
  point: readonly [number, number, number],
  vertices?: Uint32Array,
): { distance: number; index: number } {
  const count = vertices ? vertices.length : positions.length / 3;
  let least = Number.POSITIVE_INFINITY;
  let index = -1;
  for (let i = 0; i < count; i++) {
    const v = 3 * (vertices ? vertices[i]! : i);
    const dx = positions[v]! - point[0];
    const dy = positions[v + 1]! - point[1];
    const dz = positions[v + 2]! - point[2];
    const square = dx * dx + dy * dy + dz * dz;
    if (square >= least) continue;
    least = square;
    index = i;
  }
  return { distance: Math.sqrt(least), index };
}
