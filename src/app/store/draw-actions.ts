import type { SeamLine } from '../../core/seams/index.ts';
import type { AppStore } from './create-app-store.ts';
import type { DrawnKind, DrawnPoint, Pencil } from './types.ts';

export interface DrawActions {
  /** Clicks on the body set points, or no longer do. */
  setPencil(change: Partial<Pick<Pencil, 'isDown' | 'chosen'>>): void;
  addDrawnPoint(kind: DrawnKind, point: DrawnPoint): void;
  /** Moves one point; one move after another of the same point is one step. */
  moveDrawnPoint(kind: DrawnKind, index: number, point: DrawnPoint): void;
  removeDrawnPoint(kind: DrawnKind, index: number): void;
  clearDrawn(kind: DrawnKind): void;
  /** A point follows the pointer; it becomes a step when let go. */
  holdDrawnPoint(index: number, point: DrawnPoint): void;
  letDrawnPointGo(kind: DrawnKind): void;
  /** The drawn line becomes one of the project's seam lines and is drawn no more, in one step. */
  sewDrawnLine(lines: readonly SeamLine[], step: string): void;
}

/** Points drawn on the body, each change a named undo step. */
export function createDrawActions(store: AppStore): DrawActions {
  const setPencil = (change: Partial<Pencil>) =>
    store.setState(({ pencil }) => ({ pencil: { ...pencil, ...change } }));
  const set = (kind: DrawnKind, points: readonly DrawnPoint[], step: string) =>
    store.setState(({ drawn }) => ({ drawn: { ...drawn, [kind]: points }, step }));
  const say = () => store.getState().words.steps;
  const pointsOf = (kind: DrawnKind) => store.getState().drawn[kind];

  const actions: DrawActions = {
    setPencil,
    addDrawnPoint(kind, point) {
      const points = pointsOf(kind);
      set(kind, [...points, point], say().drawPoint[kind](points.length + 1));
      setPencil({ chosen: points.length });
    },
    moveDrawnPoint(kind, index, point) {
      const points = pointsOf(kind);
      const before = points[index];
      if (!before || (before.u === point.u && before.v === point.v)) return;
      const step = say().movePoint[kind](index + 1);
      const isMore = store.getState().step === step && store.temporal.getState().futureStates.length === 0;
      if (isMore) store.temporal.getState().pause();
      set(
        kind,
        points.map((old, i) => (i === index ? point : old)),
        step,
      );
      if (isMore) store.temporal.getState().resume();
    },
    removeDrawnPoint(kind, index) {
      const rest = pointsOf(kind).filter((_, i) => i !== index);
      set(kind, rest, say().leavePoint[kind](index + 1));
      setPencil({ chosen: rest.length > 0 ? Math.min(index, rest.length - 1) : null });
    },
    clearDrawn(kind) {
      if (pointsOf(kind).length > 0) set(kind, [], say().wipe[kind]);
      setPencil({ chosen: null });
    },
    holdDrawnPoint: (index, point) => setPencil({ held: { index, point }, chosen: index }),
    letDrawnPointGo(kind) {
      const { held } = store.getState().pencil;
      setPencil({ held: null });
      if (held) actions.moveDrawnPoint(kind, held.index, held.point);
    },
    sewDrawnLine(lines, step) {
      const { project, drawn } = store.getState();
      if (!project) return;
      store.setState({
        project: { ...project, seams: { ...project.seams, lines } },
        drawn: { ...drawn, line: [] },
        pencil: { isDown: false, chosen: null, held: null },
        step,
      });
    },
  };
  return actions;
}
