import type { Phrase } from '../base/index.ts';
import type { WorkCheck } from '../form/index.ts';
import { type ClosingWay, closingSteps, flatChecks } from './order-of-work-close.ts';
import { innerBackStep, innerFrontStep, sleeveStep } from './order-of-work-inner.ts';
import { phrase } from './phrases.ts';
import { closesBehind, idsOfSeams, joinSeams, seamsByRole } from './seams-by-role.ts';
import type { Work } from './work-of-form.ts';
import { lengthCheck, type PlannedStep, panelsOf, pick, plan, widthAtLevel } from './work-parts.ts';

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

function sectionStep(work: Work, half: 'front' | 'back'): PlannedStep[] {
  const { form } = work;
  const seams = seamsByRole(work, half, `${half}Level`);
  if (seams.length === 0) return [];
  const ids = new Set(seams.flatMap(({ seam }) => seam.panels));
  const hasLevel = seams.some(({ seam }) => seam.isLevel);
  const isApart = half === 'back' && closesBehind(work);
  const checks: WorkCheck[] = form.shell.levels.flatMap(({ id, name: level }) => {
    const width = widthAtLevel(form, ids, id);
    return width > 0
      ? [lengthCheck(`width-${id}`, phrase('check.across-half', { level, half, isApart }), width)]
      : [];
  });
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
        ...joinSeams(seams, 'plain'),
        { does: 'read', fact: `width-${half}`, how: 'flat' },
      ],
      { pieces: panelsOf(form, ids), seams: pick(work.seams, idsOfSeams(seams)), checks },
    ),
  ];
}

function roundStep(work: Work, role: 'shoulder' | 'neck'): PlannedStep[] {
  const seams = seamsByRole(work, role);
  if (seams.length === 0) return [];
  const text: Record<typeof role, readonly Phrase[]> = {
    shoulder: [phrase('step.shoulder.outwards')],
    neck: [phrase('step.neck.pin'), phrase('step.neck.open', { isOpen: closesBehind(work) })],
  };
  return [
    plan(`sew-${role}`, 'sew', phrase(`step.${role}.title`), text[role], joinSeams(seams, 'plain'), {
      pieces: panelsOf(
        work.form,
        seams.flatMap(({ seam }) => seam.panels),
      ),
      seams: pick(work.seams, idsOfSeams(seams)),
    }),
  ];
}

function sideStep(work: Work, way: ClosingWay): PlannedStep[] {
  const seams = seamsByRole(work, 'side');
  if (seams.length === 0) return [];
  const { form } = work;
  const isEmpty = closesBehind(work);
  const how = isEmpty ? 'plain' : way;
  return [
    plan(
      'sew-side',
      'sew',
      phrase('step.side.title'),
      isEmpty ? [phrase('step.side.adjust'), phrase('step.side.sew')] : [phrase(`step.side.${way}`)],
      joinSeams(seams, how),
      {
        pieces: panelsOf(
          form,
          seams.flatMap(({ seam }) => seam.panels),
        ),
        seams: pick(work.seams, idsOfSeams(seams)),
        checks: isEmpty ? flatChecks(work, 'check.laid-out') : [],
      },
    ),
  ];
}
