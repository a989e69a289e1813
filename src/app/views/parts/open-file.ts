import type { Words } from '../../../language/index.ts';
import type { Services } from '../../services/index.ts';
import type { Actions } from '../../store/index.ts';

/** A project is a few kilobytes; anything this large is another kind of file. */
const LARGEST_FILE = 5_000_000;

/** Reads a file the person chose and opens it, or adds the bodies of an archive; tells when it cannot be one of ours. */
export async function openFile(
  file: File,
  services: Services,
  actions: Actions,
  words: Words,
): Promise<void> {
  if (/\.zip$/i.test(file.name)) {
    await addArchive(file, services, actions, words);
    return;
  }
  const text = await readProjectFile(file, actions, words);
  if (text !== null) await services.openText(text, file.name);
}

async function addArchive(
  file: File,
  services: Services,
  actions: Actions,
  { messages }: Words,
): Promise<void> {
  try {
    const { bodies } = await services.openWardrobe();
    actions.tell(await bodies.openArchive(file));
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    actions.tell({ tone: 'warning', text: messages.notRead(file.name, reason) });
  }
}

/** The text of a file that may be a project; null, and told, when it is too large or cannot be read. */
export async function readProjectFile(
  file: File,
  actions: Actions,
  { messages }: Words,
): Promise<string | null> {
  if (file.size > LARGEST_FILE) {
    const size = (file.size / 1e6).toFixed(1);
    actions.tell({
      tone: 'warning',
      text: messages.tooLarge(file.name, size),
    });
    return null;
  }
  try {
    return await file.text();
  } catch (error) {
    // Moved away, or taken from us, since it was chosen.
    const reason = error instanceof Error ? error.message : String(error);
    actions.tell({
      tone: 'warning',
      text: messages.notRead(file.name, reason),
    });
    return null;
  }
}
