import { measurePolyline } from '../math/index.ts';
import type { Op } from '../sewing/index.ts';
import { phrase } from './phrases.ts';
import { dressed, type Work } from './work-of-form.ts';
import { innerPieces, lengthCheck, type PlannedStep, pick, plan } from './work-parts.ts';

const SIDES = ['right', 'left'] as const;

/** Arms are sewn, closed at the wrist, filled and capped before one is held on; pin cushions stand in for them. */
export function armSteps(work: Work): PlannedStep[] {
  const { has } = work;
  if (!has.arms) return [];
  return [sewArms(work), fillArms(work), ...(has.cushions ? [makeCushions(work)] : [])];
}

function sewArms(work: Work): PlannedStep {
  const { form, input, seams: all, has } = work;
  const order = SIDES.flatMap((side) => [`arm-outer-${side}`, `arm-inner-${side}`]).filter((id) =>
    all.has(id),
  );
  const wrists = input.joints.map(({ id }) => id).filter((id) => id.startsWith('wrist-'));
  const dressing = has.cover('wrist-plate') || has.cover('arm-plate') ? 'covers' : 'bind';
  return plan(
    'sew-arms',
    'arms',
    phrase('step.sew-arms.title'),
    [phrase('step.sew-arms.sew'), phrase('step.sew-arms.turn'), phrase('step.sew-arms.wrist')],
    [
      ...order.map((joint): Op => ({ does: 'join', joint, how: 'plain', needs: ['marks'] })),
      ...SIDES.flatMap((side): Op[] => {
        const half = form.inside?.pieces.find(({ id }) => id === `arm-front-${side}`);
        const edge = half?.sewLines.find(({ id }) => id === 'armhole');
        // Front and back half are about as long there.
        return edge ? [{ does: 'gate', gate: `arm-${side}`, girth: 2 * measurePolyline(edge.points) }] : [];
      }),
      ...wrists.map((joint): Op => {
        return { does: 'join', joint, how: 'hand', needs: [plateAt(work, joint, 'wrist')] };
      }),
    ],
    {
      needs: ['mark', wrists.length > 0 ? dressing : 'boards'],
      pieces: innerPieces(form, (id, material) => material === 'arms' || id.startsWith('wrist-')),
      seams: pick(all, order),
    },
  );
}

/** The plate that closes an edge: `wrist-plate-right` for `wrist-right-edge`. */
function plateAt(work: Work, joint: string, plate: 'wrist' | 'arm'): string {
  return dressed(work, `${plate}-plate-${joint.includes('right') ? 'right' : 'left'}`);
}

function fillArms(work: Work): PlannedStep {
  const { form, input } = work;
  const { project, inside } = form;
  const state = project.body.arms;
  const caps = input.joints.map(({ id }) => id).filter((id) => id.startsWith('cap-'));
  const mass = inside?.materials.find(({ id }) => id === 'arm-fill')?.note.values as
    | { readonly low: number; readonly high: number }
    | undefined;
  const regions = input.regions.filter(({ id }) => id.startsWith('arm-'));
  return plan(
    'fill-arms',
    'arms',
    phrase('step.fill-arms.title'),
    [
      phrase('step.fill-arms.roll'),
      phrase('step.fill-arms.feel'),
      ...(state ? [phrase('step.arms.measured', { state })] : []),
      phrase('step.fill-arms.cap'),
    ],
    [
      ...regions.map(
        ({ id }): Op => ({ does: 'fill', region: id, through: id, by: 'stick', facts: ['density'] }),
      ),
      ...caps.map((joint): Op => {
        return { does: 'join', joint, how: 'hand', needs: [plateAt(work, joint, 'arm'), 'magnets'] };
      }),
      ...regions.flatMap(({ id }): Op[] => [
        { does: 'gate', gate: id, girth: 0 },
        { does: 'make', part: `whole-${id}`, of: [] },
      ]),
    ],
    {
      needs: ['sew-arms', 'magnets'],
      pieces: innerPieces(form, (id) => /^arm-plate-/.test(id)),
      checks: mass
        ? [
            {
              id: 'arm-mass',
              name: phrase('check.arm-fill', { count: regions.length }),
              unit: 'kg',
              value: (mass.low + mass.high) / 2,
              below: (mass.high - mass.low) / 2,
              above: (mass.high - mass.low) / 2,
            },
          ]
        : [],
    },
  );
}

function makeCushions({ form }: Work): PlannedStep {
  const covers = innerPieces(form, (id, material) => material === 'covers' && id.startsWith('cushion'));
  return plan(
    'cushions',
    'arms',
    phrase('step.cushions.title'),
    [phrase('step.cushions.fill'), phrase('step.cushions.try')],
    covers.map(({ id }): Op => {
      const side = id.includes('right') ? 'right' : 'left';
      return { does: 'make', part: `cushion-${side}`, of: [`cushion-plate-${side}`, id], needs: ['magnets'] };
    }),
    {
      needs: ['magnets'],
      pieces: innerPieces(form, (id) => id.startsWith('cushion-')),
      checks: [lengthCheck('dome', phrase('check.dome'), 25, 5)],
    },
  );
}
