import { type Issue, type Result, type Say, success } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import { CUTTER_COLOURS, writeDxf, writeSvg } from '../export/index.ts';
import type { Form } from '../form/index.ts';
import { boundsOfPoints } from '../math/index.ts';
import {
  arrangePieces,
  drawPieces,
  materialInShort,
  type Piece,
  sideInShort,
  titleOfSheet,
} from '../pattern/index.ts';
import { layOutForCutter } from '../sheet/index.ts';
import type { FormFile } from './files-of-form.ts';
import type { ExportOptions } from './format-writer.ts';

/** mm; what laser drivers take as a line to cut: 0.001 in (common practice). */
const HAIRLINE = 0.025;

/** The sheets as they are laid out, a file per material. */
export function writeSvgFiles(
  form: Form,
  pieces: readonly Piece[],
  options: ExportOptions,
): Result<FormFile[]> {
  const drawings = options.only ? arrangeAnew(form, pieces, options.say) : success(form.drawings);
  if (!drawings.ok) return drawings;
  return success(
    drawings.value.map(({ material, drawing }) => ({
      name: material === 'shell' ? 'panels.svg' : `${material}.svg`,
      type: 'image/svg+xml',
      content: writeSvg(drawing, { say: options.say }),
    })),
  );
}

function arrangeAnew(form: Form, pieces: readonly Piece[], say: Say): Result<Form['drawings']> {
  const drawings: { material: string; drawing: Drawing }[] = [];
  for (const material of new Set(pieces.map((piece) => piece.material))) {
    const own = pieces.filter((piece) => piece.material === material);
    const sheet = arrangePieces(own, { title: say(titleOfSheet(form.project.name, material)), say });
    if (!sheet.ok) return sheet;
    drawings.push({ material, drawing: sheet.value });
  }
  return success(drawings);
}

/** One file per material, or per mat; hairlines, colours by layer. */
export function writeCutterFiles(
  form: Form,
  pieces: readonly Piece[],
  { cutter = {}, only, say }: ExportOptions,
): Result<FormFile[]> {
  const { colours, ...layout } = cutter;
  const files: FormFile[] = [];
  const warnings: Issue[] = [];
  for (const material of new Set(pieces.map((piece) => piece.material))) {
    const own = pieces.filter((piece) => piece.material === material);
    const laid = only ? undefined : form.drawings.find((sheet) => sheet.material === material)?.drawing;
    const title = say(titleOfSheet(form.project.name, material));
    const sheets = layOutForCutter(own, { ...layout, title, say, ...(laid ? { laid } : {}) });
    if (!sheets.ok) return sheets;
    warnings.push(...sheets.issues);
    for (const { name, drawing } of sheets.value) {
      const content = writeSvg(drawing, {
        say,
        colours: { ...CUTTER_COLOURS, ...colours },
        hairline: HAIRLINE,
      });
      const parts = ['cutter', material, name].filter((part) => part !== '');
      files.push({ name: `${parts.join('-')}.svg`, type: 'image/svg+xml', content });
    }
  }
  return success(files, warnings);
}

/** All pieces side by side, each a block; the keys of its notes stay as readers of the exchange format know them. */
export function writeDxfFiles(
  _form: Form,
  pieces: readonly Piece[],
  { say }: ExportOptions,
): Result<FormFile[]> {
  const gap = 20;
  let x = 0;
  const blocks = pieces.map((piece) => {
    const { minX = 0, minY = 0, maxX = 0, maxY = 0 } = boundsOfPoints([piece.cutLine]) ?? {};
    const [width, height] = [maxX - minX, maxY - minY];
    const layers = drawPieces([piece], [{ dx: -minX, dy: maxY }]);
    const block = {
      name: piece.id,
      drawing: { width, height, title: say(piece.name), layers },
      x,
      y: 0,
      notes: [
        `Piece Name: ${say(piece.name)}`,
        'Quantity: 1',
        `Material: ${say(materialInShort(piece.material))}`,
        `Side: ${say(sideInShort(piece.side))}`,
      ],
    };
    x += width + gap;
    return block;
  });
  const sheetHeight = Math.max(0, ...blocks.map(({ drawing }) => drawing.height));
  return success([{ name: 'panels.dxf', type: 'image/vnd.dxf', content: writeDxf({ blocks, sheetHeight }) }]);
}
