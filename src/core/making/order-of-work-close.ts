import type { Phrase } from '../base/index.ts';
import type { WorkCheck, WorkSeam, WorkStep } from '../form/index.ts';
import { type Method, type Op, SEW_RATIO, type SeamWay, wayOfSeam, wayOut } from '../sewing/index.ts';
import { jointsAtClosing, noteOpen } from './order-of-work-inner.ts';
import { phrase } from './phrases.ts';
import { closesBehind, idsOfSeams, joinSeams, seamsByRole } from './seams-by-role.ts';
import type { Work } from './work-of-form.ts';
import { innerPieces, lengthCheck, type PlannedStep, panelsOf, pick, plan } from './work-parts.ts';

/** How the last seam of the shell is closed. */
export type ClosingWay = Extract<Method, 'packed' | 'ladder'>;

/** What both steps are made of: the last seams, the tie on their allowances, what lies at hand. */
interface Closing {
  readonly work: Work;
  readonly seams: readonly string[];
  readonly ties: readonly string[];
  readonly pieces: WorkStep['pieces'];
  readonly words: { readonly isBehind: boolean; readonly isLaddered: boolean };
  readonly checks: readonly WorkCheck[];
}

/** Lengths that are taken once the shell is whole and empty. */
const READ: readonly Op[] = ['flat-widths', 'opening-edges'].map((fact) => ({
  does: 'read',
  fact,
  how: 'flat',
}));

/** The last seam, and the shell turned right side out: packed and drawn out, laddered from outside, or empty and plain. */
export function closingSteps(work: Work, way: ClosingWay): PlannedStep[] {
  const { form, has } = work;
  const seams = seamsByRole(work, 'closing');
  const ties = jointsAtClosing(work);
  const closing: Closing = {
    work,
    seams: idsOfSeams(seams),
    ties,
    pieces: [
      ...panelsOf(
        form,
        seams.flatMap(({ seam }) => seam.panels),
      ),
      ...innerPieces(form, (id) => ties.some((joint) => joint.startsWith(`${id}/`))),
    ],
    words: { isBehind: closesBehind(work), isLaddered: has.inside && way === 'ladder' },
    checks: flatChecks(work, 'check.laid-flat'),
  };
  if (!has.inside) return [closeEmpty(closing)];
  return way === 'packed' ? closePacked(closing) : closeLaddered(closing);
}

/** Widths of the shell laid out open in one layer, or as a tube in two. */
export function flatChecks({ form }: Work, id: 'check.laid-out' | 'check.laid-flat'): WorkCheck[] {
  return form.report.levels.flatMap(({ id: levelId, lengthFlat }) => {
    const level = form.shell.levels.find((one) => one.id === levelId)?.name;
    const width = id === 'check.laid-flat' ? lengthFlat / 2 : lengthFlat;
    return level ? [lengthCheck(`flat-${levelId}`, phrase(id, { level }), width)] : [];
  });
}

function sewStep({ words }: Closing, text: readonly Phrase[], ops: readonly Op[], rest: Partial<WorkStep>) {
  return plan('sew-closing', 'sew', phrase('step.closing.title', words), text, ops, rest);
}

function turnStep({ words }: Closing, text: readonly Phrase[], ops: readonly Op[], rest: Partial<WorkStep>) {
  return plan('turn-out', 'sew', phrase('step.turn-out.title', words), text, ops, rest);
}

function closeEmpty(closing: Closing): PlannedStep {
  const { work, seams, pieces, checks } = closing;
  const sew = joinSeams(seamsByRole(work, 'closing'), 'plain');
  const text = [phrase('step.closing.empty'), phrase('step.closing.flat')];
  return sewStep(closing, text, [...sew, ...READ], { pieces, seams: pick(work.seams, seams), checks });
}

function closePacked(closing: Closing): PlannedStep[] {
  const { work, seams, ties, pieces, words, checks } = closing;
  const roll = figuresOf(tightest(closing));
  const hasStraps = work.input.braces.some(({ kind }) => kind === 'strap');
  const out = figuresOf(wayOut(work.input, seams, () => true));
  const sew = joinSeams(seamsByRole(work, 'closing'), 'packed');
  const tie = ties.map((joint): Op => ({ does: 'join', joint, how: 'flap' }));
  return [
    sewStep(
      closing,
      [
        phrase('step.closing.count'),
        phrase('step.closing.roll', { ...roll, isBehind: words.isBehind, hasStraps }),
        phrase('step.closing.sew'),
      ],
      sew,
      { pieces, seams: pick(work.seams, seams) },
    ),
    turnStep(
      closing,
      [
        ...(ties.length > 0 ? [phrase('step.turn-out.tie')] : []),
        phrase('step.turn-out.draw', out),
        phrase('step.closing.flat'),
      ],
      [...tie, { does: 'draw-out', seams }, ...READ],
      { pieces: pieces.slice(-1), seams: pick(work.seams, ties), checks },
    ),
  ];
}

function closeLaddered(closing: Closing): PlannedStep[] {
  const { work, seams, ties, pieces, words, checks } = closing;
  const sew = joinSeams(seamsByRole(work, 'closing'), 'ladder');
  const roll = figuresOf(tightest(closing));
  const tie = ties.map((joint): Op => ({ does: 'join', joint, how: 'lap' }));
  const onOne = pick(work.seams, ties).map((seam): WorkSeam => noteOpen(work, seam));
  return [
    sewStep(
      closing,
      [
        ...(ties.length > 0 ? [phrase('step.closing.tie-to-one')] : []),
        phrase('step.closing.turn', { isBehind: words.isBehind }),
      ],
      tie,
      { pieces, seams: onOne },
    ),
    turnStep(
      closing,
      [
        phrase('step.turn-out.ladder'),
        phrase(roll.ratio < SEW_RATIO ? 'step.turn-out.why-ladder' : 'step.turn-out.or-packed', roll),
        phrase('step.closing.flat'),
      ],
      [...sew, ...READ],
      { pieces, seams: pick(work.seams, seams), checks },
    ),
  ];
}

function figuresOf(way: SeamWay) {
  const { mouth, pack } = way.kind === 'packed' ? way : { mouth: 0, pack: 0 };
  return { mouth, pack, ratio: pack > 0 ? mouth / pack : 0 };
}

/** Of the last seams, sewn one after the other, the one with the least room round the roll. */
function tightest({ work, seams, ties }: Closing): SeamWay {
  const open = new Set([...seams, ...ties]);
  const ways = seams.map((id): SeamWay => {
    const way = wayOfSeam(work.input, id, (joint) => !open.has(joint));
    open.delete(id);
    return way;
  });
  const ratio = (way: SeamWay): number => (way.kind === 'packed' ? way.mouth / way.pack : Infinity);
  return ways.reduce((a, b) => (ratio(b) < ratio(a) ? b : a), { kind: 'plain' });
}
