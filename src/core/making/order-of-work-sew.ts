import type { OrderedSeam } from '../assembly/index.ts';
import type { Phrase } from '../base/index.ts';
import type { WorkCheck, WorkStep } from '../form/index.ts';
import type { Method, Op } from '../sewing/index.ts';
import { wayOfSeam, wayOut } from '../sewing/index.ts';
import {
  innerBackStep,
  innerFrontStep,
  jointsAtClosing,
  noteOpen,
  sleeveStep,
} from './order-of-work-inner.ts';
import { phrase } from './phrases.ts';
import type { Work } from './work-of-form.ts';
import {
  innerPieces,
  lengthCheck,
  type PlannedStep,
  panelsOf,
  pick,
  plan,
  widthAtLevel,
} from './work-parts.ts';

/** How the last seam of the shell is closed. */
export type ClosingWay = Extract<Method, 'packed' | 'ladder'>;

type Role = OrderedSeam['role'];

/**
 * Front and backs flat, the sleeve with its braces, these onto the front, shoulders and band, sides, what is left of the braces onto
 * the back near its free edges, and the closing seam last. Where a side closes the shell the back is whole: its braces go
 * on while it lies flat, before shoulders and sides.
 */
export function sewSteps(work: Work, way: ClosingWay): PlannedStep[] {
  const { has } = work;
  const back = has.inside ? [innerBackStep(work)] : [];
  const isFromBack = closesBehind(work);
  const steps = [
    ...sectionStep(work, 'front'),
    ...sectionStep(work, 'back'),
    ...(has.inside ? [sleeveStep(work), innerFrontStep(work)] : []),
    ...(isFromBack ? [] : back),
    ...roundStep(work, 'shoulder'),
    ...roundStep(work, 'neck'),
    ...sideStep(work, way),
    ...(isFromBack ? back : []),
    ...closingSteps(work, way),
  ];
  // Each needs the step before; the first of them the marks.
  return steps.map(({ step, ops }, k) => ({
    ops,
    step: { ...step, needs: [...new Set([k === 0 ? 'mark' : steps[k - 1].step.id, ...step.needs])] },
  }));
}

/** Whether the line that closes the shell lies in the back. */
export function closesBehind({ order, form }: Work): boolean {
  const last = order[order.length - 1];
  if (last?.role !== 'closing') return false;
  const { points } = last.seam;
  // Sides stand at right angles to front and back.
  return Math.sin(form.shell.chart[2 * points[points.length >> 1]]) < -0.4;
}

function seamsOf(work: Work, ...roles: Role[]): OrderedSeam[] {
  return work.order.filter(({ role }) => roles.includes(role));
}

function join(seams: readonly OrderedSeam[], how: Method): Op[] {
  return seams.map(({ seam }) => ({ does: 'join', joint: seam.id, how }));
}

function idsOf(seams: readonly OrderedSeam[]): string[] {
  return seams.map(({ seam }) => seam.id);
}

function sectionStep(work: Work, half: 'front' | 'back'): PlannedStep[] {
  const { form } = work;
  const seams = seamsOf(work, half, `${half}Level`);
  if (seams.length === 0) return [];
  const ids = new Set(seams.flatMap(({ seam }) => seam.panels));
  const hasLevel = seams.some(({ seam }) => seam.isLevel);
  const checks: WorkCheck[] = form.shell.levels.flatMap(({ id, name: level }) => {
    const width = widthAtLevel(form, ids, id);
    return width > 0 ? [lengthCheck(`width-${id}`, phrase('check.across-half', { level, half }), width)] : [];
  });
  const isApart = half === 'back' && closesBehind(work);
  return [
    plan(
      `sew-${half}`,
      'sew',
      phrase('step.half.title', { half, isApart }),
      [
        ...(isApart ? [phrase('step.half.apart')] : []),
        phrase(hasLevel ? 'step.half.level-seams-first' : 'step.half.outwards'),
        ...(half === 'front' ? [phrase('step.half.pin'), phrase('step.sew.stitch')] : []),
      ],
      [
        { does: 'danger', of: 'iron' },
        { does: 'make', part: half, of: [], needs: ['marks'] },
        ...join(seams, 'plain'),
        { does: 'read', fact: `width-${half}`, how: 'flat' },
      ],
      { pieces: panelsOf(form, ids), seams: pick(work.seams, idsOf(seams)), checks },
    ),
  ];
}

function roundStep(work: Work, role: 'shoulder' | 'neck'): PlannedStep[] {
  const seams = seamsOf(work, role);
  if (seams.length === 0) return [];
  const text: Record<typeof role, readonly Phrase[]> = {
    shoulder: [phrase('step.shoulder.outwards')],
    neck: [phrase('step.neck.pin'), phrase('step.neck.open', { isOpen: closesBehind(work) })],
  };
  return [
    plan(`sew-${role}`, 'sew', phrase(`step.${role}.title`), text[role], join(seams, 'plain'), {
      pieces: panelsOf(
        work.form,
        seams.flatMap(({ seam }) => seam.panels),
      ),
      seams: pick(work.seams, idsOf(seams)),
    }),
  ];
}

/** Every seam but those that close the shell is sewn, and every inner part but at those. */
function joinedBeforeClosing(work: Work): Set<string> {
  const closing = new Set([...idsOf(seamsOf(work, 'closing')), ...jointsAtClosing(work)]);
  return new Set(work.input.joints.map(({ id }) => id).filter((id) => !closing.has(id)));
}

