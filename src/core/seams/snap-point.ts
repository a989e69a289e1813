import type { ChartSurface } from '../mesh/index.ts';
import { nearestOnArmhole } from './nearest-on-armhole.ts';
import { CENTRE_BACK, CENTRE_FRONT } from './resolve-lines.ts';
import type { ChartPlace, SeamAnchor, SeamedShell, SeamForm } from './types.ts';

export type SnapKind = 'landmark' | 'armhole' | 'line' | 'centre' | 'level' | 'none';

/** Where a dragged point came to lie, always on the right half, and how to say so in a layout. */
export interface SnappedPlace extends ChartPlace {
  readonly kind: SnapKind;
  /** Landmark, level or line id, `front` or `back` of a centre; empty for armhole and none. */
  readonly id: string;
  /** mm the point was moved by snapping. */
  readonly distance: number;
  /** True when the place was picked on the left half: the right one is edited, the left follows. */
  readonly isMirrored: boolean;
  /** The place tied to landmarks and levels, so that it follows another body. */
  readonly anchor: SeamAnchor;
}

export interface SnapOptions {
  /** mm on the body within which a point snaps; 0 = never. Default 8. */
  readonly within?: number;
  /** Kinds to snap to; default all. Points inside a line should not snap to lines or the armhole: only ends may lie there. */
  readonly kinds?: readonly SnapKind[];
  /** The line that is dragged: never snapped to. */
  readonly lineId?: string;
}

const USUAL_REACH = 8;
/** Points before lines: within reach the more exact place wins, even if a line is nearer. */
const ORDER: readonly SnapKind[] = ['landmark', 'armhole', 'line', 'centre', 'level'];

/**
 * Chart place of a point picked on the shell's mesh: triangle index and the weights of its three corners (they sum to 1).
 * Angles of the corners are brought within half a turn of the first, so triangles on the back's seam read right.
 */
export function placeOnShell(
  shell: Pick<SeamedShell, 'mesh' | 'chart'>,
  triangle: number,
  weights: readonly [number, number, number],
): ChartPlace {
  const corners = shell.mesh.triangles.subarray(3 * triangle, 3 * triangle + 3);
  const first = shell.chart[2 * corners[0]];
  let [u, v] = [0, 0];
  corners.forEach((corner, k) => {
    const angle = shell.chart[2 * corner];
    u += weights[k] * (angle - 2 * Math.PI * Math.round((angle - first) / (2 * Math.PI)));
    v += weights[k] * shell.chart[2 * corner + 1];
  });
  return { u, v };
}

/**
 * Snaps a place to landmarks, the armhole, seam lines, centre lines and level lines within some mm on the body. Places of
 * the left half are mirrored to the right first. `shell` gives the other lines; without it none are snapped to.
 * Distances are straight ones in space. Cost: about 100 surface points, and O(points of seams).
 */
export function snapPoint(
  surface: ChartSurface,
  form: SeamForm,
  picked: ChartPlace,
  options: SnapOptions & { readonly shell?: SeamedShell } = {},
): SnappedPlace {
  const { place, isMirrored } = toRight(picked);
  const within = options.within ?? USUAL_REACH;
  const kinds = options.kinds ?? ORDER;
  const from = pointAt(surface, place);
  const away = (other: ChartPlace): number => distance(from, pointAt(surface, other));
  const candidates: (ChartPlace & { kind: SnapKind; id: string; anchor: SeamAnchor; distance: number })[] =
    [];
  const add = (kind: SnapKind, id: string, at: ChartPlace, anchor: SeamAnchor): void => {
    candidates.push({ ...at, kind, id, anchor, distance: away(at) });
  };
  const near = nearestLandmark(form, place);
  if (within > 0) {
    for (const [id, at] of rightLandmarks(form)) add('landmark', id, at, { landmark: id });
    for (const level of form.levels) {
      const at = { u: place.u, v: level.v };
      add('level', level.id, at, { landmark: near.id, level: level.id, u: place.u - near.u });
    }
    for (const [id, landmark, u] of [
      ['front', 'baseCentreFront', CENTRE_FRONT],
      ['back', 'baseCentreBack', CENTRE_BACK],
    ] as const) {
      add('centre', id, { u, v: place.v }, { landmark, v: place.v - (form.landmarks[landmark]?.v ?? 0) });
    }
    if (form.armholes.right.length > 0) {
      const onLoop = nearestOnArmhole(form, (on) => distance(from, pointAt(surface, on)));
      add('armhole', '', onLoop.place, { armhole: onLoop.position });
    }
    for (const line of options.shell ? nearestOnLines(options.shell, from, options.lineId) : []) {
      add('line', line.id, line.place, { ...line.place, onLine: line.id });
    }
  }
  const found = ORDER.filter((kind) => kinds.includes(kind))
    .map((kind) =>
      candidates
        .filter((one) => one.kind === kind && one.distance <= within)
        .sort((a, b) => a.distance - b.distance)
        .at(0),
    )
    .find((one) => one !== undefined);
  if (found) return { ...found, isMirrored };
  const anchor = { landmark: near.id, u: place.u - near.u, v: place.v - near.v };
  return { ...place, kind: 'none', id: '', distance: 0, isMirrored, anchor };
}

