import { type Result, success } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import { writePdf, writeSvg } from '../export/index.ts';
import type { Form } from '../form/index.ts';
import { drawLay, drawLayPages, drawListToBuy, viewsOfPlan } from '../laying/index.ts';
import type { Piece } from '../pattern/index.ts';
import { PRINT_OPTIONS, planTiles } from '../sheet/index.ts';
import type { FormFile } from './files-of-form.ts';
import { type ExportOptions, PROGRAM } from './format-writer.ts';
import { laysOfForm } from './lays-of-form.ts';
import { phrase } from './phrases.ts';

/** Pages a roll's plans are drawn on, mm. */
const PAGE_ON_ROLL = 297;

/** The lay plans: all on pages, a file per paper, and each in true size. A form that was not laid is laid first. */
export async function writeLayFiles(
  form: Form,
  _pieces: readonly Piece[],
  { papers = [PRINT_OPTIONS.paper.usual], print = {}, font, say }: ExportOptions,
): Promise<Result<FormFile[]>> {
  const pieces = [...form.pieces, ...(form.inside?.pieces ?? [])];
  const laying = form.project.laying ?? {};
  const { plans, materials, issues } = laysOfForm(form);
  const title = say(phrase('file.lay-title', { project: form.project.name }));
  const files: FormFile[] = [];
  for (const paper of papers) {
    const grid = planTiles({ ...print, paper });
    if (!grid.ok) return grid;
    const { pageWidth, margin, isRoll } = grid.value;
    const sheet = { pageWidth, pageHeight: isRoll ? PAGE_ON_ROLL : grid.value.pageHeight, margin };
    const content = await writePdf({
      pages: [
        ...drawListToBuy(materials, form.project.name, sheet, say),
        ...drawLayPages(plans, pieces, laying, form.project.name, sheet, say),
      ],
      title,
      say,
      font: font.bytes,
      fontName: font.name,
      creator: PROGRAM,
    });
    files.push({ name: `lay-plans-${paper}.pdf`, type: 'application/pdf', content });
  }
  for (const plan of plans)
    for (const [i, view] of viewsOfPlan(plan).entries()) {
      const box = { x: 0, y: 0, width: view.length, height: view.width };
      const drawn = drawLay(plan, view, pieces, laying[plan.use] ?? {}, box, say);
      const drawing: Drawing = { width: drawn.width, height: drawn.height, title, layers: drawn.layers };
      const number = plan.sheetsUsed > 1 ? `-${i + 1}` : '';
      files.push({
        name: `lay-${plan.use}${number}.svg`,
        type: 'image/svg+xml',
        content: writeSvg(drawing, { say }),
      });
    }
  return success(files, issues);
}
