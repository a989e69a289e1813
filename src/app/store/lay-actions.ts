import type { Issue } from '../../core/base/index.ts';
import type { LayPlan, UseId } from '../../core/laying/index.ts';
import type { AppStore } from './create-app-store.ts';
import type { LayDrag, LaySearch, LayWork, TrialPieces } from './lay-in-view.ts';
import type { ClothPhoto } from './types.ts';

export interface LayActions {
  lookAtUse(use: UseId): void;
  choosePiece(piece: string | null): void;
  dragWith(drag: LayDrag): void;
  /** A body with a photo of its cloth is worked on: it is to be kept. */
  setClothPhoto(photo: ClothPhoto | null): void;
  /** Takes the place of a search under way. */
  beginLay(search: LaySearch): void;
  /** What the search has come to so far; heard only while it is the one under way. */
  receiveLay(search: LaySearch, plan: LayPlan | null, issues: readonly Issue[], share: number): void;
  endLay(): void;
  /** The trial shell's pieces are there. */
  receiveTrialPieces(trial: TrialPieces): void;
  /** Back to what the project holds, or to nothing. */
  forgetLay(use: UseId): void;
}

/** Searching for plans; no undo step: what is to stay is kept in the project. */
export function createLayActions(store: AppStore): LayActions {
  const change = (recipe: (work: LayWork) => Partial<LayWork>) =>
    store.setState(({ layWork }) => ({ layWork: { ...layWork, ...recipe(layWork) } }));
  return {
    lookAtUse: (use) => change(() => ({ use, chosen: null, drag: 'pieces' })),
    dragWith: (drag) => change(() => ({ drag, chosen: null })),
    choosePiece: (chosen) => change((work) => (work.chosen === chosen ? work : { chosen })),
    setClothPhoto: (clothPhoto) => store.setState({ clothPhoto, asOpened: null }),
    beginLay: (search) => change(() => ({ search })),
    receiveLay(search, plan, issues, share) {
      if (!isUnderWay(store.getState().layWork, search)) return;
      change(({ found }) => ({
        search: { ...search, share },
        found:
          found[search.use]?.plan === plan && plan !== null
            ? found
            : { ...found, [search.use]: { of: search.of, plan, issues } },
      }));
    },
    endLay: () => change(() => ({ search: null })),
    receiveTrialPieces: (trial) => change(() => ({ trial })),
    forgetLay: (use) => change(({ found: { [use]: _gone, ...found } }) => ({ found })),
  };
}

/** The same search, however far it is. */
export function isUnderWay({ search }: LayWork, of: LaySearch): boolean {
  return search !== null && search.use === of.use && search.of === of.of;
}
