import type { Phrase } from '../base/index.ts';
import { withUsual } from '../base/index.ts';
import type { Form, WorkCheck } from '../form/index.ts';
import type { PlateRim } from '../inside/index.ts';
import { INSIDE_OPTIONS, widthOfBinding } from '../inside/index.ts';
import { measurePolyline } from '../math/index.ts';
import type { Op } from '../sewing/index.ts';
import { phrase } from './phrases.ts';
import { PLATE_OF, type Work } from './work-of-form.ts';
import { cautionsOf, edgeOfOpening, innerPieces, lengthCheck, type PlannedStep, plan } from './work-parts.ts';

const PLATES = [
  { opening: 'base', plate: 'base-plate-1' },
  { opening: 'neck', plate: 'neck-plate-1' },
  { opening: 'armholeRight', plate: 'armhole-plate-right-1' },
  { opening: 'armholeLeft', plate: 'armhole-plate-left-1' },
] as const;

/** Boards to the edges as they were sewn, magnets while the boards are bare, covers, and tape round the rims of plates without one. */
export function plateSteps(work: Work): PlannedStep[] {
  if (!work.has.plates) return [];
  const covers = work.form.inside?.pieces.some(({ material }) => material === 'covers') ?? false;
  return [
    cutBoards(work),
    ...(work.has.arms ? [seatMagnets(work)] : []),
    ...(covers ? [coverPlates(work)] : []),
    ...(boundPlates(work).length > 0 ? [bindPlates(work)] : []),
  ];
}

/** Boards of two layers, by the name both share. */
function layeredBoards(form: Form): string[] {
  return innerPieces(form, (id, material) => material === 'card' && id.endsWith('-1')).map(({ id }) =>
    id.slice(0, -2),
  );
}

function cutBoards({ form, has }: Work): PlannedStep {
  const pieces = innerPieces(form, (_, material) => ['card', 'foam'].includes(material));
  const layered = layeredBoards(form);
  const block = pieces.filter(({ id }) => id.startsWith('neck-block')).map(({ id }) => id);
  return plan(
    // Saved files know the step by this name.
    'boards',
    'plates',
    phrase('step.boards.title'),
    [
      phrase('step.boards.compare'),
      phrase('step.boards.glue'),
      phrase('step.boards.pole'),
      ...(has.block ? [phrase('step.boards.block')] : []),
      ...phrasesOfRims(form.inside?.rims ?? []),
    ],
    [
      { does: 'danger', of: 'glue' },
      { does: 'danger', of: 'blades' },
      ...pieces.map(({ id }): Op => ({ does: 'make', part: id, of: [], facts: ['opening-edges'] })),
      ...layered.map((id): Op => ({ does: 'make', part: id, of: [`${id}-1`, `${id}-2`] })),
      ...(block.length > 0
        ? [{ does: 'make', part: 'neck-block', of: block, needs: ['pole'] } as const]
        : []),
    ],
    {
      needs: ['turn-out', 'use'],
      pieces,
      checks: boardChecks(form),
      cautions: cautionsOf('glue'),
    },
  );
}

function boardChecks(form: Form): WorkCheck[] {
  const pieces = form.inside?.pieces ?? [];
  return PLATES.flatMap(({ opening, plate }) => {
    const board = pieces.find(({ id }) => id === plate);
    if (!board) return [];
    const round = measurePolyline(board.cutLine, true);
    const edge = edgeOfOpening(form, opening);
    return [
      lengthCheck(`edge-${opening}`, phrase('check.edge-of-opening', { plate: opening }), edge, 2),
      lengthCheck(`plate-${opening}`, phrase('check.round-plate', { plate: opening }), round, 1, 3),
    ];
  });
}

