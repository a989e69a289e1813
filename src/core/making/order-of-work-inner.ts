import type { WorkCheck, WorkSeam } from '../form/index.ts';
import type { DesignedBrace } from '../inside/index.ts';
import { LAP_FLAT, type Op, type WorkBrace, wayToFreeEdge } from '../sewing/index.ts';
import { phrase } from './phrases.ts';
import { closesBehind } from './seams-by-role.ts';
import { halfOfEdge } from './seams-of-form.ts';
import { SLEEVE_CLOSING, type Work } from './work-of-form.ts';
import { innerPieces, lengthCheck, type PlannedStep, pick, plan } from './work-parts.ts';

/** The sleeve lies flat while everything is stitched on, then closes round the pole with the back tie caught in its seam. */
export function sleeveStep({ form, input, seams, has }: Work): PlannedStep {
  const sleeveGirth = form.inside?.shape.pole.sleeveGirth ?? 0;
  const onSleeve = (...kinds: WorkBrace['kind'][]): string[] =>
    input.braces
      .filter(({ kind, isOnSleeve }) => isOnSleeve && kinds.includes(kind))
      .flatMap(({ to }) => to)
      .filter((id) => id !== SLEEVE_CLOSING);
  const order = [...onSleeve('strap'), ...onSleeve('tie'), ...onSleeve('throat'), SLEEVE_CLOSING];
  const tabs = innerPieces(form, (id) => id.startsWith('tab-'));
  const hasStraps = input.braces.some(({ kind }) => kind === 'strap');
  const letters = pick(seams, onSleeve('strap')).map(({ letter }) => letter);
  return plan(
    'sew-sleeve',
    'sew',
    phrase('step.sleeve.title'),
    [
      phrase('step.sleeve.hem', { hasStraps }),
      phrase('step.sleeve.stitch', { hasStraps, areOneLine: new Set(letters).size < letters.length }),
      ...(has.throat ? [phrase('step.sleeve.throat')] : []),
      phrase('step.sleeve.close'),
      ...(has.tabs ? [phrase('step.sleeve.tabs', { count: tabs.length })] : []),
      phrase('step.sleeve.try'),
    ],
    [
      ...order.map((joint): Op => ({ does: 'join', joint, how: 'plain', facts: ['pole-diameter'] })),
      { does: 'make', part: 'sleeve', of: ['pole-sleeve'], needs: ['pole'] },
      ...(has.tabs
        ? ([
            { does: 'make', part: 'tabs', of: tabs.map(({ id }) => id) },
            { does: 'insert', part: 'tabs', through: 'base' },
          ] as const)
        : []),
      { does: 'read', fact: 'sleeve-width', how: 'flat' },
    ],
    {
      needs: ['use'],
      pieces: innerPieces(form, (id) => /^(pole-sleeve|tab-|tie-|strap-|throat-)/.test(id)),
      seams: pick(seams, order),
      checks: [lengthCheck('sleeve', phrase('check.sleeve'), sleeveGirth / 2, 0.5, 1.5)],
    },
  );
}

/** Front tie, the webs' front edges and the throat webs, while the front lies flat with both its sides free. */
export function innerFrontStep(work: Work): PlannedStep {
  const { form, has } = work;
  const braces = form.inside?.shape.braces ?? [];
  const onFront = (kind: DesignedBrace['kind']): string[] =>
    braces.filter((brace) => brace.kind === kind).flatMap((brace) => jointsOnHalf(work, brace, 'front'));
  const order = [...onFront('tie'), ...onFront('web'), ...onFront('throat')];
  const owners = new Set(order.map(ownerOf));
  return plan(
    'sew-inner-front',
    'sew',
    phrase('step.inner.title', { half: 'front', hasStraps: false }),
    [
      phrase('step.inner.lay-front'),
      phrase('step.inner.to-front'),
      ...(has.throat ? [phrase('step.inner.throat')] : []),
    ],
    order.map((joint): Op => ({ does: 'join', joint, how: 'lap', needs: ['sleeve', 'front'].slice(0, 1) })),
    {
      needs: ['sew-sleeve'],
      pieces: innerPieces(form, (id) => owners.has(id)),
      seams: pick(work.seams, order).map((seam) => noteOpen(work, seam)),
      checks: braces
        .filter(({ id, kind }) => owners.has(id) && kind !== 'web')
        .flatMap((brace) => lengthsOf(work, brace)),
    },
  );
}

/**
 * Side by side: the straps through the slots of their web and onto their lines, the farthest from the free edge first, then the web's
 * back edge; what else goes on the back and is not caught where the shell is closed.
 */
