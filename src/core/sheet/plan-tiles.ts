import {
  failure,
  type Issue,
  type OptionsOf,
  plain,
  type Result,
  success,
  withUsual,
  wordsOf,
} from '../base/index.ts';
import { findPaper, PAPERS } from './papers.ts';
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
  readonly paperName: string;
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
    const known = PAPERS.map((entry) => entry.id).join(', ');
    issues.push(error('unknown-paper', 'paper', `There is no paper called “${id}”. There are: ${known}.`));
  }
  if (!(margin >= PRINT_OPTIONS.margin.min))
    issues.push({
      ...error(
        'margin-out-of-range',
        'margin',
        `A margin of ${margin} mm cannot be used: give 0 mm or more.`,
      ),
      measured: margin,
      limit: 0,
    });
  const { min, max } = PRINT_OPTIONS.overlap;
  if (joint === 'overlap' && !(overlap >= min && overlap <= max)) {
    const message = `An overlap of ${overlap} mm cannot be used: give ${min} to ${max} mm, or butt joints.`;
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
    const message = `${wordsOf(paper.name)} with margins of ${margin} mm leaves ${Math.max(0, smallest).toFixed(1)} mm for the pattern; at least ${SMALLEST_CELL} mm is needed. Use smaller margins or larger paper.`;
    return failure([
      { ...error('paper-too-small', 'margin', message), measured: smallest, limit: SMALLEST_CELL },
    ]);
  }
  return success({
    paperId: paper.id,
    paperName: wordsOf(paper.name),
    pageWidth: paper.width,
    pageHeight,
    margin,
    overlap,
    cellWidth,
    cellHeight,
    isRoll: paper.height === null,
  });
}

function error(code: string, path: string, message: string): Issue {
  return { code, path, message: plain(message), severity: 'error' };
}
