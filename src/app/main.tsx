import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { LANGUAGE_NAMES } from '../language/index.ts';
import { App } from './app.tsx';
import { askWorker } from './ask-worker.ts';
import { canDrawInSpace } from './can-draw-in-space.ts';
import { keepForOffline } from './keep-for-offline.ts';
import { keepGuess } from './keep-guess.ts';
import { layWhenSeen } from './lay-when-seen.ts';
import { openFirst } from './open-first.ts';
import { createServices, loadSpeech } from './services/index.ts';
import { speakInFull } from './speak-in-full.ts';
import {
  type BodyDatabase,
  createActions,
  createAppStore,
  type KeyValueStore,
  keepBench,
  keepLanguage,
  openBodyDatabase,
  readKeptBench,
  readKeptLanguage,
  readKeptTheme,
  stageOf,
} from './store/index.ts';
import { watchTabs } from './watch-tabs.ts';
import { followProject } from './worker/index.ts';

/** Wires the rooms of the app: store, worker, scene and views know nothing of each other but the store. */

const storage: KeyValueStore = {
  read: (key) => localStorage.getItem(key),
  write: (key, text) => localStorage.setItem(key, text),
};

// Where storage is switched off, even naming the database is refused.
const database: Promise<BodyDatabase> = Promise.resolve().then(() => openBodyDatabase(globalThis.indexedDB));
database.catch(() => {});

async function start(): Promise<void> {
  const wanted = readKeptLanguage(storage, navigator.languages);
  const spoken = await loadSpeech(wanted, 'first').catch(() => loadSpeech('en', 'first'));
  const bench = readKeptBench(storage);
  const stage = bench?.isOpen ? 'making' : 'tape';
  const store = createAppStore({ theme: readKeptTheme(storage), bench, stage, ...spoken });
  keepLanguage(store, storage);
  keepBench(store, storage);
  const actions = createActions(store);
  if (spoken.language !== wanted) {
    const text = spoken.words.messages.noLanguage(LANGUAGE_NAMES[wanted]);
    actions.tell({ tone: 'warning', isLasting: true, text });
  }
  const worker = followProject({
    onWork: actions.showWork,
    onForm: actions.receiveForm,
    onFailure: actions.receiveFailure,
    upTo: () => stageOf(store.getState().stage).draftTo,
    awaitsFilled: () => stageOf(store.getState().stage).awaitsFilled === true,
    voice() {
      const { language, numbers } = store.getState();
      return { language, locale: numbers.locale };
    },
  });
  askWorker(store, actions, worker);
  layWhenSeen(store, actions, worker);
  keepGuess(store, actions, worker);
  keepForOffline(store, actions);
  watchTabs(store, actions);
  const services = createServices({ store, actions, worker, database, storage, canDrawInSpace });
  speakInFull(store, services);
  void openFirst({ store, actions, services, storage, database });
  createRoot(document.getElementById('workroom')!).render(
    <StrictMode>
      <App store={store} actions={actions} services={services} />
    </StrictMode>,
  );
}

void start();
