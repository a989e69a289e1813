import type { Project } from '../../core/project/index.ts';
import type { AppStore } from './create-app-store.ts';

/** Where the project is kept between visits; the browser's own storage, or a stand-in. */
export interface Shelf {
  read(key: string): string | null;
  write(key: string, text: string): void;
}

const PROJECT_KEY = 'loftseam.project';
const BROKEN_KEY = 'loftseam.project.unreadable';
const THEME_KEY = 'loftseam.theme';
const DELAY_MS = 400;

export interface Keeper {
  /** Writes at once what is still waiting, for example when the page is being closed. */
  flush(): void;
  stop(): void;
}

/**
 * Writes the project to the shelf now and a moment after each change. `onTrouble` is called once per run of failures
 * (storage full or refused), `onKept` after each success.
 */
export function keepProject(
  store: AppStore,
  shelf: Shelf,
  serialize: (project: Project) => string,
  handlers: { readonly onKept: () => void; readonly onTrouble: (reason: string) => void },
): Keeper {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isFailing = false;

  const flush = () => {
    if (timer === undefined) return;
    clearTimeout(timer);
    timer = undefined;
    const { project, theme } = store.getState();
    try {
      if (project) shelf.write(PROJECT_KEY, serialize(project));
      shelf.write(THEME_KEY, theme);
      isFailing = false;
      handlers.onKept();
    } catch (error) {
      if (!isFailing) handlers.onTrouble(error instanceof Error ? error.message : String(error));
      isFailing = true;
    }
  };
  const schedule = () => {
    clearTimeout(timer);
    timer = setTimeout(flush, DELAY_MS);
  };
  const unsubscribe = store.subscribe((now, before) => {
    if (now.project !== before.project || now.theme !== before.theme) schedule();
  });
  schedule();
  return {
    flush,
    stop() {
      unsubscribe();
      clearTimeout(timer);
      timer = undefined;
    },
  };
}

/** The text kept last time, or null. A shelf that refuses to be read counts as empty. */
export function readKeptProject(shelf: Shelf): string | null {
  return readQuietly(shelf, PROJECT_KEY);
}

export function readKeptTheme(shelf: Shelf): 'system' | 'light' | 'dark' {
  const theme = readQuietly(shelf, THEME_KEY);
  return theme === 'light' || theme === 'dark' ? theme : 'system';
}

/** Puts text that could not be read aside, so that the next autosave does not destroy it. */
export function setAsideUnreadable(shelf: Shelf, text: string): boolean {
  try {
    shelf.write(BROKEN_KEY, text);
    return true;
  } catch {
    return false;
  }
}

function readQuietly(shelf: Shelf, key: string): string | null {
  try {
    return shelf.read(key);
  } catch {
    return null;
  }
}
