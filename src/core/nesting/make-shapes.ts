import { convexHull, isInsidePolygon, measurePolygonArea } from '../math/index.ts';
import { growOutline, withoutRepeats } from './grow-outline.ts';
import { type Circles, inscribedCircles } from './inscribed-circles.ts';
import { turnVector } from './turn-vector.ts';

/** An outline made ready once, however often and in whatever turns it comes. */
export interface ReadyOutline {
  /** As given, counter-clockwise. */
  readonly outline: Float64Array;
  /** What overlap is judged on: the outline with its margin. */
  readonly grown: Float64Array;
  readonly circles: Circles;
  readonly area: number;
  readonly hullArea: number;
  /** Of the grown outline. */
  readonly diameter: number;
}

/** An outline as it lies in one turn, about the middle of its own box. */
export interface Shape {
  readonly of: ReadyOutline;
  /** From the origin of the item to the middle of the box. */
  readonly middleX: number;
  readonly middleY: number;
  /** Half the box of the outline itself, which must stay on the cloth. */
  readonly halfWidth: number;
  readonly halfHeight: number;
  /** Box of the grown outline. */
  readonly box: readonly [left: number, bottom: number, right: number, top: number];
  readonly grown: Float64Array;
  readonly circles: Circles;
  /** The outline as given. */
  readonly outline: Float64Array;
}

const MOST_CIRCLES = 8;
const SMALLEST_CIRCLE = 0.12;

export function readyOutline(given: Float64Array, margin: number, tolerance: number): ReadyOutline {
  const outline = withoutRepeats(given);
  const grown = growOutline(outline, margin, tolerance);
  const hull = convexHull(grown);
  const corners = Float64Array.from([...hull].flatMap((i) => [grown[2 * i], grown[2 * i + 1]]));
  return {
    outline,
    grown,
    circles: inscribedCircles(grown, MOST_CIRCLES, SMALLEST_CIRCLE),
    area: measurePolygonArea(outline),
    hullArea: measurePolygonArea(corners),
    diameter: diameterOf(corners),
  };
}

function diameterOf(corners: Float64Array): number {
  let square = 0;
  for (let i = 0; i < corners.length; i += 2)
    for (let k = 0; k < i; k += 2) {
      const [x, y] = [corners[i] - corners[k], corners[i + 1] - corners[k + 1]];
      square = Math.max(square, x * x + y * y);
    }
  return Math.sqrt(square);
}

export function turnShape(of: ReadyOutline, angle: number, mirrored: boolean): Shape {
  const { cosine, sine } = turnVector(angle);
  const turn = (points: Float64Array, stride: number): Float64Array => {
    const turned = points.slice();
    for (let i = 0; i < points.length; i += stride) {
      const x = mirrored ? -points[i] : points[i];
      turned[i] = cosine * x - sine * points[i + 1];
      turned[i + 1] = sine * x + cosine * points[i + 1];
    }
    return turned;
  };
  const outline = turn(of.outline, 2);
  const [left, bottom, right, top] = boxOf(outline);
  const [middleX, middleY] = [(left + right) / 2, (bottom + top) / 2];
  const shift = (points: Float64Array, stride: number): Float64Array => {
    for (let i = 0; i < points.length; i += stride) {
      points[i] -= middleX;
      points[i + 1] -= middleY;
    }
    return points;
  };
  const grown = shift(turn(of.grown, 2), 2);
  return {
    of,
    middleX,
    middleY,
    halfWidth: (right - left) / 2,
    halfHeight: (top - bottom) / 2,
    box: boxOf(grown),
    grown,
    circles: shift(turn(of.circles, 3), 3),
    outline: shift(outline, 2),
  };
}

export function boxOf(points: Float64Array): [left: number, bottom: number, right: number, top: number] {
  const box: [number, number, number, number] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < points.length; i += 2) {
    box[0] = Math.min(box[0], points[i]);
    box[1] = Math.min(box[1], points[i + 1]);
    box[2] = Math.max(box[2], points[i]);
    box[3] = Math.max(box[3], points[i + 1]);
  }
  return box;
}

/** True when one of two outlines that do not touch lies inside the other, b moved by (dx, dy). */
export function isOneInside(a: Shape, b: Shape, dx: number, dy: number): boolean {
  return (
    isInsidePolygon(b.grown, a.grown[0] - dx, a.grown[1] - dy) ||
    isInsidePolygon(a.grown, b.grown[0] + dx, b.grown[1] + dy)
  );
}
