import type { AppStore } from '../store/index.ts';
import { fileStem, saveFile } from './save-file.ts';

export interface ShownSaving {
  /** Saves text as it is, under this name. */
  saveText(name: string, text: string): void;
  /** Saves a drawing under the project's name and what it is. */
  saveSvg(svg: string, what: string): void;
  /** PNG of the body as it is seen. */
  savePicture(picture: Blob): void;
}

/** Saves what is on the page already. */
export function saveShown(store: AppStore): ShownSaving {
  const stem = () => fileStem(store.getState().project?.name ?? '');
  return {
    saveText: (name, text) => saveFile(name, 'text/plain', text),
    saveSvg: (svg, what) => saveFile(`${stem()}-${what}.svg`, 'image/svg+xml', svg),
    savePicture(picture) {
      const name = `${stem()}.png`;
      void picture.arrayBuffer().then((bytes) => saveFile(name, 'image/png', new Uint8Array(bytes)));
    },
  };
}
