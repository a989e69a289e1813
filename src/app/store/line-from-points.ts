import { failure, type Result, success, verbatim } from '../../core/base/index.ts';
import { surfaceOfBody } from '../../core/body/index.ts';
import type { Form } from '../../core/form/index.ts';
import type { ChartSurface } from '../../core/mesh/index.ts';
import {
  findLayout,
  keyOfOwnLine,
  LAYOUTS,
  type SeamAnchor,
  type SeamLine,
  type SnapKind,
  snapPoint,
  traceLine,
} from '../../core/seams/index.ts';
import type { Words } from '../../language/index.ts';
import { surfaceDrawnOn } from './catch-place.ts';
import type { DrawnPoint } from './types.ts';

/** An end this near to an edge, a seam or the armhole is meant to lie on it, mm. */
const END_REACH = 25;
/** Radius of a body for telling upright lines from level ones, mm. */
const RADIUS = 140;
/** A line that climbs less than this share of its way round is a level one. */
const LEVEL_SLOPE = 0.5;

/**
 * A seam line through points drawn on the right half: upright through all of them, or level at the height of the first
 * where they go round rather than up. Both ends must lie on the base, the neck, the armhole or a line. Whether it can be
 * cut is told when it is.
 */
export function lineFromPoints(
  form: Form,
  points: readonly DrawnPoint[],
  known: readonly SeamLine[],
  words: Words['ownLines'],
): Result<SeamLine> {
  if (points.length < 2) return fault(words.fewPoints);
  let number = 1;
  while (known.some(({ id }) => id === `own${number}`)) number++;
  const named = { id: `own${number}`, name: keyOfOwnLine(number), side: 'right' } as const;
  const around = Math.max(...points.map(({ u }) => u)) - Math.min(...points.map(({ u }) => u));
  const rise = Math.max(...points.map(({ v }) => v)) - Math.min(...points.map(({ v }) => v));
  const ends = (ordered: readonly DrawnPoint[], isLevel: boolean) =>
    [ordered[0]!, ordered[ordered.length - 1]!].map((point) => endAt(form, point, isLevel));
  if (rise < LEVEL_SLOPE * RADIUS * around) {
    const [from, to] = ends(points, true);
    if (!from || !to) return fault(words.levelEnds);
    const anchor = anchorAt(form, points[0]!, ['level'], 1);
    return success({
      ...named,
      ...(anchor.level === undefined ? { alongHeight: anchor } : { alongLevel: anchor.level }),
      through: [from, to],
    });
  }
  const rising = points.toSorted((a, b) => a.v - b.v);
  const [low, high] = ends(rising, false);
  if (!low || !high) return fault(words.uprightEnds);
  const inner = rising.slice(1, -1).map((point) => anchorAt(form, point, ['landmark', 'level'], 1));
  return success({ ...named, through: [low, ...inner, high] });
}

/** Chart points n × 2 of the seam that points drawn on the body would become; null while they cannot become one. */
export function traceDrawnLine(
  form: Form,
  points: readonly DrawnPoint[],
  words: Words['ownLines'],
): Float64Array | null {
  const { layout, lines } = form.project.seams;
  const known = lines ?? (findLayout(layout ?? LAYOUTS[0].id) ?? LAYOUTS[0]).lines;
  const line = lineFromPoints(form, points, known, words);
  if (!line.ok) return null;
  return traceLine(surfaceDrawnOn(form), form.body, [...known, line.value], line.value.id);
}

function fault(message: string): Result<never> {
  return failure([
    { code: 'line-not-drawn', path: 'seams.lines', message: verbatim(message), severity: 'error' },
  ]);
}

/** What an end lies on; null when it lies on nothing. */
function endAt(form: Form, point: DrawnPoint, isLevel: boolean): SeamAnchor | null {
  const surface = surfaceOfBody(form.body);
  const edge = isLevel ? null : edgeNear(form, surface, point);
  if (edge) return edge;
  const kinds: readonly SnapKind[] = isLevel ? ['armhole', 'line', 'centre'] : ['armhole', 'line'];
  for (const within of [1, END_REACH]) {
    const found = snapPoint(surface, form.body, point, { within, kinds, shell: form.shell });
    if (found.kind === 'centre')
      return { landmark: found.id === 'front' ? 'baseCentreFront' : 'baseCentreBack' };
    if (found.kind !== 'none') return found.anchor;
  }
  return null;
}

/** On the base or the neck's edge, tied to the landmark there. */
function edgeNear(form: Form, surface: ChartSurface, { u, v }: DrawnPoint): SeamAnchor | null {
  const { landmarks } = form.body;
  const [low, high] = surface.vRange;
  const [landmark, edge] =
    v - low < END_REACH
      ? (['baseSideRight', low] as const)
      : high - v < END_REACH
        ? (['neckTopSideRight', high] as const)
        : [null, 0];
  if (landmark === null) return null;
  const from = landmarks[landmark];
  return { landmark, u: u - from.u, v: edge - from.v };
}

function anchorAt(form: Form, point: DrawnPoint, kinds: readonly SnapKind[], within: number): SeamAnchor {
  return snapPoint(surfaceOfBody(form.body), form.body, point, { within, kinds }).anchor;
}
