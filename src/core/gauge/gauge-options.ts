import type { OptionsOf, OptionTable } from '../base/index.ts';

/** How gauges are cut; limits and usual values are ours, by common workshop practice, no source. */
export const GAUGE_OPTIONS = {
  /**
   * Between the form as it should be and the gauge's edge: cloth bulges between the tapes, and card is not cut finer. Read in
   * `make-gauges`.
   */
  clearance: { unit: 'mm', min: 0, max: 10, usual: 2 },
  /** Of the card round the opening where it is narrowest: less bends in the hand. Read in `make-gauges`. */
  strip: { unit: 'mm', min: 30, max: 100, usual: 40 },
} as const satisfies OptionTable;

export interface GaugeOptions extends OptionsOf<typeof GAUGE_OPTIONS> {
  /** Ids of levels, and `profile`; usual: all there are. */
  readonly levels?: readonly string[];
}
