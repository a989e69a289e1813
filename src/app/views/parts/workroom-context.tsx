import { createContext, type ReactNode, useContext } from 'react';
import { useStore } from 'zustand';
import type { Result } from '../../../core/base/index.ts';
import type { Body } from '../../../core/body/index.ts';
import type { WorstZone } from '../../../core/form/index.ts';
import type { Mesh } from '../../../core/mesh/index.ts';
import type { ChartPlace, PanelEdge, SeamLine } from '../../../core/seams/index.ts';
import type { Language } from '../../language/index.ts';
import {
  type Actions,
  type AppState,
  type AppStore,
  type EarlierState,
  historyOf,
  type KeptBodies,
  type KeptBody,
  type PhotoSide,
} from '../../store/index.ts';

export interface Demo {
  readonly id: string;
  readonly load: () => Promise<string>;
}

/** Files wanted: formats as the pipeline names them. Several files come as one archive. */
export interface FileWish {
  readonly formats: readonly string[];
  /** Ids of the pieces wanted; absent = all. */
  readonly pieces?: readonly string[];
  /** Only the file of this name. */
  readonly only?: string;
}

/** How far another body lies from this one, mm; `picture` is an SVG file. */
export interface DistancePicture {
  readonly rms: number;
  readonly mostOutside: number;
  readonly mostInside: number;
  readonly picture: string;
}

/** A piece of the body as it lies flat; mm, mm², strain as fractions. */
export interface FlatCut {
  readonly area: number;
  readonly length3d: number;
  readonly lengthFlat: number;
  readonly rms: number;
  readonly p95: number;
  readonly min: number;
  readonly max: number;
  /** SVG file. */
  readonly picture: string;
}

/** A region drawn on the body as a loop of (u, v), or panels joined. */
export type CutWish =
  | { readonly loop: Float64Array }
  | { readonly joined: { readonly mesh: Mesh; readonly edges: readonly PanelEdge[] } };

/** Seam lines that were tried out and lower the strain at one place. */
export interface SeamAdvice {
  readonly lines: readonly SeamLine[];
  /** In plain words, with the figures before and after. */
  readonly message: string;
}

/** The bodies kept in this browser; every call may be refused, with a reason. */
export interface BodyService {
  list(): Promise<KeptBodies>;
  put(body: KeptBody): Promise<void>;
  duplicate(body: KeptBody): Promise<void>;
  rename(body: KeptBody, name: string): Promise<void>;
  remove(id: string): Promise<void>;
}

/** What the panels ask of the world outside: files and the worker. */
export interface Services {
  readonly demos: readonly Demo[];
  openDemo(demo: Demo): Promise<void>;
  /** Begins a body nothing is known of. */
  newBody(): void;
  /** Points all over the demo's body, n × 3 mm. */
  pictureDemo(demo: Demo): Promise<Float64Array | null>;
  /** `fileName` is for messages. */
  /** `bodyId`: the maker's body that is opened; absent for a new one. */
  openText(text: string, fileName: string, bodyId?: string): Promise<void>;
  readonly bodies: BodyService;
  /** Lays the body of another project over this one. */
  compareWith(text: string, fileName: string): Promise<void>;
  /** How far the second body lies from the first, mm, with an SVG picture; null when it cannot be told. */
  pictureDistance(before: Body, after: Body): Promise<DistancePicture | null>;
  /** A region or joined panels as one flat piece. */
  unrollCut(wish: CutWish): Promise<Result<FlatCut> | null>;
  /** Whether these seam lines can be cut and unrolled; null when asked again meanwhile. */
  trySeams(lines: readonly SeamLine[]): Promise<Result<unknown> | null>;
  /** Places most over the cloth's limits, worst first. */
  worstZones(count: number): Promise<Result<readonly WorstZone[]> | null>;
  /** What would lower the strain at a place, tried out; takes a second or two. */
  adviseSeams(place: ChartPlace): Promise<Result<readonly SeamAdvice[]> | null>;
  stopAdvice(): void;
  /** Lays a photo under the body as seen from one side; tells why when it cannot. */
  addPhoto(file: File, side: PhotoSide): Promise<void>;
  /** Saves text as it is, under this name. */
  saveText(name: string, text: string): void;
  /** Saves a drawing under the project's name and what it is. */
  saveSvg(svg: string, what: string): void;
  /** What this browser kept before, newest first. */
  listEarlierStates(): readonly EarlierState[];
  saveProject(): Promise<void>;
  /** Saves to a file and place the person chooses; absent where the browser cannot ask. */
  readonly saveProjectAs?: () => Promise<void>;
  /** Makes the files of the project at full quality and saves them. */
  download(wish: FileWish): Promise<void>;
  /** PNG of the body as it is seen. */
  savePicture(picture: Blob): void;
  /** What someone who mends this program needs to know, saved as a file; nothing is sent. */
  saveProblemReport(): void;
  /** Changes the language; tells when it cannot be fetched. */
  speak(language: Language): Promise<void>;
  stopWork(): void;
  makeAgain(): void;
}

interface WorkroomContextValue {
  readonly store: AppStore;
  readonly actions: Actions;
  readonly services: Services;
}

const WorkroomContext = createContext<WorkroomContextValue | null>(null);

export function WorkroomProvider({
  children,
  ...value
}: WorkroomContextValue & { readonly children: ReactNode }) {
  return <WorkroomContext value={value}>{children}</WorkroomContext>;
}

export function useWorkroom(): WorkroomContextValue {
  const value = useContext(WorkroomContext);
  if (!value) throw new Error('panels: must be inside WorkroomProvider');
  return value;
}

/** A part of the state; `select` must return the same object while nothing changes. */
export function useApp<T>(select: (state: AppState) => T): T {
  return useStore(useWorkroom().store, select);
}

export function useActions(): Actions {
  return useWorkroom().actions;
}

export function useServices(): Services {
  return useWorkroom().services;
}

/** Names of the steps undo and redo would take back or repeat. */
export function useHistory(): ReturnType<typeof historyOf> {
  const { store } = useWorkroom();
  useStore(store.temporal);
  useStore(store, (state) => state.step);
  useStore(store, (state) => state.drafts);
  return historyOf(store);
}
