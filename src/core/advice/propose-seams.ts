import { flattenProblemFromShell } from '../assembly/index.ts';
import { failure, type Phrase, type Result, success } from '../base/index.ts';
import {
  createFlattenMemory,
  type FlatDisk,
  type FlattenMemory,
  type FormStrain,
  flattenTogether,
  measureFormStrain,
} from '../flatten/index.ts';
import type { ChartSurface } from '../mesh/index.ts';
import {
  type ControlPointName,
  cutIntoPanels,
  keyOfLevelLine,
  listMovablePoints,
  movePointBy,
  nameOfLine,
  type SeamedShell,
  type SeamForm,
  type SeamLayout,
  type SeamLine,
  splitPanel,
} from '../seams/index.ts';
import { type PointMove, type PointWay, phrase } from './phrases.ts';

export interface SeamProposal {
  readonly kind: 'move' | 'add';
  readonly layout: SeamLayout;
  readonly before: FormStrain;
  readonly after: FormStrain;
  /** One per line moved or added. */
  readonly changes: readonly Phrase[];
  /** Layouts tried. */
  readonly tried: number;
}

export interface ProposeOptions {
  /** Of the coarse mesh every trial is judged on; default 3000. */
  readonly targetTriangles?: number;
  /** How often every point is tried; default 3. */
  readonly rounds?: number;
  /** Stop as soon as p95 is under it. */
  readonly strainLimit?: number;
  /** No more panels than this, the neck band among them. */
  readonly mostPanels?: number;
  readonly onProgress?: (fraction: number, what: Phrase) => void;
  readonly isCancelled?: () => boolean;
}

const FIRST_STEP = 12;
const SMALLEST_STEP = 3;
/** Trials that gain less than this share are not worth a change. */
const WORTHWHILE = 5e-4;

/** A layout cut and unrolled on a coarse mesh. */
export interface JudgedLayout {
  readonly strain: FormStrain;
  readonly shell: SeamedShell;
  readonly flat: readonly FlatDisk[];
}

interface Judge {
  /** Undefined when it cannot be cut or unrolled, or brings more warnings than the first one judged. */
  readonly judge: (layout: SeamLayout) => JudgedLayout | undefined;
  readonly tried: () => number;
}

/**
 * Proposes where the lines of a layout could run better: every point in turn is moved by up to 12 mm either way, steps
 * growing on success and halving on failure, as long as a coarse mesh unrolls with less strain. Trials with faults or new
 * warnings are not taken. Nothing is applied: the layout comes back beside the old one with both figures, each measured on
 * the same coarse mesh. Cost: about 50 trials of 40 ms a round for twelve panels. Source: compass search, Kolda, Lewis
 * and Torczon, "Optimization by direct search", SIAM Review 45 (2003). Issues: the layout itself is faulty, cancelled.
 */
export function proposeMoves(
  surface: ChartSurface,
  form: SeamForm,
  layout: SeamLayout,
  options: ProposeOptions = {},
): Result<SeamProposal> {
  const { judge, tried } = createJudge(surface, form, options);
  const first = judge(layout);
  if (!first) return unsound(layout);
  const points = listMovablePoints(layout);
  const steps = points.map(() => FIRST_STEP);
  const moved = points.map(() => 0);
  const rounds = options.rounds ?? 3;
  let best = { layout, strain: first.strain };
  for (let round = 0; round < rounds; round++) {
    let hasMoved = false;
    for (const [k, point] of points.entries()) {
      if (options.isCancelled?.()) return stopped();
      options.onProgress?.((round + k / points.length) / rounds, phrase('advice.trying-lines'));
      if (options.strainLimit !== undefined && best.strain.p95 <= options.strainLimit) break;
      if (Math.abs(steps[k]) < SMALLEST_STEP) continue;
      const found = [steps[k], -steps[k]].find((mm) => {
        const trial = movePointBy(best.layout, point, mm);
        const judged = judge(trial);
        if (!judged || judged.strain.steep > best.strain.steep * (1 - WORTHWHILE)) return false;
        best = { layout: trial, strain: judged.strain };
        return true;
      });
      steps[k] = found === undefined ? steps[k] / 2 : 1.3 * found;
      moved[k] += found ?? 0;
      hasMoved ||= found !== undefined;
    }
    if (!hasMoved) break;
  }
  options.onProgress?.(1, phrase('advice.trying-lines'));
  return success({
    kind: 'move',
    layout: best.layout,
    before: first.strain,
    after: best.strain,
    changes: tellMoves(layout, points, moved),
    tried: tried(),
  });
}

/**
 * Proposes the one more line that lowers strain most: level seams along every level line not yet sewn, whole or on the
 * front only, and a line down the middle of every panel that can be divided. Nothing is applied. Cost: about 20 trials.
 * Issues: the layout itself is faulty, no line helps, cancelled.
 */
