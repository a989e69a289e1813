import type { Phrase } from '../base/index.ts';
import type { Form, WorkStep } from '../form/index.ts';
import type { PlateRim } from '../inside/index.ts';
import { measurePolyline } from '../math/index.ts';
import { phrase } from './phrases.ts';
import { cautionsOf, edgeOfOpening, innerPieces, lengthCheck, step } from './work-parts.ts';

const PLATES = [
  { opening: 'base', plate: 'base-plate-1' },
  { opening: 'neck', plate: 'neck-plate-1' },
  { opening: 'armholeRight', plate: 'armhole-plate-right-1' },
  { opening: 'armholeLeft', plate: 'armhole-plate-left-1' },
] as const;

/** Plates, blocks and magnets, where there are any. */
export function plateSteps(form: Form): WorkStep[] {
  return form.inside ? [cutPlates(form), ...tryMagnets(form)] : [];
}

function cutPlates(form: Form): WorkStep {
  const pieces = form.inside?.pieces ?? [];
  const checks = PLATES.flatMap(({ opening, plate }) => {
    const board = pieces.find(({ id }) => id === plate);
    if (!board) return [];
    const round = measurePolyline(board.cutLine, true);
    const edge = edgeOfOpening(form, opening);
    return [
      lengthCheck(`plate-${opening}`, phrase('check.round-plate', { plate: opening }), round, 1, 3),
      lengthCheck(`edge-${opening}`, phrase('check.edge-of-opening', { plate: opening }), edge, 2),
    ];
  });
  return step(
    // Saved files know the step by this name.
    'boards',
    'plates',
    phrase('step.boards.title'),
    [
      phrase('step.boards.glue'),
      phrase('step.boards.pole'),
      ...(form.inside?.rims ?? []).map(phraseOfRim),
      phrase('step.boards.cover'),
    ],
    {
      needs: ['print', 'use'],
      pieces: innerPieces(form, (_, material) => ['card', 'foam', 'covers'].includes(material)),
      checks,
      cautions: cautionsOf('blades', 'glue', 'dust'),
    },
  );
}

/** What to do about a wall that is not square to its plate. */
function phraseOfRim({ kind, ...rim }: PlateRim): Phrase {
  return phrase(kind === 'bevel' ? 'step.boards.shell-narrows' : 'step.boards.shell-widens', rim);
}

function tryMagnets(form: Form): WorkStep[] {
  if (form.body.arms.length === 0) return [];
  return [
    step(
      'magnets',
      'plates',
      phrase('step.magnets.title'),
      [phrase('step.magnets.mark'), phrase('step.magnets.try')],
      {
        needs: ['boards'],
        pieces: innerPieces(form, (id) => /^(armhole|arm)-plate-/.test(id)),
        cautions: cautionsOf('magnets', 'glue'),
      },
    ),
  ];
}
