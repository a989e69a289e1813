import type { Actions, AppState } from '../store/index.ts';

/** A file on the person's disk, as the File System Access API gives it. */
export interface WritableFile {
  readonly name: string;
  createWritable(): Promise<{ write(text: string): Promise<void>; close(): Promise<void> }>;
}

declare global {
  interface Window {
    /** File System Access API, where the browser has it. */
    showSaveFilePicker?(options: { suggestedName: string }): Promise<WritableFile>;
  }
}

/** Writes the whole text; null when done, else why not. */
export async function saveTo(file: WritableFile, text: string): Promise<string | null> {
  try {
    const stream = await file.createWritable();
    await stream.write(text);
    await stream.close();
    return null;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** Hands a file over as a download. */
export function saveFile(name: string, type: string, content: string | Uint8Array): void {
  const part = typeof content === 'string' ? content : new Uint8Array(content);
  const url = URL.createObjectURL(new Blob([part], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** Hands a file over as a download, and says so. */
export function handOver(
  actions: Pick<Actions, 'mention'>,
  { words, numbers }: Pick<AppState, 'words' | 'numbers'>,
  [name, type, content]: Parameters<typeof saveFile>,
): void {
  saveFile(name, type, content);
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content).length : content.length;
  const size = bytes < 1e6 ? `${numbers.fixed(bytes / 1e3, 0)} kB` : `${numbers.fixed(bytes / 1e6, 1)} MB`;
  actions.mention(words.messages.handedOver(name, size));
}

/** A name every file system takes. */
export function fileStem(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase();
  return plain.slice(0, 60) || 'body';
}
