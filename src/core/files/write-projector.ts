import { failure, type Result, success } from '../base/index.ts';
import { writePdf, writeSvg } from '../export/index.ts';
import type { Form } from '../form/index.ts';
import type { Piece } from '../pattern/index.ts';
import { drawForProjector, PRINT_OPTIONS } from '../sheet/index.ts';
import type { FormFile } from './files-of-form.ts';
import { type ExportOptions, PROGRAM } from './format-writer.ts';
import { phrase } from './phrases.ts';

/** All pieces to project on cloth, as PDF and as SVG; a file for each page. */
export async function writeProjectorFiles(
  form: Form,
  pieces: readonly Piece[],
  { projector = {}, font, say }: ExportOptions,
): Promise<Result<FormFile[]>> {
  const { name, displayUnits: unit } = form.project;
  const title = say(phrase('file.projector-title', { project: name }));
  const { ground = PRINT_OPTIONS.ground.usual, projectedSquare } = projector;
  const drawn = drawForProjector(pieces, {
    ...{ say, title, unit, ground },
    ...(projectedSquare && { projectedSquare }),
  });
  if (!drawn.ok) return failure(drawn.issues);
  const content = await writePdf({
    pages: drawn.value,
    title,
    say,
    font: font.bytes,
    fontName: font.name,
    creator: PROGRAM,
  });
  return success([
    { name: 'projector.pdf', type: 'application/pdf', content },
    ...drawn.value.map((page, i, { length }) => ({
      name: length === 1 ? 'projector.svg' : `projector-${i + 1}.svg`,
      type: 'image/svg+xml',
      content: writeSvg(page, { say }),
    })),
  ]);
}
