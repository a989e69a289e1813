import type { KeyValueStore } from '../store/index.ts';

/** What of the guidance through the page this browser keeps: at which stages it is open, and that the round was offered. */
export type Guidance = 'guides' | 'round';

export interface GuidanceMemory {
  /** Null where nothing is kept. */
  recall(what: Guidance): string | null;
  remember(what: Guidance, text: string): void;
}

/** Kept beside the project, never in it. A browser that keeps nothing only asks again. */
export function rememberGuidance(storage: KeyValueStore): GuidanceMemory {
  return {
    recall(what) {
      try {
        return storage.read(`loftseam.${what}`);
      } catch {
        return null;
      }
    },
    remember(what, text) {
      try {
        storage.write(`loftseam.${what}`, text);
      } catch {
        // Full or refused: it is told where the project is kept, which matters more.
      }
    },
  };
}
