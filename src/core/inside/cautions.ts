import type { Phrase } from '../base/index.ts';
import { phrase } from './phrases.ts';
import type { CautionId } from './types.ts';

export interface Caution {
  readonly id: CautionId;
  readonly title: Phrase;
  readonly text: Phrase;
}

const IDS = [
  'blades',
  'iron',
  'glue',
  'dust',
  'magnets',
  'tipping',
  'lifting',
  'fire',
  'rigging',
] as const satisfies readonly CautionId[];

/** Shown in the app and printed: where the work can hurt. Common workshop practice. */
export const CAUTIONS: readonly Caution[] = IDS.map((id) => ({
  id,
  title: phrase(`caution.${id}.title`),
  text: phrase(`caution.${id}.text`),
}));

/** The cautions that work with these pieces calls for, by their material and id, in the order of `CAUTIONS`. */
export function cautionsFor(
  pieces: readonly { readonly id: string; readonly material: string }[],
): Caution[] {
  const has = (...materials: string[]): boolean =>
    pieces.some(({ material }) => materials.includes(material));
  const stands = pieces.some(({ id }) => id.startsWith('base-plate'));
  const isWanted: Readonly<Record<CautionId, boolean>> = {
    blades: pieces.length > 0,
    iron: has('shell', 'webs', 'covers', 'arms', 'test-tube', 'trial'),
    glue: has('card', 'foam'),
    // Everything sewn is filled in the end.
    dust: has('shell', 'arms', 'foam', 'card', 'test-tube'),
    magnets: pieces.some(({ id }) => id.startsWith('arm-plate') || id.startsWith('cushion-plate')),
    tipping: stands,
    lifting: stands,
    fire: has('shell', 'arms', 'foam', 'test-tube'),
    rigging: stands,
  };
  return CAUTIONS.filter(({ id }) => isWanted[id]);
}
