import {
  type ArmState,
  type Figure,
  type MeasureValue,
  USUAL_WAIST,
  type WaistKind,
} from '../../core/body/index.ts';
import { INSIDE_OPTIONS, type InsideOptions, type TestTubeReadings } from '../../core/inside/index.ts';
import type { KeptPlace, Stock, UseId } from '../../core/laying/index.ts';
import type { CheckingEntry, Project } from '../../core/project/index.ts';
import type { AppStore } from './create-app-store.ts';
import { newBodyId } from './keep-bodies.ts';
import { retrace } from './retrace.ts';
import { withHeldAlone, withStock } from './with-stock.ts';

export type InsideChoice = Pick<InsideOptions, 'parts' | 'strapsAt' | 'plateCovers'>;

export interface EditActions {
  /** Replaces what is being edited; undo brings the former project back. */
  openProject(
    project: Project,
    step: string,
    kept?: { readonly id?: string; readonly isDemo?: boolean },
  ): void;
  /** The same project as another of the maker's bodies, named as a copy; no undo step. */
  goOnAsCopy(): void;
  renameProject(name: string): void;
  /** Its name and whose body it is, in one step. */
  nameBody(names: Pick<Project, 'name' | 'person'>): void;
  setUnits(units: Project['displayUnits']): void;
  setFigure(figure: Figure): void;
  /** Where the waist was tied. */
  setWaist(waist: WaistKind): void;
  setArms(arms: ArmState): void;
  /** mm; `null` forgets the measure, so that it is estimated again. */
  setMeasure(id: string, value: MeasureValue | null, label: string): void;
  /** Two or more readings of one measure, mm; their mean is used. Fewer than two are an ordinary measure. */
  setReadings(id: string, readings: readonly number[], label: string): void;
  setShape(id: string, value: string | number | null, label: string): void;
  setLayout(id: string, label: string): void;
  setAllowance(mm: number): void;
  /** `undefined` goes back to the usual. */
  setCloth(change: Changes<Project['cloth']>, label: string): void;
  /** Turns the grain of panels, radians from upright, to the left as the piece is seen; 0 = upright again. */
  setGrain(turns: Readonly<Record<string, number>>, label: string): void;
  /** Paper, printer, cutting machine; `undefined` goes back to the usual. */
  setCutting(change: Changes<Project['cutting']>, label: string): void;
  /** Ticks a step of the order of work, or takes the tick away. */
  setDone(stepId: string, isDone: boolean, label: string): void;
  /** The stuffing log with what changed. */
  setChecking(entries: readonly CheckingEntry[], label: string): void;
  setLengthBlend(blend: number): void;
  /** Girth of the test tube at one of its lines, mm; `null` forgets it. Growth given as such makes way. */
  setTestTube(line: keyof TestTubeReadings, mm: number | null, label: string): void;
  /** mm or kg, growth as a fraction; `null` goes back to the usual. Growth takes the place of the test tube's girths. */
  setInside(id: InsideNumber, value: number | null, label: string): void;
  /** Whether a part that can be left out is made. */
  setInsidePart(id: 'throat' | 'recut', isMade: boolean, label: string): void;
  /** How many inner parts, straps level by level, covers of plates; `undefined` goes back to the usual. */
  chooseInside(change: Changes<InsideChoice>, label: string): void;
  /**
   * What pieces of a use are laid on; `undefined` goes back to the usual. Pieces not locked are then laid anew, unless the change
   * leaves where they lie as it is.
   */
  setStock(use: UseId, change: Changes<Stock>, label: string): void;
  setClothPrint(use: UseId, change: Changes<NonNullable<Stock['print']>>, label: string): void;
  /** Where every piece of a use lies; the step is named as given. */
  placePieces(use: UseId, placed: readonly KeptPlace[], step: string): void;
  /** Changes between `beginEdit` and `endEdit` become one undo step. */
  beginEdit(): void;
  endEdit(): void;
  /** Text that could not be used goes first, then one step at a time. */
  undo(): void;
  redo(): void;
}

