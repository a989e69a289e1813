import type { Actions } from './create-actions.ts';
import type { AppStore } from './create-app-store.ts';
import type { BodyDatabase, KeptPhotos } from './open-body-database.ts';
import { type AppState, PHOTO_SIDES, type PhotoSide } from './types.ts';

const NONE: AppState['photos'] = { front: null, side: null };
const NOTHING_KEPT: KeptPhotos = { photos: NONE, unreadable: [] };
const DELAY_MS = 500;

/**
 * Keeps the photos of each body beside it in the database, a moment after each change, and brings them back when the body is
 * opened again. `onTrouble` is called once per run of refusals.
 */
export function keepPhotos(
  store: AppStore,
  actions: Pick<Actions, 'receivePhotos'>,
  database: Pick<BodyDatabase, 'photosOf' | 'putPhoto'>,
  handlers: {
    readonly onTrouble: (reason: string) => void;
    /** What is kept for these sides is no photo. */
    readonly onUnreadable: (sides: readonly PhotoSide[]) => void;
  },
): void {
  let kept = NONE;
  let isFailing = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const told = (error: unknown) => {
    if (!isFailing) handlers.onTrouble(error instanceof Error ? error.message : String(error));
    isFailing = true;
  };
  const load = async (bodyId: string) => {
    const { photos, unreadable } = await database.photosOf(bodyId).catch(() => NOTHING_KEPT);
    if (unreadable.length > 0) handlers.onUnreadable(unreadable);
    // What was added meanwhile stays.
    if (store.getState().bodyId !== bodyId || store.getState().photos !== NONE) return;
    kept = photos;
    actions.receivePhotos(bodyId, photos);
  };
  const keep = async (bodyId: string, photos: AppState['photos']) => {
    clearTimeout(timer);
    timer = undefined;
    const before = kept;
    kept = photos;
    try {
      for (const side of PHOTO_SIDES) {
        if (photos[side] !== before[side]) await database.putPhoto(bodyId, side, photos[side]);
      }
      isFailing = false;
    } catch (error) {
      told(error);
    }
  };
  store.subscribe((now, before) => {
    if (now.bodyId !== before.bodyId) {
      if (timer !== undefined) void keep(before.bodyId, before.photos);
      kept = NONE;
      store.setState({ photos: NONE, photoMarks: null });
      void load(now.bodyId);
    } else if (now.photos !== before.photos && now.photos !== kept) {
      clearTimeout(timer);
      timer = setTimeout(() => void keep(now.bodyId, now.photos), DELAY_MS);
    }
  });
  store.setState({ photos: NONE });
  void load(store.getState().bodyId);
}
