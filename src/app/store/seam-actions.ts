import type { SeamPreview } from '../../core/advice/index.ts';
import type { Project } from '../../core/project/index.ts';
import { nameOfLine, type SeamLine } from '../../core/seams/index.ts';
import type { AppStore } from './create-app-store.ts';
import type { ControlPointName, SeamPull } from './types.ts';

export interface SeamActions {
  /** The points of a project's lines, before anything is pulled. */
  receiveControlPoints(preview: SeamPreview, base: Project): void;
  chooseControlPoint(point: ControlPointName | null): void;
  /** Asks for the chosen point elsewhere; answers come by `receivePull`, and the last one becomes an undo step. */
  pullControlPoint(pull: SeamPull): void;
  /** The pull under way ends where it is. */
  letControlPointGo(): void;
  receivePull(preview: SeamPreview, pull: SeamPull): void;
  refusePull(message: string, pull: SeamPull): void;
  setSeamLines(lines: readonly SeamLine[], step: string): void;
  /** Whether advice on the seams is to be sought as soon as it can be. */
  wantAdvice(wants: boolean): void;
}

/** Lines pulled by hand. A preview is shown while pulling; the project changes once, when the point is let go. */
export function createSeamActions(store: AppStore): SeamActions {
  const change = (part: Partial<ReturnType<AppStore['getState']>['seamWork']>) =>
    store.setState(({ seamWork }) => ({ seamWork: { ...seamWork, ...part } }));
  const say = () => store.getState().words;
  const setSeamLines = (lines: readonly SeamLine[], step: string): Project | null => {
    const { project } = store.getState();
    if (!project) return null;
    const next = { ...project, seams: { ...project.seams, lines } };
    store.setState({ project: next, step });
    return next;
  };
  return {
    receiveControlPoints: (preview, base) =>
      store.setState(({ seamWork }) => ({
        seamWork: { ...seamWork, base, preview, before: preview.strain, pull: null, refusal: '' },
      })),
    chooseControlPoint: (chosen) => change({ chosen }),
    pullControlPoint: (pull) => change({ pull }),
    letControlPointGo() {
      const { pull } = store.getState().seamWork;
      if (pull && !pull.isLast) change({ pull: { ...pull, isLast: true } });
    },
    receivePull(preview, pull) {
      const { seamWork } = store.getState();
      change({ preview, refusal: '' });
      if (!pull.isLast || seamWork.pull !== pull) return;
      const line = preview.lines.find(({ id }) => id === pull.lineId);
      const base = setSeamLines(
        preview.lines,
        line ? say().steps.moveLine(store.getState().say(nameOfLine(line.name))) : say().steps.moveSeam,
      );
      change({ pull: null, base });
    },
    refusePull(refusal, pull) {
      const { seamWork } = store.getState();
      if (!pull.isLast || seamWork.pull !== pull) {
        change({ refusal });
        return;
      }
      // The last place that could be sewn stays, if there was one.
      const hasMoved = seamWork.preview?.snapped !== undefined && seamWork.preview.lines !== undefined;
      const base =
        hasMoved && seamWork.preview
          ? setSeamLines(seamWork.preview.lines, say().steps.moveSeam)
          : seamWork.base;
      change({ refusal, pull: null, base });
    },
    setSeamLines: (lines, step) => void setSeamLines(lines, step),
    wantAdvice: (wantsAdvice) => change({ wantsAdvice }),
  };
}
