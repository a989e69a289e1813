import { withUsual } from '../base/index.ts';
import type { Form } from '../form/index.ts';
import { INSIDE_OPTIONS, poleInsideForm } from '../inside/index.ts';
import { distanceInSpace } from '../math/index.ts';
import type { Op } from '../sewing/index.ts';
import { phrase } from './phrases.ts';
import { dressed, dressingOf, GATES, PLATE_OF, type Work } from './work-of-form.ts';
import { innerPieces, lengthCheck, type PlannedStep, plan } from './work-parts.ts';

/** What of an armhole's edge stays open below its plate for filling, mm: fingers and a stick pass. */
export const GAP = 120;

const ARMHOLES = [GATES.armholeRight, GATES.armholeLeft];

/** What goes in before the plates that close its way: supports before the armhole plates, the block before the neck plate. */
export function setSteps(work: Work): PlannedStep[] {
  return work.has.plates ? [setSupports(work), setPole(work)] : [];
}

function sideOfGate(gate: string): 'right' | 'left' {
  return gate.endsWith('right') ? 'right' : 'left';
}

function setSupports(work: Work): PlannedStep {
  const { form, has } = work;
  const supports = has.supports
    ? ARMHOLES.flatMap((gate): Op[] => {
        const part = `shoulder-support-${sideOfGate(gate)}`;
        return [
          { does: 'insert', part, through: gate },
          { does: 'fix', part, to: 'shoulder', from: gate },
        ];
      })
    : [];
  return plan(
    'supports',
    'pole',
    phrase('step.supports.title', { has: has.supports }),
    [
      ...(has.supports ? [phrase('step.supports.tack')] : []),
      phrase('step.supports.plates', { gap: GAP, isCovered: has.cover('armhole-plate') }),
      ...(has.supports ? [phrase('step.supports.glue')] : []),
      phrase('step.supports.cord'),
      ...(has.arms ? [phrase('step.supports.ways')] : []),
    ],
    [
      ...supports,
      ...ARMHOLES.flatMap((gate): Op[] => [
        { does: 'join', joint: `${gate}-edge`, how: 'hand', needs: [dressed(work, PLATE_OF[gate])] },
        { does: 'gate', gate, girth: 0 },
        { does: 'gate', gate: `gap-${sideOfGate(gate)}`, girth: 2 * GAP },
      ]),
      { does: 'carry', from: 'garment', to: 'shoulders' },
    ],
    {
      needs: ['turn-out', dressingOf(work, 'armhole-plate')],
      pieces: innerPieces(form, (id) => /^(armhole-plate-|shoulder-support-)/.test(id)),
      checks: [lengthCheck('armhole-cord', phrase('check.armhole-cord'), betweenArmholes(form), 2)],
    },
  );
}

/** From the lowest point of one armhole to that of the other, mm. */
function betweenArmholes({ shell: { mesh, openings } }: Form): number {
  const [right, left] = openings
    .filter(({ id }) => id.startsWith('armhole'))
    .map(({ vertices }) =>
      vertices.reduce((a, b) => (mesh.positions[3 * b + 2] < mesh.positions[3 * a + 2] ? b : a)),
    );
  return distanceInSpace(mesh.positions, right, left);
}

function setPole(work: Work): PlannedStep {
  const { form, has } = work;
  const pole = form.inside?.shape.pole;
  const inside = pole ? pole.zTop - pole.zBottom : 0;
  const { boardThickness } = withUsual(INSIDE_OPTIONS, form.project.inside);
  const block: Op[] = has.block
    ? [
        { does: 'insert', part: 'neck-block', through: 'neck', over: ['pole'] },
        { does: 'fix', part: 'neck-block', to: 'supports', from: 'neck' },
      ]
    : [];
  return plan(
    'pole',
    'pole',
    phrase('step.pole.title'),
    [
      phrase('step.pole.push', { inside: pole ? poleInsideForm(pole, boardThickness) : 0 }),
      ...(has.block ? [phrase('step.pole.block', { hasSupports: has.supports })] : []),
      phrase('step.pole.collar'),
      phrase('step.pole.plate', { isCovered: has.cover('neck-plate') }),
      phrase('step.pole.plumb'),
    ],
    [
      { does: 'make', part: 'pole-in', of: [], needs: ['pole', 'sleeve'] },
      ...block,
      { does: 'make', part: 'upper-collar', of: [], needs: ['collars'] },
      { does: 'insert', part: 'neck-plate', through: 'neck', over: ['pole'] },
      { does: 'join', joint: 'neck-edge', how: 'hand', needs: [dressed(work, 'neck-plate')] },
      { does: 'fix', part: 'neck-plate', to: 'shell', from: 'outside' },
      { does: 'gate', gate: 'neck', girth: 0 },
      { does: 'carry', from: 'neck-plate', to: 'upper-collar' },
      { does: 'carry', from: 'upper-collar', to: 'pole' },
    ],
    {
      needs: ['supports', 'sew-sleeve', dressingOf(work, 'neck-plate')],
      pieces: innerPieces(form, (id) => /^neck-/.test(id)),
      checks: [lengthCheck('inside', phrase('check.pole-inside'), inside, 3)],
    },
  );
}
