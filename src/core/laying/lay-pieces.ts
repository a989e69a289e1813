import { failure, type Issue, type Phrase, type Result, success, verbatim } from '../base/index.ts';
import { measurePolygonArea } from '../math/index.ts';
import { type NestPlan, type NestProblem, nest } from '../nesting/index.ts';
import type { Piece } from '../pattern/index.ts';
import { nameOfPlace } from '../seams/index.ts';
import { checkStock } from './check-stock.ts';
import { findMeetings } from './find-meetings.ts';
import { foldPieces } from './fold-pieces.ts';
import { layGround } from './lay-ground.ts';
import { type MatchedPrint, type MotifPlace, matchPrint, wayOfMeeting } from './match-print.ts';
import { isSameAngle, nestProblem } from './nest-problem.ts';
import { phrase } from './phrases.ts';
import type { LaidPiece, LayGround, LayPlan, Stock } from './types.ts';
import { findUse, type UseId } from './uses.ts';

/** Pieces to be laid on one kind of cloth or board. */
export interface LayTask {
  readonly use: UseId;
  readonly pieces: readonly Piece[];
  readonly stock: Stock;
  /** Where a motif's middle is to be; without any, and for pieces no seam joins to one, the print goes as it likes. */
  readonly motifs: readonly MotifPlace[];
  /** Evaluations to spend: the same number lays the same. */
  readonly budget: number;
}

export interface LayProgress {
  /** The best so far, of which all is true that is of a last one. */
  readonly plan: LayPlan | undefined;
  /** Share of the budget spent. */
  readonly share: number;
}

/**
 * Lays pieces on their cloth or boards, so that as little as may be is used. Yields every few milliseconds the best plan so far; who
 * stops asking keeps that one. mm; `LaidPiece` says how places are told. Fails on cloth narrower than a piece, on outlines that
 * cross themselves, on numbers out of their limits; a print that does not go on at a seam, and pieces without room, are warnings.
 */
export function* layPieces(task: LayTask): Generator<LayProgress, Result<LayPlan>> {
  const { stock } = task;
  const use = findUse(task.use);
  const ground = layGround(use, stock);
  const folded = ground.isFolded ? foldPieces(task.pieces) : undefined;
  const pieces = folded?.laid ?? task.pieces;
  const wrong = checkStock(use, pieces, stock, ground);
  if (wrong.length > 0) return failure(wrong);

  // 1. Where each piece must lie in the print.
  const { print: cloth = {} } = stock;
  const wantsToMeet = use.isCloth && wayOfMeeting(cloth) !== undefined;
  const meets = wantsToMeet && !folded;
  const print = meets ? matchPrint(findMeetings(pieces), task.motifs, cloth) : undefined;
  const problem = nestProblem(use, pieces, stock, ground, print, task.budget);

  // 2. The search.
  const told = (plan: NestPlan): LayPlan => ({
    ...planOf(task, ground, problem, print, plan),
    ...(folded && { under: [...folded.under].map(([piece, twin]) => ({ piece, twin: twin.id })) }),
  });
  const search = nest(problem);
  for (let step = search.next(); ; step = search.next()) {
    if (!step.done) {
      const { plan, share } = step.value;
      yield { plan: plan && told(plan), share };
      continue;
    }
    const last = step.value;
    if (!last.ok) return failure(last.issues.map((issue) => inOurWords(issue, task.use, pieces, ground)));
    const plan = told(last.value);
    const unseen = wantsToMeet && folded ? [printOnFold(task.use)] : [];
    // Pieces without room are told by their names.
    const rest = last.issues.filter(({ code }) => code !== 'no-room');
    return success(plan, [...rest, ...unseen, ...issuesOf(plan, task)]);
  }
}

/** The plan of a search that has ended: `layPieces` without its steps. */
export function layAll(task: LayTask): Result<LayPlan> {
  const search = layPieces(task);
  for (let step = search.next(); ; step = search.next()) if (step.done) return step.value;
}

