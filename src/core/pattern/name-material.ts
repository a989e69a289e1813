import { type Phrase, verbatim } from '../base/index.ts';
import { MATERIALS, type Material, phrase } from './phrases.ts';
import type { Piece } from './types.ts';

const known: readonly string[] = MATERIALS;
const isKnown = (material: string): material is Material => known.includes(material);

/** What to cut a piece from, in words. */
export function materialInWords(material: string): Phrase {
  return isKnown(material) ? phrase(`material.${material}`) : verbatim(material);
}

/** The same in one word, as sheets and files are called by it. */
export function materialInShort(material: string): Phrase {
  return isKnown(material) ? phrase(`material.${material}.short`) : verbatim(material);
}

/** On which side of the body a piece lies. */
export function sideInWords(side: Piece['side']): Phrase {
  return phrase(`side.${side}`);
}

/** The same in one word. */
export function sideInShort(side: Piece['side']): Phrase {
  return phrase(`side.${side}.short`);
}

/** Title of the sheet with the pieces of one material. */
export function titleOfSheet(project: string, material: string): Phrase {
  return phrase('piece.sheet', { project, material: materialInShort(material) });
}
