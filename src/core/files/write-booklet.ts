import { failure, type Result, success, withUsual } from '../base/index.ts';
import {
  type BookletKind,
  type BookletPaper,
  drawBooklet,
  eachPicture,
  foldPages,
  pictureRoomOn,
} from '../booklet/index.ts';
import type { Drawing } from '../drawing/index.ts';
import { writePdf } from '../export/index.ts';
import type { Form } from '../form/index.ts';
import { planMaking } from '../making/index.ts';
import type { Piece } from '../pattern/index.ts';
import { PRINT_OPTIONS, planTiles, type TileGrid } from '../sheet/index.ts';
import type { FormFile } from './files-of-form.ts';
import { type ExportOptions, PROGRAM } from './format-writer.ts';
import { laysOfForm } from './lays-of-form.ts';
import { phrase } from './phrases.ts';

/** On a roll the booklet is printed on the usual paper. */
const USUAL = PRINT_OPTIONS.paper.usual;
/** ISO 216, mm. */
const A5 = { pageWidth: 148, pageHeight: 210 } as const;
/** Of what a booklet takes, laying its pieces if they are not laid yet; and of what is left, its pictures. */
const LAYING = 0.4;
const PICTURES = 0.55;

/**
 * The booklet to lay beside the machine, a file per paper; a form that was not laid is laid first. Between two pictures `goesOn` is
 * asked; a booklet that is stopped fails without an issue.
 */
export async function writeBookletFiles(
  form: Form,
  _pieces: readonly Piece[],
  { papers = [USUAL], print = {}, date, font, say, goesOn }: ExportOptions,
): Promise<Result<FormFile[]>> {
  const { plans, materials, issues } = laysOfForm(form);
  const { booklet: kind } = withUsual(PRINT_OPTIONS, print);
  const laid = form.laid ? 0 : LAYING;
  if ((await goesOn?.(laid)) === false) return failure([]);
  const files: FormFile[] = [];
  for (const [done, asked] of papers.entries()) {
    const own = planTiles({ ...print, paper: asked });
    const grid = own.ok && own.value.isRoll ? planTiles({ ...print, paper: USUAL }) : own;
    if (!grid.ok) return grid;
    const name = papers.length === 1 ? 'print-booklet.pdf' : `print-booklet-${grid.value.paperId}.pdf`;
    if (files.some((file) => file.name === name)) continue;
    const paper = pageOf(grid.value, kind);
    const pictures = await drawPictures(form, paper, say, (share) =>
      goesOn?.(laid + ((1 - laid) * (done + PICTURES * share)) / papers.length),
    );
    if (!pictures) return failure([]);
    const wishes = { plans, materials, paper, kind, pictures, say, ...(date && { date }) };
    const pages = drawBooklet(printedOn(form, asked), wishes);
    const content = await writePdf({
      pages: kind === 'folded' ? foldPages(pages) : pages,
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

/** The form as its pattern goes on this paper, which the order of work names with its bars, whatever the project says. */
function printedOn(form: Form, paper: string): Form {
  const { project, making } = form;
  if (!making || paper === (project.cutting.paper ?? USUAL)) return form;
  const changed = { ...form, project: { ...project, cutting: { ...project.cutting, paper } } };
  return { ...changed, making: planMaking(changed).making };
}

/** The size of one page. */
function pageOf({ pageWidth, pageHeight, margin }: TileGrid, kind: BookletKind): BookletPaper {
  if (kind === 'a5') return { ...A5, margin };
  return kind === 'folded'
    ? { pageWidth: pageHeight / 2, pageHeight: pageWidth, margin }
    : { pageWidth, pageHeight, margin };
}

/** Null when stopped. */
async function drawPictures(
  form: Form,
  paper: BookletPaper,
  say: ExportOptions['say'],
  goesOn: (share: number) => boolean | Promise<boolean> | undefined,
): Promise<Map<string, Drawing> | null> {
  const pictures = new Map<string, Drawing>();
  const count = form.making?.steps.length ?? 0;
  for (const [id, picture] of eachPicture(form, say, pictureRoomOn(paper))) {
    pictures.set(id, picture);
    if ((await goesOn(pictures.size / count)) === false) return null;
  }
  return pictures;
}
