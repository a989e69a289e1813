import { mmPerInch, type NumberOption, type OptionsOf, type OptionTable } from '../base/index.ts';
import type { AllowanceKind, RulerUnit } from './usual-allowances.ts';

/** Shapes a notch may have. */
export const NOTCH_SHAPES = ['slit', 't', 'outward'] as const;

/**
 * How a mark shows at the cut edge: a slit; a slit with a bar across its end (T), which is found again on cloth that closes
 * up; or a point that stands out, for cloth that frays.
 */
export type NotchShape = (typeof NOTCH_SHAPES)[number];

/**
 * What may be chosen for every piece: limits, unit, and what is taken where nothing was chosen. The only place that says so;
 * file, app and command line ask here.
 */
export const PATTERN_OPTIONS = {
  /**
   * Cloth beyond the sew line. Under what `ALLOWANCE_LIMITS` says of a seam, only an opening may be cut, and bare. Read in
   * `check-piece`, `plan-making`.
   */
  allowance: { unit: 'mm', min: 0, max: 50, usual: 10 },
  /** How marks show at the cut edge. Read in `draft-piece`. */
  notchShape: { choices: NOTCH_SHAPES, usual: 'slit' },
} as const satisfies OptionTable;

/** Allowances on offer where lengths are inches, mm: 3/8, 1/2 and 5/8 in exactly. A new project in inches begins with the first. */
export const INCH_ALLOWANCES = [3 / 8, 1 / 2, 5 / 8].map((inches) => inches * mmPerInch);

/**
 * Turn of one panel's grain from upright, counter-clockwise seen from outside; half way round a grain is the same grain.
 * Read in `lay-along-grain`, `make-report`.
 */
export const GRAIN_TURN = {
  unit: 'rad',
  min: -Math.PI / 2,
  max: Math.PI / 2,
  usual: 0,
} as const satisfies NumberOption;

/** One layer of wadding as it lies under the cover, not as it comes off the roll; ours. Read in `lay-pads`. */
export const WADDING = { unit: 'mm', min: 3, max: 30, usual: 8 } as const satisfies NumberOption;

/** What is chosen for every piece, the allowance also for some edges alone, mm. */
export interface PatternOptions extends OptionsOf<typeof PATTERN_OPTIONS> {
  /** Seam allowance by edge: a seam id or `base`, `neck`, `armholeRight`, `armholeLeft`. */
  readonly allowanceByEdge?: Readonly<Record<string, number>>;
  /** By kind of edge, where no edge of that id is named: the particular kinds before any seam and any opening. */
  readonly allowanceByKind?: {
    readonly [Kind in AllowanceKind | 'seam' | 'opening']?: number;
  };
  /** By material (`shell`, `webs`, `covers`, `arms`), where neither edge nor kind is named. */
  readonly allowanceByMaterial?: Readonly<Record<string, number>>;
}

/** What drafting is told besides: whose usual allowances hold where none was chosen. Usual: `cm`. */
export interface DraftOptions extends PatternOptions {
  readonly unit?: RulerUnit;
}
