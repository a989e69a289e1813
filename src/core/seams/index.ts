export { bridgeHollows, USUAL_BRIDGING } from './bridge-hollows.ts';
export {
  addControlPoint,
  type ControlPoint,
  type EditedLayout,
  listControlPoints,
  moveControlPoint,
  removeControlPoint,
  type SeamEdit,
} from './control-points.ts';
export { type CutOptions, cutIntoPanels } from './cut-into-panels.ts';
export { type CutRegion, cutRegion } from './cut-region.ts';
export { joinPanels, type Region, removeLine } from './join-panels.ts';
export { findLayout, LAYOUTS } from './layouts.ts';
export { keyOfLevelLine, keyOfOwnLine, type LineLevel } from './line-keys.ts';
export { measureBend } from './measure-bend.ts';
export { type ControlPointName, listMovablePoints, movePointBy } from './move-lines.ts';
export { nameOfLine, nameOfPlace } from './name-lines.ts';
export { nameWithoutSide } from './name-panels.ts';
export type { PanelWords } from './panel-key.ts';
export type {
  LayoutPhrases,
  LineFaultPhrases,
  OpeningId,
  PanelFaultPhrases,
  RegionFaultPhrases,
  SeamNamePhrases,
  SeamsPhrases,
} from './phrases.ts';
export { pictureShell } from './picture.ts';
export { pictureBend } from './picture-bend.ts';
export { MAX_MARK_GAP, MIN_MARK_GAP } from './place-marks.ts';
export { type SeamSide, seamSides } from './seam-sides.ts';
export {
  placeOnShell,
  type SnapKind,
  type SnapOptions,
  type SnappedPlace,
  snapPoint,
} from './snap-point.ts';
export { splitPanel } from './split-panel.ts';
export { traceLine } from './trace-line.ts';
export type * from './types.ts';
