import type { UseId } from '../../core/laying/index.ts';
import { type Actions, type AppStore, type ClothPhoto, repeatOfPhoto } from '../store/index.ts';
import { readPicture } from './read-photo.ts';

export interface ClothPhotos {
  /** A photo of the cloth of a use, which is its print from then on; tells why when it cannot be one. */
  addClothPhoto(file: File, use: UseId): Promise<void>;
  /** The photo scaled, or its repeat set: the lengths of the repeat go into the project. */
  changeClothPhoto(photo: ClothPhoto, use: UseId): void;
}

export function addClothPhotos(
  store: AppStore,
  actions: Pick<Actions, 'setClothPhoto' | 'setClothPrint' | 'tell'>,
): ClothPhotos {
  const steps = () => store.getState().words.laying.steps;
  return {
    async addClothPhoto(file, use) {
      const size = await readPicture(file, store.getState());
      if (typeof size === 'string') return actions.tell({ tone: 'warning', text: size });
      actions.setClothPhoto({ name: file.name, file, ...size, mmPerPixel: null, repeat: null });
      actions.setClothPrint(use, { kind: 'photo' }, steps().print);
      actions.tell(null);
    },
    changeClothPhoto(photo, use) {
      actions.setClothPhoto(photo);
      const repeat = repeatOfPhoto(photo);
      if (repeat) actions.setClothPrint(use, repeat, steps().print);
    },
  };
}
