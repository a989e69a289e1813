import { lazy, StrictMode, Suspense, useSyncExternalStore } from 'react';
import { createRoot } from 'react-dom/client';
import { useStore } from 'zustand';
import type { Say } from '../core/base/index.ts';
import type { Project } from '../core/project/index.ts';
import {
  createNumbers,
  createSpeaker,
  LANGUAGE_NAMES,
  type Language,
  loadCatalogue,
  loadWords,
  localeOf,
  type Words,
} from '../language/index.ts';
import { askWorker } from './ask-worker.ts';
import { openFirst } from './open-first.ts';
import { readPhoto } from './read-photo.ts';
import { fileStem, saveFile, saveTo, type WritableFile } from './save-file.ts';
import {
  type Actions,
  type AppStore,
  type Cabinet,
  createActions,
  createAppStore,
  isSameForm,
  type KeptBody,
  keepLanguage,
  lastStageFor,
  newBodyId,
  openCabinet,
  reaches,
  readEarlierStates,
  readKeptLanguage,
  readKeptTheme,
  type Shelf,
  silhouetteOfMesh,
} from './store/index.ts';
import { type Demo, type Services, Workroom, WorkroomProvider } from './views/index.ts';
import { watchTabs } from './watch-tabs.ts';
import { type Follower, followProject } from './worker/index.ts';

/** Wires the rooms of the app: store, worker, scene and panels know nothing of each other but the store. */

const shelf: Shelf = {
  read: (key) => localStorage.getItem(key),
  write: (key, text) => localStorage.setItem(key, text),
};

const demoTexts = import.meta.glob<string>('../../shared/demos/*.loftseam.json', {
  query: '?raw',
  import: 'default',
});
const FIRST_DEMO = 'average';
const demos: readonly Demo[] = Object.entries(demoTexts)
  .map(([path, load]) => ({ id: path.replace(/^.*\/|\.loftseam\.json$/g, ''), load }))
  .sort((a, b) => Number(b.id === FIRST_DEMO) - Number(a.id === FIRST_DEMO));

/** Reading and checking files is not needed for the first picture, so it is loaded when needed. */
const loadProjectRoom = () => import('../core/project/index.ts');

const BodyScene = lazy(async () => ({ default: (await import('./scene/index.ts')).BodyScene }));

async function start(): Promise<void> {
  const wanted = readKeptLanguage(shelf, navigator.languages);
  const spoken = await speech(wanted).catch(() => speech('en'));
  const store = createAppStore({ theme: readKeptTheme(shelf), ...spoken });
  keepLanguage(store, shelf);
  const actions = createActions(store);
  if (spoken.language !== wanted) {
    const text = spoken.words.messages.noLanguage(LANGUAGE_NAMES[wanted]);
    actions.tell({ tone: 'warning', isLasting: true, text });
  }
  const follower = followProject({
    onWork: actions.showWork,
    onForm: actions.receiveForm,
    onFailure: actions.receiveFailure,
    upTo: () => lastStageFor(store.getState().stage),
    voice() {
      const { language, numbers } = store.getState();
      return { language, locale: numbers.locale };
    },
  });
  store.subscribe((now, before) => {
    if (!now.project) return;
    if (now.project === before.project) {
      // Pieces are lettered in the language they were made in.
      if (now.language !== before.language) return follower.request(now.project);
      const lacksSome = now.form !== null && !reaches(now.form, lastStageFor(now.stage));
      if (lacksSome && now.stage !== before.stage) follower.request(now.project);
      return;
    }
    // Ticks and readings leave the form as it is.
    const isMade = now.form !== null && now.formQuality === 'full' && now.formOf === before.project;
    if (isMade && before.project && isSameForm(now.project, before.project))
      actions.receiveForm({ ...now.form, project: now.project }, now.project, 'full');
    else follower.request(now.project);
  });
  askWorker(store, actions, follower);
  keepForOffline(store);
  watchTabs(store, actions);
  const services = createServices(store, actions, follower);
  void openFirst({ store, actions, services, shelf, cabinet });
  createRoot(document.getElementById('workroom')!).render(
    <StrictMode>
      <App store={store} actions={actions} services={services} />
    </StrictMode>,
  );
}

/** Once the first form is there, the whole program is put by, so that it opens without a network. */
function keepForOffline(store: AppStore): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const unsubscribe = store.subscribe(({ formQuality }) => {
    if (formQuality !== 'full') return;
    unsubscribe();
    // Refused in private windows of some browsers: then it works with a network only.
    navigator.serviceWorker.register('./offline-worker.js').catch(() => {});
  });
}

interface AppProps {
  readonly store: AppStore;
  readonly actions: Actions;
  readonly services: Services;
}

