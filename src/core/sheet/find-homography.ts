import { failure, type Issue, type Result, success } from '../base/index.ts';
import { phrase } from './phrases.ts';

/** What the large square's sides and its diagonal from the upper left to the lower right measure as projected, mm. */
export interface ProjectedSquare {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
  readonly diagonal: number;
}

/** How far a measured side may be from the true one: beyond it the projector is to be moved first. */
const LARGEST_ERROR = 0.25;

/** Maps points of the plane (n × 2) to others, straight lines to straight lines. */
export type Homography = readonly number[];

/**
 * What a drawing is put through so that it comes out true under a projector that shows the square with corner (x, y) and sides `side` as
 * measured: the inverse of the map from the square to the quadrilateral with those sides. Its middle stays where it is. Fails when
 * the lengths make no quadrilateral, one that is not convex, or one far from the square.
 */
export function findHomography(
  measured: ProjectedSquare,
  x: number,
  y: number,
  side: number,
): Result<Homography> {
  const corners = cornersOf(measured);
  const entries = Object.entries(measured) as [keyof ProjectedSquare, number][];
  const issues = entries.flatMap(([key, length]): Issue[] => {
    const wanted = key === 'diagonal' ? side * Math.SQRT2 : side;
    const off = length / wanted - 1;
    if (Math.abs(off) <= LARGEST_ERROR) return [];
    const limit = wanted * (1 + Math.sign(off) * LARGEST_ERROR);
    return [
      fault(
        key,
        phrase('projector.far-off', { line: key, length, wanted, largest: LARGEST_ERROR }),
        length,
        limit,
      ),
    ];
  });
  if (issues.length > 0) return failure(issues);
  if (!corners) {
    const message = phrase('projector.no-square', { diagonal: measured.diagonal });
    return failure([fault('diagonal', message, measured.diagonal, side * Math.SQRT2)]);
  }
  // The middle of the four corners on the table is the middle of the square in the file.
  const [mx, my] = [0, 1].map((axis) => corners.reduce((sum, corner) => sum + corner[axis], 0) / 4);
  const quad = corners.map(([cx, cy]) => [cx - mx + x + side / 2, cy - my + y + side / 2] as const);
  const toQuad = fromUnitSquare(quad);
  const fromSquare = multiply([side, 0, x, 0, side, y, 0, 0, 1], adjugate(toQuad));
  return success(fromSquare);
}

function fault(key: string, message: Issue['message'], measured: number, limit: number): Issue {
  return {
    code: 'projected-square',
    path: `projectedSquare.${key}`,
    message,
    severity: 'error',
    measured,
    limit,
  };
}

type Corner = readonly [number, number];

/** Upper left, upper right, lower right, lower left; y runs down. Null where the lengths make no convex quadrilateral. */
function cornersOf({ top, right, bottom, left, diagonal }: ProjectedSquare): readonly Corner[] | null {
  const c = thirdCorner(top, diagonal, right);
  if (!c) return null;
  // The lower left corner lies on the other side of the diagonal.
  const d = thirdCorner(diagonal, left, bottom);
  if (!d) return null;
  const turn = Math.atan2(c[1], c[0]);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const corners: Corner[] = [[0, 0], [top, 0], c, [cos * d[0] - sin * d[1], sin * d[0] + cos * d[1]]];
  const turnsRight = corners.every(([x0, y0], i) => {
    const [[x1, y1], [x2, y2]] = [corners[(i + 1) % 4], corners[(i + 2) % 4]];
    return (x1 - x0) * (y2 - y1) - (y1 - y0) * (x2 - x1) > 0;
  });
  return turnsRight ? corners : null;
}

/** The corner of a triangle over a base from (0, 0) to (base, 0), by its distances from the two ends; y > 0. */
function thirdCorner(base: number, fromStart: number, fromEnd: number): Corner | null {
  const x = (base * base + fromStart * fromStart - fromEnd * fromEnd) / (2 * base);
  const square = fromStart * fromStart - x * x;
  return square > 0 ? [x, Math.sqrt(square)] : null;
}

/**
 * The map of the unit square, corners (0, 0), (1, 0), (1, 1), (0, 1), to a quadrilateral (Heckbert, Fundamentals of texture mapping and
 * image warping, 1989, section 2.2.3), rows of a 3 × 3 matrix.
 */
function fromUnitSquare([[x0, y0], [x1, y1], [x2, y2], [x3, y3]]: readonly Corner[]): Homography {
  const [dx1, dx2, sx] = [x1 - x2, x3 - x2, x0 - x1 + x2 - x3];
  const [dy1, dy2, sy] = [y1 - y2, y3 - y2, y0 - y1 + y2 - y3];
  const under = dx1 * dy2 - dx2 * dy1;
  const g = (sx * dy2 - dx2 * sy) / under;
  const h = (dx1 * sy - sx * dy1) / under;
  return [x1 - x0 + g * x1, x3 - x0 + h * x3, x0, y1 - y0 + g * y1, y3 - y0 + h * y3, y0, g, h, 1];
}

/** The inverse but for a factor, which a map of points does not have. */
function adjugate([a, b, c, d, e, f, g, h, i]: Homography): Homography {
  return [
    ...[e * i - f * h, c * h - b * i, b * f - c * e],
    ...[f * g - d * i, a * i - c * g, c * d - a * f],
    ...[d * h - e * g, b * g - a * h, a * e - b * d],
  ];
}

function multiply(a: Homography, b: Homography): Homography {
  return Array.from({ length: 9 }, (_, k) => {
    const [row, column] = [Math.floor(k / 3), k % 3];
    return [0, 1, 2].reduce((sum, i) => sum + a[3 * row + i] * b[3 * i + column], 0);
  });
}

/** Points (n × 2) put through the map. */
export function mapPoints(points: Float64Array, [a, b, c, d, e, f, g, h, i]: Homography): Float64Array {
  const mapped = new Float64Array(points.length);
  for (let k = 0; k < points.length; k += 2) {
    const [x, y] = [points[k], points[k + 1]];
    const w = g * x + h * y + i;
    mapped[k] = (a * x + b * y + c) / w;
    mapped[k + 1] = (d * x + e * y + f) / w;
  }
  return mapped;
}
