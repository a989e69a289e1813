import type { Figure, MeasureValue } from '../../core/body/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { AppStore } from './create-app-store.ts';

export interface EditActions {
  /** Replaces what is being edited; undo brings the former project back. */
  openProject(project: Project, step: string): void;
  renameProject(name: string): void;
  setUnits(units: Project['displayUnits']): void;
  setFigure(figure: Figure): void;
  /** mm; `null` forgets the measure, so that it is estimated again. */
  setMeasure(id: string, value: MeasureValue | null, label: string): void;
  setShape(id: string, value: string | number | null, label: string): void;
  setLayout(id: string, label: string): void;
  setAllowance(mm: number): void;
  setLengthBlend(blend: number): void;
  /** Changes between `beginEdit` and `endEdit` become one undo step. */
  beginEdit(): void;
  endEdit(): void;
  /** Text that could not be used goes first, then one step at a time. */
  undo(): void;
  redo(): void;
}

/** Edits of the project, each a named undo step. */
export function createEditActions(store: AppStore): EditActions {
  let isGrouping = false;
  let hasGroupChanged = false;

  const endEdit = () => {
    isGrouping = false;
    hasGroupChanged = false;
    store.temporal.getState().resume();
  };
  const change = (step: string, recipe: (project: Project) => Project) => {
    const { project } = store.getState();
    if (!project) return;
    const next = recipe(project);
    if (next === project) return;
    store.setState({ project: next, step });
    if (isGrouping && !hasGroupChanged) {
      hasGroupChanged = true;
      store.temporal.getState().pause();
    }
  };
  const changeBody = (step: string, body: Partial<Project['body']>) =>
    change(step, (project) => ({ ...project, body: { ...project.body, ...body } }));

  return {
    openProject(project, step) {
      endEdit();
      store.setState({ project, step, drafts: {}, highlight: null, failure: null });
    },
    renameProject: (name) =>
      change('Rename', (project) => (project.name === name ? project : { ...project, name })),
    setUnits: (displayUnits) =>
      change(displayUnits === 'cm' ? 'Show centimetres' : 'Show inches', (project) =>
        project.displayUnits === displayUnits ? project : { ...project, displayUnits },
      ),
    setFigure: (figure) => changeBody('Change figure', { figure }),
    setMeasure: (id, value, label) =>
      change(value === null ? `Clear ${label}` : `Set ${label}`, (project) => {
        const measures = withEntry(project.body.measures, id, value);
        return measures === project.body.measures
          ? project
          : { ...project, body: { ...project.body, measures } };
      }),
    setShape: (id, value, label) =>
      change(`Set ${label}`, (project) => {
        const before = project.body.shape ?? {};
        const shape = withEntry(before, id, value);
        return shape === before ? project : { ...project, body: { ...project.body, shape } };
      }),
    setLayout: (layout, label) =>
      change(`Use ${label}`, (project) =>
        project.seams.layout === layout ? project : { ...project, seams: { ...project.seams, layout } },
      ),
    setAllowance: (allowance) =>
      change('Set seam allowance', (project) =>
        project.cloth.allowance === allowance
          ? project
          : { ...project, cloth: { ...project.cloth, allowance } },
      ),
    setLengthBlend: (lengthBlend) =>
      change('Set seam lengths', (project) =>
        project.seams.lengthBlend === lengthBlend
          ? project
          : { ...project, seams: { ...project.seams, lengthBlend } },
      ),
    beginEdit() {
      endEdit();
      isGrouping = true;
    },
    endEdit,
    undo() {
      endEdit();
      const hasDrafts = Object.keys(store.getState().drafts).length > 0;
      if (hasDrafts) store.setState({ drafts: {} });
      else store.temporal.getState().undo();
    },
    redo() {
      endEdit();
      store.temporal.getState().redo();
      store.setState({ drafts: {} });
    },
  };
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
