import { type OrderedSeam, orderSeams } from '../assembly/index.ts';
import type { Phrase } from '../base/index.ts';
import type { Form, WorkCheck, WorkSeam, WorkStep } from '../form/index.ts';
import type { DesignedBrace } from '../inside/index.ts';
import { measurePolyline } from '../math/index.ts';
import { phrase } from './phrases.ts';
import {
  cautionsOf,
  innerPieces,
  innerSeams,
  lengthCheck,
  nameOfLevel,
  panelsOf,
  shellSeam,
  step,
  widthAtLevel,
} from './work-parts.ts';

type Group = 'front' | 'back' | 'shoulder' | 'neck' | 'side' | 'closing';

/** Every seam of shell and inner parts: flat sections, inner parts, shoulders, neck, sides; the closing seam last. */
export function sewSteps(form: Form): WorkStep[] {
  const order = orderSeams(form.shell, form.body.landmarks.neckFront.v);
  const groups = groupSeams(order);
  const of = (group: Group): readonly OrderedSeam[] => groups.get(group) ?? [];
  const sections = (['front', 'back'] as const)
    .filter((half) => of(half).length > 0)
    .map((half) => sectionStep(form, half, of(half)));
  const flat = sections.map(({ id }) => id);
  const inner = innerSteps(form, order, flat);
  const open = [...flat, ...inner.map(({ id }) => id)];
  const rest = (['shoulder', 'neck', 'side', 'closing'] as const)
    .filter((group) => of(group).length > 0)
    .map((group, k, present) => {
      const needs = k > 0 ? [`sew-${present[k - 1]}`] : open;
      return roundStep(form, group, of(group), needs);
    });
  return [...sections, ...inner, ...rest, ...armSteps(form)];
}

/** Seams by the step they belong to; the line that closes the shell stands alone. */
function groupSeams(order: readonly OrderedSeam[]): Map<Group, OrderedSeam[]> {
  const groups = new Map<Group, OrderedSeam[]>();
  const last = order[order.length - 1];
  for (const entry of order) {
    const isClosing =
      entry.role === 'side' && entry.seam.lineId === last.seam.lineId && entry.side === last.side;
    const group: Group = isClosing
      ? 'closing'
      : entry.role === 'frontLevel'
        ? 'front'
        : entry.role === 'backLevel'
          ? 'back'
          : entry.role;
    groups.set(group, [...(groups.get(group) ?? []), entry]);
  }
  return groups;
}

function sectionStep(form: Form, half: 'front' | 'back', seams: readonly OrderedSeam[]): WorkStep {
  const ids = new Set(seams.flatMap(({ seam }) => seam.panels));
  const hasLevel = seams.some(({ seam }) => seam.isLevel);
  const checks: WorkCheck[] = form.shell.levels.flatMap(({ id, name: level }) => {
    const width = widthAtLevel(form, ids, id);
    return width > 0 ? [lengthCheck(`width-${id}`, phrase('check.across-half', { level, half }), width)] : [];
  });
  return step(
    `sew-${half}`,
    'sew',
    phrase('step.half.title', { half }),
    [
      phrase(hasLevel ? 'step.half.level-seams-first' : 'step.half.outwards'),
      phrase('step.half.pin'),
      phrase('step.sew.stitch'),
    ],
    {
      needs: ['mark'],
      pieces: panelsOf(form, ids),
      seams: seams.map((entry) => shellSeam(form, entry)),
      checks,
      cautions: cautionsOf('iron'),
    },
  );
}

/** Sleeve with ties and straps, then the webs on front and back, while the shell is open. */
function innerSteps(form: Form, order: readonly OrderedSeam[], needs: readonly string[]): WorkStep[] {
  const { inside } = form;
  if (!inside) return [];
  const braces = new Map(inside.shape.braces.map((brace) => [brace.id, brace]));
  const hasThroat = inside.shape.braces.some(({ kind }) => kind === 'throat');
  const sewn = new Set(
    order.filter(({ role }) => role !== 'side' && role !== 'shoulder').map(({ seam }) => seam.id),
  );
  const all = innerSeams(form, (_, piece) => braces.has(piece) || piece === 'pole-sleeve');
  const onSleeve = (seam: WorkSeam): boolean => /\/sleeve-/.test(seam.id);
  const strip = ({ pieceId: _, ...seam }: WorkSeam & { pieceId: string }): WorkSeam => seam;
  const sleeve: WorkStep = step(
    'sew-sleeve',
    'sew',
    phrase('step.sleeve.title'),
    [
      phrase('step.sleeve.hem'),
      phrase('step.sleeve.stitch'),
      ...(hasThroat ? [phrase('step.sleeve.throat')] : []),
      phrase('step.sleeve.try'),
    ],
    {
      needs: ['mark', 'use'],
      pieces: innerPieces(form, (id) => /^(pole-sleeve|tab-|tie-|strap-|throat-)/.test(id)),
      seams: oncePerLetter(all.filter(onSleeve)).map(strip),
      checks: [lengthCheck('sleeve', phrase('check.sleeve'), inside.shape.pole.sleeveGirth / 2, 0.5, 1.5)],
    },
  );
  const halfOf = (seam: WorkSeam & { pieceId: string }): 'front' | 'back' => {
    const brace = braces.get(seam.pieceId);
    return brace ? halfOfAttachment(form, brace, seam) : 'back';
  };
  const attach = (half: 'front' | 'back'): WorkStep => {
    const own = all.filter((seam) => !onSleeve(seam) && halfOf(seam) === half);
    const rungs = own.flatMap((seam) => {
      const brace = braces.get(seam.pieceId);
      return brace && half === (brace.kind === 'web' ? 'back' : half) ? lengthsOf(form, brace) : [];
    });
    return step(
      `sew-inner-${half}`,
      'sew',
      phrase('step.inner.title', { half }),
      [
        phrase('step.inner.now'),
        phrase(`step.inner.to-${half}`),
        ...(hasThroat && half === 'front' ? [phrase('step.inner.throat')] : []),
      ],
      {
        needs: half === 'front' ? [...needs, 'sew-sleeve'] : [...needs, 'sew-sleeve', 'sew-inner-front'],
        pieces: innerPieces(form, (id) => own.some(({ pieceId }) => pieceId === id)),
        seams: own.map((seam) => {
          const onto = form.shell.seams.find(({ id }) => seam.id === `${seam.pieceId}/${id}`);
          const isOpen = onto !== undefined && !sewn.has(onto.id);
          const note = isOpen && { note: phrase('seam.to-open-edge') };
          return { ...strip(withPartner(form, seam)), ...note };
        }),
        checks: rungs,
      },
    );
  };
  return [sleeve, attach('front'), attach('back')];
}

