import {
  type Actions,
  type AppState,
  type AppStore,
  type PhotoSide,
  silhouetteOfMesh,
} from '../store/index.ts';
import { readPhoto } from './read-photo.ts';

export interface Photos {
  /** Lays a photo under the body as seen from one side; tells why when it cannot. */
  addPhoto(file: File, side: PhotoSide): Promise<void>;
}

export function addPhotos(store: AppStore, actions: Pick<Actions, 'addPhoto' | 'tell'>): Photos {
  return {
    async addPhoto(file, side) {
      const body = async () => silhouetteOfMesh((await firstForm(store)).closedMesh, side);
      const photo = await readPhoto(file, side, body, store.getState());
      if (typeof photo === 'string') actions.tell({ tone: 'warning', text: photo });
      else {
        actions.addPhoto(photo);
        actions.tell(null);
      }
    },
  };
}

/** The form shown, or the first that will be: a photo chosen before there is one waits for it. */
function firstForm(store: AppStore): Promise<NonNullable<AppState['form']>> {
  const { form } = store.getState();
  if (form) return Promise.resolve(form);
  return new Promise((found) => {
    const stop = store.subscribe(({ form }) => {
      if (!form) return;
      stop();
      found(form);
    });
  });
}
