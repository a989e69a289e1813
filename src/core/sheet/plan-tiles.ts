import {
  failure,
  type Issue,
  type OptionsOf,
  type Phrase,
  type Result,
  success,
  withUsual,
} from '../base/index.ts';
import { findPaper, PAPERS } from './papers.ts';
import { phrase } from './phrases.ts';
import { PRINT_OPTIONS } from './sheet-options.ts';

/** Strip at a page's foot that names the page, mm. */
export const FOOTER = 8;
/** A cell smaller than this holds no joining marks, mm. */
const SMALLEST_CELL = 60;
/** A page description holds at most 14 400 units of 1/72 in a side (PDF 1.7, ISO 32000-1 annex C): 5080 mm, less the room for a print correction. */
const LONGEST_PAGE = 4600;

export type TileOptions = OptionsOf<typeof PRINT_OPTIONS>;

/** How a drawing is cut into pages: each page shows one cell, and to its right and below it a strip of its neighbours. mm. */
export interface TileGrid {
  readonly paperId: string;
  readonly pageWidth: number;
  readonly pageHeight: number;
  readonly margin: number;
  /** 0 for butt joints. */
  readonly overlap: number;
  readonly cellWidth: number;
  readonly cellHeight: number;
  /** A roll: pages are as long as what is on them. */
  readonly isRoll: boolean;
}

/** Sizes of pages and cells on a paper. Fails with every option that cannot be: unknown paper, margins that eat it. */
export function planTiles(options: TileOptions = {}): Result<TileGrid> {
  const { paper: id, margin, joint, overlap: strip } = withUsual(PRINT_OPTIONS, options);
  const overlap = joint === 'butt' ? 0 : strip;
  const issues: Issue[] = [];
  const paper = findPaper(id);
  if (!paper) {
    const known = PAPERS.map((entry) => entry.id);
    issues.push(error('unknown-paper', 'paper', phrase('paper.unknown', { paper: id, known })));
  }
  const { min: least } = PRINT_OPTIONS.margin;
  if (!(margin >= least))
    issues.push({
      ...error('margin-out-of-range', 'margin', phrase('paper.margin', { margin, least })),
      measured: margin,
      limit: least,
    });
  const { min, max } = PRINT_OPTIONS.overlap;
  if (joint === 'overlap' && !(overlap >= min && overlap <= max)) {
    const message = phrase('paper.overlap', { overlap, least: min, most: max });
    issues.push({
      ...error('overlap-out-of-range', 'overlap', message),
      measured: overlap,
      limit: overlap < min ? min : max,
    });
  }
  if (!paper || issues.length > 0) return failure(issues);

  const pageHeight = paper.height ?? LONGEST_PAGE;
  const cellWidth = paper.width - 2 * margin - overlap;
  const cellHeight = pageHeight - 2 * margin - overlap - FOOTER;
  const smallest = Math.min(cellWidth, cellHeight);
  if (!(smallest >= SMALLEST_CELL)) {
    const left = Math.max(0, smallest);
    const message = phrase('paper.too-small', { paper: paper.name, margin, left, least: SMALLEST_CELL });
    return failure([
      { ...error('paper-too-small', 'margin', message), measured: smallest, limit: SMALLEST_CELL },
    ]);
  }
  return success({
    paperId: paper.id,
    pageWidth: paper.width,
    pageHeight,
    margin,
    overlap,
    cellWidth,
    cellHeight,
    isRoll: paper.height === null,
  });
}

function error(code: string, path: string, message: Phrase): Issue {
  return { code, path, message, severity: 'error' };
}
