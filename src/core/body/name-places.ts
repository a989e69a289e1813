import type { Phrase } from '../base/index.ts';
import { phrase } from './phrases.ts';
import type { Figure } from './types.ts';

/** From the hip up. */
export const LEVEL_IDS = ['hip', 'highHip', 'waist', 'underbust', 'bust', 'upperChest'] as const;
export type LevelId = (typeof LEVEL_IDS)[number];
/** Levels by name: a chest has other words than a bust. */
export type LevelName = LevelId | 'lowerChest' | 'chest';

const LANDMARK_IDS = [
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

const ON_A_CHEST: Partial<Record<LevelId, LevelName>> = { underbust: 'lowerChest', bust: 'chest' };

/** A level as it is called on this figure. */
export function nameOfLevel(id: LevelId, figure: Figure): Phrase {
  return phrase(`level.${(figure === 'chest' ? ON_A_CHEST[id] : undefined) ?? id}`);
}

/** The landmark or level of that id, on any figure; undefined when the body has neither. */
export function nameOfBodyPlace(id: string): Phrase | undefined {
  const landmark = LANDMARK_IDS.find((known) => known === id);
  if (landmark) return phrase(`landmark.${landmark}`);
  const level = LEVEL_IDS.find((known) => known === id);
  return level && phrase(`level.${level}`);
}
