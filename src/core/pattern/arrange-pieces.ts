import { failure, type Issue, type Result, success } from '../base/index.ts';
import {
  type Drawing,
  type DrawingItem,
  type DrawingText,
  makeLayer,
  makePath,
  makeText,
  pageFromUpright,
} from '../drawing/index.ts';
import { drawTestBars, TEST_BARS_SIZE } from './draw-test-bars.ts';
import { packOutlines } from './pack-outlines.ts';
import type { Piece } from './types.ts';

/** Usual width of dress-weight cloth, mm. */
const DEFAULT_SHEET_WIDTH = 1400;
const DEFAULT_GAP = 10;
const ARROW = 4;

export interface ArrangeOptions {
  /** Usable width of the cloth or paper, mm, default 1400. */
  readonly sheetWidth?: number;
  /** Least distance between two cut lines and to the sheet's edges, mm, default 10. */
  readonly gap?: number;
  readonly title?: string;
}

/**
 * Lays pieces on one sheet, never turned (grain runs up the sheet), with test bars. Layers in order: `cut` (slits
 * before outlines, so that a machine cuts the small things first), `sew`, `mark`, `text`. Path ids are
 * `<piece>/cut`, `<piece>/notch/A1`, `<piece>/sew/A`, `<piece>/level/bust`, `<piece>/grain`, `test/…`.
 * Fails when a piece is wider than the sheet.
 */
export function arrangePieces(pieces: readonly Piece[], options: ArrangeOptions = {}): Result<Drawing> {
  const { sheetWidth = DEFAULT_SHEET_WIDTH, gap = DEFAULT_GAP, title = 'Pieces' } = options;
  const issues = checkOptions(sheetWidth, gap);
  if (issues.length > 0) return failure(issues);

  // 1. Pack the cut lines and the square of the test bars.
  const upsideDown = pieces.map((piece) => pageFromUpright(piece.cutLine, 0, 0));
  const bars = TEST_BARS_SIZE;
  const packing = packOutlines(
    [...upsideDown, Float64Array.of(0, 0, bars, 0, bars, bars, 0, bars)],
    sheetWidth,
    gap,
  );
  if ('tooWide' in packing)
    return failure([tooWideIssue(pieces[packing.tooWide], packing.width, sheetWidth, gap)]);

  // 2. Draw each piece at its place.
  const nextId = createIdGiver();
  const layers = { slits: [], cut: [], sew: [], mark: [], text: [] } as Record<string, DrawingItem[]>;
  for (const [i, piece] of pieces.entries()) drawPiece(piece, packing.offsets[i], layers, nextId);

  // 3. Test bars last: they name the sheet's final size.
  const { dx, dy } = packing.offsets[pieces.length];
  const height = Math.ceil(packing.height);
  const test = drawTestBars(dx, dy, sheetWidth, height);
  layers.mark.push(...test.marks);
  layers.text.push(...test.texts);
  return success({
    width: sheetWidth,
    height,
    title,
    layers: [
      makeLayer('cut', [...layers.slits, ...layers.cut]),
      makeLayer('sew', layers.sew),
      makeLayer('mark', layers.mark),
      makeLayer('text', layers.text),
    ],
  });
}

function checkOptions(sheetWidth: number, gap: number): Issue[] {
  const issues: Issue[] = [];
  if (!(sheetWidth >= 200 && sheetWidth <= 20_000)) {
    issues.push({
      code: 'sheet-width-out-of-range',
      path: 'sheetWidth',
      message: `A sheet ${sheetWidth} mm wide cannot be used: give 200 to 20000 mm.`,
      severity: 'error',
      measured: sheetWidth,
      limit: sheetWidth > 20_000 ? 20_000 : 200,
    });
  }
  if (!(gap >= 0 && gap <= 200)) {
    issues.push({
      code: 'gap-out-of-range',
      path: 'gap',
      message: `A gap of ${gap} mm between pieces cannot be used: give 0 to 200 mm.`,
      severity: 'error',
      measured: gap,
      limit: gap > 200 ? 200 : 0,
    });
  }
  return issues;
}

function tooWideIssue(piece: Piece | undefined, width: number, sheetWidth: number, gap: number): Issue {
  const name = piece ? `Piece "${piece.name}"` : 'The block of test bars';
  return {
    code: 'piece-wider-than-sheet',
    path: 'sheetWidth',
    message: `${name} is ${width.toFixed(0)} mm wide with its allowances; on a sheet of ${sheetWidth} mm only ${sheetWidth - 2 * gap} mm can be used.`,
    severity: 'error',
    measured: width,
    limit: sheetWidth - 2 * gap,
  };
}

function drawPiece(
  piece: Piece,
  offset: { readonly dx: number; readonly dy: number },
  layers: Record<string, DrawingItem[]>,
  nextId: (wanted: string) => string,
): void {
  const path = (points: Float64Array, id: string, closed = false): DrawingItem =>
    makePath(pageFromUpright(points, offset.dx, offset.dy), { id: nextId(`${piece.id}/${id}`), closed });

  layers.cut.push(path(piece.cutLine, 'cut', true));
  for (const notch of piece.notches) layers.slits.push(path(notch.points, `notch/${notch.id}`));
  for (const line of piece.sewLines) layers.sew.push(path(line.points, `sew/${line.name}`));
  for (const line of piece.levelLines) layers.mark.push(path(line.points, `level/${line.id}`));
  if (piece.grainLine.length > 0) {
    layers.mark.push(path(piece.grainLine, 'grain'));
    const [x0, y0, x1, y1] = piece.grainLine;
    layers.mark.push(path(arrowHead(x0, y0, 1), 'grain/arrow-down'));
    layers.mark.push(path(arrowHead(x1, y1, -1), 'grain/arrow-up'));
  }
  for (const text of piece.texts) layers.text.push(drawText(text, offset));
}

function arrowHead(x: number, y: number, direction: number): Float64Array {
  return Float64Array.of(x - ARROW / 2, y + direction * ARROW, x, y, x + ARROW / 2, y + direction * ARROW);
}

function drawText(
  text: Piece['texts'][number],
  offset: { readonly dx: number; readonly dy: number },
): DrawingText {
  const { anchor, angle, size } = text;
  return makeText(offset.dx + text.x, offset.dy - text.y, text.text, size, { anchor, angle: -angle });
}

/** Gives every id once; a second asker gets `…-2`. */
function createIdGiver(): (wanted: string) => string {
  const given = new Set<string>();
  return (wanted) => {
    let id = wanted;
    for (let i = 2; given.has(id); i++) id = `${wanted}-${i}`;
    given.add(id);
    return id;
  };
}