/** What to do about walls that are not square to their plates; plates that read alike are told together. */
function phrasesOfRims(rims: readonly PlateRim[]): Phrase[] {
  const asRead = ({ kind, where, angle, depth }: PlateRim): string =>
    [kind, where, Math.round((angle * 180) / Math.PI), depth.toFixed(1)].join(' ');
  const groups = new Map<string, PlateRim[]>();
  for (const rim of rims) groups.set(asRead(rim), [...(groups.get(asRead(rim)) ?? []), rim]);
  return [...groups.values()].map((alike) => {
    const [{ kind, where, angle, depth }] = alike;
    const plates = alike.map(({ plate }) => plate);
    return phrase(kind === 'bevel' ? 'step.boards.shell-narrows' : 'step.boards.shell-widens', {
      plates,
      where,
      angle,
      depth,
    });
  });
}

/** Ids of boards that hold magnets. */
function magnetPlates(form: Form): string[] {
  return layeredBoards(form).filter((id) => /^(armhole|arm|cushion)-plate-/.test(id));
}

function seatMagnets({ form, has }: Work): PlannedStep {
  const plates = magnetPlates(form);
  return plan(
    'magnets',
    'plates',
    phrase('step.magnets.title'),
    [
      phrase('step.magnets.mark'),
      phrase('step.magnets.try', { hasCushions: has.cushions }),
      phrase('step.magnets.seat'),
    ],
    [
      { does: 'danger', of: 'magnets' },
      { does: 'make', part: 'magnets', of: [], needs: plates },
      { does: 'read', fact: 'polarity', how: 'stiff' },
    ],
    {
      needs: ['boards'],
      pieces: innerPieces(form, (id) => /^(armhole|arm|cushion)-plate-.*-1$/.test(id)),
      checks: [
        {
          id: 'magnets',
          name: phrase('check.magnets'),
          unit: 'pieces',
          value: 2 * plates.length,
          below: 0,
          above: 0,
        },
      ],
      cautions: cautionsOf('magnets'),
    },
  );
}

/** Ids of the plates that cloth is sewn to, of openings and arms, and that have no cover. */
function boundPlates({ form, has }: Work): string[] {
  const isSewnTo = (id: string): boolean =>
    Object.values(PLATE_OF).includes(id) || /^(wrist|arm)-plate-/.test(id);
  return layeredBoards(form).filter((id) => isSewnTo(id) && !has.cover(id));
}

/** From the rim to the holes through which the shell's edge is sewn on, and from one to the next, mm (ours). */
const HOLES = { inside: 8, apart: 10 } as const;

/** The shell's edges are sewn to holes in the rim, which tape keeps from tearing and from chafing the thread. */
function bindPlates(work: Work): PlannedStep {
  const { form, has } = work;
  const { boardThickness } = withUsual(INSIDE_OPTIONS, form.project.inside);
  const plates = boundPlates(work);
  return plan(
    'bind',
    'plates',
    phrase('step.bind.title'),
    [
      phrase('step.bind.tape', { width: widthOfBinding(boardThickness) }),
      phrase('step.bind.holes', HOLES),
      ...(has.tabs ? [phrase('step.bind.slots')] : []),
    ],
    plates.map((id): Op => ({ does: 'make', part: `${id}-bound`, of: [id] })),
    {
      // Magnets are seated in bare boards.
      needs: [has.arms ? 'magnets' : 'boards'],
      pieces: innerPieces(form, (id) => plates.some((plate) => id === `${plate}-1`)),
    },
  );
}

function coverPlates({ form, has }: Work): PlannedStep {
  const withMagnets = new Set(magnetPlates(form));
  const covers = innerPieces(form, (id, material) => material === 'covers' && !id.startsWith('cushion'));
  return plan(
    'covers',
    'plates',
    phrase('step.covers.title'),
    [
      phrase('step.covers.stretch'),
      phrase('step.covers.holes'),
      ...(has.tabs ? [phrase('step.covers.slots')] : []),
    ],
    covers.map(({ id }): Op => {
      const board = id.replace(/-cover$/, '');
      const needs = withMagnets.has(board) && has.arms ? ['magnets'] : [];
      return { does: 'make', part: `${board}-covered`, of: [board, id], needs };
    }),
    { needs: [has.arms ? 'magnets' : 'boards'], pieces: covers },
  );
}
