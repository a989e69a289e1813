import { failure, type Issue, type Result, success } from '../base/index.ts';
import { writeCsv, writeZip } from '../export/index.ts';
import { type Form, reportOf } from '../form/index.ts';
import type { FormFile } from './files-of-form.ts';
import { type ExportOptions, type FormatWriter, PROGRAM } from './format-writer.ts';
import { phrase } from './phrases.ts';
import { piecesWanted } from './pieces-wanted.ts';
import { seamRows, tapeRows } from './table-rows.ts';
import { writeBookletFiles } from './write-booklet.ts';
import { writeGaugeFiles } from './write-gauges.ts';
import { writeLayFiles } from './write-lay.ts';
import { writeGlbFiles, writeObjFiles, writeStlFiles } from './write-models.ts';
import { writeCutterFiles, writeDxfFiles, writeSvgFiles } from './write-outlines.ts';
import { writeLabelFiles, writePdfFiles } from './write-pages.ts';
import { writeProjectorFiles } from './write-projector.ts';

/** What writes each format, in the order in which files are written. */
const WRITERS = {
  svg: writeSvgFiles,
  pdf: writePdfFiles,
  labels: writeLabelFiles,
  lay: writeLayFiles,
  booklet: writeBookletFiles,
  projector: writeProjectorFiles,
  gauges: writeGaugeFiles,
  cutter: writeCutterFiles,
  dxf: writeDxfFiles,
  glb: writeGlbFiles,
  stl: writeStlFiles,
  obj: writeObjFiles,
  csv: writeTables,
  json: writeReport,
} satisfies Record<string, FormatWriter>;
type PlainFormat = keyof typeof WRITERS;
const PLAIN_FORMATS = Object.keys(WRITERS) as PlainFormat[];
/** What a form can be written as; `zip` holds all others asked for, or all there are when it is asked for alone. */
export const EXPORT_FORMATS: readonly ExportFormat[] = [...PLAIN_FORMATS, 'zip'];
export type ExportFormat = PlainFormat | 'zip';

/**
 * The files of a form in the formats asked for, in the order of `EXPORT_FORMATS`. Same form and options, same bytes (but
 * `report.json` tells how long each stage took, except inside the archive). Fails with every unknown format, piece or paper.
 */
export async function exportForm(form: Form, options: ExportOptions): Promise<Result<FormFile[]>> {
  const { formats, only, say } = options;
  const chosen = piecesWanted(form, only);
  const issues = [...findUnknownFormats(formats), ...chosen.issues];
  if (issues.length > 0 || !chosen.ok) return failure(issues);
  const pieces = chosen.value;
  const isAlone = formats.length === 1 && formats[0] === 'zip';
  const wanted = PLAIN_FORMATS.filter((format) => isAlone || formats.includes(format));

  const files: FormFile[] = [];
  const warnings: Issue[] = [];
  for (const format of wanted) {
    const made = await WRITERS[format](form, pieces, options);
    if (!made.ok) {
      // Stopped by whoever asked.
      if (made.issues.length === 0) return made;
      issues.push(...made.issues);
    } else {
      files.push(...made.value);
      warnings.push(...made.issues);
    }
  }
  if (issues.length > 0) return failure(issues);
  if (!formats.includes('zip')) return success(files, warnings);
  const timeless = reportOf({ ...form, report: { ...form.report, timingsMs: {} } }, say);
  const inside = files.map((file) => (file.name === 'report.json' ? { ...file, content: timeless } : file));
  const zip = { name: 'form.zip', type: 'application/zip', content: writeZip(inside, PROGRAM) };
  return success(isAlone ? [zip] : [...files, zip], warnings);
}

function findUnknownFormats(asked: readonly string[]): Issue[] {
  const known = EXPORT_FORMATS;
  return asked
    .filter((name) => !known.includes(name as ExportFormat))
    .map((name) => {
      const message = phrase('file.unknown-format', { name, known });
      return { code: 'unknown-format', path: 'formats', message, severity: 'error' };
    });
}

/** Seams and tapes as tables. */
function writeTables(form: Form, _pieces: unknown, { say }: ExportOptions): Result<FormFile[]> {
  return success([
    { name: 'seams.csv', type: 'text/csv', content: writeCsv(seamRows(form.report, say)) },
    { name: 'tapes.csv', type: 'text/csv', content: writeCsv(tapeRows(form.report, say)) },
  ]);
}

function writeReport(form: Form, _pieces: unknown, { say }: ExportOptions): Result<FormFile[]> {
  return success([{ name: 'report.json', type: 'application/json', content: reportOf(form, say) }]);
}
