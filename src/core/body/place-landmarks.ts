import { nameOfLevel } from './name-places.ts';
import { LEVEL_IDS } from './place-ids.ts';
import { ARMPIT_V, KNOT } from './rails.ts';
import type { TapeContext } from './tape-rule.ts';
import type { BodyLevel, ChartPoint, Figure, LandmarkId } from './types.ts';

/** The level rows, from the hip up. */
export function placeLevels(context: TapeContext, figure: Figure): BodyLevel[] {
  const p = new Float64Array(6);
  return LEVEL_IDS.map((id) => {
    context.evaluator.point(0, KNOT[id], p, 0);
    context.evaluator.point(Math.PI, KNOT[id], p, 3);
    return { id, name: nameOfLevel(id, figure), v: KNOT[id], z: 0.5 * (p[2] + p[5]) };
  });
}

/** Landmarks of a fitted body; left ones mirror right ones in the chart. */
export function placeLandmarks(context: TapeContext): Record<LandmarkId, ChartPoint> {
  const marks: Record<string, ChartPoint> = {};
  const addPair = (name: string, u: number, v: number): void => {
    marks[`${name}Right`] = { u, v };
    marks[`${name}Left`] = { u: Math.PI - u, v };
  };
  const front = Math.PI / 2;
  const back = -Math.PI / 2;
  for (const [name, v] of [
    ['base', KNOT.base],
    ['neckTop', KNOT.neckTop],
  ] as const) {
    const centre = name === 'base' ? 'Centre' : '';
    marks[`${name}${centre}Front`] = { u: front, v };
    marks[`${name}${centre}Back`] = { u: back, v };
    addPair(`${name}Side`, 0, v);
  }
  marks.neckFront = { u: front, v: KNOT.neckBase };
  marks.neckBack = { u: back, v: KNOT.neckBase };
  addPair('neckSide', 0, KNOT.neckBase);
  addPair('shoulderPoint', 0, KNOT.shoulderPoint);
  addPair('armpit', 0, ARMPIT_V);
  const { right, left } = context.bust;
  // The chart's landmark lies between both sides' bust points when they differ.
  addPair('bustPoint', 0.5 * (right.u + Math.PI - left.u), KNOT.bust);
  addPair('bladePoint', -0.92, 190);
  const loop = context.armholes.right;
  const quarter = loop.length / 4;
  addPair('armBreakFront', loop[quarter], loop[quarter + 1]);
  addPair('armBreakBack', loop[3 * quarter], loop[3 * quarter + 1]);
  return marks as Record<LandmarkId, ChartPoint>;
}
