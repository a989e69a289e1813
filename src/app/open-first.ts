import type { Services } from './services/index.ts';
import {
  type Actions,
  type AppStore,
  type BodyDatabase,
  isFormBehind,
  isOfNewerProgram,
  type KeyValueStore,
  keepBodies,
  keepClothPhoto,
  keepPhotos,
  keepProject,
  readKeptBodyId,
  readKeptProject,
  readUnreadableHistory,
  setAsideUnreadable,
} from './store/index.ts';

interface FirstOpening {
  readonly store: AppStore;
  readonly actions: Actions;
  readonly services: Services;
  readonly storage: KeyValueStore;
  readonly database: Promise<BodyDatabase>;
}

type Serialize = Parameters<typeof keepProject>[2];

/** Opens what was worked on last time, else the first demo, tells what cannot be read, and keeps the work from then on. */
export async function openFirst(opening: FirstOpening): Promise<void> {
  const { store, actions, services, storage } = opening;
  const kept = readKeptProject(storage);
  const { parseProject, serializeProject } = await import('../core/project/index.ts');
  const read = kept === null ? null : parseProject(kept);
  // Somebody quicker than the loading may have opened a file of their own: that stays.
  const hasOpened = () => store.getState().project !== null;
  if (read?.ok) {
    const id = readKeptBodyId(storage);
    if (!hasOpened()) actions.openProject(read.value, store.getState().words.steps.takeUp, id ? { id } : {});
  } else {
    const [demo] = services.demos;
    await demo.load();
    if (!hasOpened()) await services.openDemo(demo);
  }
  const {
    say,
    words: { messages },
  } = store.getState();
  const warn = warnerOf(actions);
  if (kept !== null && read && !read.ok) {
    warn(messages.keptUnreadable(setAsideUnreadable(storage, kept)), {
      details: read.issues.map(({ message }) => say(message)),
      file: { name: 'loftseam-unreadable.txt', text: kept },
    });
  }
  const history = readUnreadableHistory(storage);
  if (history !== null) {
    warn(messages.earlierUnreadable(setAsideUnreadable(storage, history)), {
      file: { name: 'loftseam-earlier-unreadable.txt', text: history },
    });
  }
  store.temporal.getState().clear();
  keepInStorage(opening, serializeProject);
  await keepInDatabase(opening, serializeProject);
}

/** Tells what stays told until it is closed. */
function warnerOf(actions: Actions) {
  return (text: string, more: Partial<Parameters<Actions['tell']>[0]> = {}) =>
    actions.tell({ tone: 'warning', isLasting: true, text, ...more });
}

function keepInStorage({ store, actions, storage }: FirstOpening, serialize: Serialize): void {
  const keeper = keepProject(store, storage, serialize, {
    onKept: () => actions.markKept(Date.now()),
    onTrouble(reason) {
      actions.markKept(null);
      warnerOf(actions)(store.getState().words.messages.refusesProject(reason));
    },
  });
  window.addEventListener('pagehide', keeper.flush);
}

async function keepInDatabase(opening: FirstOpening, serialize: Serialize): Promise<void> {
  const { store, actions } = opening;
  const warn = warnerOf(actions);
  const messages = () => store.getState().words.messages;
  let database: BodyDatabase;
  try {
    database = await opening.database;
  } catch (error) {
    const reason = isOfNewerProgram(error)
      ? messages().ofNewerProgram
      : error instanceof Error
        ? error.message
        : String(error);
    warn(messages().noDatabase(reason));
    return;
  }
  const bodies = keepBodies(store, database, serialize, (reason) => warn(messages().refusesBody(reason)));
  keepPhotos(store, actions, database, {
    onTrouble: (reason) => warn(messages().refusesPhoto(reason)),
    onUnreadable(sides) {
      const { views } = store.getState().words.picture;
      warn(messages().photoUnreadable(sides.map((side) => views[side]).join(', ')));
    },
  });
  keepClothPhoto(store, database, (reason) => warn(messages().refusesPhoto(reason)));
  // A body is kept once it has a photo, even if nothing of it was changed.
  store.subscribe((now, before) => {
    const isOther = now.photos !== before.photos || now.clothPhoto !== before.clothPhoto;
    if (isOther && now.bodyId === before.bodyId) void bodies.flush();
  });
  keepCards(store, database);
}

/** Long enough for a run of changes to end. */
const CARD_DELAY_MS = 1_500;

/** Keeps a picture of each body, and how many steps its making has, whenever its form is whole and nothing more is changed. */
function keepCards(store: AppStore, database: BodyDatabase): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const keep = async () => {
    const { keepCard } = await import('./keep-cards.ts');
    const state = store.getState();
    if (!isFormBehind(state) && state.project !== state.asOpened) await keepCard(state, database);
  };
  store.subscribe((now, before) => {
    if (now.form === before.form || now.formQuality !== 'full' || now.project === now.asOpened) return;
    clearTimeout(timer);
    timer = setTimeout(() => void keep().catch(() => {}), CARD_DELAY_MS);
  });
}
