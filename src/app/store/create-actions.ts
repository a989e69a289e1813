import type { AppStore } from './create-app-store.ts';
import { createEditActions, type EditActions } from './edit-actions.ts';
import { createSeamActions, type SeamActions } from './seam-actions.ts';
import { createViewActions, type ViewActions } from './view-actions.ts';
import { createWorkActions, type WorkActions } from './work-actions.ts';

export type Actions = EditActions & SeamActions & ViewActions & WorkActions;

/** Everything a person or the worker can do to the state. */
export function createActions(store: AppStore): Actions {
  return {
    ...createEditActions(store),
    ...createSeamActions(store),
    ...createViewActions(store),
    ...createWorkActions(store),
  };
}
