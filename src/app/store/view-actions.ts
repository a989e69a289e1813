import type { AppStore } from './create-app-store.ts';
import type { FilledView } from './filled-view.ts';
import type {
  AppState,
  BodyPlace,
  Draft,
  Ghost,
  Highlight,
  Layers,
  Notice,
  Stage,
  Theme,
  Thread,
  ViewName,
} from './types.ts';

export interface ViewActions {
  goTo(stage: Stage): void;
  /** One step fills the page. */
  workAtStep(stepId: string): void;
  leaveBench(): void;
  pointAt(highlight: Highlight | null): void;
  turnTo(view: ViewName): void;
  showLayer(layer: keyof Layers, isShown: boolean): void;
  lookAtFilled(change: Partial<FilledView>): void;
  /** A picture of the body as it is seen now. */
  takePicture(): void;
  cutAt(z: number | null): void;
  compareWith(ghost: Ghost | null): void;
  /** The name of a body that is on its way to be compared with; `null` when none is any more. */
  awaitComparing(name: string | null): void;
  /** Sets the end not yet set; when both are, begins anew. */
  pickThreadEnd(place: BodyPlace): void;
  setThread(change: Partial<Thread>): void;
  setTheme(theme: Theme): void;
  speak(speech: Pick<AppState, 'language' | 'words' | 'say' | 'sayIn' | 'numbers'>): void;
  /** `null` when the field's text is usable again. */
  setDraft(fieldId: string, draft: Draft | null): void;
  /** Lasting notices stay beside it; `null` takes the one that does not last away. */
  tell(notice: Notice | null): void;
  closeNotice(notice: Notice): void;
  showHelp(isOpen: boolean): void;
  /** To a stop of the round of the page; `null` leaves it. */
  showRound(roundAt: number | null): void;
  /** Says what was done, for a while. */
  mention(text: string): void;
  markKept(at: number | null): void;
}

/** What is looked at and how; never an undo step. */
export function createViewActions(store: AppStore): ViewActions {
  return {
    goTo: (stage) =>
      store.setState(({ bench }) => ({
        stage,
        highlight: null,
        pencil: { isDown: false, chosen: null, held: null },
        bench: bench && { ...bench, isOpen: bench.isOpen && stage === 'making' },
      })),
    workAtStep: (stepId) => store.setState(({ bodyId }) => ({ bench: { bodyId, stepId, isOpen: true } })),
    leaveBench: () => store.setState(({ bench }) => ({ bench: bench && { ...bench, isOpen: false } })),
    pointAt(highlight) {
      const now = store.getState().highlight;
      if (now?.kind === highlight?.kind && now?.id === highlight?.id) return;
      store.setState({ highlight });
    },
    turnTo: (name) => store.setState((state) => ({ view: { name, nonce: state.view.nonce + 1 } })),
    showLayer: (layer, isShown) =>
      store.setState((state) => ({ layers: { ...state.layers, [layer]: isShown } })),
    lookAtFilled: (change) =>
      store.setState(({ filledView }) => ({ filledView: { ...filledView, ...change } })),
    takePicture: () => store.setState(({ pictureNonce }) => ({ pictureNonce: pictureNonce + 1 })),
    cutAt: (sectionZ) => store.setState({ sectionZ }),
    compareWith: (ghost) => store.setState({ ghost }),
    awaitComparing: (ghostAwaited) => store.setState({ ghostAwaited }),
    pickThreadEnd: (place) =>
      store.setState(({ thread }) => ({
        thread:
          thread.from === null || thread.to !== null
            ? { from: place, to: null, isPicking: true }
            : { ...thread, to: place, isPicking: false },
      })),
    setThread: (change) => store.setState(({ thread }) => ({ thread: { ...thread, ...change } })),
    setTheme: (theme) => store.setState({ theme }),
    speak: (speech) => store.setState(speech),
    setDraft: (fieldId, draft) =>
      store.setState((state) => {
        const { [fieldId]: _dropped, ...others } = state.drafts;
        return { drafts: draft ? { ...others, [fieldId]: draft } : others };
      }),
    tell: (notice) =>
      store.setState(({ notices }) => {
        const lasting = notices.filter(({ isLasting, text }) => isLasting && text !== notice?.text);
        return { notices: notice ? [...lasting, notice] : lasting };
      }),
    closeNotice: (notice) =>
      store.setState(({ notices }) => ({ notices: notices.filter((other) => other !== notice) })),
    showHelp: (isHelpOpen) => store.setState({ isHelpOpen }),
    showRound: (roundAt) => store.setState({ roundAt }),
    mention: (text) => store.setState({ mention: { text } }),
    markKept: (keptAt) => store.setState({ keptAt }),
  };
}
