import type { AppStore } from './create-app-store.ts';
import type { AppState, Photo, PhotoMark, PhotoSide } from './types.ts';

export interface PhotoActions {
  /** A new photo, looked at at once. */
  addPhoto(photo: Photo): void;
  /** Those kept with a body that was opened. */
  receivePhotos(bodyId: string, photos: AppState['photos']): void;
  changePhoto(side: PhotoSide, change: Partial<Photo>): void;
  removePhoto(side: PhotoSide): void;
  /** Begins, changes or (`null`) ends setting points to scale by. */
  markPhoto(marks: readonly PhotoMark[] | null): void;
}

/** Photos under the body. They are no part of the project, so no undo step. */
export function createPhotoActions(store: AppStore): PhotoActions {
  const set = (side: PhotoSide, photo: Photo | null) =>
    store.setState(({ photos }) => ({ photos: { ...photos, [side]: photo } }));
  return {
    addPhoto(photo) {
      set(photo.side, photo);
      store.setState(({ layers, view }) => ({
        stage: 'body',
        layers: { ...layers, photo: true },
        view: { name: photo.side, nonce: view.nonce + 1 },
        photoMarks: null,
        // A body with a photo is worked on: it is to be kept.
        asOpened: null,
      }));
    },
    receivePhotos(bodyId, photos) {
      if (store.getState().bodyId === bodyId) store.setState({ photos, photoMarks: null });
    },
    changePhoto(side, change) {
      const photo = store.getState().photos[side];
      if (photo) set(side, { ...photo, ...change });
    },
    removePhoto(side) {
      set(side, null);
      store.setState({ photoMarks: null });
    },
    markPhoto: (photoMarks) => store.setState({ photoMarks }),
  };
}
