import { heightOfWaist } from '../assembly/index.ts';
import type { Phrase } from '../base/index.ts';
import type { Form, WorkCheck, WorkStep } from '../form/index.ts';
import { distanceInSpace } from '../math/index.ts';
import { FILLING_TOLERANCE, type FillZone, type LevelTarget } from '../simulate/index.ts';
import { fillZones, levelTargets } from './filling-of-form.ts';
import { phrase } from './phrases.ts';
import { cautionsOf, innerPieces, lengthCheck, step } from './work-parts.ts';

/** Plates and pole, filling zone by zone, closing, stand, arms, care. */
export function finishSteps(form: Form): WorkStep[] {
  if (!form.inside) return [];
  const targets = levelTargets(form);
  const zones = fillZones(form);
  const hasThroat = form.inside.shape.braces.some(({ kind }) => kind === 'throat');
  const filling = zones.map((zone, k) => {
    const needs = k > 0 ? [`fill-${zones[k - 1].id}`] : ['pole'];
    return fillZone(zone, targets, needs, k === 0, hasThroat);
  });
  const armed = form.body.arms.length > 0;
  return [
    setPlates(form, armed),
    putPoleIn(form, targets),
    ...filling,
    letRest(targets, filling[filling.length - 1].id),
    closeBase(form),
    markLines(form, targets),
    tryStand(form),
    ...(armed ? [hangArms(form)] : []),
    careFor(armed),
  ];
}

