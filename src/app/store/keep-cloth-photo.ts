import type { AppStore } from './create-app-store.ts';
import type { BodyDatabase } from './open-body-database.ts';
import type { ClothPhoto } from './types.ts';

const DELAY_MS = 500;

/**
 * Keeps the photo of each body's cloth beside it in the database, a moment after each change, and brings it back when the body is
 * opened again. `onTrouble` is called once per run of refusals.
 */
export function keepClothPhoto(
  store: AppStore,
  database: Pick<BodyDatabase, 'clothPhotoOf' | 'putClothPhoto'>,
  onTrouble: (reason: string) => void,
): void {
  let kept: ClothPhoto | null = null;
  let isFailing = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const load = async (bodyId: string) => {
    const photo = await database.clothPhotoOf(bodyId).catch(() => null);
    // What was added meanwhile stays.
    if (store.getState().bodyId !== bodyId || store.getState().clothPhoto !== null) return;
    kept = photo;
    if (photo) store.setState({ clothPhoto: photo });
  };
  const keep = async (bodyId: string, photo: ClothPhoto | null) => {
    clearTimeout(timer);
    timer = undefined;
    kept = photo;
    try {
      await database.putClothPhoto(bodyId, photo);
      isFailing = false;
    } catch (error) {
      if (!isFailing) onTrouble(error instanceof Error ? error.message : String(error));
      isFailing = true;
    }
  };
  store.subscribe((now, before) => {
    if (now.bodyId !== before.bodyId) {
      if (timer !== undefined) void keep(before.bodyId, before.clothPhoto);
      kept = null;
      store.setState({ clothPhoto: null });
      void load(now.bodyId);
    } else if (now.clothPhoto !== before.clothPhoto && now.clothPhoto !== kept) {
      clearTimeout(timer);
      timer = setTimeout(() => void keep(now.bodyId, now.clothPhoto), DELAY_MS);
    }
  });
  void load(store.getState().bodyId);
}