export function innerBackStep(work: Work): PlannedStep {
  const { form, input } = work;
  const braces = form.inside?.shape.braces ?? [];
  const last = new Set(jointsAtClosing(work));
  const order: string[] = [];
  const ops: Op[] = [];
  const joined = new Set(input.joints.filter(({ isShell }) => isShell).map(({ id }) => id));
  for (const id of work.order.filter(({ role }) => role === 'closing').map(({ seam }) => seam.id))
    joined.delete(id);
  const wayOf = (joint: string): number => wayToFreeEdge(input, joint, (id) => joined.has(id));
  // What lies in the middle of a closed back first: the webs would stand between it and the sides.
  for (const side of ['centre', 'right', 'left'] as const) {
    const own = braces.filter((brace) => brace.side === side);
    const straps = own
      .filter(({ kind }) => kind === 'strap')
      .flatMap(({ id }) => input.braces.find((one) => one.id === id) ?? [])
      .toSorted((a, b) => wayOf(b.from[0]) - wayOf(a.from[0]));
    const ends = straps.flatMap(({ from }) => from);
    for (const { id, through } of straps) if (through) ops.push({ does: 'thread', strap: id });
    const rest = own
      .filter(({ kind }) => kind !== 'strap')
      .flatMap((brace) => jointsOnHalf(work, brace, 'back'))
      .filter((joint) => !last.has(joint));
    // From a free centre back the straps are the farther ones; from free sides the web is.
    const inTurn = closesBehind(work) ? [...ends, ...rest] : [...rest, ...ends];
    ops.push(...inTurn.map((joint): Op => ({ does: 'join', joint, how: 'lap' })));
    order.push(...inTurn);
  }
  const owners = new Set(order.map(ownerOf));
  const ways = order
    .filter((id) => ownerOf(id).startsWith('web'))
    .map(wayOf)
    .filter(Number.isFinite);
  const far = Math.max(0, ...ways);
  const hasStraps = braces.some(({ kind }) => kind === 'strap');
  return plan(
    'sew-inner-back',
    'sew',
    phrase('step.inner.title', { half: 'back', hasStraps }),
    [
      ...(hasStraps ? [phrase('step.inner.straps')] : []),
      phrase('step.inner.to-back', { far, isRolled: far > LAP_FLAT, hasStraps }),
      phrase('step.inner.no-twist'),
    ],
    ops,
    {
      pieces: innerPieces(form, (id) => owners.has(id)),
      seams: pick(work.seams, order).map((seam) => noteOpen(work, seam)),
      checks: braces
        .filter(({ id }) => owners.has(id) && !id.startsWith('throat'))
        .flatMap((brace) => lengthsOf(work, brace)),
    },
  );
}

/** Joints that are sewn onto the allowances of the seam that closes the shell. */
export function jointsAtClosing({ input, order }: Work): string[] {
  const closing = new Set(order.filter(({ role }) => role === 'closing').map(({ seam }) => seam.id));
  return input.braces
    .filter(({ kind }) => kind === 'tie')
    .flatMap(({ from }) => from)
    .filter((joint) => closing.has(joint.slice(joint.indexOf('/') + 1)));
}

function ownerOf(joint: string): string {
  return joint.slice(0, joint.indexOf('/'));
}

function jointsOnHalf(work: Work, brace: DesignedBrace, half: 'front' | 'back'): string[] {
  const own = work.input.braces.find(({ id }) => id === brace.id);
  if (!own) return [];
  const onShell = own.isOnSleeve ? own.from : [...own.from, ...own.to];
  return onShell.filter((joint) => {
    const letter = work.seams.get(joint)?.letter ?? '';
    return halfOfEdge(work.form, brace, letter) === half;
  });
}

/** An edge on a seam that is still open lies on one of its two allowances. */
export function noteOpen({ order }: Work, seam: WorkSeam): WorkSeam {
  const onto = seam.id.slice(seam.id.indexOf('/') + 1);
  const place = order.find((one) => one.seam.id === onto);
  const isOpen = place !== undefined && place.role === 'closing';
  return isOpen ? { ...seam, note: phrase('seam.to-open-edge') } : seam;
}

function lengthsOf(work: Work, brace: DesignedBrace): WorkCheck[] {
  if (brace.kind === 'throat') return lengthsAtEnds(brace);
  return brace.rungs.flatMap(({ levelId, length }) => {
    const level = work.form.shell.levels.find(({ id }) => id === levelId);
    if (!level) return [];
    const name = phrase('check.brace', { brace: brace.name, level: level.name });
    return [lengthCheck(`${brace.id}-${level.id}`, name, length)];
  });
}

/** No level crosses it: its two ends are measured. */
function lengthsAtEnds({ id, name: brace, rungs }: DesignedBrace): WorkCheck[] {
  return (['lower', 'upper'] as const).map((end) => {
    const { length } = rungs[end === 'lower' ? 0 : rungs.length - 1];
    return lengthCheck(`${id}-${end}`, phrase('check.brace-end', { brace, end }), length);
  });
}
