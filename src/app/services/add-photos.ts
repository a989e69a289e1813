import { type Actions, type AppStore, type PhotoSide, silhouetteOfMesh } from '../store/index.ts';
import { readPhoto } from './read-photo.ts';

export interface Photos {
  /** Lays a photo under the body as seen from one side; tells why when it cannot. */
  addPhoto(file: File, side: PhotoSide): Promise<void>;
}

export function addPhotos(store: AppStore, actions: Pick<Actions, 'addPhoto' | 'tell'>): Photos {
  return {
    async addPhoto(file, side) {
      const { form } = store.getState();
      if (!form) return;
      const photo = await readPhoto(file, side, silhouetteOfMesh(form.closedMesh, side), store.getState());
      if (typeof photo === 'string') actions.tell({ tone: 'warning', text: photo });
      else {
        actions.addPhoto(photo);
        actions.tell(null);
      }
    },
  };
}