function sideStep(work: Work, way: ClosingWay): PlannedStep[] {
  const seams = seamsOf(work, 'side');
  if (seams.length === 0) return [];
  const { form } = work;
  const sewn = joinedBeforeClosing(work);
  for (const id of idsOf(seams)) sewn.delete(id);
  const isEmpty = closesBehind(work);
  const how = isEmpty ? 'plain' : way;
  return [
    plan(
      'sew-side',
      'sew',
      phrase('step.side.title'),
      isEmpty ? [phrase('step.side.adjust'), phrase('step.side.sew')] : [phrase(`step.side.${way}`)],
      join(seams, how),
      {
        pieces: panelsOf(
          form,
          seams.flatMap(({ seam }) => seam.panels),
        ),
        seams: pick(work.seams, idsOf(seams)),
        checks: isEmpty ? flatChecks(work, 'check.laid-out') : [],
      },
    ),
  ];
}

/** The shell laid out in one layer, open behind, or as the empty tube in two. */
function flatChecks({ form }: Work, id: 'check.laid-out' | 'check.laid-flat'): WorkCheck[] {
  return form.report.levels.flatMap(({ id: levelId, lengthFlat }) => {
    const level = form.shell.levels.find((one) => one.id === levelId)?.name;
    const width = id === 'check.laid-flat' ? lengthFlat / 2 : lengthFlat;
    return level ? [lengthCheck(`flat-${levelId}`, phrase(id, { level }), width)] : [];
  });
}

function closingSteps(work: Work, way: ClosingWay): PlannedStep[] {
  const { form, has, input } = work;
  const seams = seamsOf(work, 'closing');
  const ids = idsOf(seams);
  const ties = jointsAtClosing(work);
  const sewn = joinedBeforeClosing(work);
  const cloth = [
    ...panelsOf(
      form,
      seams.flatMap(({ seam }) => seam.panels),
    ),
    ...innerPieces(form, (id) => ties.some((joint) => joint.startsWith(`${id}/`))),
  ];
  const pack = largestPack(work, ids, sewn);
  const packed = has.inside && way === 'packed';
  const isLaddered = has.inside && way === 'ladder';
  const sew: Op[] = join(seams, packed ? 'packed' : isLaddered ? 'ladder' : 'plain');
  const tie = ties.map((joint): Op => ({ does: 'join', joint, how: packed ? 'flap' : 'lap' }));
  const isBehind = closesBehind(work);
  const read: Op[] = [
    ...['flat-widths', 'opening-edges'].map((fact): Op => ({ does: 'read', fact, how: 'flat' })),
  ];
  const stepOf = (id: string, text: readonly Phrase[], ops: readonly Op[], rest: Partial<WorkStep>) =>
    plan(
      id,
      'sew',
      phrase(`step.${id === 'sew-closing' ? 'closing' : 'turn-out'}.title`, { isBehind, isLaddered }),
      text,
      ops,
      rest,
    );
  const values = { mouth: pack?.mouth ?? 0, pack: pack?.pack ?? 0 };
  const ratio = pack ? pack.mouth / pack.pack : 0;
  const lastChecks = flatChecks(work, 'check.laid-flat');
  if (!has.inside) {
    return [
      stepOf('sew-closing', [phrase('step.closing.empty'), phrase('step.closing.flat')], [...sew, ...read], {
        pieces: cloth,
        seams: pick(work.seams, ids),
        checks: lastChecks,
      }),
    ];
  }
  const out = wayOut(input, ids, () => true);
  const draw = out.kind === 'packed' ? { mouth: out.mouth, pack: out.pack } : values;
  if (packed) {
    return [
      stepOf(
        'sew-closing',
        [
          phrase('step.closing.count'),
          phrase('step.closing.roll', { isBehind, ...values, ratio }),
          phrase('step.closing.sew'),
        ],
        sew,
        { pieces: cloth, seams: pick(work.seams, ids) },
      ),
      stepOf(
        'turn-out',
        [
          ...(ties.length > 0 ? [phrase('step.turn-out.tie')] : []),
          phrase('step.turn-out.draw', { ...draw, ratio: draw.mouth / draw.pack }),
          phrase('step.closing.flat'),
        ],
        [...tie, { does: 'draw-out', seams: ids }, ...read],
        { pieces: cloth.slice(-1), seams: pick(work.seams, ties), checks: lastChecks },
      ),
    ];
  }
  return [
    stepOf(
      'sew-closing',
      [
        ...(ties.length > 0 ? [phrase('step.closing.tie-to-one')] : []),
        phrase('step.closing.turn', { isBehind }),
      ],
      tie,
      { pieces: cloth, seams: pick(work.seams, ties).map((seam) => noteOpen(work, seam)) },
    ),
    stepOf(
      'turn-out',
      [
        phrase('step.turn-out.ladder'),
        ...(pack ? [phrase('step.turn-out.why-ladder', { ...values, ratio })] : []),
        phrase('step.closing.flat'),
      ],
      [...sew, ...read],
      { pieces: cloth, seams: pick(work.seams, ids), checks: lastChecks },
    ),
  ];
}

/** The tightest of the closing seams, in the order they are sewn. */
function largestPack({ input }: Work, ids: readonly string[], sewn: Set<string>) {
  const done = new Set(sewn);
  const ways = ids.flatMap((id) => {
    const way = wayOfSeam(input, id, (joint) => done.has(joint));
    done.add(id);
    return way.kind === 'packed' ? [way] : [];
  });
  return ways.sort((a, b) => a.mouth / a.pack - b.mouth / b.pack)[0];
}
