/**
 * npm run survey-statistics -- women.csv men.csv
 * Means and covariances of our measures over the 1988 survey's people, written to shared/survey/statistics.json.
 * Columns: see shared/survey/SOURCE.md.
 */
import { readFileSync, writeFileSync } from 'node:fs';

type Row = Record<string, number>;

/** Our variable from the survey's columns, mm (ratios plain). */
const VARIABLES: Record<string, (r: Row) => number> = {
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

function readRows(path: string): Row[] {
  const [head, ...lines] = readFileSync(path, 'utf8').trim().split(/\r?\n/);
  const names = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',').map(Number);
    return Object.fromEntries(names.map((name, i) => [name, cells[i]]));
  });
}

function summarise(rows: Row[]) {
  const ids = Object.keys(VARIABLES);
  const values = rows.map((row) => ids.map((id) => VARIABLES[id](row)));
  const mean = ids.map((_, i) => values.reduce((sum, v) => sum + v[i], 0) / rows.length);
  const covariance = ids.map((_, i) =>
    ids.map(
      (_, j) => values.reduce((sum, v) => sum + (v[i] - mean[i]) * (v[j] - mean[j]), 0) / (rows.length - 1),
    ),
  );
  const round = (x: number): number => Number(x.toPrecision(8));
  return { people: rows.length, mean: mean.map(round), covariance: covariance.map((row) => row.map(round)) };
}

const [womenPath, menPath] = process.argv.slice(2);
if (!womenPath || !menPath) {
  process.stderr.write('Usage: npm run survey-statistics -- women.csv men.csv\n');
  process.exit(2);
}
const statistics = {
  source: 'ANSUR 1988 public data; see SOURCE.md. mm; ratios are depth / breadth.',
  variables: Object.keys(VARIABLES),
  bust: summarise(readRows(womenPath)),
  chest: summarise(readRows(menPath)),
};
writeFileSync('shared/survey/statistics.json', `${JSON.stringify(statistics)}\n`);
