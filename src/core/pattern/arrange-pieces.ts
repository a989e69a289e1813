import { failure, type Issue, plain, type Result, success, wordsOf } from '../base/index.ts';
import { type Drawing, makeLayer, pageFromUpright, placePoints } from '../drawing/index.ts';
import { boundsOfPoints } from '../math/index.ts';
import { drawPieces } from './draw-pieces.ts';
import { drawTestBars, TEST_BARS_SIZE } from './draw-test-bars.ts';
import { packOutlines } from './pack-outlines.ts';
import type { Piece } from './types.ts';

/** Usual width of dress-weight cloth, mm. */
const DEFAULT_SHEET_WIDTH = 1400;
const DEFAULT_GAP = 10;

export interface ArrangeOptions {
  /** Usable width of the cloth or paper, mm, default 1400. */
  readonly sheetWidth?: number;
  /** Least distance between two cut lines and to the sheet's edges, mm, default 10. */
  readonly gap?: number;
  readonly title?: string;
  /** Lay a piece that is wider than the sheet on its side: paper has no grain. Default false. */
  readonly turnsWide?: boolean;
}

/**
 * Lays pieces on one sheet, not turned unless asked (grain runs up the sheet), with test bars. Layers in order: `cut` (slits
 * before outlines, so that a machine cuts the small things first), `sew`, `mark`, `text`. Path ids are
 * `<piece>/cut`, `<piece>/notch/A1`, `<piece>/sew/A`, `<piece>/level/bust`, `<piece>/grain`, `test/…`.
 * Fails when a piece is wider than the sheet.
 */
export function arrangePieces(pieces: readonly Piece[], options: ArrangeOptions = {}): Result<Drawing> {
  const {
    sheetWidth = DEFAULT_SHEET_WIDTH,
    gap = DEFAULT_GAP,
    title = 'Pieces',
    turnsWide = false,
  } = options;
  const issues = checkOptions(sheetWidth, gap);
  if (issues.length > 0) return failure(issues);

  // 1. Pack the cut lines and the square of the test bars.
  const room = sheetWidth - 2 * gap;
  const upright = pieces.map((piece) => pageFromUpright(piece.cutLine, 0, 0));
  const angles = upright.map((outline) => (turnsWide && widthOf(outline) > room ? Math.PI / 2 : 0));
  const turned = upright.map((outline, i) => placePoints(outline, { dx: 0, dy: 0, angle: angles[i] }));
  const bars = TEST_BARS_SIZE;
  const packing = packOutlines(
    [...turned, Float64Array.of(0, 0, bars, 0, bars, bars, 0, bars)],
    sheetWidth,
    gap,
  );
  if ('tooWide' in packing)
    return failure([tooWideIssue(pieces[packing.tooWide], packing.width, sheetWidth, gap)]);

  // 2. Draw each piece at its place, and the test bars last: they name the sheet's final size.
  const placements = pieces.map((_, i) => ({ ...packing.offsets[i], angle: angles[i] }));
  const layers = drawPieces(pieces, placements);
  const { dx, dy } = packing.offsets[pieces.length];
  const height = Math.ceil(packing.height);
  const test = drawTestBars(dx, dy, sheetWidth, height);
  const extra: Readonly<Record<string, Drawing['layers'][number]['items']>> = {
    mark: test.marks,
    text: test.texts,
  };
  return success({
    width: sheetWidth,
    height,
    title,
    layers: layers.map(({ name, items }) => makeLayer(name, [...items, ...(extra[name] ?? [])])),
  });
}

function widthOf(outline: Float64Array): number {
  const { minX, maxX } = boundsOfPoints([outline]) ?? { minX: 0, maxX: 0 };
  return maxX - minX;
}

function checkOptions(sheetWidth: number, gap: number): Issue[] {
  const issues: Issue[] = [];
  if (!(sheetWidth >= 200 && sheetWidth <= 20_000)) {
    issues.push({
      code: 'sheet-width-out-of-range',
      path: 'sheetWidth',
      message: plain(`A sheet ${sheetWidth} mm wide cannot be used: give 200 to 20000 mm.`),
      severity: 'error',
      measured: sheetWidth,
      limit: sheetWidth > 20_000 ? 20_000 : 200,
    });
  }
  if (!(gap >= 0 && gap <= 200)) {
    issues.push({
      code: 'gap-out-of-range',
      path: 'gap',
      message: plain(`A gap of ${gap} mm between pieces cannot be used: give 0 to 200 mm.`),
      severity: 'error',
      measured: gap,
      limit: gap > 200 ? 200 : 0,
    });
  }
  return issues;
}

function tooWideIssue(piece: Piece | undefined, width: number, sheetWidth: number, gap: number): Issue {
  const name = piece ? `Piece “${wordsOf(piece.name)}”` : 'The block of test bars';
  return {
    code: 'piece-wider-than-sheet',
    path: 'sheetWidth',
    message: plain(
      `${name} is ${width.toFixed(0)} mm wide with its allowances; on a sheet of ${sheetWidth} mm only ${sheetWidth - 2 * gap} mm can be used.`,
    ),
    severity: 'error',
    measured: width,
    limit: sheetWidth - 2 * gap,
  };
}
