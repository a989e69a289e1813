import { readFileSync } from 'node:fs';
import type { Figure } from '../core/body/index.ts';

export type SurveyRow = Readonly<Record<string, number>>;

/** Rows of a survey file in the columns that shared/survey/SOURCE.md explains. */
export function readSurveyRows(path: string): SurveyRow[] {
  const [head, ...lines] = readFileSync(path, 'utf8').trim().split(/\r?\n/);
  const names = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',').map(Number);
    return Object.fromEntries(names.map((name, i) => [name, cells[i]]));
  });
}

/** Our survey variables from the columns of the 1988 survey, mm (ratios plain). */
export const VARIABLES_1988: Readonly<Record<string, (r: SurveyRow) => number>> = {
  bustGirth: (r) => r.chestcircumference,
  waistGirth: (r) => r.waistcircumferencenatural,
  hipGirth: (r) => r.buttockcircumference,
  backWaistLength: (r) => r.waistbacklengthnatural,
  neckBaseGirth: (r) => r.neckcircumferencebase,
  upperChestGirth: (r) => r.chestcircumferenceatscye,
  underbustGirth: (r) => r.chestcircumferencebelowbust,
  // Tape at the navel, which lies at the top of the hip bone to within a few mm on average.
  highHipGirth: (r) => r.waistcircumference,
  neckToBustPoint: (r) => r.necktobustpointlength,
  bustPointSpan: (r) => r.bustpointbreadth,
  shoulderLength: (r) => r.shoulderlength,
  shoulderDrop: (r) => r.neckheightlateral - r.acromialheight,
  acrossBack: (r) => r.interscyeii,
  armscyeGirth: (r) => r.scyecircumference,
  waistToHighHip: (r) => r.waistheightnatural - r.waistheightomphalion,
  waistToHip: (r) => r.waistheightnatural - r.buttockheight,
  sideLength: (r) => r.axillaheight - r.waistheightnatural,
  napeRise: (r) => r.cervicaleheight - r.waistheightnatural,
  neckSideRise: (r) => r.neckheightlateral - r.waistheightnatural,
  neckFrontRise: (r) => r.suprasternaleheight - r.waistheightnatural,
  bustRise: (r) => r.chestheight - r.waistheightnatural,
  shoulderBreadth: (r) => r.biacromialbreadth,
  bustRatio: (r) => r.chestdepth / r.chestbreadth,
  highHipRatio: (r) => r.waistdepth / r.waistbreadth,
  hipRatio: (r) => r.buttockdepth / r.hipbreadth,
  // With the navel's girth and height, which stand above, all there is to tell of a waist taken at the navel.
  navelBackLength: (r) => r.waistbacklength,
};

/** Measures a home measurer would take, from the 1988 survey. */
const MEASURES_1988 = [
  'bustGirth',
  'waistGirth',
  'hipGirth',
  'backWaistLength',
  'neckBaseGirth',
  'upperChestGirth',
  'underbustGirth',
  'highHipGirth',
  'neckToBustPoint',
  'bustPointSpan',
  'shoulderLength',
  'shoulderDrop',
  'waistToHighHip',
  'waistToHip',
  'sideLength',
] as const;

/**
 * The 2012 survey has no natural waist, only the navel: its girth serves as the high hip's, and the waist is put where
 * the 1988 survey's medians put it (shared/survey/SOURCE.md): so much of the navel girth, so many mm higher.
 */
const WAIST_FROM_NAVEL = {
  bust: { girth: 0.92, higher: 74, backShorter: 75 },
  chest: { girth: 0.975, higher: 68, backShorter: 66 },
} as const;

function measuresOf2012(row: SurveyRow, figure: Figure): Record<string, number> {
  const { girth, higher, backShorter } = WAIST_FROM_NAVEL[figure];
  return {
    bustGirth: row.chestcircumference,
    waistGirth: girth * row.waistcircumference,
    highHipGirth: row.waistcircumference,
    waistToHighHip: higher,
    hipGirth: row.buttockcircumference,
    waistToHip: row.waistheightomphalion - row.buttockheight + higher,
    backWaistLength: row.waistbacklength - backShorter,
    neckBaseGirth: row.neckcircumferencebase,
    shoulderLength: row.shoulderlength,
  };
}

/** One person's measures, by our ids. */
export function measuresOfRow(row: SurveyRow, figure: Figure): Record<string, number> {
  if (row.waistcircumferencenatural === undefined) return measuresOf2012(row, figure);
  return Object.fromEntries(MEASURES_1988.map((id) => [id, VARIABLES_1988[id](row)]));
}
