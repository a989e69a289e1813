export { adviseZone, type ZoneAdvice } from './advise-zone.ts';
export {
  type FlatPatch,
  type FlatRegion,
  flattenJoined,
  flattenRegion,
  type RegionOptions,
} from './flatten-region.ts';
export type {
  AdvicePhrases,
  DistanceMapPhrases,
  LineWay,
  PointMove,
  PointWay,
  SeamAdvicePhrases,
} from './phrases.ts';
export { type DistanceMap, mapDistance } from './picture-comparison.ts';
export { picturePatch } from './picture-patch.ts';
export {
  createSeamPreview,
  type PreviewOptions,
  type PreviewSeams,
  type SeamPreview,
} from './preview-seams.ts';
export {
  type ProposeOptions,
  proposeLine,
  proposeMoves,
  type SeamProposal,
} from './propose-seams.ts';
