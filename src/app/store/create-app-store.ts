import { type TemporalState, temporal } from 'zundo';
import { createStore, type StoreApi } from 'zustand/vanilla';
import { words } from '../../language/english/app.ts';
import { createNumbers, createSpeakers, firstEnglish } from '../../language/index.ts';
import type { AppState } from './types.ts';

/** The part of the state that undo brings back. */
export type Undoable = Pick<AppState, 'project' | 'step' | 'bodyId' | 'drawn'>;

export type AppStore = StoreApi<AppState> & { readonly temporal: StoreApi<TemporalState<Undoable>> };

const UNDO_LIMIT = 300;

const speakers = createSpeakers(firstEnglish);

const initialState: AppState = {
  project: null,
  bodyId: '',
  asOpened: null,
  step: '',
  form: null,
  formOf: null,
  formQuality: null,
  failure: null,
  work: null,
  isStopped: false,
  sketches: null,
  shapePictures: null,
  uncertainty: null,
  bench: null,
  stage: 'tape',
  highlight: null,
  drafts: {},
  pictureNonce: 0,
  view: { name: 'threeQuarter', nonce: 0 },
  layers: {
    levels: true,
    tapes: false,
    seams: true,
    strain: true,
    arms: true,
    photo: true,
    mirror: false,
    veil: false,
    cloth: false,
    print: true,
  },
  filledView: { look: 'webs', share: 1, isEnlarged: false, hasBody: false },
  filledTrial: null,
  layWork: { use: 'shell', chosen: null, drag: 'pieces', found: {}, search: null, trial: null },
  clothPhoto: null,
  sectionZ: null,
  photos: { front: null, side: null },
  photoMarks: null,
  ghost: null,
  ghostAwaited: null,
  guess: null,
  seamWork: {
    base: null,
    preview: null,
    before: null,
    chosen: null,
    pull: null,
    refusal: '',
    wantsAdvice: false,
  },
  thread: { from: null, to: null, isPicking: false },
  drawn: { region: [], line: [] },
  pencil: { isDown: false, chosen: null, held: null },
  theme: 'system',
  language: 'en',
  words,
  say: speakers.both,
  sayIn: speakers,
  numbers: createNumbers('en'),
  notices: [],
  isHelpOpen: false,
  roundAt: null,
  mention: null,
  retraced: null,
  keptAt: null,
};

/** State only; `createActions` holds what can be done with it. Every change of `project` or `drawn` is an undo step. */
export function createAppStore(start: Partial<AppState> = {}): AppStore {
  return createStore<AppState>()(
    temporal((): AppState => ({ ...initialState, ...start }), {
      partialize: ({ project, step, bodyId, drawn }): Undoable => ({ project, step, bodyId, drawn }),
      equality: (a, b) => a.project === b.project && a.drawn === b.drawn,
      limit: UNDO_LIMIT,
    }),
  );
}
