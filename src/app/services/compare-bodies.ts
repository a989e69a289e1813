import type { FormFile } from '../../core/files/index.ts';
import type { PageCalls } from '../calls/index.ts';
import type { Actions, AppStore } from '../store/index.ts';
import { loadProjectRoom } from './load-project-room.ts';
import { fileStem, handOver } from './save-file.ts';

export interface Comparing {
  /** Lays the body of another project over this one; `fileName` stands for a name it lacks. */
  compareWith(text: string, fileName: string): Promise<void>;
  /** Saves pads and cover that make a form serve this body. */
  saveRefit(archive: FormFile): void;
}

export function compareBodies(
  store: AppStore,
  actions: Pick<Actions, 'compareWith' | 'tell' | 'mention'>,
  worker: Pick<PageCalls, 'shapeBody'>,
): Comparing {
  return {
    async compareWith(text, fileName) {
      const { parseProject } = await loadProjectRoom();
      const read = parseProject(text);
      const body = read.ok ? await worker.shapeBody(read.value) : null;
      if (read.ok && body) {
        actions.compareWith({ name: read.value.name || fileName, body, project: read.value });
        return;
      }
      const { words, say } = store.getState();
      actions.tell({
        tone: 'warning',
        text: words.messages.noBody(fileName),
        details: read.issues.map(({ message }) => say(message)),
      });
    },
    saveRefit({ type, content }) {
      const stem = fileStem(store.getState().project?.name ?? '');
      handOver(actions, store.getState(), [`${stem}-refit.zip`, type, content]);
    },
  };
}
