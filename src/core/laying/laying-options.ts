import type { OptionTable } from '../base/index.ts';

/** How a cloth is printed or woven; lengths of one repeat. Read where the table's own key says. */
const PRINT = {
  /** Read in `draw-print`, `turns-of-piece`. */
  kind: { choices: ['plain', 'stripesAlong', 'stripesAcross', 'checks', 'dots', 'photo'], usual: 'plain' },
  /** One repeat from selvedge to selvedge; 0: the print does not change that way. Read in `match-print`. */
  across: { unit: 'mm', min: 0, max: 2000, usual: 0 },
  /** One repeat along the cloth. Read in `match-print`. */
  along: { unit: 'mm', min: 0, max: 2000, usual: 0 },
  /** From the selvedge to the middle of the first motif. Read in `match-print`. */
  firstAcross: { unit: 'mm', min: 0, max: 2000, usual: 0 },
  /** From the cut end of the cloth to the middle of the first motif. Read in `match-print`. */
  firstAlong: { unit: 'mm', min: 0, max: 2000, usual: 0 },
  /**
   * Whether the print goes on across the seams: at the same height all round, and also from side to side, or not at all. As a rule
   * both ways for checks, else by height. Read in `match-print`.
   */
  meets: { choices: ['byHeight', 'bothWays', 'no'], usual: null },
  /** The level at which it does. Read in `match-print`. */
  level: { choices: ['hip', 'highHip', 'waist', 'underbust', 'bust', 'upperChest'], usual: 'waist' },
  /** Where the middle of a motif comes to lie. Read in `match-print`. */
  middle: { choices: ['centreFront', 'bustPoints'], usual: 'centreFront' },
  /** How far to the wearer's left of there, seen from the front. Read in `match-print`. */
  shiftAcross: { unit: 'mm', min: -1000, max: 1000, usual: 0 },
  /** How far over it. Read in `match-print`. */
  shiftUp: { unit: 'mm', min: -1000, max: 1000, usual: 0 },
} as const satisfies OptionTable;

/** What pieces are laid on: limits, unit, and what is taken where nothing was chosen. */
export const LAYING_OPTIONS = {
  /** From selvedge to selvedge, or of a sheet; as a rule as `USES` says. Read in `lay-ground`. */
  stockWidth: { unit: 'mm', min: 100, max: 5000, usual: null },
  /** Of a sheet, or of the cloth one has; as a rule cloth is as long as needed and sheets are as `USES` says. Read in `lay-ground`. */
  stockLength: { unit: 'mm', min: 100, max: 100_000, usual: null },
  /** Not to be cut from, along both sides of a cloth (common practice: what a selvedge takes). Read in `lay-ground`. */
  selvedge: { unit: 'mm', min: 0, max: 100, usual: 10 },
  /** Tops of all pieces to one end, or to either. As a rule one way where there is a print. Read in `turns-of-piece`. */
  ways: { choices: ['one', 'both'], usual: null },
  /** How far off the grain a piece may be turned to save cloth. Read in `turns-of-piece`. */
  grainTolerance: { unit: 'rad', min: 0, max: 0.18, usual: 0 },
  /** Least distance between two cut lines; at 0 neighbours share one. As a rule as `USES` says. Read in `nest-problem`. */
  leastGap: { unit: 'mm', min: 0, max: 100, usual: null },
  /** Cloth folded along its length, right side out: twins are cut through both layers. Read in `lay-ground`. */
  isFolded: { usual: false },
  /** What the cloth loses in length when it is washed before cutting (common practice for cotton). Read in `length-to-buy`. */
  shrinkage: { unit: 'share', min: 0, max: 0.2, usual: 0.03 },
  /** Of interfacing and lining: fused to, or cut with, the laid length of the shell's cloth; else laid for itself. Read in `lay-tasks`. */
  follows: { usual: true },
  /** Read in `match-print`. */
  print: PRINT,
} as const satisfies OptionTable;
