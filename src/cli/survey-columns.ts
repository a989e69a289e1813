import { readFileSync } from 'node:fs';

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

/** The 2012 survey has no natural waist: everything is read from the navel, which serves as the waist here. */
const MEASURES_2012: Readonly<Record<string, (r: SurveyRow) => number>> = {
  bustGirth: (r) => r.chestcircumference,
  waistGirth: (r) => r.waistcircumference,
  hipGirth: (r) => r.buttockcircumference,
  backWaistLength: (r) => r.waistbacklength,
  neckBaseGirth: (r) => r.neckcircumferencebase,
  shoulderLength: (r) => r.shoulderlength,
  waistToHip: (r) => r.waistheightomphalion - r.buttockheight,
};

/** One person's measures, by our ids. */
export function measuresOfRow(row: SurveyRow): Record<string, number> {
  if (row.waistcircumferencenatural === undefined) {
    return Object.fromEntries(Object.entries(MEASURES_2012).map(([id, read]) => [id, read(row)]));
  }
  return Object.fromEntries(MEASURES_1988.map((id) => [id, VARIABLES_1988[id](row)]));
}