function planOf(
  { use, pieces, stock }: LayTask,
  ground: LayGround,
  problem: NestProblem,
  print: MatchedPrint | undefined,
  plan: NestPlan,
): LayPlan {
  const from = ground.kind === 'roll' ? ground.usableFrom : 0;
  const held = new Set((stock.placed ?? []).flatMap(({ piece, isHeld }) => (isHeld ? [piece] : [])));
  const placed = plan.placements.flatMap((place, i): LaidPiece[] => {
    if (!place) return [];
    const { id, turns } = problem.items[i];
    const { angle } = turns[place.turn];
    return [{ piece: id, x: place.x, y: place.y + from, angle, sheet: place.sheet, isHeld: held.has(id) }];
  });
  return {
    use,
    placed,
    left: plan.left,
    ground,
    length: plan.length,
    sheetsUsed: plan.sheetsUsed,
    area: areaOf(pieces),
    taken: takenBy(plan, ground),
    bound: plan.bound,
    ...(print && { print: { met: print.met, others: print.others } }),
    evaluations: plan.evaluations,
  };
}

/** What the search has to say of an item, said of the piece it is. */
function inOurWords(issue: Issue, use: UseId, pieces: readonly Piece[], ground: LayGround): Issue {
  const piece = pieces[Number(issue.path.split('.')[1])]?.name;
  const { code, message } = issue;
  const values: Readonly<Record<string, unknown>> = message.values;
  if (code === 'item-too-large' && piece) {
    const size = { length: Number(values.length), width: Number(values.height) };
    return { ...issue, path: `${use}.pieces`, message: phrase('laying.too-large', { use, piece, ...size }) };
  }
  if (code === 'item-too-wide' && piece) {
    const lost = ground.width - ground.usableWidth;
    const layers = ground.isFolded ? 2 : 1;
    const widths = { width: ground.width * layers, needed: (Number(values.needed) + lost) * layers };
    const told = phrase('laying.too-narrow', { use, piece, ...widths });
    return { ...issue, path: `${use}.stockWidth`, message: told };
  }
  return { ...issue, path: `${use}.${issue.path}` };
}

function printOnFold(use: UseId): Issue {
  const message = phrase('laying.print-on-fold', { use });
  return { code: 'print-on-fold', path: `${use}.isFolded`, message, severity: 'warning' };
}

/** Of all cut outlines, mm². */
function areaOf(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, { cutLine }) => sum + Math.abs(measurePolygonArea(cutLine)), 0);
}

/** mm² of the roll up to its end, or of the sheets used. */
function takenBy({ length, sheetsUsed }: NestPlan, { kind, width, sheets, isFolded }: LayGround): number {
  if (kind === 'roll') return length * width * (isFolded ? 2 : 1);
  return sheets
    .slice(0, sheetsUsed)
    .reduce((sum, { outline }) => sum + Math.abs(measurePolygonArea(outline)), 0);
}

/** How far a print may be off at a seam before it is told, mm. */
const MEETS = 0.5;

function issuesOf(plan: LayPlan, { use, pieces }: LayTask): Issue[] {
  const issues: Issue[] = [];
  const nameOf = (id: string): Phrase => pieces.find((piece) => piece.id === id)?.name ?? verbatim(id);
  const left = pieces.filter(({ id }) => plan.left.includes(id));
  if (left.length > 0)
    issues.push({
      code: 'no-room',
      path: use,
      message: phrase('laying.no-room', { use, pieces: left.map(({ name }) => name), area: areaOf(left) }),
      severity: 'warning',
    });
  const worst = (plan.print?.met ?? []).filter((gap) => Math.hypot(gap.along, gap.across) > MEETS);
  for (const { seam, at, pieces: sides, along, across } of worst)
    issues.push({
      code: 'print-does-not-meet',
      path: `${use}.print`,
      message: phrase('laying.print-gap', {
        seam,
        level: nameOfPlace(at),
        pieces: sides.map(nameOf),
        along: Math.abs(along),
        across: Math.abs(across),
      }),
      severity: 'warning',
      measured: Math.hypot(along, across),
      limit: MEETS,
    });
  return issues;
}

/** True when every place kept is where a piece lies now: nothing was moved. */
export function isAsKept(plan: LayPlan, { placed = [] }: Stock): boolean {
  return (
    placed.length === plan.placed.length &&
    plan.placed.every(({ piece, x, y, angle, sheet }) => {
      const kept = placed.find((place) => place.piece === piece);
      return (
        kept !== undefined &&
        kept.x === x &&
        kept.y === y &&
        (kept.sheet ?? 0) === sheet &&
        isSameAngle(kept.angle, angle)
      );
    })
  );
}