/** What of the inside is typed as a number in the app. */
export type InsideNumber =
  | 'tubeDiameter'
  | 'boardThickness'
  | 'coverThickness'
  | 'measuredGrowth'
  | 'testTubeFill'
  | 'garmentMass'
  | 'garmentOffset'
  | 'garmentHeight'
  | 'stemDiameter'
  | 'waistHeight';

/** New values by key; `undefined` takes a key away. */
export type Changes<T> = { readonly [K in keyof T]?: T[K] | undefined };

/** The section with what changed; itself when nothing did. */
function withChanges<T extends object>(section: T, change: Changes<T>): T {
  const entries = Object.entries({ ...section, ...change }).filter(([, value]) => value !== undefined);
  const next = Object.fromEntries(entries) as T;
  return JSON.stringify(next) === JSON.stringify(section) ? section : next;
}

/** Edits of the project, each a named undo step. */
export function createEditActions(store: AppStore): EditActions {
  const steps = createSteps(store);
  return {
    ...opening(store, steps),
    ...bodyEdits(steps),
    ...clothEdits(steps),
    ...workEdits(steps),
    ...insideEdits(steps),
    ...layEdits(steps),
    beginEdit: steps.begin,
    endEdit: steps.end,
    undo() {
      steps.end();
      const hasDrafts = Object.keys(store.getState().drafts).length > 0;
      if (hasDrafts) store.setState({ drafts: {} });
      else retrace(store, 'undo');
    },
    redo() {
      steps.end();
      retrace(store, 'redo');
      store.setState({ drafts: {} });
    },
  };
}

/** How edits become undo steps. */
interface Steps {
  /** Words for steps, in the language shown. */
  readonly say: () => ReturnType<AppStore['getState']>['words']['steps'];
  /** A named step, unless the recipe gives back the same project. */
  readonly change: (step: string, recipe: (project: Project) => Project) => void;
  /** Until `end`, all changes are one step. */
  readonly begin: () => void;
  readonly end: () => void;
}

function createSteps(store: AppStore): Steps {
  let isGrouping = false;
  let hasGroupChanged = false;
  const end = () => {
    isGrouping = false;
    hasGroupChanged = false;
    store.temporal.getState().resume();
  };
  return {
    say: () => store.getState().words.steps,
    change: (step, recipe) => {
      const { project } = store.getState();
      if (!project) return;
      const next = recipe(project);
      if (next === project) return;
      store.setState({ project: next, step });
      if (isGrouping && !hasGroupChanged) {
        hasGroupChanged = true;
        store.temporal.getState().pause();
      }
    },
    begin: () => {
      end();
      isGrouping = true;
    },
    end,
  };
}

function opening(store: AppStore, { end }: Steps): Pick<EditActions, 'openProject' | 'goOnAsCopy'> {
  return {
    openProject(project, step, { id = newBodyId(), isDemo = false } = {}) {
      end();
      const asOpened = isDemo ? project : null;
      store.setState({
        project,
        step,
        bodyId: id,
        asOpened,
        drafts: {},
        highlight: null,
        failure: null,
        drawn: { region: [], line: [] },
        pencil: { isDown: false, chosen: null, held: null },
      });
    },
    goOnAsCopy() {
      const { project, words } = store.getState();
      if (!project) return;
      store.temporal.getState().pause();
      store.setState({
        project: { ...project, name: words.messages.copyOf(project.name) },
        bodyId: newBodyId(),
      });
      store.temporal.getState().resume();
    },
  };
}

type BodyEdits =
  | 'renameProject'
  | 'nameBody'
  | 'setUnits'
  | 'setFigure'
  | 'setWaist'
  | 'setArms'
  | 'setMeasure'
  | 'setReadings'
  | 'setShape';

