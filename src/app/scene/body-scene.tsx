import type { ThreeEvent } from '@react-three/fiber';
import { useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { Vector3 } from 'three';
import { useStore } from 'zustand';
import type { Form } from '../../core/form/index.ts';
import { measureVertexNormals } from '../../core/mesh/index.ts';
import {
  type Actions,
  type AppStore,
  type ControlPointName,
  catchPlace,
  type DrawnKind,
  filledInView,
  guessIn,
  isShown,
  stageOf,
  veilAt,
} from '../store/index.ts';
import { ArmSurfaces } from './arm-surfaces.tsx';
import { LevelLines, SeamLines, TapePaths } from './body-lines.tsx';
import { CameraRig, type CameraSubject } from './camera-rig.tsx';
import { GhostBody, SectionLine } from './compare-lines.tsx';
import { ControlPoints } from './control-points.tsx';
import { DrawnPoints } from './drawn-points.tsx';
import { FilledSurface } from './filled-surface.tsx';
import { GuessedFigure } from './guessed-figure.tsx';
import { InsideParts } from './inside-parts.tsx';
import { LaidThreadLine } from './laid-thread-line.tsx';
import { BoardMaterial, GhostMaterial } from './materials.tsx';
import { PanelSurfaces } from './panel-surfaces.tsx';
import { personOfForm } from './person-of-form.ts';
import { PictureTaker } from './picture-taker.tsx';
import { placeOnPanel } from './place-on-panel.ts';
import { SceneCanvas } from './scene-canvas.tsx';
import { panelBuffers, plateGeometry } from './shell-buffers.ts';
import { footingOf, Stand } from './stand.tsx';
import { StudioLight } from './studio.tsx';
import { useLaidPrint } from './use-laid-print.ts';

/** A pulled point jumps to landmarks, levels and lines this near, mm; not while Alt is held. */
const SNAP = 8;
const BOARD_SEEN_THROUGH = '#8a6a3c';

interface BodySceneProps {
  readonly store: AppStore;
  readonly actions: Actions;
  readonly isDark: boolean;
  readonly onPicture: (picture: Blob) => void;
}

/** The body in space. Draws on demand only. */
export function BodyScene({ store, actions, isDark, onPicture }: BodySceneProps) {
  const hasForm = useStore(store, (state) => state.form !== null);
  const hasGuess = useStore(store, (state) => guessIn(state) !== null);
  const pictureNonce = useStore(store, (state) => state.pictureNonce);
  // Once begun it stays while another body is awaited: its programs would have to be compiled anew.
  const [hasBegun, setHasBegun] = useState(false);
  if (!hasBegun && (hasForm || hasGuess)) setHasBegun(true);
  if (!hasBegun) return null;
  return (
    <SceneCanvas light={<StudioLight isDark={isDark} />} onPointerMissed={() => actions.pointAt(null)}>
      <PictureTaker nonce={pictureNonce} onPicture={onPicture} />
      {hasForm ? (
        <LatestForm store={store} actions={actions} />
      ) : (
        <LatestGuess store={store} isDark={isDark} />
      )}
    </SceneCanvas>
  );
}

interface SharedProps {
  readonly store: AppStore;
  readonly actions: Actions;
}

function LatestGuess({ store, isDark }: Pick<BodySceneProps, 'store' | 'isDark'>) {
  const guess = useStore(store, guessIn);
  const view = useStore(store, (state) => state.view);
  const highlight = useStore(store, (state) => state.highlight);
  return guess && <GuessedFigure guess={guess} isDark={isDark} view={view} highlight={highlight} />;
}

/** Drawn a little after the page around it, and in small steps, so that neither keeps typing waiting. */
function LatestForm({ store, actions }: SharedProps) {
  const form = useDeferredValue(
    useStore(store, (state) => state.form),
    null,
  );
  return form && <FormInSpace form={form} store={store} actions={actions} />;
}

interface FormInSpaceProps extends SharedProps {
  readonly form: Form;
}

function FormInSpace({ form: settled, store, actions }: FormInSpaceProps) {
  const stage = stageOf(useStore(store, (state) => state.stage));
  const layers = useStore(store, (state) => state.layers);
  const highlight = useStore(store, (state) => state.highlight);
  const view = useStore(store, (state) => state.view);
  const thread = useStore(store, (state) => state.thread);
  const pencil = useStore(store, (state) => state.pencil);
  const isMeasuring = stage.shows.includes('measuring');
  const hasControlPoints = stage.shows.includes('controlPoints');
  const seesInside = stage.shows.includes('inside');
  const isPulling = useStore(store, (state) => hasControlPoints && state.seamWork.pull !== null);
  const cloth = useShownForm(settled, store);
  const isCloth = isShown(stage, 'cloth', layers);
  const form = useMemo(() => (isCloth ? cloth : personOfForm(cloth)), [cloth, isCloth]);
  const normals = useMemo(() => measureVertexNormals(form.shell.mesh), [form]);
  const buffers = usePanelBuffers(form, normals);
  const shows = useShownLines(store);
  const mist = useMist(form, store);
  const print = useLaidPrint(form, store);
  const { drag, pick } = usePointerWork({ shown: form, settled, store, actions });
  const filled = useStore(store, filledInView);
  const filledView = useDeferredValue(useStore(store, (state) => state.filledView));
  const sectionZ = useStore(store, (state) => state.sectionZ);
  const footing = useMemo(() => footingOf(settled), [settled]);
  const subject = useSteadySubject(settled, footing.floor);
  return (
    <>
      <CameraRig view={view} subject={subject} isHeld={isPulling || pencil.held !== null} />
      {filled && (
        <FilledSurface
          form={settled}
          filled={filled}
          view={filledView}
          sectionZ={sectionZ}
          highlight={highlight}
        />
      )}
      {!filled && (
        <PanelSurfaces
          form={form}
          buffers={buffers}
          isVeil={seesInside && form.inside !== undefined}
          showsStrain={form.flat.length > 0 && (isShown(stage, 'strain', layers) || isPulling)}
          mist={mist}
          print={print}
          highlight={highlight}
          pointable={shows}
          onPoint={actions.pointAt}
          onDrag={isPulling || pencil.held ? drag : undefined}
          onPick={(isMeasuring && thread.isPicking) || pencil.isDown ? pick : undefined}
        />
      )}
      {seesInside && !filled && form.inside && <InsideParts inside={form.inside} />}
      {!filled && <Plates form={settled} isSeenThrough={seesInside} />}
      {shows.arms && <ArmSurfaces arms={form.body.arms} />}
      {isMeasuring && <BodyCompared form={form} store={store} />}
      {isShown(stage, 'mirror', layers) && <GhostBody body={form.body} isMirrored />}
      {hasControlPoints && (
        <PulledControlPoints form={form} store={store} actions={actions} isPulling={isPulling} />
      )}
      <DrawnOnForm form={settled} store={store} actions={actions} />
      {isMeasuring && <LaidThreadLine form={form} thread={thread} />}
      {shows.seams && <SeamLines form={form} normals={normals} highlight={highlight} />}
      {shows.levels && <LevelLines form={form} normals={normals} highlight={highlight} />}
      <TapePaths form={form} highlight={highlight} showsArms={shows.arms} showsAll={shows.tapes} />
      <Stand form={settled} footing={footing} />
    </>
  );
}

/** The form, with the seams and panels of what is being pulled until the form made of it is there. */
function useShownForm(settled: Form, store: AppStore): Form {
  const seamWork = useStore(store, (state) => state.seamWork);
  const project = useStore(store, (state) => state.project);
  const hasControlPoints = useStore(store, (state) => stageOf(state.stage).shows.includes('controlPoints'));
  const formOf = useDeferredValue(useStore(store, (state) => state.formOf));
  const isPulling = hasControlPoints && seamWork.pull !== null;
  const awaitsForm = hasControlPoints && seamWork.base === project && formOf !== project;
  const preview = isPulling || awaitsForm ? seamWork.preview : null;
  return useMemo(
    () => (preview ? { ...settled, shell: preview.shell, flat: preview.flat } : settled),
    [settled, preview],
  );
}

function usePanelBuffers(form: Form, normals: Float64Array) {
  const buffers = useMemo(() => panelBuffers(form, normals), [form, normals]);
  useEffect(
    () => () => {
      for (const { geometry } of buffers) geometry.dispose();
    },
    [buffers],
  );
  return buffers;
}

/** How thick a veil lies on each panel, where one is wanted and the body shown is the one it tells of. */
function useMist(form: Form, store: AppStore): readonly Float64Array[] | null {
  const isWanted = useStore(store, ({ stage, layers }) => isShown(stageOf(stage), 'veil', layers));
  const veil = useStore(store, ({ uncertainty, formOf }) =>
    uncertainty && uncertainty.body === formOf?.body ? uncertainty.veil : null,
  );
  return useMemo(
    () =>
      isWanted && veil
        ? form.shell.panels.map(({ chart }) => veilAt(chart, veil, form.body.shape.vRange))
        : null,
    [isWanted, veil, form],
  );
}

/** What is shown at this stage; the same object until that changes. */
function useShownLines(store: AppStore) {
  const stage = stageOf(useStore(store, (state) => state.stage));
  const layers = useStore(store, (state) => state.layers);
  const arms = isShown(stage, 'arms', layers);
  const seams = isShown(stage, 'seams', layers);
  const tapes = isShown(stage, 'tapes', layers);
  const levels = isShown(stage, 'levels', layers);
  return useMemo(() => ({ arms, seams, tapes, levels }), [arms, seams, tapes, levels]);
}

interface PointerWorkProps extends SharedProps {
  readonly shown: Form;
  readonly settled: Form;
}

/** What dragging and picking on a panel do: pull a seam, hold or add a drawn point, or take an end of the thread. */
function usePointerWork({ shown, settled, store, actions }: PointerWorkProps) {
  const drawing = useDrawnKind(store);
  const pencil = useStore(store, (state) => state.pencil);
  const picksThread = useStore(
    store,
    ({ stage, thread }) => stageOf(stage).shows.includes('measuring') && thread.isPicking,
  );
  const drag = (panelId: string, event: ThreeEvent<PointerEvent>) => {
    const to = placeOnPanel(shown, panelId, event);
    if (to && drawing && pencil.held) {
      const point = catchPlace(settled, drawing, to, event.altKey ? 0 : SNAP, store.getState());
      actions.holdDrawnPoint(pencil.held.index, point);
      return;
    }
    const { pull } = store.getState().seamWork;
    if (to && pull && !pull.isLast) {
      actions.pullControlPoint({
        lineId: pull.lineId,
        anchor: pull.anchor,
        to,
        snapWithin: event.altKey ? 0 : SNAP,
      });
    }
  };
  const pick = (panelId: string, event: ThreeEvent<MouseEvent>) => {
    const to = placeOnPanel(shown, panelId, event);
    if (picksThread) actions.pickThreadEnd({ at: event.point.toArray(), id: null });
    else if (to && drawing)
      actions.addDrawnPoint(
        drawing,
        catchPlace(settled, drawing, to, event.altKey ? 0 : SNAP, store.getState()),
      );
  };
  return { drag, pick };
}

/** What can be drawn at this stage. */
function useDrawnKind(store: AppStore): DrawnKind | null {
  return useStore(store, ({ stage }) => stageOf(stage).draws ?? null);
}

function DrawnOnForm({ form, store, actions }: FormInSpaceProps) {
  const kind = useDrawnKind(store);
  return kind && <DrawnPoints form={form} kind={kind} store={store} actions={actions} />;
}

function Plates({ form, isSeenThrough }: { readonly form: Form; readonly isSeenThrough: boolean }) {
  const plates = useMemo(() => plateGeometry(form), [form]);
  useEffect(() => () => plates?.dispose(), [plates]);
  return (
    plates && (
      <mesh geometry={plates} raycast={() => null}>
        {isSeenThrough ? <GhostMaterial colour={BOARD_SEEN_THROUGH} /> : <BoardMaterial />}
      </mesh>
    )
  );
}

/** Another body and a level cut, as asked for. */
function BodyCompared({ form, store }: { readonly form: Form; readonly store: AppStore }) {
  const ghost = useStore(store, (state) => state.ghost);
  const sectionZ = useStore(store, (state) => state.sectionZ);
  return (
    <>
      {ghost && <GhostBody body={ghost.body} />}
      {sectionZ !== null && <SectionLine mesh={form.closedMesh} z={sectionZ} />}
    </>
  );
}

interface PulledControlPointsProps extends FormInSpaceProps {
  readonly isPulling: boolean;
}

function PulledControlPoints({ form, store, actions, isPulling }: PulledControlPointsProps) {
  const seamWork = useStore(store, (state) => state.seamWork);
  const project = useStore(store, (state) => state.project);
  const grab = (named: ControlPointName) => {
    const point = seamWork.preview?.points.find(
      (p) => p.lineId === named.lineId && p.anchor === named.anchor,
    );
    if (!point || seamWork.base !== project) return;
    actions.chooseControlPoint(named);
    actions.pullControlPoint({ ...named, to: { u: point.u, v: point.v }, snapWithin: 0 });
  };
  return (
    <ControlPoints
      seamWork={seamWork}
      isSymmetric={form.body.shape.isMirrorSymmetric}
      actions={actions}
      isPulling={isPulling}
      onGrab={grab}
    />
  );
}

/** Where to look. Small changes of the body do not move the camera; another body does. */
function useSteadySubject(form: Form, floor: number): CameraSubject {
  const kept = useRef<CameraSubject | null>(null);
  const subject = boundsOf(form, floor);
  const last = kept.current;
  const isNear =
    last !== null &&
    last.centre.distanceTo(subject.centre) < last.radius * 0.08 &&
    Math.abs(last.radius - subject.radius) < last.radius * 0.08;
  if (!isNear) kept.current = subject;
  return kept.current!;
}

function boundsOf(form: Form, floor: number): CameraSubject {
  const low = new Vector3(1, 1, 1).multiplyScalar(Number.POSITIVE_INFINITY);
  const high = low.clone().negate();
  const point = new Vector3();
  for (const points of [form.shell.mesh.positions, ...form.body.arms.map((arm) => arm.points)]) {
    for (let i = 0; i < points.length; i += 3) {
      point.fromArray(points, i);
      low.min(point);
      high.max(point);
    }
  }
  low.z = Math.min(low.z, floor);
  return { centre: low.clone().add(high).multiplyScalar(0.5), radius: (high.z - low.z) / 2 };
}
