import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Project } from '../../src/core/project/index.ts';

export type SurveyRow = Readonly<Record<string, number>>;
export type SurveyFile = 'survey1988-women' | 'survey1988-men' | 'survey2012-women' | 'survey2012-men';

/** People of one sample in shared/survey; see SOURCE.md there for the columns. */
export function readSurvey(file: SurveyFile): SurveyRow[] {
  const text = readFileSync(path.join(import.meta.dirname, `../../shared/survey/${file}.csv`), 'utf8');
  const [head, ...lines] = text.trim().split('\n');
  const names = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',').map(Number);
    return Object.fromEntries(names.map((name, i) => [name, cells[i]]));
  });
}

/** The 1988 columns that mean what our measures mean: read with a tape, at the level our measure is read at. */
const measureColumns: Readonly<Record<string, (row: SurveyRow) => number>> = {
  bustGirth: (r) => r.chestcircumference,
  waistGirth: (r) => r.waistcircumferencenatural,
  hipGirth: (r) => r.buttockcircumference,
  backWaistLength: (r) => r.waistbacklengthnatural,
  neckBaseGirth: (r) => r.neckcircumferencebase,
  underbustGirth: (r) => r.chestcircumferencebelowbust,
  upperChestGirth: (r) => r.chestcircumferenceatscye,
  waistToHip: (r) => r.waistheightnatural - r.buttockheight,
  shoulderLength: (r) => r.shoulderlength,
  bustPointSpan: (r) => r.bustpointbreadth,
};

/** Columns that come close, by another landmark or another path: good for judging estimates, not for asking a fit. */
const nearColumns: Readonly<Record<string, (row: SurveyRow) => number>> = {
  neckToBustPoint: (r) => r.necktobustpointlength,
  shoulderDrop: (r) => r.neckheightlateral - r.acromialheight,
  armscyeGirth: (r) => r.scyecircumference,
  sideLength: (r) => r.axillaheight - r.waistheightnatural,
  acrossBack: (r) => r.interscyeii,
  highHipGirth: (r) => r.waistcircumference,
  waistToHighHip: (r) => r.waistheightnatural - r.waistheightomphalion,
};

/** Everything the survey knows of a person in our terms, mm. */
export function measuresOfSurveyRow(row: SurveyRow): Record<string, number> {
  const columns = { ...measureColumns, ...nearColumns };
  return Object.fromEntries(Object.entries(columns).map(([id, read]) => [id, read(row)]));
}

/**
 * A back length along the body cannot be shorter than the height it spans. A row that says so by more than measuring
 * error holds a wrong number: one woman of the sample, 44 mm short, most likely a waist height read off wrongly.
 */
export function contradictsItself(row: SurveyRow): boolean {
  return row.waistbacklengthnatural < row.cervicaleheight - row.waistheightnatural - 20;
}

/** Only the five measures no project can do without. */
export const firstMeasureIds = [
  'bustGirth',
  'waistGirth',
  'hipGirth',
  'backWaistLength',
  'neckBaseGirth',
] as const;

/** A project from one person of the 1988 survey, with the measures named (default: all that the survey carries). */
export function projectFromSurveyRow(
  row: SurveyRow,
  figure: 'bust' | 'chest',
  ids: readonly string[] = Object.keys(measureColumns),
): Project {
  const measures = Object.fromEntries(ids.map((id) => [id, measureColumns[id](row)]));
  return {
    format: 'loftseam-project',
    version: 1,
    name: `Survey 1988, line ${row.row}`,
    displayUnits: 'cm',
    body: { figure, measures },
    seams: {},
    cloth: {},
    inside: {},
    cutting: {},
  };
}
