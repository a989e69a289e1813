import type { Actions } from '../store/index.ts';
import type { Services } from './workroom-context.tsx';

/** A project is a few kilobytes; anything this large is another kind of file. */
const LARGEST_FILE = 5_000_000;

/** Reads a file the person chose and opens it; tells when it cannot be one of ours. */
export async function openFile(file: File, services: Services, actions: Actions): Promise<void> {
  if (file.size > LARGEST_FILE) {
    const size = (file.size / 1e6).toFixed(1);
    actions.tell({
      tone: 'warning',
      text: `${file.name} is ${size} MB. A project file is smaller than 5 MB, so this is another kind of file. Nothing was changed.`,
    });
    return;
  }
  await services.openText(await file.text(), file.name);
}
