export { ARM_STATES, type ArmState } from './arm-states.ts';
export { checkMeasures } from './check-measures.ts';
export { type BodyComparison, compareBodies, type SectionChange } from './compare-bodies.ts';
export { estimateMeasures } from './estimate-measures.ts';
export { type Doubt, findMistakes, listDoubts } from './find-mistakes.ts';
export { fitBody } from './fit-body.ts';
export { type GuessedBody, guessBody } from './guess-body.ts';
export { meanValue } from './known-to-survey.ts';
export { isThirdReadingWanted } from './limit-of-readings.ts';
export { type Arm, meshOfArm } from './make-arm.ts';
export type { MeasureGroup, MeasureId } from './measure-rows.ts';
export {
  FIRST_MEASURES,
  findMeasure,
  MEASURES,
  type MeasureDefinition,
} from './measures.ts';
export { measuresFromPins } from './measures-from-pins.ts';
export { nameOfBodyPlace } from './name-places.ts';
export type {
  BodyPhrases,
  DoubtPhrases,
  FitPhrases,
  MeasureFaultPhrases,
  MeasurePhrases,
  PartPhrases,
  PhotoPhrases,
  PlacePhrases,
  ShapePhrases,
} from './phrases.ts';
export { placeOfReading } from './place-of-reading.ts';
export { rangeOfMeasure } from './range-of-measure.ts';
export { isUnusual, SHAPE_CATEGORIES, type ShapeCategory, shapeCategoriesOf } from './shape-choices.ts';
export { SHAPE_PART_IDS, type ShapePart } from './shape-parts.ts';
export { surfaceOfBody } from './surface-of-body.ts';
export type * from './types.ts';
export { type BodyUncertainty, uncertaintyOfBody, type Veil } from './uncertainty-of-body.ts';
export { USUAL_WAIST, WAIST_KINDS, type WaistKind } from './waist-kinds.ts';
