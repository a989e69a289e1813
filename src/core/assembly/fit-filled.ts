import { type Result, success } from '../base/index.ts';
import {
  type CutUnknowns,
  changesOfRungs,
  type FilledMeasures,
  type FilledShell,
  filledProblem,
  fitCut,
  measureFilled,
  movesOfPanel,
} from '../filled/index.ts';
import type { FlatDisk, FlattenOptions, FlattenProblem } from '../flatten/index.ts';
import { type InsideOptions, type InsideShape, measuredGrowthOf, type SectionSize } from '../inside/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import { type Equilibrium, findEquilibrium } from '../statics/index.ts';
import { layAlongGrain } from './lay-along-grain.ts';
import { recutPanels } from './recut-panels.ts';

/** A shell of few triangles, unrolled, on which a filling is tried out. */
export interface TrialShell {
  readonly shell: SeamedShell;
  readonly problem: FlattenProblem;
  readonly flat: readonly FlatDisk[];
}

/** How panels and braces are cut so that the filled form comes out as the body, and how it then does. */
export interface FittedFilling {
  readonly unknowns: CutUnknowns;
  readonly amounts: Float64Array;
  readonly filled: FilledShell;
  readonly balance: Equilibrium;
  readonly measures: FilledMeasures;
  /** Levels that got straps because the fewest parts did not hold them. */
  readonly strapsAdded: readonly string[];
  /** Girths of the levels at half and at double the pressure over stiffness; where no test tube tells which it is. mm. */
  readonly band?: readonly { readonly id: string; readonly soft: number; readonly firm: number }[];
}

/** What the levels of the body measure, by their ids. */
type Sections = Readonly<Record<string, SectionSize>>;

interface Watching extends Pick<FlattenOptions, 'isCancelled'> {
  /** 0 to 1. */
  readonly onProgress?: (fraction: number) => void;
}

/**
 * Fits the cut on a trial shell, makes partners equal, and fills it once more as it is then cut. `sections`: of the body; `grain`: of
 * `Project.cloth`.
 * Issues: as `fitCut`, `recutPanels` and `findEquilibrium`. Takes some seconds.
 */
export function fitFilling(
  trial: TrialShell,
  inside: Pick<InsideShape, 'pole' | 'braces'>,
  options: InsideOptions,
  sections: Sections,
  grain: Readonly<Record<string, number>> = {},
  { onProgress, isCancelled = () => false }: Watching = {},
): Result<FittedFilling> {
  const { shell, problem, flat } = trial;
  const upright = flat.map(({ positions }) => positions);
  const angles = shell.panels.map(({ id }) => grain[id] ?? 0);
  const lay = (disks: readonly FlatDisk[]): readonly FlatDisk[] => {
    const laid = layAlongGrain(shell, disks, grain);
    return laid.ok ? laid.value : disks;
  };
  const given = { shell, flat: lay(flat), inside, options };
  const fitted = fitCut(
    { ...given, upright, grain: angles },
    { shouldStop: isCancelled, onRound: ({ round, most }) => onProgress?.((0.9 * round) / most) },
  );
  if (!fitted.ok) return fitted;
  const { unknowns, amounts } = fitted.value;
  const recut = recutPanels(shell, problem, flat, movesOfCut(shell, upright, unknowns, amounts), {
    isCancelled,
  });
  if (!recut.ok) return recut;
  const changed = { ...inside, braces: changeBraces(inside.braces, unknowns, amounts) };
  const filled = filledProblem({ shell, flat: lay(recut.value), inside: changed, options });
  const start = fitted.value.balance.positions;
  const balance = findEquilibrium({ ...filled.problem, start }, { shouldStop: isCancelled });
  if (!balance.ok) return { ok: false, issues: balance.issues };
  const measures = onBody(measureFilled(filled, balance.value), sections);
  const band =
    measuredGrowthOf(options) === undefined
      ? bandOf(filled, balance.value, sections, isCancelled)
      : undefined;
  const found = { unknowns, amounts, filled, balance: balance.value, measures };
  return success({ ...found, strapsAdded: [], ...(band && { band }) });
}

/** Sizes as of the body itself: between its points the mesh that is filled is a millimetre or two smaller round than that. */
export function onBody(measures: FilledMeasures, sections: Sections): FilledMeasures {
  const levels = measures.levels.map((level) => {
    const { asked, found } = level;
    const section = sections[level.id];
    if (!section) return level;
    const { girth, width, depth } = section;
    const add = (size: 'girth' | 'width' | 'depth') => section[size] + found[size] - asked[size];
    return {
      ...level,
      asked: { girth, width, depth },
      found: { girth: add('girth'), width: add('width'), depth: add('depth') },
    };
  });
  return { ...measures, levels };
}

/** The usual pressure and stiffness are right to a factor of about two (ours); undefined where either end finds no balance. */
const UNSURE = 2;

function bandOf(
  filled: FilledShell,
  { positions }: Equilibrium,
  sections: Sections,
  shouldStop: () => boolean,
): FittedFilling['band'] {
  const girthsAt = (share: number) => {
    const pressure = share * filled.load.pressure;
    const found = findEquilibrium({ ...filled.problem, start: positions, pressure }, { shouldStop });
    if (!found.ok) return undefined;
    return onBody(measureFilled(filled, found.value), sections).levels.map((level) => level.found.girth);
  };
  const [soft, firm] = [girthsAt(1 / UNSURE), girthsAt(UNSURE)];
  if (!soft || !firm) return undefined;
  return filled.given.shell.levels.map(({ id }, k) => ({ id, soft: soft[k], firm: firm[k] }));
}

/** How the points of all flat panels of a shell move, on whatever mesh of it. `upright`: #V × 2 each. */
export function movesOfCut(
  { panels }: SeamedShell,
  upright: readonly Float64Array[],
  unknowns: CutUnknowns,
  amounts: Float64Array,
): Float64Array[] {
  return upright.map((flat, p) => movesOfPanel(unknowns, panels, flat, p, amounts));
}

/** Braces with their threads cut as long as was found. */
export function changeBraces(
  braces: InsideShape['braces'],
  unknowns: CutUnknowns,
  amounts: Float64Array,
): InsideShape['braces'] {
  return braces.map((brace) => {
    const changes = changesOfRungs(unknowns, brace, amounts);
    return { ...brace, rungs: brace.rungs.map((rung, k) => ({ ...rung, length: rung.length + changes[k] })) };
  });
}
