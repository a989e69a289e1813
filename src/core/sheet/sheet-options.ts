import type { NumberOption, OptionTable } from '../base/index.ts';
import { PAPERS } from './papers.ts';

/** How pieces go to paper: limits, unit, and what is taken where nothing was chosen. Read in `plan-tiles`. */
export const PRINT_OPTIONS = {
  /** Id in the table of papers. Read in `plan-tiles`, `read-cutting`. */
  paper: { choices: PAPERS.map(({ id }) => id), usual: 'a4' },
  /**
   * Empty margin of the paper on all four sides; the usual one keeps clear of the widest unprintable edges of home printers
   * (6.35 mm and less by their handbooks). Read in `plan-tiles`.
   */
  margin: { unit: 'mm', min: 0, max: 50, usual: 10 },
  /** Lay one page over its neighbour's strip, or cut both and put them edge to edge. Read in `plan-tiles`. */
  joint: { choices: ['overlap', 'butt'], usual: 'overlap' },
  /** Draw a right and a left piece that are alike once, or apart. Read in `choose-drawn`. */
  twins: { choices: ['once', 'apart'], usual: 'once' },
  /** Tell what ruler, compass or another piece gives on a sheet of numbers, or draw it too. Read in `choose-drawn`. */
  plain: { choices: ['told', 'drawn'], usual: 'told' },
  /** Ground of the page that is projected: dark where the room is dark. Read in `draw-for-projector`. */
  ground: { choices: ['light', 'dark'], usual: 'light' },
  /**
   * Pages of the booklet: as large as the paper, of A5, or two on a side of the paper in the order for folding. Read in
   * `write-booklet`.
   */
  booklet: { choices: ['same', 'a5', 'folded'], usual: 'same' },
  /** Width of the strip; not in the file. Read in `plan-tiles`. */
  overlap: { unit: 'mm', min: 5, max: 40, usual: 10 },
} as const satisfies OptionTable;

/** How pieces go to a cutting machine; the usual one is a knife that needs no correction. Read in `layOutForCutter`. */
export const CUTTER_OPTIONS = {
  /** Width of the cut: outlines move out and cut-outs in by half of it. Read in `lay-out-for-cutter`. */
  kerf: { unit: 'mm', min: 0, max: 3, usual: 0 },
  /**
   * A dragged knife's tip trails its axis by this much; cut lines become the way of the axis. Read in
   * `lay-out-for-cutter`.
   */
  bladeOffset: { unit: 'mm', min: 0, max: 2, usual: 0 },
  /**
   * How far a dragged knife goes on past the start of a closed cut, so that it comes free. Read in `lay-out-for-cutter`.
   */
  overcut: { unit: 'mm', min: 0, max: 5, usual: 0 },
  /** Draw letters in single strokes, for a pen. Read in `lay-out-for-cutter`. */
  strokeText: { usual: false },
  /**
   * Divide cloth pieces larger than the mat, for templates; nothing is added where they part. Otherwise they are refused. Read in
   * `lay-out-for-cutter`.
   */
  divides: { usual: false },
} as const satisfies OptionTable;

/**
 * What the four sides and the diagonal of the large square measure as projected; nothing beyond is a square that a projector nearly got
 * right. Without them nothing is corrected. Read in `find-homography`.
 */
export const PROJECTED_LENGTH = {
  unit: 'mm',
  min: 100,
  max: 2000,
  usual: null,
} as const satisfies NumberOption;

/** Width and height of the machine's mat or bed; without one, one sheet as large as needed. Read in `lay-out-for-cutter`. */
export const MAT_SIDE = { unit: 'mm', min: 150, max: 5000, usual: null } as const satisfies NumberOption;

/**
 * What a long bar of the first page measures on this printer; wide enough for every printed bar, so that a wrong scale is
 * told by `correctionFromBars` and not refused. Without it nothing is corrected.
 */
export const MEASURED_BAR = { unit: 'mm', min: 50, max: 250, usual: null } as const satisfies NumberOption;
