import type { AppStore } from './create-app-store.ts';
import type { KeyValueStore } from './keep-project.ts';
import type { Bench } from './types.ts';

const KEY = 'loftseam.bench';

/**
 * Keeps where a maker works at the bench, and whether it fills the page: a phone laid aside forgets its pages, and comes back to
 * the step.
 */
export function keepBench(store: AppStore, storage: KeyValueStore): void {
  store.subscribe(({ bench }, before) => {
    if (bench === before.bench || bench === null) return;
    try {
      storage.write(KEY, JSON.stringify(bench));
    } catch {
      // Full or refused: it is told where the project is kept, which matters more.
    }
  });
}

/** Where the maker was last time; null when nothing is kept that can be read. */
export function readKeptBench(storage: KeyValueStore): Bench | null {
  try {
    const kept: unknown = JSON.parse(storage.read(KEY) ?? 'null');
    return isBench(kept) ? kept : null;
  } catch {
    return null;
  }
}

function isBench(kept: unknown): kept is Bench {
  if (typeof kept !== 'object' || kept === null) return false;
  const { bodyId, stepId, isOpen } = kept as Partial<Record<keyof Bench, unknown>>;
  return typeof bodyId === 'string' && typeof stepId === 'string' && typeof isOpen === 'boolean';
}
