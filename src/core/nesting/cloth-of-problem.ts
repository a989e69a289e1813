import { areaPathsD, differenceD, FillRule, type PathD, type PathsD, unionD } from 'clipper2-ts';
import type { Zone } from './layout.ts';
import { boxOf } from './make-shapes.ts';
import type { NestProblem } from './types.ts';

/** What items are laid on: rectangles beside each other along x, and in them polygons that are taken. */
export interface Cloth {
  readonly zones: readonly Zone[];
  readonly obstacles: readonly Float64Array[];
}

/** Decimals that clipping rounds to. */
const DIGITS = 5;
/** Between two sheets, as a share of the longest: their items never meet. */
const APART = 0.05;
/** A scrap of less than this share of a sheet is left out: it comes from rounding. */
const SCRAP = 1e-9;

/** A strip is one endless rectangle; a sheet the box of its outline, of which all that is not the sheet is taken. */
export function clothOfProblem({ width = 0, flaws = [], sheets, gap }: NestProblem): Cloth {
  if (!sheets) {
    const strip: Zone = { left: 0, right: Infinity, bottom: 0, top: width, originX: 0, originY: 0, sheet: 0 };
    return { zones: [strip], obstacles: flaws.flatMap((flaw) => outlinesOf(cleared(flaw), 0)) };
  }
  const boxes = sheets.map(({ outline }) => boxOf(outline));
  const apart = gap + APART * Math.max(...boxes.map(([left, , right]) => right - left));
  const zones: Zone[] = [];
  const obstacles: Float64Array[] = [];
  let next = 0;
  sheets.forEach((sheet, k) => {
    const [left, bottom, right, top] = boxes[k];
    const originX = next - left;
    zones.push({ left: next, right: right + originX, bottom, top, originX, originY: 0, sheet: k });
    next += right - left + apart;
    const box = rectangle(left, bottom, right, top);
    const scraps = differenceD([box], [pathOf(sheet.outline)], FillRule.NonZero, DIGITS).filter(
      (path) => Math.abs(areaPathsD([path])) > SCRAP * (right - left) * (top - bottom),
    );
    for (const paths of [scraps, ...sheet.flaws.map(cleared)]) obstacles.push(...outlinesOf(paths, originX));
  });
  return { zones, obstacles };
}

/** Area of all zones up to `reach` along x, without what is taken. */
export function areaUpTo({ zones, obstacles }: Cloth, reach: number): number {
  const taken = obstacles.map(pathOf);
  let area = 0;
  for (const { left, right, bottom, top } of zones) {
    if (left >= reach) continue;
    const box = rectangle(left, bottom, Math.min(right, reach), top);
    area += areaPathsD(taken.length > 0 ? differenceD([box], taken, FillRule.NonZero, DIGITS) : [box]);
  }
  return area;
}

/** A polygon without crossings: all that it winds round. */
function cleared(outline: Float64Array): PathsD {
  return unionD([pathOf(outline)], [], FillRule.NonZero, DIGITS);
}

function outlinesOf(paths: PathsD, shift: number): Float64Array[] {
  return paths.map((path) => Float64Array.from(path.flatMap(({ x, y }) => [x + shift, y])));
}

function rectangle(left: number, bottom: number, right: number, top: number): PathD {
  return pathOf(Float64Array.of(left, bottom, right, bottom, right, top, left, top));
}

function pathOf(outline: Float64Array): PathD {
  return Array.from({ length: outline.length / 2 }, (_, i) => ({ x: outline[2 * i], y: outline[2 * i + 1] }));
}