function bodyEdits({ say, change }: Steps): Pick<EditActions, BodyEdits> {
  return {
    renameProject: (name) =>
      change(say().rename, (project) => (project.name === name ? project : { ...project, name })),
    nameBody: ({ name, person }) =>
      change(say().rename, (project) => withChanges<Project>(project, { name, person })),
    setUnits: (displayUnits) =>
      change(say().showUnits[displayUnits], (project) =>
        project.displayUnits === displayUnits ? project : { ...project, displayUnits },
      ),
    setFigure: (figure) =>
      change(say().figure, (project) => ({ ...project, body: { ...project.body, figure } })),
    setWaist: (waist) =>
      change(say().waist, (project) => {
        const { waist: before = USUAL_WAIST, ...others } = project.body;
        if (before === waist) return project;
        return { ...project, body: waist === USUAL_WAIST ? others : { ...others, waist } };
      }),
    setArms: (arms) =>
      change(say().arms, (project) =>
        project.body.arms === arms ? project : { ...project, body: { ...project.body, arms } },
      ),
    setMeasure: (id, value, label) =>
      change(value === null ? say().clear(label) : say().set(label), (project) => {
        const measures = withEntry(project.body.measures, id, value);
        if (measures === project.body.measures) return project;
        return { ...project, body: withReadings({ ...project.body, measures }, id, []) };
      }),
    setReadings: (id, readings, label) =>
      change(say().set(label), ({ body, ...project }) => {
        const mean = readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
        const measures = readings.length === 0 ? body.measures : { ...body.measures, [id]: mean };
        return { ...project, body: withReadings({ ...body, measures }, id, readings) };
      }),
    setShape: (id, value, label) =>
      change(say().set(label), (project) => {
        const before = project.body.shape ?? {};
        const shape = withEntry(before, id, value);
        return shape === before ? project : { ...project, body: { ...project.body, shape } };
      }),
  };
}

type ClothEdits = 'setLayout' | 'setLengthBlend' | 'setAllowance' | 'setCloth' | 'setGrain';

function clothEdits({ say, change }: Steps): Pick<EditActions, ClothEdits> {
  return {
    setLayout: (layout, label) =>
      change(say().layout(label), (project) =>
        project.seams.layout === layout && project.seams.lines === undefined
          ? project
          : { ...project, seams: withoutLines({ ...project.seams, layout }) },
      ),
    setLengthBlend: (lengthBlend) =>
      change(say().seamLengths, (project) =>
        project.seams.lengthBlend === lengthBlend
          ? project
          : { ...project, seams: { ...project.seams, lengthBlend } },
      ),
    setAllowance: (allowance) =>
      change(say().seamAllowance, (project) =>
        project.cloth.allowance === allowance
          ? project
          : { ...project, cloth: { ...project.cloth, allowance } },
      ),
    setCloth: (wishes, label) =>
      change(say().set(label), (project) => {
        const cloth = withChanges(project.cloth, wishes);
        return cloth === project.cloth ? project : { ...project, cloth };
      }),
    setGrain: (turns, label) =>
      change(say().grain(label), (project) => {
        const entries = Object.entries({ ...project.cloth.grain, ...turns }).filter(([, turn]) => turn !== 0);
        const grain = entries.length > 0 ? Object.fromEntries(entries) : undefined;
        const cloth = withChanges<Project['cloth']>(project.cloth, { grain });
        return cloth === project.cloth ? project : { ...project, cloth };
      }),
  };
}

function workEdits({ say, change }: Steps): Pick<EditActions, 'setCutting' | 'setDone' | 'setChecking'> {
  return {
    setCutting: (wishes, label) =>
      change(say().set(label), (project) => {
        const cutting = withChanges(project.cutting, wishes);
        return cutting === project.cutting ? project : { ...project, cutting };
      }),
    setDone: (stepId, isDone, label) =>
      change(isDone ? say().done(label) : say().notDone(label), (project) => {
        const others = (project.making?.done ?? []).filter((id) => id !== stepId);
        return { ...project, making: { done: isDone ? [...others, stepId] : others } };
      }),
    setChecking: (entries, label) =>
      change(say().set(label), (project) => ({ ...project, checking: { entries } })),
  };
}

