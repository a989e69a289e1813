import type { Issue } from '../base/index.ts';
import { nameOfMeasure } from './measures.ts';
import { type PhotoReading, showMiddle } from './photo-readings.ts';
import type { PhotoEdge, PhotoId, PhotoResidual } from './photo-types.ts';
import { phrase } from './phrases.ts';
import { KNOT } from './rails.ts';
import type { TapeContext } from './tape-rule.ts';
import type { BodyInput } from './types.ts';

/** A drawn point is met within so many of its spreads: one in 400 is not, were they spread normally. */
const MET_WITHIN = 3;
/** A loft does not follow all that a real body does: so far it misses outlines drawn without error (made bodies); mm. */
const LOFT_ERROR = 3;
/** Points this near to a level tell of its box, mm. */
const NEAR_LEVEL = 60;

const LEVELS = ['hip', 'highHip', 'waist', 'underbust', 'bust'] as const;
const BOXES = [
  { photo: 'front', what: 'Width', edges: ['right', 'left'] },
  { photo: 'side', what: 'Depth', edges: ['front', 'back'] },
] as const satisfies readonly { photo: PhotoId; what: string; edges: readonly PhotoEdge[] }[];

/**
 * What tapes and pictures cannot be together: typed widths and depths that a picture shows otherwise, then of every edge the point
 * furthest off, where no box tells of it. `residuals` are of the `readings`, in their order.
 */
export function photoIssues(
  input: BodyInput,
  readings: readonly PhotoReading[],
  residuals: readonly PhotoResidual[],
  context: TapeContext,
): Issue[] {
  if (readings.length === 0) return [];
  const boxes = BOXES.flatMap(({ photo, what, edges }) =>
    LEVELS.flatMap((level): BoxOff[] => {
      const id = `${level}${what}`;
      const typed = input.measures[id];
      const q = showMiddle(input.photos, photo, KNOT[level], context);
      const off = typed === undefined ? undefined : offAcross(photo, edges, q, readings, residuals);
      return off && Math.abs(off.gap) > limitOf(off) ? [{ ...off, id, photo, q }] : [];
    }),
  );
  return [...boxes.map(tellBox), ...worstOfEdges(readings, residuals, boxes).map(tellPoint)];
}

function limitOf({ spread }: { readonly spread: number }): number {
  return MET_WITHIN * Math.hypot(spread, LOFT_ERROR);
}

interface BoxOff {
  readonly id: string;
  readonly photo: PhotoId;
  readonly q: number;
  readonly gap: number;
  readonly spread: number;
}

/** How much wider than the body the two edges were drawn about a height of the picture, by the nearest point of each. */
function offAcross(
  photo: PhotoId,
  edges: readonly PhotoEdge[],
  q: number,
  readings: readonly PhotoReading[],
  residuals: readonly PhotoResidual[],
): { gap: number; spread: number } | undefined {
  const nearest = edges.map((edge) =>
    residuals
      .map((residual, i) => ({ ...residual, away: Math.abs(readings[i].point.q - q) }))
      .filter(({ photo: of, of: one, away }) => of === photo && one === edge && away <= NEAR_LEVEL)
      .toSorted((a, b) => a.away - b.away)
      .at(0),
  );
  const [one, other] = nearest;
  if (!one || !other) return undefined;
  return { gap: one.off + other.off, spread: Math.hypot(one.spread, other.spread) };
}

function tellBox({ id, photo, gap, spread }: BoxOff): Issue {
  return {
    code: 'photo-box-differs',
    path: `measures.${id}`,
    severity: 'warning',
    message: phrase('body.photo-box-differs', {
      measure: nameOfMeasure(id),
      photo,
      gap: Math.abs(gap),
      size: gap > 0 ? 'large' : 'small',
    }),
    measured: Math.abs(gap),
    limit: limitOf({ spread }),
  };
}

interface PointOff extends PhotoResidual {
  readonly height: number;
}

/** Of every edge and place by name, the one reading that is furthest off, if it is not met. */
function worstOfEdges(
  readings: readonly PhotoReading[],
  residuals: readonly PhotoResidual[],
  boxes: readonly BoxOff[],
): PointOff[] {
  const worst = new Map<string, PointOff>();
  residuals.forEach((residual, i) => {
    const { photo, of, off, spread } = residual;
    const height = readings[i].point.q;
    const told = boxes.some((box) => box.photo === photo && Math.abs(box.q - height) <= NEAR_LEVEL);
    if (told || Math.abs(off) <= limitOf(residual)) return;
    const before = worst.get(`${photo}.${of}`);
    if (!before || Math.abs(before.off / before.spread) < Math.abs(off / spread)) {
      worst.set(`${photo}.${of}`, { ...residual, height });
    }
  });
  return [...worst.values()];
}

function tellPoint({ photo, of, index, off, spread, height }: PointOff): Issue {
  return {
    code: 'photo-point-off',
    path: `photos.${photo}.${of}.${index}`,
    severity: 'warning',
    message: phrase('body.photo-point-off', { photo, of, height, gap: Math.abs(off) }),
    measured: Math.abs(off),
    limit: limitOf({ spread }),
  };
}
