import type { LayPlan, LayRules } from '../../../core/laying/index.ts';
import { boundsOfPolyline } from '../../../core/math/index.ts';

/** What pieces lie on, one under the other in the picture. mm. */
export interface SheetPlace {
  readonly sheet: number;
  readonly length: number;
  readonly width: number;
  /** Where its lower left corner is drawn: y down from the top of the picture. */
  readonly bottom: number;
  /** Closed, as it lies. */
  readonly outline: Float64Array;
  readonly flaws: readonly Float64Array[];
  readonly folds: readonly Float64Array[];
}

/** Between two sheets in the picture, and how much of a roll is drawn beyond its last piece, mm. */
const BETWEEN = 90;
const BEYOND = 60;
/** A roll without a plan yet. */
const FIRST_LENGTH = 1000;

/** Every sheet in sight, or the roll up to a little beyond its last piece. */
export function sheetsInSight({ ground, stock }: LayRules, plan: LayPlan | null): SheetPlace[] {
  if (ground.kind === 'roll') {
    const length = (plan?.length ?? FIRST_LENGTH) + BEYOND;
    const { width, flaws } = ground;
    const outline = Float64Array.of(0, 0, length, 0, length, width, 0, width);
    return [{ sheet: 0, length, width, bottom: width, outline, flaws, folds: [] }];
  }
  const count = stock.pieces ? ground.sheets.length : Math.max(1, plan?.sheetsUsed ?? 1);
  let bottom = 0;
  return ground.sheets.slice(0, count).map(({ outline, flaws, folds }, sheet) => {
    const { maxX, maxY } = boundsOfPolyline(outline);
    bottom += maxY + (sheet > 0 ? BETWEEN : 0);
    return { sheet, length: maxX, width: maxY, bottom, outline, flaws, folds };
  });
}

/** SVG path of points on a sheet, n × 2 mm, across upwards. */
export function pathOnSheet(points: Float64Array, bottom: number, isClosed = true): string {
  let d = '';
  for (let i = 0; i < points.length; i += 2)
    d += `${i === 0 ? 'M' : 'L'}${points[i].toFixed(1)} ${(bottom - points[i + 1]).toFixed(1)}`;
  return isClosed ? `${d}Z` : d;
}