/** Angle in [−π/2, 3π/2), then the left half onto the right. */
function toRight({ u, v }: ChartPlace): { place: ChartPlace; isMirrored: boolean } {
  const turn = 2 * Math.PI;
  const angle = u - turn * Math.floor((u + Math.PI / 2) / turn);
  const isMirrored = angle > CENTRE_FRONT;
  return { place: { u: isMirrored ? Math.PI - angle : angle, v }, isMirrored };
}

function pointAt(surface: ChartSurface, { u, v }: ChartPlace): Float64Array {
  const [low, high] = surface.vRange;
  return surface.evaluate(Float64Array.of(u, Math.min(high, Math.max(low, v))));
}

function distance(a: ArrayLike<number>, b: ArrayLike<number>, at = 0): number {
  return Math.hypot(a[0] - b[at], a[1] - b[at + 1], a[2] - b[at + 2]);
}

function rightLandmarks(form: SeamForm): (readonly [string, ChartPlace])[] {
  return Object.entries(form.landmarks)
    .filter(([id]) => !id.endsWith('Left'))
    .map(([id, at]) => [id, toRight(at).place]);
}

/** Any landmark ties a point to the body; the nearest one in the chart does so best. */
function nearestLandmark(form: SeamForm, place: ChartPlace): ChartPlace & { id: string } {
  const radius = 140;
  let best = { id: '', u: 0, v: 0 };
  let least = Number.POSITIVE_INFINITY;
  for (const [id, at] of rightLandmarks(form)) {
    const size = Math.hypot(radius * (at.u - place.u), at.v - place.v);
    if (size < least) [best, least] = [{ id, ...at }, size];
  }
  return best;
}

/** Nearest point of every seam line of the right half but one, on the shell's own edges. */
function nearestOnLines(
  shell: SeamedShell,
  from: Float64Array,
  except: string | undefined,
): { id: string; place: ChartPlace }[] {
  const best = new Map<string, { id: string; place: ChartPlace; size: number }>();
  const { positions } = shell.mesh;
  for (const seam of shell.seams) {
    if (seam.lineId === except) continue;
    for (let k = 0; k + 1 < seam.points.length; k++) {
      const [a, b] = [seam.points[k], seam.points[k + 1]];
      const t = shareAlong(positions, 3 * a, 3 * b, from);
      const point = [0, 1, 2].map(
        (d) => positions[3 * a + d] + t * (positions[3 * b + d] - positions[3 * a + d]),
      );
      const size = distance(from, point);
      if (size >= (best.get(seam.lineId)?.size ?? Number.POSITIVE_INFINITY)) continue;
      const ua = shell.chart[2 * a];
      const du = shell.chart[2 * b] - ua;
      const u = ua + t * (du - 2 * Math.PI * Math.round(du / (2 * Math.PI)));
      const v = shell.chart[2 * a + 1] + t * (shell.chart[2 * b + 1] - shell.chart[2 * a + 1]);
      best.set(seam.lineId, { id: seam.lineId, place: toRight({ u, v }).place, size });
    }
  }
  return [...best.values()].map(({ id, place }) => ({ id, place }));
}

/** 0..1: the foot of the perpendicular on a segment. */
function shareAlong(p: Float64Array, a: number, b: number, from: Float64Array): number {
  let [along, square] = [0, 0];
  for (let d = 0; d < 3; d++) {
    along += (from[d] - p[a + d]) * (p[b + d] - p[a + d]);
    square += (p[b + d] - p[a + d]) ** 2;
  }
  return square > 0 ? Math.min(1, Math.max(0, along / square)) : 0;
}
