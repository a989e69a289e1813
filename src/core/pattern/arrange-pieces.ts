import { failure, type Issue, type Result, type Say, success } from '../base/index.ts';
import { type Drawing, makeLayer, pageFromUpright, placePoints } from '../drawing/index.ts';
import { boundsOfPoints } from '../math/index.ts';
import { drawPieces } from './draw-pieces.ts';
import { drawTestBars, TEST_BARS_SIZE } from './draw-test-bars.ts';
import { packOutlines } from './pack-outlines.ts';
import { phrase } from './phrases.ts';
import type { Piece } from './types.ts';

/** Usual width of dress-weight cloth, mm. */
const DEFAULT_SHEET_WIDTH = 1400;
const DEFAULT_GAP = 10;
const SHEET_WIDTHS = { least: 200, most: 20_000 } as const;
const GAPS = { least: 0, most: 200 } as const;

export interface ArrangeOptions {
  /** Usable width of the cloth or paper, mm, default 1400. */
  readonly sheetWidth?: number;
  /** Least distance between two cut lines and to the sheet's edges, mm, default 10. */
  readonly gap?: number;
  readonly title?: string;
  /** Lay a piece that is wider than the sheet on its side: paper has no grain. Default false. */
  readonly turnsWide?: boolean;
  /** Words beside the test bars. */
  readonly say: Say;
}

/**
 * Lays pieces on one sheet, not turned unless asked (grain runs up the sheet), with test bars. Layers in order: `cut` (slits
 * before outlines, so that a machine cuts the small things first), `sew`, `mark`, `text`. Path ids are
 * `<piece>/cut`, `<piece>/notch/A1`, `<piece>/sew/A`, `<piece>/level/bust`, `<piece>/grain`, `test/…`.
 * Fails when a piece is wider than the sheet.
 */
export function arrangePieces(pieces: readonly Piece[], options: ArrangeOptions): Result<Drawing> {
  const {
    say,
    sheetWidth = DEFAULT_SHEET_WIDTH,
    gap = DEFAULT_GAP,
    title = say(phrase('piece.sheet-of-all')),
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
  const test = drawTestBars(dx, dy, sheetWidth, height, say);
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
  if (!(sheetWidth >= SHEET_WIDTHS.least && sheetWidth <= SHEET_WIDTHS.most)) {
    issues.push({
      code: 'sheet-width-out-of-range',
      path: 'sheetWidth',
      message: phrase('piece.sheet-width', { width: sheetWidth, ...SHEET_WIDTHS }),
      severity: 'error',
      measured: sheetWidth,
      limit: sheetWidth > SHEET_WIDTHS.most ? SHEET_WIDTHS.most : SHEET_WIDTHS.least,
    });
  }
  if (!(gap >= GAPS.least && gap <= GAPS.most)) {
    issues.push({
      code: 'gap-out-of-range',
      path: 'gap',
      message: phrase('piece.gap', { gap, ...GAPS }),
      severity: 'error',
      measured: gap,
      limit: gap > GAPS.most ? GAPS.most : GAPS.least,
    });
  }
  return issues;
}

function tooWideIssue(piece: Piece | undefined, width: number, sheetWidth: number, gap: number): Issue {
  const usable = sheetWidth - 2 * gap;
  const values = { width, sheet: sheetWidth, usable };
  return {
    code: 'piece-wider-than-sheet',
    path: 'sheetWidth',
    message: piece
      ? phrase('piece.wider-than-sheet', { piece: piece.name, ...values })
      : phrase('test-bars.wider-than-sheet', values),
    severity: 'error',
    measured: width,
    limit: usable,
  };
}