function App({ store, actions, services }: AppProps) {
  const theme = useStore(store, (state) => state.theme);
  const isDarkComputer = useSyncExternalStore(subscribeToDarkness, isComputerDark);
  const isDark = theme === 'dark' || (theme === 'system' && isDarkComputer);
  const scene = canDrawInSpace ? (
    <Suspense fallback={null}>
      <BodyScene store={store} actions={actions} isDark={isDark} onPicture={services.savePicture} />
    </Suspense>
  ) : null;
  return (
    <WorkroomProvider store={store} actions={actions} services={services}>
      <Workroom scene={scene} />
    </WorkroomProvider>
  );
}

const darkness = window.matchMedia('(prefers-color-scheme: dark)');
const isComputerDark = () => darkness.matches;
function subscribeToDarkness(onChange: () => void) {
  darkness.addEventListener('change', onChange);
  return () => darkness.removeEventListener('change', onChange);
}

/** Tried before any work begins: the first context of a page is slow to open, those after it are not. */
const canDrawInSpace = (() => {
  const context = document.createElement('canvas').getContext('webgl2');
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
})();

// Where storage is switched off, even naming the database is refused.
const cabinet: Promise<Cabinet> = Promise.resolve().then(() => openCabinet(globalThis.indexedDB));
cabinet.catch(() => {});

/** The maker's bodies, in the cabinet. */
function keptBodies(say: () => Words, speak: Say) {
  const bodies = {
    list: async () => (await cabinet).list(),
    put: async (body: KeptBody) => (await cabinet).put(body),
    async duplicate(body: KeptBody) {
      await bodies.renamed({ ...body, id: newBodyId(), at: Date.now() }, say().bodies.copyOf(body.name));
    },
    rename: (body: KeptBody, name: string) => bodies.renamed(body, name),
    remove: async (id: string) => (await cabinet).remove(id),
    /** The name stands in the file too. */
    async renamed(body: KeptBody, name: string) {
      const { parseProject, serializeProject } = await loadProjectRoom();
      const read = parseProject(body.text);
      if (!read.ok)
        throw new Error(read.issues[0] ? speak(read.issues[0].message) : say().messages.cannotRead);
      await (await cabinet).put({ ...body, name, text: serializeProject({ ...read.value, name }) });
    },
  };
  return bodies;
}

function emptyProject(displayUnits: Project['displayUnits']): Project {
  return {
    format: 'loftseam-project',
    version: 1,
    name: '',
    displayUnits,
    body: { figure: 'bust', measures: {} },
    seams: {},
    cloth: {},
    inside: {},
    cutting: {},
  };
}

/** Words and numbers of a language, as the state holds them. */
async function speech(language: Language) {
  const [words, catalogue] = await Promise.all([loadWords(language), loadCatalogue(language)]);
  const locale = localeOf(language, navigator.languages);
  return { language, words, say: createSpeaker(catalogue, { locale }), numbers: createNumbers(locale) };
}

