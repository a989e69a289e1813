import type { Actions, AppStore } from '../store/index.ts';
import { loadProjectRoom } from './load-project-room.ts';
import { fileStem, handOver, saveTo, type WritableFile } from './save-file.ts';

export interface ProjectSaving {
  saveProject(): Promise<void>;
  /** Saves to a file and place the person chooses; absent where the browser cannot ask. */
  readonly saveProjectAs?: () => Promise<void>;
}

const nameOfFile = (name: string) => `${fileStem(name)}.loftseam.json`;

/** Saves the project as a download, or to the file chosen for this body before. */
export function saveProjects(store: AppStore, actions: Pick<Actions, 'tell' | 'mention'>): ProjectSaving {
  /** The file a body was last saved to by choice; saving again writes it anew. */
  let chosen: { readonly handle: WritableFile; readonly bodyId: string } | null = null;
  const saveToChosen = async (handle: WritableFile, text: string) => {
    const trouble = await saveTo(handle, text);
    const { messages } = store.getState().words;
    if (trouble !== null) chosen = null;
    actions.tell(
      trouble === null
        ? { tone: 'plain', text: messages.savedTo(handle.name) }
        : { tone: 'warning', text: messages.notWritten(handle.name, trouble) },
    );
  };
  const saveProject = async () => {
    const { project, bodyId } = store.getState();
    if (!project) return;
    const { serializeProject } = await loadProjectRoom();
    if (chosen?.bodyId === bodyId) await saveToChosen(chosen.handle, serializeProject(project));
    else {
      const text = serializeProject(project);
      handOver(actions, store.getState(), [nameOfFile(project.name), 'application/json', text]);
    }
  };
  if (window.showSaveFilePicker === undefined) return { saveProject };
  return {
    saveProject,
    async saveProjectAs() {
      const { project, bodyId } = store.getState();
      // The browser only asks on the heel of a click: nothing may be awaited before.
      const suggestedName = nameOfFile(project?.name ?? '');
      const handle = await window.showSaveFilePicker?.({ suggestedName }).catch(() => null);
      if (!handle || !project) return;
      chosen = { handle, bodyId };
      const { serializeProject } = await loadProjectRoom();
      await saveToChosen(handle, serializeProject(project));
    },
  };
}
