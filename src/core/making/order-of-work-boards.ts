import type { Form, WorkStep } from '../form/index.ts';
import { measurePolyline } from '../math/index.ts';
import type { PlateRim } from '../supports/index.ts';
import { cautionsOf, edgeOfOpening, innerPieces, lengthCheck, step } from './work-parts.ts';

const PLATES = [
  { opening: 'base', plate: 'base-plate-1', name: 'base plate' },
  { opening: 'neck', plate: 'neck-plate-1', name: 'neck plate' },
  { opening: 'armholeRight', plate: 'armhole-plate-right-1', name: 'armhole plate right' },
  { opening: 'armholeLeft', plate: 'armhole-plate-left-1', name: 'armhole plate left' },
] as const;

/** Plates, blocks and magnets, where there are any. */
export function boardSteps(form: Form): WorkStep[] {
  return form.inside ? [cutBoards(form), ...tryMagnets(form)] : [];
}

function cutBoards(form: Form): WorkStep {
  const pieces = form.inside?.pieces ?? [];
  const checks = PLATES.flatMap(({ opening, plate, name }) => {
    const board = pieces.find(({ id }) => id === plate);
    if (!board) return [];
    const round = measurePolyline(board.cutLine, true);
    return [
      lengthCheck(`plate-${opening}`, `Round the ${name}, along its edge`, round, 1, 3),
      lengthCheck(
        `edge-${opening}`,
        `Seam line round the ${name}’s opening`,
        edgeOfOpening(form, opening),
        2,
      ),
    ];
  });
  return step(
    'boards',
    'boards',
    'Cut and glue the plates, and fit them dry',
    [
      'Cut every plate in its two layers of card, the flutes (the waves in the card) crossing, glue them and let them dry flat under a weight.',
      'Push the pole through base and neck plate: it must turn without rattling. Cut the neck block by its three templates.',
      ...(form.inside?.rims ?? []).map(wordRim),
      'Cover each plate now, with the cloth folded over its edge; the armhole and neck plates are set in later from outside.',
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
function wordRim({ plate: opening, where, kind, angle, depth }: PlateRim): string {
  const plate = PLATES.find((one) => one.opening === opening)?.name;
  const lean = `${((angle * 180) / Math.PI).toFixed(0)}° ${where === 'back' || where === 'front' ? `at the ${where}` : `on the ${where}`}`;
  return kind === 'bevel'
    ? `Behind the ${plate} the shell narrows, by ${lean} at most: its inner layer is cut up to ${depth.toFixed(1)} mm smaller. Sand the step between the layers to a slope.`
    : `Behind the ${plate} the shell widens, by ${lean} at most: up to ${depth.toFixed(1)} mm stay open behind its rim. Pack filling in there, so that the edge lies firm.`;
}

function tryMagnets(form: Form): WorkStep[] {
  if (form.body.arms.length === 0) return [];
  return [
    step(
      'magnets',
      'boards',
      'Try the magnets, then fix them',
      [
        'Stack the magnets of a pair and mark the faces that look outwards. Right and left are turned round on purpose, so that a swapped arm is pushed away.',
        'Hold both arms on dry before any glue. Fix the magnets in stitched pockets under the cover, and count them.',
      ],
      {
        needs: ['boards'],
        pieces: innerPieces(form, (id) => /^(armhole|arm)-plate-/.test(id)),
        cautions: cautionsOf('magnets', 'glue'),
      },
    ),
  ];
}
