import type { Phrase } from '../base/index.ts';
import type { WorkCheck } from '../form/index.ts';
import { ASSUMED_DENSITY } from '../inside/index.ts';
import { type Op, TOOLS } from '../sewing/index.ts';
import { FILLING_TOLERANCE, type FillZone, type LevelTarget } from '../simulate/index.ts';
import { levelTargets } from './filling-of-form.ts';
import { phrase } from './phrases.ts';
import type { Work } from './work-of-form.ts';
import { cautionsOf, lengthCheck, type PlannedStep, plan } from './work-parts.ts';

/** How each zone is filled, by the level at its lower end. */
const HOW: Readonly<Record<string, Phrase>> = {
  upperChest: phrase('step.fill.shoulders'),
  bust: phrase('step.fill.upper-chest'),
  underbust: phrase('step.fill.bust'),
  waist: phrase('step.fill.midriff'),
  highHip: phrase('step.fill.waist'),
  hip: phrase('step.fill.belly'),
};

/** Zone by zone, from the shoulders down to the base, which lies on top while it is filled. */
export function fillSteps(work: Work): PlannedStep[] {
  const targets = levelTargets(work.form);
  const { zones } = work;
  return zones.map((zone, k) =>
    fillZone(work, zone, targets, k === 0 ? 'pole' : `fill-${zones[k - 1].id}`, k),
  );
}

function fillZone(
  { form, input, has }: Work,
  zone: FillZone,
  targets: readonly LevelTarget[],
  before: string,
  place: number,
): PlannedStep {
  const isFirst = place === 0;
  // Above the first zone lies no level.
  const isFirstRead = place === 1;
  const mass: WorkCheck = {
    id: 'mass',
    name: phrase('check.fill'),
    unit: 'kg',
    value: (zone.low + zone.high) / 2,
    below: (zone.high - zone.low) / 2,
    above: (zone.high - zone.low) / 2,
  };
  const isLast = zone.lower === undefined;
  // The last zone gives way until its plate is on: its level is measured after that.
  const level = isLast ? undefined : targets.find(({ id }) => id === zone.upper);
  const depth = input.regions.find(({ id }) => id === zone.id)?.depth ?? {};
  const isFar = (depth.base ?? 0) > TOOLS.arm.reach;
  const ways: Op[] = isFar
    ? [
        { does: 'fill', region: zone.id, through: 'gap-right', by: 'stick', facts: ['density'] },
        { does: 'fill', region: zone.id, through: 'gap-left', by: 'stick' },
      ]
    : [{ does: 'fill', region: zone.id, through: 'base', by: 'arm', facts: ['density'] }];
  return plan(
    `fill-${zone.id}`,
    'fill',
    zone.name,
    [
      ...(isFirst ? [phrase('step.fill.turn')] : []),
      ...(isFirst && form.inside?.fill.isAssumed ? [phrase('step.fill.scale', ASSUMED_DENSITY)] : []),
      HOW[zone.lower ?? ''] ?? phrase('step.fill.to-base'),
      ...(isFar ? [phrase('step.fill.by-gaps', { depth: depth.base })] : []),
      ...(has.throat && zone.lower === 'upperChest' ? [phrase('step.fill.throat')] : []),
      ...(isFirst ? [phrase('step.fill.in-turn'), phrase('step.fill.ties'), phrase('step.fill.stop')] : []),
      ...(level ? [phrase('step.fill.measure', { level: level.name, isFirst: isFirstRead })] : []),
    ],
    [
      ...ways,
      ...(level ? [{ does: 'read', fact: `size-${level.id}`, how: 'round', level: level.id } as const] : []),
      ...(isFirst ? [{ does: 'carry', from: 'shoulders', to: 'filling' } as const] : []),
    ],
    {
      needs: [before, ...(isFirst ? ['test-tube'] : [])],
      checks: [mass, ...(level ? sizeChecks(level) : [])],
      cautions: isFirst ? cautionsOf('fire') : [],
    },
  );
}

export function sizeChecks(level: LevelTarget): WorkCheck[] {
  return (['girth', 'width', 'depth'] as const).map((kind) => {
    const { below, above } = FILLING_TOLERANCE[kind];
    const name = phrase('check.size', { level: level.name, kind });
    return lengthCheck(`${kind}-${level.id}`, name, level[kind], below, above);
  });
}
