import { shapeCategoriesOf } from '../../core/body/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { PageCalls } from '../calls/index.ts';

/** Outlines for every choice of every question of shape this figure has, one after the other, while `isWanted`. */
export async function pictureChoices(
  calls: Pick<PageCalls, 'outlineShape'>,
  project: Project,
  isWanted: () => boolean,
  onPicture: (key: string, outline: Float64Array) => void,
): Promise<void> {
  for (const category of shapeCategoriesOf(project.body.figure, project.body.shape ?? {})) {
    for (const choice of [null, ...category.choices.map(({ id }) => id)]) {
      if (!isWanted()) return;
      const outline = await calls.outlineShape(project, category.id, choice);
      if (outline && isWanted()) {
        onPicture(choice === null ? category.id : `${category.id}.${choice}`, outline);
      }
    }
  }
}
