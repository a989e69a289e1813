import type { ShapeCategory } from '../../core/body/index.ts';
import type { ChoiceOutlines } from '../calls/index.ts';

/**
 * Outlines for every choice of these questions of shape, one after the other, while `isWanted`; told question by question,
 * since all pictures of one have one scale, and null for one of which there is no picture.
 */
export async function pictureChoices(
  outline: (category: string, choice: string | null) => Promise<Float64Array | null>,
  categories: readonly ShapeCategory[],
  isWanted: () => boolean,
  onPictures: (category: string, outlines: ChoiceOutlines | null) => void,
): Promise<void> {
  for (const category of categories) {
    const now = await outline(category.id, null);
    const choices: Record<string, Float64Array> = {};
    for (const { id } of category.choices) {
      if (!isWanted()) return;
      const made = await outline(category.id, id);
      if (made) choices[id] = made;
    }
    if (!isWanted()) return;
    onPictures(category.id, now && { now, choices });
  }
}
