export { bridgeHollows, USUAL_BRIDGING } from './bridge-hollows.ts';
export { type CutOptions, cutIntoPanels } from './cut-into-panels.ts';
export { findLayout, LAYOUTS } from './layouts.ts';
export { pictureShell } from './picture.ts';
export { MAX_MARK_GAP, MIN_MARK_GAP } from './place-marks.ts';
export type * from './types.ts';
