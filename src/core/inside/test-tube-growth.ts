import type { Issue } from '../base/index.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { phrase } from './phrases.ts';
import type { InsideOptions, TestTubeReadings } from './types.ts';

/** Diameter of the maker's test tube before it is filled, mm. */
export const TEST_TUBE_DIAMETER = 200;
/** Girth of the empty tube as it is drawn and sewn, mm. */
export const TEST_TUBE_GIRTH = Math.PI * TEST_TUBE_DIAMETER;
/** The lines of the tube by their keys in the file, from the bottom up. */
export const TEST_TUBE_LINES = ['measure1', 'measure2', 'measure3'] as const;
const USUAL_THICKNESS: number = INSIDE_OPTIONS.clothThickness.usual;
/** Readings further apart than this were not filled alike, mm (ours: what three goes of a tape differ by, doubled). */
const SAME_TUBE = 6;

/** What a tape reads over the tube as it was sewn, mm. A tape lies on the outside of the cloth. */
export function sewnGirthOfTestTube(clothThickness = USUAL_THICKNESS): number {
  return TEST_TUBE_GIRTH + Math.PI * clothThickness;
}

/**
 * Between which a tape over the filled tube can read, mm: as sewn, and grown by the most. Whole millimetres, as a tape is
 * read, so that the tube as sewn lies within.
 */
export function limitsOfTestTube(clothThickness = USUAL_THICKNESS): {
  readonly min: number;
  readonly max: number;
} {
  const sewn = sewnGirthOfTestTube(clothThickness);
  return {
    min: Math.floor(sewn),
    max: Math.floor(sewn + TEST_TUBE_GIRTH * INSIDE_OPTIONS.measuredGrowth.max),
  };
}

/**
 * Growth of the filled test tube, a fraction, by the mean of the girths read. The tape lies half a cloth outside the seam's
 * radius, π times the thickness in girth, which is taken off first. Undefined without readings, and with one that
 * `checkTestTube` refuses.
 */
export function growthOfTestTube(
  readings: TestTubeReadings,
  clothThickness = USUAL_THICKNESS,
): number | undefined {
  const girths = girthsOf(readings);
  const { min, max } = limitsOfTestTube(clothThickness);
  if (girths.length === 0 || girths.some((girth) => girth < min || girth > max)) return undefined;
  const mean = girths.reduce((sum, girth) => sum + girth, 0) / girths.length;
  return (mean - Math.PI * clothThickness) / TEST_TUBE_GIRTH - 1;
}

/** The growth that was measured, as a fraction: typed as such, or read on the test tube. */
export function measuredGrowthOf({ measuredGrowth, testTube, clothThickness }: InsideOptions) {
  return measuredGrowth ?? (testTube && growthOfTestTube(testTube, clothThickness));
}

/**
 * Readings that no filled tube of this cloth can have (`test-tube-off`, nothing is taken off for growth then), readings too
 * far apart (`test-tube-uneven`), and growth given twice (`growth-twice`).
 */
export function checkTestTube({ measuredGrowth, testTube, clothThickness }: InsideOptions): Issue[] {
  if (!testTube) return [];
  const { min, max } = limitsOfTestTube(clothThickness);
  const issues = TEST_TUBE_LINES.flatMap((line, k): Issue[] => {
    const girth = testTube[line];
    if (girth === undefined || (girth >= min && girth <= max)) return [];
    const isSmall = girth < min;
    const limit = isSmall ? min : max;
    const message = isSmall
      ? phrase('test-tube.too-small', { line: k + 1, girth, least: min })
      : phrase('test-tube.too-large', { line: k + 1, girth, most: max });
    const path = `testTube.${line}`;
    return [{ code: 'test-tube-off', path, message, severity: 'error', measured: girth, limit }];
  });
  const girths = girthsOf(testTube);
  const spread = Math.max(...girths) - Math.min(...girths);
  if (spread > SAME_TUBE) {
    issues.push({
      code: 'test-tube-uneven',
      path: 'testTube',
      message: phrase('test-tube.uneven', { spread, most: SAME_TUBE }),
      severity: 'warning',
      measured: spread,
      limit: SAME_TUBE,
    });
  }
  if (measuredGrowth !== undefined) {
    issues.push({
      code: 'growth-twice',
      path: 'measuredGrowth',
      message: phrase('test-tube.growth-twice', { growth: measuredGrowth }),
      severity: 'warning',
    });
  }
  return issues;
}

function girthsOf(readings: TestTubeReadings): number[] {
  return TEST_TUBE_LINES.flatMap((line) => readings[line] ?? []);
}