function lengthsOf(form: Form, brace: DesignedBrace): WorkCheck[] {
  if (brace.kind === 'throat') return lengthsAtEnds(brace);
  return brace.rungs.flatMap(({ levelId, length }) => {
    const level = form.shell.levels.find(({ id }) => id === levelId);
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

/** On which half a brace's edge is sewn to the shell. */
function halfOfAttachment(form: Form, { from, to }: DesignedBrace, seam: WorkSeam): 'front' | 'back' {
  const lines = to === 'sleeve' ? [from] : [from, to];
  const line = lines.find(({ seams }) => seams.some(({ letter }) => letter === seam.letter)) ?? from;
  if (line.half !== 'side') return line.half;
  const drawn = form.inside?.shape.panelLines.find(({ letter }) => letter === seam.letter);
  return drawn && Math.sin(drawn.chart[0]) > 0 ? 'front' : 'back';
}

/** Adds the length of the line drawn on the panels, where it is sewn to one. */
function withPartner<T extends WorkSeam>(form: Form, seam: T): T {
  const drawn = form.inside?.shape.panelLines.find(({ letter }) => letter === seam.letter);
  const lines = form.pieces.flatMap(({ levelLines }) => levelLines.filter(({ id }) => id === drawn?.id));
  if (!drawn || lines.length === 0) return seam;
  const length = lines.reduce((sum, { points }) => sum + measurePolyline(points), 0);
  return { ...seam, lengths: [...seam.lengths, length] };
}

/** Edges of the same letter are sewn together: one seam with all their lengths. */
function oncePerLetter<T extends WorkSeam>(seams: readonly T[]): T[] {
  const byLetter = new Map<string, T[]>();
  for (const seam of seams) byLetter.set(seam.letter, [...(byLetter.get(seam.letter) ?? []), seam]);
  return [...byLetter.values()].map((own) => ({
    ...own[0],
    name: joinNames(own.map(({ name }) => name)),
    lengths: own.flatMap(({ lengths }) => lengths),
  }));
}

/** All names that differ, as one. */
function joinNames(names: readonly Phrase[]): Phrase {
  const pieces = [...new Map(names.map((name) => [JSON.stringify(name), name])).values()];
  return pieces.length === 1 ? pieces[0] : phrase('seam.joined', { pieces });
}

const ROUND: Readonly<Record<Exclude<Group, 'front' | 'back'>, readonly Phrase[]>> = {
  shoulder: [phrase('step.shoulder.outwards'), phrase('step.sew.stitch')],
  neck: [phrase('step.neck.pin'), phrase('step.neck.close')],
  side: [phrase('step.side.order'), phrase('step.sew.stitch')],
  closing: [phrase('step.closing.sew'), phrase('step.closing.turn')],
};

function roundStep(
  form: Form,
  group: Exclude<Group, 'front' | 'back'>,
  seams: readonly OrderedSeam[],
  needs: readonly string[],
): WorkStep {
  const title =
    group === 'side' ? phrase('step.side.title', { side: seams[0].side }) : phrase(`step.${group}.title`);
  const checks =
    group === 'closing'
      ? form.report.levels.map(({ id, lengthFlat }) => {
          const name = phrase('check.laid-flat', { level: nameOfLevel(form, id) });
          return lengthCheck(`flat-${id}`, name, lengthFlat / 2);
        })
      : [];
  return step(`sew-${group}`, 'sew', title, ROUND[group], {
    needs,
    pieces: panelsOf(
      form,
      seams.flatMap(({ seam }) => seam.panels),
    ),
    seams: seams.map((entry) => shellSeam(form, entry)),
    checks,
    cautions: group === 'closing' ? cautionsOf('blades') : [],
  });
}

function armSteps(form: Form): WorkStep[] {
  const seams = innerSeams(form, (id) => /^arm-/.test(id)).map(({ pieceId: _, ...seam }) => seam);
  if (seams.length === 0) return [];
  return [
    step(
      'sew-arms',
      'sew',
      phrase('step.sew-arms.title'),
      [phrase('step.sew-arms.sew'), phrase('step.sew.stitch')],
      {
        needs: ['mark'],
        pieces: innerPieces(form, (_, material) => material === 'arms'),
        seams: oncePerLetter(seams),
      },
    ),
  ];
}
