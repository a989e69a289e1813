import type { WardrobeWords } from '../../language/index.ts';
import { loadWardrobeWords } from '../../language/load-wardrobe-words.ts';
import { type BodyDatabase, isOfNewerProgram, newBodyId, today } from '../store/index.ts';
import type { BodyService, TendingNeeds } from './tend-bodies.ts';

/** What the dialogs of bodies need, and nobody before. */
export interface WardrobeRoom {
  readonly bodies: BodyService;
  readonly words: WardrobeWords;
}

export interface WardrobeOpening {
  /** Loads what tends the bodies, with its words in the language shown. Fails when it cannot be fetched. */
  openWardrobe(): Promise<WardrobeRoom>;
}

export function wardrobeOpening({
  store,
  actions,
  worker,
  database,
}: Pick<TendingNeeds, 'store' | 'actions' | 'worker'> & {
  readonly database: Promise<BodyDatabase>;
}): WardrobeOpening {
  const opened = async (): Promise<BodyDatabase> => {
    try {
      return await database;
    } catch (error) {
      throw isOfNewerProgram(error) ? new Error(store.getState().words.messages.ofNewerProgram) : error;
    }
  };
  return {
    async openWardrobe() {
      const [{ tendBodies }, words] = await Promise.all([
        import('./tend-bodies.ts'),
        loadWardrobeWords(store.getState().language),
      ]);
      return {
        words,
        bodies: tendBodies({ opened, store, actions, worker, words, newId: newBodyId, today }),
      };
    },
  };
}
