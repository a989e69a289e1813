import type { Drawing } from '../drawing/index.ts';

/**
 * Characters of the drawings' texts that a TrueType font file has no shape for, each once, in order of appearance. Blanks and
 * marks that only steer the writing direction need none.
 */
export async function findLackingLetters(drawings: readonly Drawing[], font: Uint8Array): Promise<string[]> {
  const { create } = await import('fontkit');
  const shapes = create(font);
  const used = new Set<string>();
  for (const { layers } of drawings)
    for (const { items } of layers)
      for (const item of items)
        if (item.kind === 'text') for (const character of item.text) used.add(character);
  return [...used].filter(
    (character) =>
      !/[\s\p{Cc}\p{Cf}]/u.test(character) &&
      !shapes.hasGlyphForCodePoint(character.codePointAt(0) as number),
  );
}
