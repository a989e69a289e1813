import { bodyInWords } from '../assembly/index.ts';
import { failure, type Issue, type Result, type Say, success } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import { findLackingLetters, writePdf } from '../export/index.ts';
import { type Form, nameRevision, tellTube } from '../form/index.ts';
import { cautionsFor } from '../inside/index.ts';
import type { Piece } from '../pattern/index.ts';
import {
  drawLabels,
  findPaper,
  PRINT_OPTIONS,
  type PrintInfo,
  planTiles,
  printPieces,
} from '../sheet/index.ts';
import type { FormFile } from './files-of-form.ts';
import { type ExportOptions, PROGRAM } from './format-writer.ts';
import { phrase } from './phrases.ts';

const TUBE: Piece['material'] = 'test-tube';

/** The pieces on pages to print, a file per paper. */
export async function writePdfFiles(
  form: Form,
  pieces: readonly Piece[],
  options: ExportOptions,
): Promise<Result<FormFile[]>> {
  const { papers = [PRINT_OPTIONS.paper.usual], print = {}, date = '', font, say } = options;
  const issues: Issue[] = [];
  const files: FormFile[] = [];
  const info = printInfo(form, pieces, date, say);
  for (const paper of papers) {
    const job = printPieces(pieces, info, { ...printOptionsOf(options), paper });
    issues.push(...job.issues);
    const name = findPaper(paper)?.name;
    if (!job.ok || !name) continue;
    const content = await writePdf({
      pages: job.value.pages,
      title: say(phrase('file.print-title', { project: form.project.name, paper: { id: paper, name } })),
      say,
      font: font.bytes,
      fontName: font.name,
      creator: PROGRAM,
    });
    const suffix = print.correction ? '-corrected' : '';
    const { pages, tiled } = job.value;
    const printed = {
      paper: name,
      pages: pages.length,
      patternPages: tiled.tiles.length,
      joints: tiled.joints.length,
    };
    files.push({ name: `print-${paper}${suffix}.pdf`, type: 'application/pdf', content, printed });
    if (files.length === 1) issues.push(...(await checkLetters(job.value.pages, font)));
  }
  return issues.some(({ severity }) => severity === 'error') ? failure(issues) : success(files, issues);
}

/** Letters that the font of the print has no shape for. */
async function checkLetters(pages: readonly Drawing[], font: ExportOptions['font']): Promise<Issue[]> {
  const lacking = await findLackingLetters(pages, font.bytes);
  if (lacking.length === 0) return [];
  const message = phrase('file.letters-lacking', { letters: lacking });
  return [{ code: 'letters-lacking', path: 'name', message, severity: 'warning' }];
}

/** Labels to sew in, a file per paper. */
export async function writeLabelFiles(
  form: Form,
  pieces: readonly Piece[],
  { papers = [PRINT_OPTIONS.paper.usual], print = {}, date = '', font, say }: ExportOptions,
): Promise<Result<FormFile[]>> {
  const files: FormFile[] = [];
  for (const paper of papers) {
    const grid = planTiles({ ...print, paper });
    if (!grid.ok) return grid;
    const content = await writePdf({
      pages: drawLabels(pieces, printInfo(form, pieces, date, say), grid.value),
      title: say(phrase('file.labels-title', { project: form.project.name })),
      say,
      font: font.bytes,
      fontName: font.name,
      creator: PROGRAM,
    });
    files.push({ name: `labels-${paper}.pdf`, type: 'application/pdf', content });
  }
  return success(files);
}

/** How pieces are printed: what was asked for by name is drawn, whatever else would tell it. */
export function printOptionsOf({ print, only }: Pick<ExportOptions, 'print' | 'only'>) {
  return only ? { ...print, plain: 'drawn' as const } : { ...print };
}

/** Whose pieces are printed, how it stands with the test tube, and the cautions for working with them. */
export function printInfo(form: Form, pieces: readonly Piece[], date: string, say: Say): PrintInfo {
  const { project, report } = form;
  const revision = say(phrase('file.revision', { revision: nameRevision(project) }));
  const stand = [date, revision].filter((part) => part !== '').join(' · ');
  const { name, displayUnits: unit } = project;
  const body = say(bodyInWords(project));
  const isAlone = pieces.every(({ material }) => material === TUBE);
  return {
    say,
    project: name,
    body,
    date: stand,
    unit,
    ...(report.tube && { first: [tellTube(report.tube, isAlone)] }),
    cautions: cautionsFor(pieces),
  };
}