function insideEdits({
  say,
  change,
}: Steps): Pick<EditActions, 'setTestTube' | 'setInside' | 'setInsidePart' | 'chooseInside'> {
  return {
    setTestTube: (line, mm, label) =>
      change(say().set(label), (project) => {
        const { measuredGrowth: _given, testTube = {}, ...others } = project.inside;
        const read = withChanges<TestTubeReadings>(testTube, { [line]: mm ?? undefined });
        if (read === testTube) return project;
        const isEmpty = Object.keys(read).length === 0;
        return { ...project, inside: isEmpty ? others : { ...others, testTube: read } };
      }),
    setInside: (id, value, label) =>
      change(say().set(label), (project) => {
        const { [id]: before, testTube, ...rest } = project.inside;
        if ((before ?? null) === value) return project;
        const others = testTube && id !== 'measuredGrowth' ? { ...rest, testTube } : rest;
        return { ...project, inside: value === null ? others : { ...others, [id]: value } };
      }),
    chooseInside: (changes, label) =>
      change(say().set(label), (project) => {
        const inside = withChanges<InsideOptions>(project.inside, changes);
        return inside === project.inside ? project : { ...project, inside };
      }),
    setInsidePart: (id, isMade, label) =>
      change(say().set(label), (project) => {
        const isUsual = isMade === INSIDE_OPTIONS[id].usual;
        const inside = withChanges<InsideOptions>(project.inside, { [id]: isUsual ? undefined : isMade });
        return inside === project.inside ? project : { ...project, inside };
      }),
  };
}

/** What may change without a piece having to move. */
const LEAVES_PLACES: readonly (keyof Stock)[] = ['shrinkage', 'isLaid', 'follows'];

function layEdits({ say, change }: Steps): Pick<EditActions, 'setStock' | 'setClothPrint' | 'placePieces'> {
  const setStock = (project: Project, use: UseId, wishes: Changes<Stock>): Project => {
    const before = project.laying?.[use] ?? {};
    const after = withChanges<Stock>(before, wishes);
    if (after === before) return project;
    const moves = Object.keys(wishes).some((key) => !LEAVES_PLACES.includes(key as keyof Stock));
    return withStock(project, use, moves ? withHeldAlone(after) : after);
  };
  return {
    setStock: (use, wishes, label) => change(say().set(label), (project) => setStock(project, use, wishes)),
    setClothPrint: (use, wishes, label) =>
      change(say().set(label), (project) => {
        const print = withChanges<NonNullable<Stock['print']>>(project.laying?.[use]?.print ?? {}, wishes);
        return setStock(project, use, { print: Object.keys(print).length > 0 ? print : undefined });
      }),
    placePieces: (use, placed, step) =>
      change(step, (project) => {
        const before = project.laying?.[use] ?? {};
        const after = withChanges<Stock>(before, { placed });
        return after === before ? project : withStock(project, use, after);
      }),
  };
}

/** Back to the lines of the named layout. */
function withoutLines({ lines: _own, ...seams }: Project['seams']): Project['seams'] {
  return seams;
}

function withReadings(body: Project['body'], id: string, readings: readonly number[]): Project['body'] {
  const { readings: before = {}, ...others } = body;
  const { [id]: _replaced, ...kept } = before;
  const after = readings.length >= 2 ? { ...kept, [id]: readings } : kept;
  return Object.keys(after).length > 0 ? { ...others, readings: after } : others;
}

/** The same object when nothing changes, so that no undo step is made. */
function withEntry<V extends MeasureValue | string>(
  entries: Readonly<Record<string, V>>,
  id: string,
  value: V | null,
): Readonly<Record<string, V>> {
  if (value === null) {
    if (!(id in entries)) return entries;
    return Object.fromEntries(Object.entries(entries).filter(([key]) => key !== id));
  }
  return isSameValue(entries[id], value) ? entries : { ...entries, [id]: value };
}

function isSameValue(a: MeasureValue | string | undefined, b: MeasureValue | string): boolean {
  if (typeof a === 'object' && typeof b === 'object') return a.left === b.left && a.right === b.right;
  return a === b;
}
