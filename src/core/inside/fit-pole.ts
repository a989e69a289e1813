import type { Issue } from '../base/index.ts';
import { phrase } from './phrases.ts';
import type { InsideForm, PoleFit } from './types.ts';

/** Cloth and fill wanted between the pole and the shell, and board between the pole's hole and a plate's edge, mm. */
const SHELL_ROOM = 15;
const PLATE_ROOM = 8;
/** The sleeve's flat width is half the tube's girth plus this, mm (common practice: 3 to 5). */
const SLEEVE_EASE = 4;

/** The sleeve's upper end, where the tube shows last, is left free over so much, mm. */
const FREE_END = 30;

/** Of the pole from the outside of the base plate to that of the neck plate, mm. */
export function poleInsideForm(
  { zTop, zBottom }: Pick<PoleFit, 'zTop' | 'zBottom'>,
  boardThickness: number,
): number {
  return zTop - zBottom + 2 * boardThickness;
}

/** The highest that anything is sewn on to the sleeve, mm. */
export function topOnSleeve({ zTop }: PoleFit): number {
  return zTop - FREE_END;
}

/** Of the sleeve for a tube, mm. */
export function girthOfSleeve(tubeDiameter: number): number {
  return Math.PI * tubeDiameter + 2 * SLEEVE_EASE;
}

/**
 * How far from the tube's middle a sleeve of the given girth (mm, round a tube of radius R) reaches when it is pulled at
 * from front and back: half its girth is one straight from the tip to the tube, an arc over it, and a straight again:
 * girth = 4 √(h² − R²) + 2R (π − 2 arccos(R/h)). Bisection to 1e-9 mm. Precondition: girth ≥ 2πR.
 */
export function reachOfPulledSleeve(girth: number, radius: number): number {
  let low = radius;
  let high = radius + girth / 4;
  while (high - low > 1e-9) {
    const h = 0.5 * (low + high);
    const used = 4 * Math.sqrt(h * h - radius * radius) + 2 * radius * (Math.PI - 2 * Math.acos(radius / h));
    if (used < girth) low = h;
    else high = h;
  }
  return 0.5 * (low + high);
}

/**
 * Where a straight upright pole stands, x = 0: as near below the middle of the neck as the rows and both plates allow.
 * `rows`: chart heights at which the shell must leave room; the shell lies
 * `shellDepth` mm inside the body. Issues: `tube-too-thick` with the room there is.
 */
export function fitPole(
  form: InsideForm,
  tubeDiameter: number,
  boardThickness: number,
  rows: readonly number[],
  shellDepth: number,
): { pole: PoleFit; issues: Issue[] } {
  const radius = tubeDiameter / 2;
  const neck = extentOf(form, 'neck', shellDepth);
  const base = extentOf(form, 'base', shellDepth);
  let back = base.back + radius + PLATE_ROOM;
  let front = base.front - radius - PLATE_ROOM;
  for (const v of rows) {
    const row = form.surface.evaluate(Float64Array.of(-Math.PI / 2, v, Math.PI / 2, v));
    back = Math.max(back, row[1] + shellDepth + radius + SHELL_ROOM);
    front = Math.min(front, row[4] - shellDepth - radius - SHELL_ROOM);
  }
  const issues: Issue[] = [];
  const refuse = (room: number, where: 'neck' | 'upright'): void => {
    const message = phrase('inside.tube-too-thick', {
      diameter: tubeDiameter,
      where,
      most: Math.max(0, Math.floor(room)),
      ...(shellDepth > 1 && { layers: shellDepth }),
    });
    const limit = Math.max(0, room);
    const path = 'tubeDiameter';
    issues.push({ code: 'tube-too-thick', path, message, severity: 'error', measured: tubeDiameter, limit });
  };
  const neckRoom = Math.min(neck.front - neck.back, neck.width) - 2 * PLATE_ROOM;
  if (tubeDiameter > neckRoom) refuse(neckRoom, 'neck');
  else if (
    Math.max(back, neck.back + radius + PLATE_ROOM) > Math.min(front, neck.front - radius - PLATE_ROOM)
  )
    refuse(tubeDiameter - (back - front), 'upright');
  const wanted = 0.5 * (neck.front + neck.back);
  const y = Math.min(Math.max(wanted, back), Math.max(front, back));
  const sleeveGirth = girthOfSleeve(tubeDiameter);
  const t = (y - neck.back) / (neck.front - neck.back);
  return {
    pole: {
      y,
      radius,
      reach: reachOfPulledSleeve(sleeveGirth, radius),
      sleeveGirth,
      zBottom: base.zFront + boardThickness,
      zTop: neck.zBack + t * (neck.zFront - neck.zBack) - boardThickness,
    },
    issues,
  };
}

/** Front and back of an opening at x = 0 with their heights, and its width, all `shellDepth` mm further in. */
function extentOf(form: InsideForm, id: 'neck' | 'base', shellDepth: number) {
  const points = form.openings.find((opening) => opening.id === id)?.points ?? new Float64Array(0);
  const extent = { front: -1e9, back: 1e9, zFront: 0, zBack: 0, width: 0 };
  let [minX, maxX] = [1e9, -1e9];
  for (let i = 0; i < points.length; i += 3) {
    minX = Math.min(minX, points[i]);
    maxX = Math.max(maxX, points[i]);
    if (points[i + 1] > extent.front) [extent.front, extent.zFront] = [points[i + 1], points[i + 2]];
    if (points[i + 1] < extent.back) [extent.back, extent.zBack] = [points[i + 1], points[i + 2]];
  }
  return {
    ...extent,
    front: extent.front - shellDepth,
    back: extent.back + shellDepth,
    width: maxX - minX - 2 * shellDepth,
  };
}
