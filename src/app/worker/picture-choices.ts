import { shapeCategoriesOf } from '../../core/body/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { Follower } from './follow-project.ts';

/** Outlines for every choice of every question of shape this figure has, one after the other, while `isWanted`. */
export async function pictureChoices(
  follower: Follower,
  project: Project,
  isWanted: () => boolean,
  onPicture: (key: string, outline: Float64Array) => void,
): Promise<void> {
  for (const category of shapeCategoriesOf(project.body.figure)) {
    for (const choice of [null, ...category.choices.map(({ id }) => id)]) {
      if (!isWanted()) return;
      const outline = await follower.outlineShape(project, category.id, choice);
      if (outline && isWanted()) {
        onPicture(choice === null ? category.id : `${category.id}.${choice}`, outline);
      }
    }
  }
}