export function proposeLine(
  surface: ChartSurface,
  form: SeamForm,
  layout: SeamLayout,
  options: ProposeOptions = {},
): Result<SeamProposal> {
  const { judge, tried } = createJudge(surface, form, options);
  const first = judge(layout);
  if (!first) return unsound(layout);
  const candidates = listCandidates(form, layout, first.shell);
  let best: { layout: SeamLayout; line: SeamLine; strain: FormStrain } | undefined;
  for (const [k, line] of candidates.entries()) {
    if (options.isCancelled?.()) return stopped();
    options.onProgress?.(k / candidates.length, phrase('advice.trying-one-more'));
    const trial = { ...layout, lines: [...layout.lines, line] };
    const judged = judge(trial);
    if (!judged || judged.shell.panels.length > (options.mostPanels ?? Number.POSITIVE_INFINITY)) continue;
    if (judged.strain.steep < (best?.strain ?? first.strain).steep)
      best = { layout: trial, line, strain: judged.strain };
  }
  options.onProgress?.(1, phrase('advice.trying-one-more'));
  if (!best) {
    return failure([
      {
        code: 'no-line-helps',
        path: 'lines',
        message: phrase('advice.no-line-helps'),
        severity: 'warning',
      },
    ]);
  }
  return success({
    kind: 'add',
    layout: best.layout,
    before: first.strain,
    after: best.strain,
    changes: [phrase('advice.add-line', { line: nameOfLine(best.line.name) })],
    tried: tried(),
  });
}

/** Judges layouts of one body; panels that stay the same are not unrolled again. */
export function createJudge(surface: ChartSurface, form: SeamForm, options: ProposeOptions): Judge {
  const memory = createFlattenMemory();
  let count = 0;
  let mostWarnings: number | undefined;
  return {
    tried: () => count,
    judge: (layout) => {
      count++;
      const cut = cutIntoPanels(surface, form, layout, { targetTriangles: options.targetTriangles ?? 3000 });
      if (!cut.ok) return undefined;
      mostWarnings ??= cut.issues.length;
      if (cut.issues.length > mostWarnings) return undefined;
      const flat = unroll(cut.value, memory);
      return (
        flat && {
          strain: measureFormStrain(
            cut.value.panels.map((panel) => panel.mesh),
            flat,
          ),
          shell: cut.value,
          flat,
        }
      );
    },
  };
}

function unroll(shell: SeamedShell, memory: FlattenMemory): readonly FlatDisk[] | undefined {
  const flat = flattenTogether(flattenProblemFromShell(shell), { memory });
  return flat.ok ? flat.value : undefined;
}

/** Lines a layout could have besides its own; see `proposeLine`. */
export function listCandidates(form: SeamForm, layout: SeamLayout, shell: SeamedShell): SeamLine[] {
  const isOnChest = form.figure === 'chest';
  const hasSide = layout.lines.some((line) => line.id === 'side');
  const levels = form.levels
    .filter((level) => !layout.lines.some((line) => line.alongLevel === level.id))
    .flatMap(({ id }): SeamLine[] => {
      const from = { landmark: 'baseCentreFront' };
      const whole: SeamLine = {
        id: `${id}Level`,
        name: keyOfLevelLine(id, { isOnChest }),
        side: 'right',
        alongLevel: id,
        through: [from, { landmark: 'baseCentreBack' }],
      };
      const front: SeamLine = {
        ...whole,
        name: keyOfLevelLine(id, { isOnChest, isFrontOnly: true }),
        through: [from, { landmark: 'armpitRight', onLine: 'side' }],
      };
      return hasSide ? [whole, front] : [whole];
    });
  const lineOf = (seam: string) => shell.seams.find((candidate) => candidate.id === seam)?.lineId;
  const middles = shell.panels.flatMap((panel) => {
    const split = splitPanel(layout, panel, lineOf, form);
    return split.ok && panel.side === 'right' ? [split.value.line] : [];
  });
  return [...levels, ...middles];
}

function tellMoves(
  layout: SeamLayout,
  points: readonly ControlPointName[],
  moved: readonly number[],
): Phrase[] {
  return layout.lines.flatMap((line) => {
    const moves = points.flatMap((point, k): PointMove[] => {
      if (point.lineId !== line.id || Math.abs(moved[k]) < 1) return [];
      const [mm, way] = [Math.abs(moved[k]), wayOf(line, point, moved[k])];
      return [point.anchor < 0 ? { mm, way } : { point: point.anchor + 1, mm, way }];
    });
    return moves.length === 0 ? [] : [phrase('advice.move-points', { line: nameOfLine(line.name), moves })];
  });
}

function wayOf(line: SeamLine, point: ControlPointName, mm: number): PointWay {
  if (point.anchor < 0) return mm > 0 ? 'up' : 'down';
  const anchor = line.through[point.anchor];
  if (anchor.armhole !== undefined) return mm > 0 ? 'on-round-armhole' : 'back-round-armhole';
  if (anchor.onLine !== undefined) return mm > 0 ? 'to-neck' : 'from-neck';
  return mm > 0 ? 'to-front' : 'to-back';
}

function unsound(layout: SeamLayout): Result<SeamProposal> {
  const message = phrase('advice.layout-unsound', { layout: layout.name });
  return failure([{ code: 'layout-unsound', path: 'lines', message, severity: 'error' }]);
}

function stopped(): Result<SeamProposal> {
  return failure([{ code: 'cancelled', path: '', message: phrase('advice.stopped'), severity: 'error' }]);
}
