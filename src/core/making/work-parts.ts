import type { Phrase } from '../base/index.ts';
import type { Form, WorkCheck, WorkSeam, WorkStep } from '../form/index.ts';
import { CAUTIONS, type Caution, type CautionId } from '../inside/index.ts';
import { measureFlatPath } from '../mesh/index.ts';
import type { Op } from '../sewing/index.ts';

type Named = { readonly id: string; readonly name: Phrase };

/** A step, and what it does to the form, by which the order is proven. */
export interface PlannedStep {
  readonly step: WorkStep;
  readonly ops: readonly Op[];
}

/** A step; what is not given is empty. */
export function plan(
  id: string,
  phase: WorkStep['phase'],
  title: Phrase,
  text: readonly Phrase[],
  ops: readonly Op[],
  rest: Partial<WorkStep> = {},
): PlannedStep {
  // Its hours are told when the whole order is known.
  const empty = { pieces: [], seams: [], needs: [], checks: [], cautions: [], hours: 0 };
  return { step: { id, phase, title, text, ...empty, ...rest }, ops };
}

export function lengthCheck(
  id: string,
  name: Phrase,
  value: number,
  below: number | null = 2,
  above: number | null = below,
): WorkCheck {
  return { id, name, unit: 'mm', value, below, above };
}

export function cautionsOf(...ids: CautionId[]): Caution[] {
  return CAUTIONS.filter(({ id }) => ids.includes(id));
}

/** Ids and names of the inner pieces that fulfil the test. */
export function innerPieces(form: Form, isWanted: (id: string, material: string) => boolean): Named[] {
  const pieces = form.inside?.pieces ?? [];
  return pieces.filter(({ id, material }) => isWanted(id, material)).map(({ id, name }) => ({ id, name }));
}

export function panelsOf(form: Form, ids: Iterable<string>): Named[] {
  const wanted = new Set(ids);
  return form.shell.panels.filter(({ id }) => wanted.has(id)).map(({ id, name }) => ({ id, name }));
}

/** Seams by their ids, in that order. */
export function pick(seams: ReadonlyMap<string, WorkSeam>, ids: readonly string[]): WorkSeam[] {
  return ids.flatMap((id) => seams.get(id) ?? []);
}

/** How wide the given panels, sewn together, lie flat at a level: the sum over their stretches of it, mm. */
export function widthAtLevel(form: Form, panelIds: ReadonlySet<string>, levelId: string): number {
  const levelSeams = new Set(form.shell.seams.filter((s) => s.alongLevel === levelId).map(({ id }) => id));
  let width = 0;
  form.shell.panels.forEach((panel, i) => {
    if (!panelIds.has(panel.id)) return;
    const flat = form.flat[i].positions;
    for (const level of panel.levels)
      if (level.id === levelId) width += measureFlatPath(flat, level.vertices);
    // A level that is a seam lies on the pieces above and below it.
    for (const edge of panel.edges) {
      if (edge.kind === 'seam' && levelSeams.has(edge.id)) width += measureFlatPath(flat, edge.vertices) / 2;
    }
  });
  return width;
}

/** Sum over the panels of their sewing lines along an opening, mm. */
export function edgeOfOpening(form: Form, openingId: string): number {
  let sum = 0;
  form.shell.panels.forEach((panel, i) => {
    for (const edge of panel.edges) {
      if (edge.kind === 'opening' && edge.id === openingId)
        sum += measureFlatPath(form.flat[i].positions, edge.vertices);
    }
  });
  return sum;
}
