import { failure, type Result, success } from '../base/index.ts';
import type { Form } from '../form/index.ts';
import { PRINT_OPTIONS, type PrintPlan, picturePages, printPieces } from '../sheet/index.ts';
import type { ExportOptions } from './format-writer.ts';
import { piecesWanted } from './pieces-wanted.ts';
import { printInfo, printOptionsOf } from './write-pages.ts';

/**
 * How many pages and joints the printed pattern will have, and how its pages look, for the first paper asked for; nothing is written.
 * Fails as the print itself would.
 */
export function planPrint(
  form: Form,
  options: Pick<ExportOptions, 'papers' | 'print' | 'only' | 'date' | 'say'>,
): Result<PrintPlan> {
  const wanted = piecesWanted(form, options.only);
  if (!wanted.ok) return wanted;
  const paper = options.papers?.[0] ?? PRINT_OPTIONS.paper.usual;
  const info = printInfo(form, wanted.value, options.date ?? '', options.say);
  const job = printPieces(wanted.value, info, { ...printOptionsOf(options), paper });
  return job.ok ? success(picturePages(job.value, paper)) : failure(job.issues);
}
