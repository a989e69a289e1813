import type { FormFile } from '../../core/files/index.ts';
import type { PageCalls } from '../calls/index.ts';
import type { Actions, AppStore, KeptBody } from '../store/index.ts';
import { loadProjectRoom } from './load-project-room.ts';
import type { Opening } from './open-projects.ts';
import { fileStem, handOver } from './save-file.ts';

export interface Comparing {
  /** Lays the body of another project over this one; `fileName` stands for a name it lacks. */
  compareWith(text: string, fileName: string): Promise<void>;
  /** Opens one of two kept bodies, if neither is open, and lays the other over it; goes to where that is told. */
  compareKept(pair: readonly [KeptBody, KeptBody]): Promise<void>;
  /** Saves pads and cover that make a form serve this body. */
  saveRefit(archive: FormFile): void;
}

export function compareBodies(
  store: AppStore,
  actions: Pick<Actions, 'compareWith' | 'awaitComparing' | 'goTo' | 'tell' | 'mention'>,
  worker: Pick<PageCalls, 'shapeBody'>,
  { openText }: Pick<Opening, 'openText'>,
): Comparing {
  const compareWith = async (text: string, fileName: string) => {
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
  };
  const nameOf = ({ name }: KeptBody) => name || store.getState().words.top.untitled;
  return {
    compareWith,
    async compareKept([first, second]) {
      const isSecondOpen = store.getState().bodyId === second.id;
      const [base, other] = isSecondOpen ? [second, first] : [first, second];
      if (store.getState().bodyId !== base.id) await openText(base.text, nameOf(base), base.id);
      // It could not be opened, which is told.
      if (store.getState().bodyId !== base.id) return;
      actions.compareWith(null);
      actions.goTo('body');
      actions.awaitComparing(nameOf(other));
      await compareWith(other.text, nameOf(other)).finally(() => actions.awaitComparing(null));
    },
    saveRefit({ type, content }) {
      const stem = fileStem(store.getState().project?.name ?? '');
      handOver(actions, store.getState(), [`${stem}-refit.zip`, type, content]);
    },
  };
}
