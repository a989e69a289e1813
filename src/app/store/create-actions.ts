import type { AppStore } from './create-app-store.ts';
import { createDrawActions, type DrawActions } from './draw-actions.ts';
import { createEditActions, type EditActions } from './edit-actions.ts';
import { createLayActions, type LayActions } from './lay-actions.ts';
import { createPhotoActions, type PhotoActions } from './photo-actions.ts';
import { createSeamActions, type SeamActions } from './seam-actions.ts';
import { createTrialActions, type TrialActions } from './trial-actions.ts';
import { createViewActions, type ViewActions } from './view-actions.ts';
import { createWorkActions, type WorkActions } from './work-actions.ts';

export type Actions = DrawActions &
  EditActions &
  LayActions &
  PhotoActions &
  SeamActions &
  TrialActions &
  ViewActions &
  WorkActions;

/** Everything a person or the worker can do to the state. */
export function createActions(store: AppStore): Actions {
  return {
    ...createDrawActions(store),
    ...createEditActions(store),
    ...createLayActions(store),
    ...createPhotoActions(store),
    ...createSeamActions(store),
    ...createTrialActions(store),
    ...createViewActions(store),
    ...createWorkActions(store),
  };
}
