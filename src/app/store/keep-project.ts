import type { Project } from '../../core/project/index.ts';
import type { AppStore } from './create-app-store.ts';

/** Where the project is kept between visits; the browser's own storage, or a stand-in. */
export interface KeyValueStore {
  read(key: string): string | null;
  write(key: string, text: string): void;
}

const PROJECT_KEY = 'loftseam.project';
const BODY_KEY = 'loftseam.project.body';
/** What could not be read is put aside under the first free one of these. */
const ASIDE_KEYS = ['unreadable', 'unreadable.2', 'unreadable.3', 'unreadable.4', 'unreadable.5'] as const;
const HISTORY_KEY = 'loftseam.earlier';
const HISTORY_LENGTH = 10;
/** Changes within this time make one state of the history. */
const HISTORY_STEP_MS = 60_000;
const THEME_KEY = 'loftseam.theme';
const DELAY_MS = 400;

/** A state of a project as it was some time ago. */
export interface EarlierState {
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly name: string;
  /** The project file. */
  readonly text: string;
  /** Of which of the maker's bodies; absent in states kept long ago. */
  readonly bodyId?: string;
}

export interface Keeper {
  /** Writes at once what is still waiting, for example when the page is being closed. */
  flush(): void;
  stop(): void;
}

/**
 * Writes the project to storage now and a moment after each change. `onTrouble` is called once per run of failures
 * (storage full or refused), `onKept` after each success.
 */
export function keepProject(
  store: AppStore,
  storage: KeyValueStore,
  serialize: (project: Project) => string,
  handlers: { readonly onKept: () => void; readonly onTrouble: (reason: string) => void },
  now: () => number = Date.now,
): Keeper {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isFailing = false;

  const flush = () => {
    if (timer === undefined) return;
    clearTimeout(timer);
    timer = undefined;
    const { project, theme, bodyId } = store.getState();
    try {
      if (project) {
        const text = serialize(project);
        // Storage that is full between the two must not leave one body's text under another's id.
        if (readKeptBodyId(storage) !== bodyId) storage.write(BODY_KEY, '');
        storage.write(PROJECT_KEY, text);
        storage.write(BODY_KEY, bodyId);
        addEarlierState(storage, { at: now(), name: project.name, text, bodyId });
      }
      storage.write(THEME_KEY, theme);
      isFailing = false;
      handlers.onKept();
    } catch (error) {
      if (!isFailing) handlers.onTrouble(error instanceof Error ? error.message : String(error));
      isFailing = true;
    }
  };
  const schedule = () => {
    // Not put off by further changes: steady typing must not go unkept until it pauses.
    timer ??= setTimeout(flush, DELAY_MS);
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

/** What was kept, newest first; at most ten states, of one body or several. */
export function readEarlierStates(storage: KeyValueStore): readonly EarlierState[] {
  return readHistory(storage).states;
}

/** The kept text of the earlier states when any of it cannot be read; null when all can. */
export function readUnreadableHistory(storage: KeyValueStore): string | null {
  const { text, isWhole } = readHistory(storage);
  return isWhole ? null : text;
}

function readHistory(storage: KeyValueStore) {
  const text = readQuietly(storage, HISTORY_KEY) ?? '[]';
  try {
    const read: unknown = JSON.parse(text);
    const states = Array.isArray(read) ? read.filter(isEarlierState) : [];
    return { text, states, isWhole: Array.isArray(read) && states.length === read.length };
  } catch {
    return { text, states: [], isWhole: false };
  }
}

function isEarlierState(value: unknown): value is EarlierState {
  const state = value as Partial<EarlierState> | null;
  return typeof state?.at === 'number' && typeof state.name === 'string' && typeof state.text === 'string';
}

/** The newest state follows the project for a minute, then stays as it is and another begins. */
function addEarlierState(storage: KeyValueStore, state: EarlierState): void {
  const states = readEarlierStates(storage);
  const [newest, ...others] = states;
  if (newest?.text === state.text) return;
  const goesOn =
    newest?.name === state.name && newest.bodyId === state.bodyId && state.at - newest.at < HISTORY_STEP_MS;
  // The time of its beginning stays, so that steady work still makes a state each minute.
  const next = goesOn ? [{ ...state, at: newest.at }, ...others] : [state, ...states];
  // The project itself is kept already: where room is short, older states give way.
  for (const length of [HISTORY_LENGTH, 3, 1]) {
    try {
      storage.write(HISTORY_KEY, JSON.stringify(next.slice(0, length)));
      return;
    } catch {
      // Tried again with fewer.
    }
  }
}

/** The text kept last time, or null. Storage that refuses to be read counts as empty. */
export function readKeptProject(storage: KeyValueStore): string | null {
  return readQuietly(storage, PROJECT_KEY);
}

/** Under which id the kept project stands among the maker's bodies; empty when it is not known. */
export function readKeptBodyId(storage: KeyValueStore): string {
  return readQuietly(storage, BODY_KEY) ?? '';
}

export function readKeptTheme(storage: KeyValueStore): 'system' | 'light' | 'dark' {
  const theme = readQuietly(storage, THEME_KEY);
  return theme === 'light' || theme === 'dark' ? theme : 'system';
}

/** Puts text that could not be read aside, so that the next autosave does not destroy it; false when there is no room. */
export function setAsideUnreadable(storage: KeyValueStore, text: string): boolean {
  const keys = ASIDE_KEYS.map((key) => `${PROJECT_KEY}.${key}`);
  const key = keys.find((key) => [null, text].includes(readQuietly(storage, key)));
  if (key === undefined) return false;
  try {
    storage.write(key, text);
    return true;
  } catch {
    return false;
  }
}

function readQuietly(storage: KeyValueStore, key: string): string | null {
  try {
    return storage.read(key);
  } catch {
    return null;
  }
}