function setPlates(form: Form, armed: boolean): WorkStep {
  return step(
    'plates',
    'pole',
    phrase('step.plates.title'),
    [
      phrase('step.plates.set'),
      phrase('step.plates.shoulders'),
      phrase('step.plates.hold'),
      ...(armed ? [phrase('step.plates.try-arms')] : []),
    ],
    {
      needs: ['sew-closing', 'boards', ...(armed ? ['magnets'] : [])],
      pieces: innerPieces(form, (id) => /^(neck-|armhole-plate-|shoulder-support-)/.test(id)),
      checks: [lengthCheck('armhole-cord', phrase('check.armhole-cord'), betweenArmholes(form), 2)],
      cautions: cautionsOf('blades'),
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

function putPoleIn(form: Form, targets: readonly LevelTarget[]): WorkStep {
  const bust = targets.find(({ id }) => id === 'bust');
  return step(
    'pole',
    'pole',
    phrase('step.pole.title'),
    [phrase('step.pole.push'), phrase('step.pole.plumb'), phrase('step.pole.turn')],
    {
      needs: ['plates', 'sew-sleeve'],
      pieces: innerPieces(form, (id) => /^base-plate-[12]$/.test(id)),
      checks: [
        lengthCheck('inside', phrase('check.pole-inside'), poleInside(form), 3),
        ...(bust ? [lengthCheck('bust-height', phrase('check.bust-height'), bust.z, 5)] : []),
      ],
      cautions: cautionsOf('tipping', 'lifting'),
    },
  );
}

function poleInside(form: Form): number {
  const pole = form.inside?.shape.pole;
  return pole ? pole.zTop - pole.zBottom : 0;
}

/** How each zone is filled, by the level at its lower end. */
const HOW: Readonly<Record<string, Phrase>> = {
  upperChest: phrase('step.fill.shoulders'),
  bust: phrase('step.fill.upper-chest'),
  underbust: phrase('step.fill.bust'),
  waist: phrase('step.fill.midriff'),
  highHip: phrase('step.fill.waist'),
  hip: phrase('step.fill.belly'),
};

function fillZone(
  zone: FillZone,
  targets: readonly LevelTarget[],
  needs: readonly string[],
  isFirst: boolean,
  hasThroat: boolean,
): WorkStep {
  const mass: WorkCheck = {
    id: 'mass',
    name: phrase('check.fill'),
    unit: 'kg',
    value: (zone.low + zone.high) / 2,
    below: (zone.high - zone.low) / 2,
    above: (zone.high - zone.low) / 2,
  };
  // A level is surrounded, and can be judged, when the zones on both sides of it are filled.
  const level = targets.find(({ id }) => id === zone.upper);
  const last = zone.lower === undefined;
  return step(
    `fill-${zone.id}`,
    'fill',
    zone.name,
    [
      HOW[zone.lower ?? ''] ?? phrase('step.fill.to-base'),
      ...(hasThroat && zone.lower === 'upperChest' ? [phrase('step.fill.throat')] : []),
      phrase('step.fill.in-turn'),
      phrase('step.fill.stop'),
    ],
    {
      needs,
      checks: [mass, ...(level ? sizeChecks(level) : [])],
      cautions: isFirst || last ? cautionsOf('dust', 'fire') : [],
    },
  );
}

function sizeChecks(level: LevelTarget): WorkCheck[] {
  return (['girth', 'width', 'depth'] as const).map((kind) => {
    const { below, above } = FILLING_TOLERANCE[kind];
    const name = phrase('check.size', { level: level.name, kind });
    return lengthCheck(`${kind}-${level.id}`, name, level[kind], below, above);
  });
}

function letRest(targets: readonly LevelTarget[], before: string): WorkStep {
  return step(
    'rest',
    'fill',
    phrase('step.rest.title'),
    [phrase('step.rest.measure'), phrase('step.rest.seams')],
    { needs: [before], checks: targets.flatMap(sizeChecks) },
  );
}

function closeBase(form: Form): WorkStep {
  return step(
    'close',
    'finish',
    phrase('step.close.title'),
    [phrase('step.close.lace'), phrase('step.close.top-up')],
    {
      needs: ['rest', 'boards'],
      pieces: innerPieces(form, (id) => /^(base-plate-|lid-|tab-)/.test(id)),
      cautions: cautionsOf('blades', 'lifting'),
    },
  );
}

function markLines(form: Form, targets: readonly LevelTarget[]): WorkStep {
  const waist = heightOfWaist(form.project, form.body);
  return step(
    'tapes',
    'finish',
    phrase('step.tapes.title'),
    [phrase('step.tapes.mark'), phrase('step.tapes.cover')],
    {
      needs: ['close'],
      checks: targets.map(({ id, name: level, z }) =>
        lengthCheck(`height-${id}`, phrase('check.above-floor', { level }), waist + z, 5),
      ),
    },
  );
}

function tryStand(form: Form): WorkStep {
  const stand = form.inside?.stand;
  const checks: WorkCheck[] = stand
    ? [
        {
          id: 'tip',
          name: phrase('check.tilt'),
          unit: 'degrees',
          value: stand.tipAngleDeg,
          below: null,
          above: null,
        },
        {
          id: 'ballast',
          name: phrase('check.ballast'),
          unit: 'kg',
          value: stand.ballast,
          below: 0,
          above: null,
        },
      ]
    : [];
  return step(
    'stand',
    'finish',
    phrase('step.stand.title'),
    [phrase('step.stand.tilt'), phrase('step.stand.write')],
    { needs: ['tapes'], checks, cautions: cautionsOf('tipping', 'lifting', 'rigging') },
  );
}

function hangArms({ project }: Form): WorkStep {
  const state = project.body.arms;
  return step(
    'arms',
    'finish',
    phrase('step.arms.title'),
    [
      ...(state ? [phrase('step.arms.measured', { state })] : []),
      phrase('step.arms.fill'),
      phrase('step.arms.peg'),
    ],
    { needs: ['sew-arms', 'magnets', 'stand'], cautions: cautionsOf('magnets') },
  );
}

function careFor(armed: boolean): WorkStep {
  return step(
    'care',
    'finish',
    phrase('step.care.title'),
    [phrase('step.care.measure'), phrase('step.care.place')],
    { needs: [armed ? 'arms' : 'stand'], cautions: cautionsOf('fire') },
  );
}
