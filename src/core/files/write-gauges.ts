import { draftGauges } from '../assembly/index.ts';
import { type Result, success } from '../base/index.ts';
import type { Form } from '../form/index.ts';
import type { Piece } from '../pattern/index.ts';
import type { FormFile } from './files-of-form.ts';
import type { ExportOptions, FormatWriter } from './format-writer.ts';
import { writeCutterFiles, writeDxfFiles, writeSvgFiles } from './write-outlines.ts';
import { writePdfFiles } from './write-pages.ts';

/** What else gauges are written as where the form is. */
const WITH_FORM = { cutter: writeCutterFiles, dxf: writeDxfFiles } satisfies Record<string, FormatWriter>;

/**
 * Gauges to hold against the filled form: on pages to print, a file per paper, and on one sheet; for a cutting machine and as
 * outlines where the form's pieces are written so too.
 */
export async function writeGaugeFiles(
  form: Form,
  _pieces: readonly Piece[],
  { only: _only, ...options }: ExportOptions,
): Promise<Result<FormFile[]>> {
  const gauges = draftGauges(form, options.gauges ?? {}, options.date ?? '', options.say);
  if (!gauges.ok) return gauges;
  const { inside: _inside, ...outer } = form;
  const ofGauges: Form = { ...outer, ...gauges.value };
  const further = (['cutter', 'dxf'] as const).filter((format) => options.formats.includes(format));
  const writers: FormatWriter[] = [
    writePdfFiles,
    writeSvgFiles,
    ...further.map((format) => WITH_FORM[format]),
  ];
  const files: FormFile[] = [];
  const issues = [...gauges.issues];
  for (const write of writers) {
    const made = await write(ofGauges, gauges.value.pieces, options);
    if (!made.ok) return made;
    issues.push(...made.issues);
    files.push(...made.value.map((file) => ({ ...file, name: nameOfFile(file.name) })));
  }
  return success(files, issues);
}

/** Apart from the files of the form itself. */
function nameOfFile(name: string): string {
  return name.replace(/^(?:print|panels)\b/, 'gauges').replace(/\bgauge\b/, 'gauges');
}
