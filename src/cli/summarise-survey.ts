/**
 * npm run survey-statistics -- women.csv men.csv
 * Means and covariances of our measures over the 1988 survey's people, written to shared/survey/statistics.json.
 * Columns: see shared/survey/SOURCE.md.
 */
import { writeFileSync } from 'node:fs';
import { readSurveyRows, type SurveyRow, VARIABLES_1988 } from './survey-columns.ts';

function summarise(rows: SurveyRow[]) {
  const ids = Object.keys(VARIABLES_1988);
  const values = rows.map((row) => ids.map((id) => VARIABLES_1988[id](row)));
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
  variables: Object.keys(VARIABLES_1988),
  bust: summarise(readSurveyRows(womenPath)),
  chest: summarise(readSurveyRows(menPath)),
};
writeFileSync('shared/survey/statistics.json', `${JSON.stringify(statistics)}\n`);
