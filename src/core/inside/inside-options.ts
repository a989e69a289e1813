import type { NumberOption, OptionsOf, OptionTable } from '../base/index.ts';

/** A girth of the filled test tube, as a tape over the cloth takes it; `limitsOfTestTube` judges closer. */
const TUBE_GIRTH = { unit: 'mm', min: 500, max: 900, usual: null } as const satisfies NumberOption;

/** The test tube's girths at its three lines, from the bottom up. Read in `test-tube-growth`. */
const TEST_TUBE = {
  measure1: TUBE_GIRTH,
  measure2: TUBE_GIRTH,
  measure3: TUBE_GIRTH,
} as const satisfies OptionTable;

/** Straps at a level, whatever is usual there; as a rule by `parts`. Read in `plan-braces`. */
const STRAPS = { choices: ['with', 'without'], usual: null } as const;
const STRAPS_AT = {
  hip: STRAPS,
  highHip: STRAPS,
  waist: STRAPS,
  underbust: STRAPS,
  bust: STRAPS,
  upperChest: STRAPS,
} as const satisfies OptionTable;

/**
 * What the maker may choose for the inside: limits, unit, and what is taken where nothing was chosen. The only place that says
 * so; file, app and command line ask here. The order is that in which the keys are told.
 */
export const INSIDE_OPTIONS = {
  /** Outside diameter of the pole, measured. Read in `design-inside`, `judge-stand`, `list-materials`. */
  tubeDiameter: { unit: 'mm', min: 5, max: 200, usual: 25 },
  /**
   * One plate, all its layers; as a rule two layers of 4 mm corrugated card. Read in `design-inside`, `plate-pieces`,
   * `list-materials`.
   */
  boardThickness: { unit: 'mm', min: 1, max: 30, usual: 8 },
  /**
   * Shell and interfacing together. Read in `plate-pieces`, `inside-pieces`, `cloth-growth`, `test-tube-growth`,
   * `plan-making`, `order-of-work-prepare`.
   */
  clothThickness: { unit: 'mm', min: 0.1, max: 10, usual: 0.6 },
  /** Largest deviation from the body that is still wanted at waist and hip. Read in `design-inside`. */
  wantedDeviation: { unit: 'mm', min: 0.5, max: 50, usual: 3 },
  /**
   * Where front-to-back webs are held: on seams, or on lines drawn inside the panels where they hold better. As a rule on
   * seams if that brings the wanted deviation, else on panels. Read in `design-inside`.
   */
  webPlaces: { choices: ['seams', 'panels'], usual: null },
  /**
   * How many inner parts: the fewest that hold the filled form in shape, or all by which each level keeps its shape alone. Where panels
   * are not cut for the filling, all. Read in `parts-of-inside`.
   */
  parts: { choices: ['fewest', 'all'], usual: 'fewest' },
  /** False: no straps from the sides to the sleeve, wherever they would help. Read in `plan-braces`. */
  straps: { usual: true },
  /** Straps at single levels, whatever holds as a rule. Read in `plan-braces`. */
  strapsAt: STRAPS_AT,
  /** A pair of webs in the throat, over the end of the front tie. Read in `design-inside`. */
  throat: { usual: true },
  /**
   * Cloth covers over the plates, else tape round their rims; as a rule with all parts, and where there are arms, whose magnets lie under
   * covers. Read in `parts-of-inside`.
   */
  plateCovers: { choices: ['with', 'without'], usual: null },
  /**
   * Panels and braces are cut so that the filled form comes out as the body. Otherwise as unrolled, smaller by the growth of
   * the test tube all over. Read in `filling`,
   * `follow-project`, `selectors`.
   */
  recut: { usual: true },
  /** Pressure of the filling. Read in `cloth-growth`, `check-inside`. */
  pressure: { unit: 'kPa', min: 0.1, max: 50, usual: 3 },
  /** Stiffness of the fused cloth, force per width. Read in `cloth-growth`, `check-inside`. */
  clothStiffness: { unit: 'N/mm', min: 1, max: 1000, usual: 40 },
  /**
   * Growth of the girth found on the maker's own test tube of 200 mm; replaces pressure over stiffness, and is taken off the
   * panels. As a rule what the test tube's girths show, if there are any. More than the most no firm cloth grows: the tube
   * was drawn, sewn or read wrong (ours). Read in `test-tube-growth`, `check-inside`.
   */
  measuredGrowth: { unit: 'share', min: 0, max: 0.2, usual: null },
  /** Instead of `measuredGrowth`, the girths it is worked out from. Read in `test-tube-growth`. */
  testTube: TEST_TUBE,
  /** Mass of the filling in the test tube, weighed; as a rule a firm one's, which is practice alone. Read in `density-of-filling`. */
  testTubeFill: { unit: 'kg', min: 0.1, max: 2, usual: null },
  /**
   * All that will lie over the shell, as wadding and a cover; taken off the panels. Read in `cloth-growth`,
   * `filling-of-form`.
   */
  coverThickness: { unit: 'mm', min: 0, max: 40, usual: 0 },
  /** Magnets that locate an arm, outside diameter. Read in `arm-joint`. */
  magnetDiameter: { unit: 'mm', min: 4, max: 60, usual: 15 },
  /** Peg that carries an arm. Read in `arm-joint`. */
  pegDiameter: { unit: 'mm', min: 4, max: 60, usual: 12 },
  /** The heaviest garment. Read in `judge-stand`. */
  garmentMass: { unit: 'kg', min: 0, max: 100, usual: 3 },
  /** How far the garment's weight hangs off the pole. Read in `judge-stand`. */
  garmentOffset: { unit: 'mm', min: 0, max: 1000, usual: 60 },
  /** How high over the floor that weight hangs; as a rule at the waist. Read in `judge-stand`. */
  garmentHeight: { unit: 'mm', min: 0, max: 2500, usual: null },
  /** Floor to waist on the stand; as a rule the person's own, by `heightOfWaist`. Read in `height-of-waist`. */
  waistHeight: { unit: 'mm', min: 300, max: 2000, usual: null },
  /** Legs of the foot, spread evenly. Read in `judge-stand`. */
  legs: { unit: 'count', min: 3, max: 8, usual: 5 },
  /** Pole to the ends of the legs. Read in `judge-stand`. */
  legRadius: { unit: 'mm', min: 50, max: 1000, usual: 300 },
  /** Mass of base and pole. Read in `judge-stand`. */
  standMass: { unit: 'kg', min: 0.1, max: 100, usual: 6 },
  /** Read in `judge-stand`. */
  poleMaterial: { choices: ['steel', 'aluminium', 'beech', 'pvc'], usual: 'steel' },
  /** Wall of the tube; wood is solid as a rule, which `wallOfTube` says. Read in `packing-of-tube`. */
  tubeWall: { unit: 'mm', min: 0.2, max: 50, usual: 1.5 },
  /**
   * Outside diameter of a stand's own pole, fixed or to be set in height, over which the tube goes; as a rule the tube itself stands in
   * the foot. Read in `packing-of-tube`.
   */
  stemDiameter: { unit: 'mm', min: 5, max: 200, usual: null },
} as const satisfies OptionTable;

/** What the maker chose for the inside. */
export type InsideOptions = OptionsOf<typeof INSIDE_OPTIONS>;
export type TestTubeReadings = OptionsOf<typeof TEST_TUBE>;
export type WebPlaces = (typeof INSIDE_OPTIONS.webPlaces.choices)[number];
