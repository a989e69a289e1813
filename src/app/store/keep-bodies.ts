import type { Project } from '../../core/project/index.ts';
import type { AppStore } from './create-app-store.ts';
import type { BodyDatabase } from './open-body-database.ts';
import type { AppState } from './types.ts';

const DELAY_MS = 700;

/**
 * Keeps every body that was worked on in the database, a moment after each change, under its own id. A body only looked
 * at (a demo as it came) is not kept. `onTrouble` is called once per run of refusals.
 */
export function keepBodies(
  store: AppStore,
  database: BodyDatabase,
  serialize: (project: Project) => string,
  onTrouble: (reason: string) => void,
  now: () => number = Date.now,
): { readonly flush: () => Promise<void> } {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isFailing = false;
  const keep = async ({ project, bodyId, asOpened }: AppState) => {
    clearTimeout(timer);
    timer = undefined;
    if (!project || project === asOpened) return;
    try {
      await database.put({ id: bodyId, name: project.name, at: now(), text: serialize(project) });
      isFailing = false;
    } catch (error) {
      if (!isFailing) onTrouble(error instanceof Error ? error.message : String(error));
      isFailing = true;
    }
  };
  const flush = () => keep(store.getState());
  store.subscribe((state, before) => {
    if (state.project === before.project) return;
    // The body left behind is kept before another takes its place.
    if (state.bodyId !== before.bodyId && timer !== undefined) void keep(before);
    // Not put off by further changes: steady typing must not go unkept until it pauses.
    timer ??= setTimeout(() => void flush(), DELAY_MS);
  });
  return { flush };
}

/** An id no other body has. */
export function newBodyId(): string {
  return `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 10)}`;
}