function createServices(store: AppStore, actions: Actions, follower: Follower): Services {
  const say = () => store.getState().words;
  const open = async (
    text: string,
    fileName: string,
    step: string,
    kept: { id?: string; isDemo?: boolean } = {},
  ) => {
    const { parseProject } = await loadProjectRoom();
    const read = parseProject(text);
    if (read.ok) {
      actions.openProject(read.value, step, kept);
      actions.tell(null);
      return;
    }
    actions.tell({
      tone: 'warning',
      text: say().messages.notOpened(fileName),
      details: read.issues.map((issue) => {
        const message = store.getState().say(issue.message);
        return issue.path ? `${issue.path}: ${message}` : message;
      }),
    });
  };
  /** The file a body was last saved to by choice; saving again writes it anew. */
  let chosenFile: { readonly handle: WritableFile; readonly bodyId: string } | null = null;
  const saveToChosen = async (handle: WritableFile, text: string) => {
    const trouble = await saveTo(handle, text);
    const { messages } = say();
    if (trouble !== null) chosenFile = null;
    actions.tell(
      trouble === null
        ? { tone: 'plain', text: messages.savedTo(handle.name) }
        : {
            tone: 'warning',
            text: messages.notWritten(handle.name, trouble),
          },
    );
  };
  const demoPoints = new Map<string, Float64Array>();
  return {
    demos,
    async pictureDemo(demo) {
      const known = demoPoints.get(demo.id);
      if (known) return known;
      const { parseProject } = await loadProjectRoom();
      const read = parseProject(await demo.load());
      const points = read.ok ? await follower.scatterBody(read.value) : null;
      if (points) demoPoints.set(demo.id, points);
      return points;
    },
    openDemo: async (demo) => open(await demo.load(), demo.id, say().steps.openDemo, { isDemo: true }),
    newBody() {
      const displayUnits = store.getState().project?.displayUnits ?? 'cm';
      actions.openProject(emptyProject(displayUnits), say().steps.newBody, { isDemo: true });
      // The body seen so far is another person's.
      store.setState({ form: null, formOf: null, formQuality: null, ghost: null, stage: 'tape' });
    },
    openText: (text, fileName, id) => open(text, fileName, say().steps.open(fileName), id ? { id } : {}),
    bodies: keptBodies(say, (phrase) => store.getState().say(phrase)),
    async compareWith(text, fileName) {
      const { parseProject } = await loadProjectRoom();
      const read = parseProject(text);
      const body = read.ok ? await follower.shapeBody(read.value) : null;
      if (read.ok && body) {
        actions.compareWith({ name: read.value.name || fileName, body });
        return;
      }
      actions.tell({
        tone: 'warning',
        text: say().messages.noBody(fileName),
        details: read.issues.map(({ message }) => store.getState().say(message)),
      });
    },
    pictureDistance: follower.pictureDistance,
    async unrollCut(wish) {
      const { project } = store.getState();
      return project ? follower.unrollCut(project, wish) : null;
    },
    async trySeams(lines) {
      const { project } = store.getState();
      if (!project) return null;
      return follower.previewSeams({ ...project, seams: { ...project.seams, lines } }, {});
    },
    async worstZones(count) {
      const { project } = store.getState();
      return project ? follower.worstZones(project, count) : null;
    },
    async adviseSeams(place) {
      const { project } = store.getState();
      return project ? follower.adviseSeams(project, place) : null;
    },
    stopAdvice: follower.stopAdvice,
    async addPhoto(file, side) {
      const { form } = store.getState();
      if (!form) return;
      const photo = await readPhoto(file, side, silhouetteOfMesh(form.closedMesh, side), store.getState());
      if (typeof photo === 'string') actions.tell({ tone: 'warning', text: photo });
      else {
        actions.addPhoto(photo);
        actions.tell(null);
      }
    },
    saveText: (name, text) => saveFile(name, 'text/plain', text),
    saveSvg(svg, what) {
      saveFile(`${fileStem(store.getState().project?.name ?? '')}-${what}.svg`, 'image/svg+xml', svg);
    },
    listEarlierStates: () => readEarlierStates(shelf),
    async saveProject() {
      const { project, bodyId } = store.getState();
      if (!project) return;
      const { serializeProject } = await loadProjectRoom();
      if (chosenFile?.bodyId === bodyId) {
        await saveToChosen(chosenFile.handle, serializeProject(project));
        return;
      }
      saveFile(`${fileStem(project.name)}.loftseam.json`, 'application/json', serializeProject(project));
    },
    ...(window.showSaveFilePicker === undefined
      ? {}
      : {
          async saveProjectAs() {
            const { project, bodyId } = store.getState();
            // The browser only asks on the heel of a click: nothing may be awaited before.
            const suggestedName = `${fileStem(project?.name ?? '')}.loftseam.json`;
            const handle = await window.showSaveFilePicker?.({ suggestedName }).catch(() => null);
            if (!handle || !project) return;
            chosenFile = { handle, bodyId };
            const { serializeProject } = await loadProjectRoom();
            await saveToChosen(handle, serializeProject(project));
          },
        }),
    async download({ only, ...options }) {
      const { project } = store.getState();
      if (!project) return;
      const written = await follower.writeFiles(project, options);
      const files = written.ok ? written.value : [];
      // Several files come with their archive last.
      const file = only === undefined ? files[files.length - 1] : files.find(({ name }) => name === only);
      if (file) {
        const name = files.length > 1 && only === undefined ? `${options.formats.join('-')}.zip` : file.name;
        saveFile(`${fileStem(project.name)}-${name}`, file.type, file.content);
        return;
      }
      actions.tell({
        tone: 'warning',
        text: say().messages.notMade,
        details: written.issues.map(({ message }) => store.getState().say(message)),
      });
    },
    savePicture(picture) {
      const stem = fileStem(store.getState().project?.name ?? '');
      void picture.arrayBuffer().then((bytes) => saveFile(`${stem}.png`, 'image/png', new Uint8Array(bytes)));
    },
    saveProblemReport() {
      const { project, stage, step, form, failure, formQuality } = store.getState();
      const report = {
        format: 'loftseam-problem',
        browser: navigator.userAgent,
        screen: [window.innerWidth, window.innerHeight, window.devicePixelRatio],
        canDrawInSpace,
        stage,
        step,
        formQuality,
        failure,
        issues: form?.report.issues ?? [],
        timingsMs: form?.report.timingsMs ?? {},
        // The name may be a person's: it is not needed to find a fault.
        project: project && { ...project, name: '' },
      };
      saveFile('loftseam-problem.json', 'application/json', JSON.stringify(report, null, 2));
    },
    async speak(language) {
      try {
        actions.speak(await speech(language));
      } catch {
        const text = say().messages.noLanguage(LANGUAGE_NAMES[language]);
        actions.tell({ tone: 'warning', text });
      }
    },
    stopWork() {
      follower.stop();
      actions.markStopped();
    },
    makeAgain() {
      const { project } = store.getState();
      if (project) follower.request(project);
    },
  };
}

void start();
