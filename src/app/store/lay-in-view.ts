import { type Issue, withUsual } from '../../core/base/index.ts';
import type { Form } from '../../core/form/index.ts';
import {
  isAsKept,
  LAYING_OPTIONS,
  type Laying,
  type LayPlan,
  type LayRules,
  type LayTask,
  layTask,
  piecesOfUse,
  planOfPlaces,
  rulesOfLay,
  type Stock,
  USES,
  type UseId,
} from '../../core/laying/index.ts';
import type { Project } from '../../core/project/index.ts';

/** What a plan was made for; compared by identity, so that a plan of other pieces or other cloth is never shown as of these. */
export interface LayKey {
  readonly pieces: Form['pieces'];
  readonly inside: Form['inside'];
  readonly stock: Stock;
}

/** What a search came to. */
export interface FoundLay {
  readonly of: LayKey;
  /** Null where nothing could be laid; `issues` say why. */
  readonly plan: LayPlan | null;
  readonly issues: readonly Issue[];
}

/** A search under way. */
export interface LaySearch {
  readonly use: UseId;
  readonly of: LayKey;
  /** Of the budget spent, 0 … 1. */
  readonly share: number;
  /** Asked for by the maker, not come by itself. */
  readonly isAsked: boolean;
}

/** What dragging on the lay plan does. */
export type LayDrag = 'pieces' | 'flaw' | 'print';

/** Laying, as it is worked on; what the maker keeps of it stands in the project. */
export interface LayWork {
  /** Looked at. */
  readonly use: UseId;
  /** The piece that keys and buttons move. */
  readonly chosen: string | null;
  readonly drag: LayDrag;
  readonly found: { readonly [Id in UseId]?: FoundLay };
  readonly search: LaySearch | null;
  /** The trial shell's pieces, asked for when they were first laid; of the form with those pieces. */
  readonly trial: TrialPieces | null;
}

export interface TrialPieces {
  readonly of: Form['pieces'];
  readonly pieces: Form['pieces'];
}

/** What is known where laying is looked at; part of the state. */
export interface LaySight {
  readonly form: Form | null;
  readonly project: Project | null;
  readonly layWork: LayWork;
}

/** The pieces of one use as they lie now. */
export interface LaySeen {
  readonly of: LayKey;
  readonly task: LayTask;
  readonly rules: LayRules;
  /** Null until a search has found one. */
  readonly plan: LayPlan | null;
  /** The project holds the plan as it is. */
  readonly isKept: boolean;
  readonly issues: readonly Issue[];
  /** Length of the plan the project holds, mm; null where it holds none of all pieces. */
  readonly keptLength: number | null;
  /** A search has come to its end for just this. */
  readonly isSearched: boolean;
}

const NO_STOCK: Stock = {};
const NO_ISSUES: readonly Issue[] = [];

export function stockOf(project: Project | null, use: UseId): Stock {
  return project?.laying?.[use] ?? NO_STOCK;
}

/** All pieces of a form; null where some are not there yet. */
export function piecesOfForm(form: Form | null): readonly Form['pieces'][number][] | null {
  return form?.inside && form.pieces.length > 0 ? [...form.pieces, ...form.inside.pieces] : null;
}

/** Uses of a form that have pieces, in their order; also those that are laid only when asked for. */
export function usesOfForm(form: Form | null): UseId[] {
  const pieces = piecesOfForm(form) ?? [];
  const has = (use: (typeof USES)[number]) => piecesOfUse(use, pieces).length > 0;
  // Every shell can be tried on: its trial's pieces are made when they are laid.
  return USES.filter((use) => (use.id === 'trial' ? pieces.length > 0 : has(use))).map(({ id }) => id);
}

/** The trial shell's pieces of the form in view; undefined until they are made. */
export function trialOfForm({ form, layWork }: LaySight): Form['pieces'] | undefined {
  const { trial } = layWork;
  return form?.trial ?? (trial && trial.of === form?.pieces ? trial.pieces : undefined);
}

/** Whether a use is laid: extra ones when switched on, others unless switched off or following the shell's cloth. */
export function isLaid(laying: Laying | undefined, id: UseId): boolean {
  const use = USES.find((other) => other.id === id);
  const stock = laying?.[id] ?? NO_STOCK;
  if (stock.isLaid === false || (use?.isExtra && stock.isLaid !== true)) return false;
  return !(use?.follows && withUsual(LAYING_OPTIONS, stock).follows);
}

/** The same object while nothing changes. */
export function layInView(sight: LaySight, use: UseId): LaySeen | null {
  const { form, project, layWork } = sight;
  const pieces = use === 'trial' ? trialOfForm(sight) : piecesOfForm(form);
  if (!form?.inside || !pieces || form.flat.length === 0) return null;
  const outer = use === 'trial' ? pieces : form.pieces;
  const key: LayKey = { pieces: outer, inside: form.inside, stock: stockOf(project, use) };
  const found = layWork.found[use];
  const known = seen.get(use);
  const isSame = known !== undefined && isSameKey(known.lay.of, key);
  if (isSame && known.found === found) return known.lay;
  // The key stays itself while what it holds does: searches are told apart by it.
  const of = isSame ? known.lay.of : key;
  const lay = look(form, pieces, of, use, found, isSame ? known.lay : undefined);
  seen.set(use, { lay, found });
  return lay;
}

/** The last of each use: rules take some milliseconds to work out. */
const seen = new Map<UseId, { readonly lay: LaySeen; readonly found: FoundLay | undefined }>();

function look(
  form: Form,
  pieces: Form['pieces'],
  of: LayKey,
  use: UseId,
  found: FoundLay | undefined,
  before: LaySeen | undefined,
): LaySeen {
  const task = before?.task ?? layTask({ ...form, pieces }, use, of.stock);
  const rules = before?.rules ?? rulesOfLay(task);
  const { placed = [] } = of.stock;
  const isWhole = rules.pieces.every(({ id }) => placed.some(({ piece }) => piece === id));
  const kept = isWhole ? planOfPlaces(rules, placed) : null;
  const common = { of, task, rules, keptLength: kept?.length ?? null };
  if (found && isSameKey(found.of, of))
    return {
      ...common,
      plan: found.plan,
      isKept: found.plan !== null && isAsKept(found.plan, of.stock),
      issues: found.issues,
      isSearched: true,
    };
  return { ...common, plan: kept, isKept: kept !== null, issues: NO_ISSUES, isSearched: false };
}

export function isSameKey(a: LayKey, b: LayKey): boolean {
  return a.pieces === b.pieces && a.inside === b.inside && a.stock === b.stock;
}

/** True when the first lays more pieces, on fewer sheets, or shorter. */
export function isShorter(a: LayPlan, b: LayPlan): boolean {
  if (a.left.length !== b.left.length) return a.left.length < b.left.length;
  if (a.sheetsUsed !== b.sheetsUsed) return a.sheetsUsed < b.sheetsUsed;
  return a.length < b.length;
}
