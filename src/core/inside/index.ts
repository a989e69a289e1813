export { allowanceOfCover } from './board-pieces.ts';
export { CAUTIONS, type Caution, cautionsFor } from './cautions.ts';
export { checkSkippedTube, type LevelSpread, spreadWithoutTube } from './check-skipped-tube.ts';
export {
  cutGirth,
  depthOfShell,
  doesTakeOff,
  growthOfGirth,
  outsideOfCloth,
  takenOffBy,
} from './cloth-growth.ts';
export { ASSUMED_DENSITY, densityOfFilling } from './density-of-filling.ts';
export { nameOfPlace, placeOnSection } from './describe-level.ts';
export { designInside } from './design-inside.ts';
export { poleInsideForm, reachOfPulledSleeve } from './fit-pole.ts';
export { type FurtherPart, furtherParts, type PartGain, type StrapLevel } from './further-parts.ts';
export { INSIDE_OPTIONS } from './inside-options.ts';
export { insideInputs } from './inside-pieces.ts';
export {
  GRAVITY,
  judgeStand,
  judgeTipping,
  leanOfPole,
  type StandFindings,
  type StandMass,
  TUBES,
} from './judge-stand.ts';
export {
  type FillMass,
  listMaterials,
  type MaterialLine,
  massOfFill,
  widthOfBinding,
} from './list-materials.ts';
export { partsOfInside } from './parts-of-inside.ts';
export { type InsidePhrases, phrase as insidePhrase, type Sides } from './phrases.ts';
export { mayHaveStraps } from './plan-braces.ts';
export type { PlateRim } from './plate-pieces.ts';
export { sampleSection } from './sample-section.ts';
export {
  type SectionBalance,
  type SectionProblem,
  type SectionTie,
  solveSection,
} from './solve-section.ts';
export { radiusOfFreeSleeve, type SpanArc, solveSpanArc } from './span-arc.ts';
export { instructionsOfTestTube } from './test-tube.ts';
export {
  growthOfTestTube,
  limitsOfTestTube,
  measuredGrowthOf,
  sewnGirthOfTestTube,
  TEST_TUBE_DIAMETER,
  TEST_TUBE_LINES,
} from './test-tube-growth.ts';
export type * from './types.ts';
export { type FlatStrip, unrollStrip } from './unroll-strip.ts';
