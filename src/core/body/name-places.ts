import type { Phrase } from '../base/index.ts';
import { phrase } from './phrases.ts';
import { LANDMARK_IDS, LEVEL_IDS, type LevelId, type LevelName } from './place-ids.ts';
import type { Figure } from './types.ts';

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
