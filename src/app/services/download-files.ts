import type { FileOptions, OnDrawn, PageCalls } from '../calls/index.ts';
import type { Actions, AppStore } from '../store/index.ts';
import { fileStem, handOver } from './save-file.ts';

/** Files wanted. Several come as one archive. */
export interface FileWish extends FileOptions {
  /** Only the file of this name. */
  readonly only?: string;
}

export interface Downloads {
  /** Makes the files of the project at full quality and saves them; a long one until whoever asked answers no. */
  download(wish: FileWish, onDrawn?: OnDrawn): Promise<void>;
}

export function downloadFiles(
  store: AppStore,
  actions: Pick<Actions, 'tell' | 'mention'>,
  worker: Pick<PageCalls, 'writeFiles'>,
): Downloads {
  return {
    async download({ only, ...options }, onDrawn = () => true) {
      const { project } = store.getState();
      if (!project) return;
      const written = await worker.writeFiles(project, options, onDrawn);
      const files = written.ok ? written.value : [];
      // Several files come with their archive last.
      const file = only === undefined ? files[files.length - 1] : files.find(({ name }) => name === only);
      if (file) {
        const name = files.length > 1 && only === undefined ? `${options.formats.join('-')}.zip` : file.name;
        handOver(actions, store.getState(), [`${fileStem(project.name)}-${name}`, file.type, file.content]);
        return;
      }
      const wasStopped = !written.ok && written.issues.length === 0;
      if (wasStopped) return;
      const { words, say } = store.getState();
      actions.tell({
        tone: 'warning',
        text: words.messages.notMade,
        details: written.issues.map(({ message }) => say(message)),
      });
    },
  };
}
