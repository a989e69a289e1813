import { heightOfWaist } from '../assembly/index.ts';
import type { WorkCheck } from '../form/index.ts';
import type { Op } from '../sewing/index.ts';
import { FILLING_TOLERANCE } from '../simulate/index.ts';
import { levelTargets } from './filling-of-form.ts';
import { sizeChecks } from './order-of-work-fill.ts';
import { phrase } from './phrases.ts';
import { dressed, dressingOf, type Work } from './work-of-form.ts';
import { cautionsOf, innerPieces, lengthCheck, type PlannedStep, plan } from './work-parts.ts';

/** Base plate and lower collar, a day of rest on it, the last openings, stand, lines, arms, care. */
export function finishSteps(work: Work): PlannedStep[] {
  const { has } = work;
  return [
    closeBase(work),
    letRest(work),
    closeLids(work),
    tryStand(work),
    markLines(work),
    ...(has.arms ? [hangArms(work)] : []),
    careFor(work),
  ];
}

function closeBase(work: Work): PlannedStep {
  const { form, has } = work;
  const zones = form.inside?.levels ?? [];
  const isCovered = has.cover('base-plate');
  const tabs: Op[] = has.tabs ? [{ does: 'fix', part: 'tabs', to: 'base-plate', from: 'outside' }] : [];
  return plan(
    'close',
    'finish',
    phrase('step.close.title'),
    [
      phrase('step.close.plate', { hasTabs: has.tabs, isCovered }),
      phrase('step.close.collar'),
      phrase('step.close.lace', { isCovered }),
    ],
    [
      { does: 'insert', part: 'base-plate', through: 'base', over: ['pole', ...(has.tabs ? ['tabs'] : [])] },
      ...tabs,
      { does: 'make', part: 'lower-collar', of: [], needs: ['collars', dressed(work, 'base-plate')] },
      { does: 'join', joint: 'base-edge', how: 'hand' },
      { does: 'fix', part: 'base-plate', to: 'shell', from: 'outside' },
      { does: 'gate', gate: 'base', girth: 0 },
      { does: 'carry', from: 'filling', to: 'base-plate' },
      { does: 'carry', from: 'base-plate', to: 'lower-collar' },
      { does: 'carry', from: 'lower-collar', to: 'pole' },
    ],
    {
      needs: [zones.length > 0 ? `fill-${lastZone(form)}` : 'pole', dressingOf(work, 'base-plate')],
      pieces: innerPieces(form, (id) => /^(base-plate-|tab-)/.test(id)),
    },
  );
}

function lastZone(form: Work['form']): string {
  const [lowest] = (form.inside?.levels ?? []).toSorted((a, b) => a.z - b.z);
  return `${lowest.id}-base`;
}

function letRest({ form }: Work): PlannedStep {
  const targets = levelTargets(form);
  return plan(
    'rest',
    'finish',
    phrase('step.rest.title'),
    [
      phrase('step.rest.stand'),
      phrase('step.rest.measure', { above: FILLING_TOLERANCE.girth.above }),
      phrase('step.rest.seams'),
    ],
    [
      { does: 'danger', of: 'lifting' },
      { does: 'danger', of: 'tipping' },
      { does: 'danger', of: 'fire' },
      { does: 'put-on', part: 'foot', end: 'pole/base' },
      { does: 'carry', from: 'pole', to: 'foot' },
      { does: 'carry', from: 'foot', to: 'floor' },
      ...targets.map(({ id }): Op => ({ does: 'read', fact: `rested-${id}`, how: 'round', level: id })),
    ],
    { needs: ['close'], checks: targets.flatMap(sizeChecks), cautions: cautionsOf('lifting') },
  );
}

function closeLids({ form, has }: Work): PlannedStep {
  const lids = innerPieces(form, (id) => id.startsWith('lid-'));
  return plan(
    'lids',
    'finish',
    phrase('step.lids.title'),
    [
      phrase('step.lids.top-up'),
      phrase('step.lids.gaps', { isCovered: has.cover('armhole-plate') }),
      ...(lids.length > 0 ? [phrase('step.lids.lids')] : []),
      phrase('step.lids.lace', { isCovered: has.cover('base-plate') }),
    ],
    [
      { does: 'gate', gate: 'gap-right', girth: 0 },
      { does: 'gate', gate: 'gap-left', girth: 0 },
      ...lids.map(({ id }): Op => ({ does: 'fix', part: id, to: 'base-plate', from: 'outside' })),
    ],
    { needs: ['rest'], pieces: lids },
  );
}

function tryStand({ form }: Work): PlannedStep {
  const stand = form.inside?.stand;
  // As it is told: to the gram.
  const hasBallast = (stand?.ballast ?? 0) >= 0.0005;
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
        ...(hasBallast
          ? [
              {
                id: 'ballast',
                name: phrase('check.ballast'),
                unit: 'kg',
                value: stand.ballast,
                below: 0,
                above: null,
              } as const,
            ]
          : []),
      ]
    : [];
  return plan(
    'stand',
    'finish',
    phrase('step.stand.title', { hasBallast }),
    [
      phrase('step.stand.pin'),
      phrase('step.stand.tilt', { hasBallast }),
      phrase('step.stand.castors'),
      phrase('step.stand.write'),
    ],
    [
      { does: 'danger', of: 'rigging' },
      { does: 'make', part: 'pin', of: [], needs: ['lower-collar'] },
    ],
    { needs: ['lids'], checks },
  );
}

function markLines({ form }: Work): PlannedStep {
  const waist = heightOfWaist(form.project, form.body);
  const targets = levelTargets(form);
  return plan(
    'tapes',
    'finish',
    phrase('step.tapes.title'),
    [
      phrase('step.tapes.height'),
      ...(form.project.inside.waistHeight === undefined ? [phrase('step.tapes.assumed')] : []),
      phrase('step.tapes.mark'),
      phrase('step.tapes.cover'),
    ],
    [{ does: 'read', fact: 'heights', how: 'stiff' }],
    {
      needs: ['stand'],
      checks: targets.map(({ id, name: level, z }) =>
        lengthCheck(`height-${id}`, phrase('check.above-floor', { level }), waist + z, 5),
      ),
    },
  );
}

function hangArms({ input }: Work): PlannedStep {
  const arms = input.regions.filter(({ id }) => id.startsWith('arm-')).map(({ id }) => `whole-${id}`);
  return plan(
    'arms',
    'finish',
    phrase('step.arms.title'),
    [phrase('step.arms.hang'), phrase('step.arms.peg')],
    [
      { does: 'danger', of: 'magnets' },
      {
        does: 'make',
        part: 'arms-on',
        of: [],
        facts: ['polarity'],
        needs: arms,
      },
    ],
    { needs: ['fill-arms', 'stand'] },
  );
}

function careFor({ has }: Work): PlannedStep {
  return plan(
    'care',
    'finish',
    phrase('step.care.title'),
    [
      phrase('step.care.measure'),
      phrase('step.care.place'),
      phrase('step.care.repair'),
      phrase('step.care.apart', { hasMagnets: has.arms }),
    ],
    [],
    { needs: [has.arms ? 'arms' : 'tapes'] },
  );
}
