import { surfaceOfBody } from '../../core/body/index.ts';
import type { Form } from '../../core/form/index.ts';
import { distance } from '../../core/math/index.ts';
import { locateOnMesh, positionOnMesh, traceShortestPath } from '../../core/mesh/index.ts';
import type { BodyPlace, PlaceId } from './types.ts';

/** A thread between two places: over the surface, and straight through. mm. */
export interface LaidThread {
  /** n × 3. */
  readonly points: Float64Array;
  readonly over: number;
  readonly straight: number;
}

const laid = new WeakMap<Form, Map<string, LaidThread | null>>();

/** The shortest way over the shown form; the same answer for the same form and places, worked out once. */
export function layThread(form: Form, from: BodyPlace, to: BodyPlace): LaidThread | null {
  const known = laid.get(form) ?? new Map<string, LaidThread | null>();
  laid.set(form, known);
  const key = `${from.at} ${to.at}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const [a, b] = [from, to].map(({ at }) => locateOnMesh(form.closedMesh, at));
  const path = a && b ? traceShortestPath(form.closedMesh, a, b) : null;
  const thread =
    a && b && path
      ? {
          points: path.points,
          over: path.length,
          straight: distance(positionOnMesh(form.closedMesh, a), positionOnMesh(form.closedMesh, b)),
        }
      : null;
  known.set(key, thread);
  return thread;
}

const NAMED_PLACES: readonly PlaceId[] = [
  'neckFront',
  'neckBack',
  'neckSideRight',
  'neckSideLeft',
  'shoulderPointRight',
  'shoulderPointLeft',
  'armpitRight',
  'armpitLeft',
  'bustPointRight',
  'bustPointLeft',
  'waistCentreFront',
  'waistCentreBack',
  'baseCentreFront',
  'baseCentreBack',
];

/** Places with a name, so that a thread can be laid without pointing. */
export function namedPlaces(form: Form): readonly BodyPlace[] {
  const surface = surfaceOfBody(form.body);
  return namedChartPlaces(form).map(({ id, u, v }) => {
    const [x, y, z] = surface.evaluate(Float64Array.of(u, v));
    return { id, at: [x, y, z] as const };
  });
}

/** The same in the body's chart. */
export function namedChartPlaces(form: Form): readonly { id: PlaceId; u: number; v: number }[] {
  const landmarks = form.body.landmarks as Readonly<Record<string, { u: number; v: number } | undefined>>;
  const waist = form.body.levels.find(({ id }) => id === 'waist');
  return NAMED_PLACES.flatMap((id) => {
    const chart =
      landmarks[id] ??
      (waist && id.startsWith('waist')
        ? { u: id.endsWith('Front') ? Math.PI / 2 : -Math.PI / 2, v: waist.v }
        : undefined);
    return chart ? [{ id, u: chart.u, v: chart.v }] : [];
  });
}
