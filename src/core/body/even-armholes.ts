import {
  add,
  cross,
  cubicSplineMoments,
  dot,
  evaluateCubicSpline,
  isInsidePolygon,
  normalise,
  scale,
  subtract,
  type Vector,
} from '../math/index.ts';
import { makeArmholes } from './armhole.ts';
import { fromOval, LEAST_RADIUS, MOST_RADIUS } from './armhole-oval.ts';
import type { FittedShape } from './fit-problem.ts';
import { ARMHOLE_MIDDLE, ARMHOLE_REACH, ShapeEvaluator } from './rails.ts';

/** Directions in which the outline is looked for; a multiple of four, so that armpit, shoulder and breaks are among them. */
const DIRECTIONS = 16;
/** Radii that are kept. */
const SAMPLES = 64;
/** Corners of the oval in space. */
const CORNERS = 128;
const HALVINGS = 20;

/**
 * The shape with armholes that are even ovals in space. A breast carries the chart forward beside the armhole's lower half
 * and not beside its upper one, so that an oval in the chart is a pear in space: here the outline in the chart is chosen
 * so that it comes out as an oval. Armpit, shoulder point and both breaks stay where they are.
 */
export function evenArmholes(rough: FittedShape): FittedShape {
  const right = findRadii(rough, 'right');
  const left = rough.shape.isMirrorSymmetric ? right : findRadii(rough, 'left');
  const radii = spreadRound(right.map((radius, i) => 0.5 * (radius + left[i])));
  const shape = { ...rough.shape, armhole: { ...rough.shape.armhole, radii } };
  const evaluator = new ShapeEvaluator(shape);
  const armholes = makeArmholes(shape.armhole);
  return { shape, context: { ...rough.context, evaluator, armholes, rows: new Map() } };
}

/** Radii of the outline in the chart, in each direction from the front, with which it is the even oval. */
function findRadii({ shape, context }: FittedShape, side: 'right' | 'left'): Float64Array {
  const p = new Float64Array(3);
  const pointAt = (across: number, up: number): Vector => {
    const u = fromOval(shape.armhole, across, up);
    context.evaluator.point(side === 'right' ? u : Math.PI - u, ARMHOLE_MIDDLE + ARMHOLE_REACH * up, p);
    return [p[0], p[1], p[2]];
  };
  const { lay, ring } = evenOval([pointAt(1, 0), pointAt(0, 1), pointAt(-1, 0), pointAt(0, -1)]);
  return Float64Array.from({ length: DIRECTIONS }, (_, i) => {
    if (i % (DIRECTIONS / 4) === 0) return 1;
    const angle = (2 * Math.PI * i) / DIRECTIONS;
    const [across, up] = [Math.cos(angle), Math.sin(angle)];
    let [low, high] = [LEAST_RADIUS, MOST_RADIUS];
    for (let k = 0; k < HALVINGS; k++) {
      const middle = 0.5 * (low + high);
      if (isInsidePolygon(ring, ...lay(pointAt(middle * across, middle * up)))) low = middle;
      else high = middle;
    }
    return 0.5 * (low + high);
  });
}

/**
 * The smoothest closed curve through the front break, shoulder point, back break and armpit: trigonometric interpolation,
 * c₀ + c₁ cos θ + s₁ sin θ + c₂ cos 2θ. Laid into the plane of its axes.
 */
function evenOval([front, shoulder, back, armpit]: readonly [Vector, Vector, Vector, Vector]): {
  readonly lay: (point: Vector) => [number, number];
  readonly ring: Float64Array;
} {
  const [ahead, upwards] = [scale(subtract(front, back), 0.5), scale(subtract(shoulder, armpit), 0.5)];
  const middle = scale(add(add(front, back), add(shoulder, armpit)), 0.25);
  const twice = scale(subtract(add(front, back), add(shoulder, armpit)), 0.25);
  const x = normalise(ahead);
  const y = normalise(cross(cross(ahead, upwards), ahead));
  const lay = (point: Vector): [number, number] => {
    const away = subtract(point, middle);
    return [dot(away, x), dot(away, y)];
  };
  const ring: number[] = [];
  for (let i = 0; i < CORNERS; i++) {
    const angle = (2 * Math.PI * i) / CORNERS;
    const oval = add(scale(ahead, Math.cos(angle)), scale(upwards, Math.sin(angle)));
    ring.push(...lay(add(middle, add(oval, scale(twice, Math.cos(2 * angle))))));
  }
  return { lay, ring: Float64Array.from(ring) };
}

/** Smoothly between the directions: a natural spline over three turns has forgotten its ends in the middle one. */
function spreadRound(values: Float64Array): Float64Array {
  const n = values.length;
  const x = Float64Array.from({ length: 3 * n + 1 }, (_, i) => i);
  const y = x.map((i) => values[i % n]);
  const moments = cubicSplineMoments(x, y);
  return Float64Array.from({ length: SAMPLES }, (_, i) =>
    evaluateCubicSpline(x, y, moments, n + (n * i) / SAMPLES),
  );
}
