/** From the hip up. */
export const LEVEL_IDS = ['hip', 'highHip', 'waist', 'underbust', 'bust', 'upperChest'] as const;
export type LevelId = (typeof LEVEL_IDS)[number];
/** Levels by name: a chest has other words than a bust. */
export type LevelName = LevelId | 'lowerChest' | 'chest';

export const LANDMARK_IDS = [
  'baseCentreFront',
  'baseCentreBack',
  'baseSideRight',
  'baseSideLeft',
  'neckFront',
  'neckBack',
  'neckSideRight',
  'neckSideLeft',
  'neckTopFront',
  'neckTopBack',
  'neckTopSideRight',
  'neckTopSideLeft',
  'shoulderPointRight',
  'shoulderPointLeft',
  'armpitRight',
  'armpitLeft',
  'armBreakFrontRight',
  'armBreakFrontLeft',
  'armBreakBackRight',
  'armBreakBackLeft',
  'bustPointRight',
  'bustPointLeft',
  'bladePointRight',
  'bladePointLeft',
] as const;
/**
 * Landmarks in the chart. Sided ones exist as `…Right` and `…Left`, the left one at u → π − u
 * (the chart is always mirror symmetric, whatever the body is).
 */
export type LandmarkId = (typeof LANDMARK_IDS)[number];
