import { heightOfWaist } from '../assembly/index.ts';
import { plain, wordsOf } from '../base/index.ts';
import type { Form, WorkCheck, WorkStep } from '../form/index.ts';
import { type FillZone, type LevelTarget, STUFFING_TOLERANCE } from '../simulate/index.ts';
import { fillZones, levelTargets } from './stuffing-of-form.ts';
import { cautionsOf, innerPieces, lengthCheck, step } from './work-parts.ts';

/** Plates and pole, filling zone by zone, closing, stand, arms, care. */
export function finishSteps(form: Form): WorkStep[] {
  if (!form.inside) return [];
  const targets = levelTargets(form);
  const zones = fillZones(form);
  const filling = zones.map((zone, k) => {
    const needs = k > 0 ? [`fill-${zones[k - 1].id}`] : ['pole'];
    return fillZone(zone, targets, needs, k === 0);
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
    ...(armed ? [hangArms()] : []),
    careFor(armed),
  ];
}

function setPlates(form: Form, armed: boolean): WorkStep {
  return step(
    'plates',
    'pole',
    'Set in the neck and armhole plates',
    [
      'From outside, push each covered plate into its opening, up to up and front to front, and sew the turned-in edge of the shell to the cover all round.',
      'Put the shoulder supports under the shoulder seams and the neck block under the neck plate.',
      ...(armed
        ? ['Hold the arms to their plates once more: each must draw to its own side and push off the other.']
        : []),
    ],
    {
      needs: ['sew-closing', 'boards', ...(armed ? ['magnets'] : [])],
      pieces: innerPieces(form, (id) => /^(neck-|armhole-plate-|shoulder-support-)/.test(id)),
      cautions: cautionsOf('blades'),
    },
  );
}

function putPoleIn(form: Form, targets: readonly LevelTarget[]): WorkStep {
  const bust = targets.find(({ id }) => id === 'bust');
  return step(
    'pole',
    'pole',
    'Put the pole in',
    [
      'Push the pole through sleeve and neck plate up to its mark, and hold the base plate below as a guide, not yet sewn in. It goes in before the filling: afterwards nothing finds the sleeve.',
      'Stand it up on its foot and look from the front and from the side against a plumb line; pull the ties straight.',
      'To fill, turn the form over so that its open base is up.',
    ],
    {
      needs: ['plates', 'sew-sleeve'],
      pieces: innerPieces(form, (id) => /^base-plate-[12]$/.test(id)),
      checks: [
        lengthCheck('inside', 'Pole inside the form, plate to plate', poleInside(form), 3),
        ...(bust ? [lengthCheck('bust-height', 'Bust level above the waist level', bust.z, 5)] : []),
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
const HOW: Readonly<Record<string, string>> = {
  upperChest:
    'Fill the shoulders to their ends first, round the neck block, hard enough to carry a garment without sinking.',
  bust: 'Fill the upper chest and the cups with small teased tufts from the surface inwards, then between the shoulder blades.',
  underbust:
    'Finish the cups from below, so that they stay full, then the back of the chest, then round the sleeve.',
  waist: 'Work down round the sleeve as the core, then outwards to the cloth.',
  highHip:
    'Waist: fill both sides of every web alike, front and back in turn, and watch width and depth more than the girth.',
  hip: 'Belly and seat in turn, right and left in turn, so that the pole stays in the middle.',
};
const LAST =
  'Fill up to the base plate, firm at the rim, so that the plate sits on filling and does not sag.';

function fillZone(
  zone: FillZone,
  targets: readonly LevelTarget[],
  needs: readonly string[],
  isFirst: boolean,
): WorkStep {
  const mass: WorkCheck = {
    id: 'mass',
    name: plain('Filling for this zone'),
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
    wordsOf(zone.name),
    [
      HOW[zone.lower ?? ''] ?? LAST,
      'Right and left in turn, front and back in turn; weigh what goes in. Pull the ties to their marked lengths.',
      'Stop when a girth is over by more than its limit: take filling out. Never tighten a seam over filling.',
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
    const { below, above } = STUFFING_TOLERANCE[kind];
    return lengthCheck(`${kind}-${level.id}`, `${wordsOf(level.name)}, ${kind}`, level[kind], below, above);
  });
}

function letRest(targets: readonly LevelTarget[], before: string): WorkStep {
  return step(
    'rest',
    'fill',
    'Let it stand for a day and measure again',
    [
      'Cloth and seams give and filling settles overnight. Measure every level, enter it under Checking, and top up or take out.',
      'Look along every seam: where needle holes open, the seam slips; sew a second row or back it with tape before going on.',
    ],
    { needs: [before], checks: targets.flatMap(sizeChecks) },
  );
}

function closeBase(form: Form): WorkStep {
  return step(
    'close',
    'finish',
    'Set in the base plate and close the base',
    [
      'Push the covered base plate in over the pole, sew the sleeve’s tabs down, fold the shell’s edge under and lace it to the cover with waxed cord, in small ladder stitches.',
      'Top up through the two holes of the base plate, then lace their lids on.',
    ],
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
    'Set the height and mark the lasting lines',
    [
      'Lock the form at its height. With a pencil held on a wooden block that stands on the floor, not by the seams, mark the levels, centre front and back and the sides, and pin narrow tape along them.',
      'A cover or padding goes on before the tapes, if it was given under Inside, “Layers over the shell”.',
    ],
    {
      needs: ['close'],
      checks: targets.map(({ id, name, z }) =>
        lengthCheck(`height-${id}`, `${wordsOf(name)} above the floor`, waist + z, 5),
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
          name: plain('Tilt at which it tips; 10° at least'),
          unit: 'degrees',
          value: stand.tipAngleDeg,
          below: null,
          above: null,
        },
        {
          id: 'ballast',
          name: plain('Ballast to add on the legs'),
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
    'Weigh down the foot and try it on a slope',
    [
      'Fix the ballast, hang the heaviest garment on, and tilt the form by hand to 10° in every direction over a soft floor, with somebody ready to catch it.',
      'Write on the foot: date, person, measures, underwear, heaviest garment.',
    ],
    { needs: ['tapes'], checks, cautions: cautionsOf('tipping', 'lifting', 'rigging') },
  );
}

function hangArms(): WorkStep {
  return step(
    'arms',
    'finish',
    'Fill and hang the arms',
    [
      'Fill them softer above the elbow, so that a sleeve goes over. Sew the cap on with the magnets inside and the peg through it; hang them only when the torso is finished.',
      'The peg carries, the magnets only locate.',
    ],
    { needs: ['sew-arms', 'magnets', 'stand'], cautions: cautionsOf('magnets') },
  );
}

function careFor(armed: boolean): WorkStep {
  return step(
    'care',
    'finish',
    'Measure it again from time to time',
    [
      'After a week, after a month, and before every new garment: measure the levels and enter them under Checking.',
      'Out of sun, away from lamps and heaters.',
    ],
    { needs: [armed ? 'arms' : 'stand'], cautions: cautionsOf('fire') },
  );
}
