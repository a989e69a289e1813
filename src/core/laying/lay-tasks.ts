import { withUsual } from '../base/index.ts';
import type { Body } from '../body/index.ts';
import { type FlatDisk, tracerOfPanels } from '../flatten/index.ts';
import type { Piece } from '../pattern/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import type { LayTask } from './lay-pieces.ts';
import { LAYING_OPTIONS } from './laying-options.ts';
import type { MotifPlace } from './match-print.ts';
import type { Laying, Stock } from './types.ts';
import { findUse, piecesOfUse, USES, type UseId } from './uses.ts';

/** What laying needs of a form. */
export interface LaidForm {
  readonly body: Pick<Body, 'landmarks' | 'levels'>;
  readonly shell: SeamedShell;
  readonly flat: readonly FlatDisk[];
  /** All of them, the inner ones too, and the trial shell's where these are laid. */
  readonly pieces: readonly Piece[];
}

/**
 * Evaluations a use is laid with where nobody looks on; few pieces are done sooner. The shell's matter most.
 * A second or two for the shell on a slow core.
 */
const BUDGET = { shell: 1_500_000, other: 200_000 } as const;

/** Every use of a form that has pieces and is wanted, with what it is laid on. */
export function layTasks(form: LaidForm, laying: Laying | undefined): LayTask[] {
  return USES.filter((use) => isWanted(use.id, laying) && piecesOfUse(use, form.pieces).length > 0).map(
    ({ id }) => layTask(form, id, laying?.[id] ?? {}),
  );
}

/** One of them. */
export function layTask(form: LaidForm, use: UseId, stock: Stock, budget = budgetOf(use)): LayTask {
  const pieces = piecesOfUse(findUse(use), form.pieces);
  const motifs = pieces.some(({ material }) => material === 'shell') ? motifPlaces(form, stock) : [];
  return { use, pieces, stock, motifs, budget };
}

function budgetOf(use: UseId): number {
  return ['shell', 'trial'].includes(findUse(use).material) ? BUDGET.shell : BUDGET.other;
}

/** What follows the shell's cloth is not laid for itself. */
function isWanted(id: UseId, laying: Laying | undefined): boolean {
  const stock = laying?.[id] ?? {};
  const use = findUse(id);
  if (use.isExtra && stock.isLaid !== true) return false;
  if (stock.isLaid === false) return false;
  return !(use.follows && withUsual(LAYING_OPTIONS, stock).follows);
}

/** Where the middle of a motif is to lie, on the panels: at the centre front or at both bust points, at the chosen level. */
function motifPlaces({ body, shell, flat }: LaidForm, { print = {} }: Stock): MotifPlace[] {
  const { middle, level } = withUsual(LAYING_OPTIONS.print, print);
  const { landmarks, levels } = body;
  const trace = tracerOfPanels(shell, flat);
  const height = levels.find(({ id }) => id === level)?.v;
  const wanted =
    middle === 'bustPoints'
      ? [landmarks.bustPointRight, landmarks.bustPointLeft]
      : [{ u: landmarks.neckFront.u, v: height ?? landmarks.neckFront.v }];
  return wanted.flatMap(({ u, v }): MotifPlace[] => {
    const [at] = trace(Float64Array.of(u, v, u + NEAR, v)) ?? [];
    return at ? [{ piece: shell.panels[at.panel].id, point: at.a }] : [];
  });
}

/** A place on the body is traced as a line this short, radians. */
const NEAR = 1e-4;
