import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Body, fitBody, surfaceOfBody } from '../../src/core/body/index.ts';

/**
 * Mean tapes and mean places of landmarks of 100 scanned women who were never tuned on (shared/survey/SOURCE.md, "Landmarks").
 * The fit is nearly linear over them, so the body of the mean tapes is nearly the mean of their bodies.
 */
const women: {
  readonly measures: Readonly<Record<string, number>>;
  readonly places: Readonly<Record<string, number>>;
} = JSON.parse(readFileSync(path.join(import.meta.dirname, '../../shared/survey/landmarks.json'), 'utf8'));

/** No landmark may be further off than this on average, mm. */
const WORST = 8;
/** And all together no more than this. */
const ALL = 3.5;

describe('the body of mean tapes of scanned women', () => {
  const result = fitBody({ figure: 'bust', measures: women.measures }, undefined, { fair: true });
  if (!result.ok) throw new Error('the mean tapes of scanned women are refused');
  const body = result.value;
  const waist = rowAt(body, 'waist');
  const [middleY, middleZ] = [0.5 * (extreme(waist, 1, 1) + extreme(waist, 1, -1)), waist[2]];
  const mark = (id: keyof Body['landmarks']): Float64Array => {
    const { u, v } = body.landmarks[id];
    return surfaceOfBody(body).evaluate(Float64Array.of(u, v));
  };
  const [nape, neckSide, neckFront, bust] = (
    ['neckBack', 'neckSideRight', 'neckFront', 'bustPointRight'] as const
  ).map(mark);
  const spine = lineAt(body, -Math.PI / 2, 'waist', 'neckBack');
  const places: Readonly<Record<string, number>> = {
    waistSideX: extreme(waist, 0, 1),
    waistSideY: waist[3 * sideOf(waist) + 1] - middleY,
    waistHalfDepth: 0.5 * (extreme(waist, 1, 1) - extreme(waist, 1, -1)),
    bustX: bust[0],
    bustY: bust[1] - middleY,
    bustZ: bust[2] - middleZ,
    napeY: nape[1] - middleY,
    napeZ: nape[2] - middleZ,
    neckSideX: neckSide[0],
    neckSideY: neckSide[1] - middleY,
    neckSideZ: neckSide[2] - middleZ,
    neckFrontY: neckFront[1] - middleY,
    neckFrontZ: neckFront[2] - middleZ,
    bladesY: extreme(spine, 1, -1) - middleY,
  };

  it.each(Object.keys(places))('has its %s where they have it', (id) => {
    expect(Math.abs(places[id] - women.places[id])).toBeLessThan(WORST);
  });

  it('is near them all together', () => {
    const gaps = Object.keys(places).map((id) => Math.abs(places[id] - women.places[id]));
    expect(gaps.reduce((a, b) => a + b, 0) / gaps.length).toBeLessThan(ALL);
  });
});

function rowAt(body: Body, id: string): Float64Array {
  const { v } = body.levels.find((level) => level.id === id)!;
  const chart = Float64Array.from({ length: 720 }, (_, i) => (i % 2 === 0 ? (Math.PI * i) / 360 : v));
  return surfaceOfBody(body).evaluate(chart);
}

function lineAt(body: Body, u: number, from: string, to: keyof Body['landmarks']): Float64Array {
  const low = body.levels.find((level) => level.id === from)!.v;
  const high = body.landmarks[to].v;
  const chart = Float64Array.from({ length: 400 }, (_, i) =>
    i % 2 === 0 ? u : low + ((high - low) * (i - 1)) / 398,
  );
  return surfaceOfBody(body).evaluate(chart);
}

/** The largest (sign 1) or smallest coordinate of n × 3 points. */
function extreme(points: Float64Array, axis: 0 | 1, sign: 1 | -1): number {
  let best = points[axis];
  for (let i = axis; i < points.length; i += 3) if (sign * points[i] > sign * best) best = points[i];
  return best;
}

/** Which point lies furthest to the right. */
function sideOf(points: Float64Array): number {
  let best = 0;
  for (let i = 0; i < points.length / 3; i++) if (points[3 * i] > points[3 * best]) best = i;
  return best;
}
