import type { Actions, AppStore } from '../store/index.ts';
import { fileStem, handOver, type saveFile } from './save-file.ts';

export interface ShownSaving {
  /** Saves text as it is, under this name. */
  saveText(name: string, text: string): void;
  /** Saves a drawing under the project's name and what it is. */
  saveSvg(svg: string, what: string): void;
  /** PNG of the body as it is seen. */
  savePicture(picture: Blob): void;
}

/** Saves what is on the page already. */
export function saveShown(store: AppStore, actions: Pick<Actions, 'mention'>): ShownSaving {
  const stem = () => fileStem(store.getState().project?.name ?? '');
  const save = (...file: Parameters<typeof saveFile>) => handOver(actions, store.getState(), file);
  return {
    saveText: (name, text) => save(name, 'text/plain', text),
    saveSvg: (svg, what) => save(`${stem()}-${what}.svg`, 'image/svg+xml', svg),
    savePicture(picture) {
      const name = `${stem()}.png`;
      void picture.arrayBuffer().then((bytes) => save(name, 'image/png', new Uint8Array(bytes)));
    },
  };
}
