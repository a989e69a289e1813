import { areaPathsD, differenceD, FillRule, intersectD, type PathD, type PathsD } from 'clipper2-ts';
import { boxOf } from './make-shapes.ts';
import { turnVector } from './turn-vector.ts';
import type { NestPlacement, NestPlan, NestProblem } from './types.ts';

/** Decimals that clipping rounds to. */
const DIGITS = 5;

/**
 * How much of the outlines, as given, lies on another, and how much off the strip or sheets or on flaws: areas. A valid plan has
 * of both no more than rounding leaves: less than a millionth of an item's area. Judged by another library than the search.
 */
export function checkPlan(problem: NestProblem, plan: NestPlan): { overlap: number; outside: number } {
  const laid = problem.items.flatMap((item, k) => {
    const placement = plan.placements[k];
    return placement
      ? [{ sheet: placement.sheet, path: placeOutline(item.outline, item.turns[placement.turn], placement) }]
      : [];
  });
  const boxes = laid.map(({ path }) => boxOf(Float64Array.from(path.flatMap(({ x, y }) => [x, y]))));
  let overlap = 0;
  for (let a = 0; a < laid.length; a++)
    for (let b = 0; b < a; b++) {
      if (laid[a].sheet !== laid[b].sheet || !doBoxesMeet(boxes[a], boxes[b])) continue;
      overlap += areaOf(intersectD([laid[a].path], [laid[b].path], FillRule.NonZero, DIGITS));
    }
  let outside = 0;
  for (const { sheet, path } of laid) {
    const { cloth, flaws } = clothOf(problem, sheet, path);
    outside += areaOf(differenceD([path], [cloth], FillRule.NonZero, DIGITS));
    for (const flaw of flaws) outside += areaOf(intersectD([path], [flaw], FillRule.NonZero, DIGITS));
  }
  return { overlap, outside };
}

function placeOutline(
  outline: Float64Array,
  { angle, mirrored }: NestProblem['items'][number]['turns'][number],
  { x, y }: NestPlacement,
): PathD {
  const { cosine, sine } = turnVector(angle);
  return pathOf(outline).map((p) => {
    const px = mirrored ? -p.x : p.x;
    return { x: cosine * px - sine * p.y + x, y: sine * px + cosine * p.y + y };
  });
}

function pathOf(outline: Float64Array): PathD {
  return Array.from({ length: outline.length / 2 }, (_, i) => ({ x: outline[2 * i], y: outline[2 * i + 1] }));
}

/** What an item may lie on: the sheet, or as much of the strip as the item reaches to. */
function clothOf({ width = 0, flaws = [], sheets }: NestProblem, sheet: number, path: PathD) {
  if (sheets) return { cloth: pathOf(sheets[sheet].outline), flaws: sheets[sheet].flaws.map(pathOf) };
  const end = 1 + Math.max(...path.map(({ x }) => Math.abs(x)));
  const cloth = [
    { x: 0, y: 0 },
    { x: end, y: 0 },
    { x: end, y: width },
    { x: 0, y: width },
  ];
  return { cloth, flaws: flaws.map(pathOf) };
}

function areaOf(paths: PathsD): number {
  return Math.abs(areaPathsD(paths));
}

type Box = ReturnType<typeof boxOf>;

function doBoxesMeet(a: Box, b: Box): boolean {
  return a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
}
