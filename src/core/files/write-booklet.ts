import { type Result, success } from '../base/index.ts';
import { drawBooklet } from '../booklet/index.ts';
import { writePdf } from '../export/index.ts';
import type { Form } from '../form/index.ts';
import type { Piece } from '../pattern/index.ts';
import { PRINT_OPTIONS, planTiles } from '../sheet/index.ts';
import type { FormFile } from './files-of-form.ts';
import { type ExportOptions, PROGRAM } from './format-writer.ts';
import { laysOfForm } from './lays-of-form.ts';
import { phrase } from './phrases.ts';

/** On a roll the booklet is printed on the usual paper. */
const USUAL = PRINT_OPTIONS.paper.usual;

/** The booklet to lay beside the machine, a file per paper; a form that was not laid is laid first. */
export async function writeBookletFiles(
  form: Form,
  _pieces: readonly Piece[],
  { papers = [USUAL], print = {}, date, font, say }: ExportOptions,
): Promise<Result<FormFile[]>> {
  const { plans, materials, issues } = laysOfForm(form);
  const files: FormFile[] = [];
  for (const asked of papers) {
    const own = planTiles({ ...print, paper: asked });
    const grid = own.ok && own.value.isRoll ? planTiles({ ...print, paper: USUAL }) : own;
    if (!grid.ok) return grid;
    const { paperId, pageWidth, pageHeight, margin } = grid.value;
    const paper = { pageWidth, pageHeight, margin };
    const name = papers.length === 1 ? 'print-booklet.pdf' : `print-booklet-${paperId}.pdf`;
    if (files.some((file) => file.name === name)) continue;
    const content = await writePdf({
      pages: drawBooklet(form, { plans, materials, paper, say, ...(date && { date }) }),
      title: say(phrase('file.booklet-title', { project: form.project.name })),
      say,
      font: font.bytes,
      fontName: font.name,
      creator: PROGRAM,
    });
    files.push({ name, type: 'application/pdf', content });
  }
  return success(files, issues);
}
