import type { FormPhrases, PlaceMark } from '../../../core/form/index.ts';
import type { LevelSpread } from '../../../core/inside/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

/** What it is called, and that in the dative. */
const MARKS: Readonly<Record<PlaceMark, { readonly name: string; readonly at: string }>> = {
  bustPoint: { name: 'der Brustpunkt', at: 'dem Brustpunkt' },
  bladePoint: { name: 'das Schulterblatt', at: 'dem Schulterblatt' },
  armpit: { name: 'die Achsel', at: 'der Achsel' },
  shoulderPoint: { name: 'der Schulterpunkt', at: 'dem Schulterpunkt' },
  neckSide: { name: 'die Halsseite', at: 'der Halsseite' },
  neckFront: { name: 'die Halsgrube', at: 'der Halsgrube' },
  neckBack: { name: 'der Nacken', at: 'dem Nacken' },
};
const AXES = { warp: 'im Fadenlauf', weft: 'quer zum Fadenlauf', bias: 'schräg zum Fadenlauf' } as const;

/** Places where the cloth is asked for more than it takes. */
export const zones: Entries<FormPhrases> = {
  'zone.stretches': ({ panel, place, area, axis, strain, limit, advice }, tongue) =>
    `${tongue.say(panel)}, ${tongue.say(place)}, ${sayArea(area, tongue)}: Der Stoff müsste sich ${AXES[axis]} um bis zu ${percent(strain, tongue)} dehnen (er gibt ${percent(limit, tongue)} her). ${tongue.say(advice)}`,
  'zone.wrinkles': ({ panel, place, area, axis, strain, limit, advice }, tongue) =>
    `${tongue.say(panel)}, ${tongue.say(place)}, ${sayArea(area, tongue)}: Der Stoff würde Falten werfen: Er muss ${AXES[axis]} um bis zu ${percent(strain, tongue)} eingehalten werden (${percent(limit, tongue)} lassen sich einhalten). ${tongue.say(advice)}`,
  'zone.seam-ends-here': ({ letter, seam }, { say }) =>
    `Eine Naht, die hier in der Nähe endet, oder etwas Einhalteweite an Naht ${letter}, ${say(seam)}, kann helfen.`,
  'zone.seam-nearby': ({ letter, seam, distance }, { say, length }) =>
    `Eine Naht näher an dieser Stelle kann helfen; die nächste, ${letter}, ${say(seam)}, ist ${length(distance)} entfernt.`,
  'zone.no-seam': 'Eine Naht an dieser Stelle kann helfen.',
  'place.by-mark': ({ mark, rise, out }, { length }) => {
    const { name, at } = MARKS[mark];
    const above = rise && `${length(Math.abs(rise))} ${rise > 0 ? 'über' : 'unter'} ${at}`;
    const beside = out && `${length(Math.abs(out))} weiter ${out > 0 ? 'außen' : 'innen'}`;
    if (above && beside) return `${above} und ${beside}`;
    return above || (beside ? `${beside} als ${name}` : `an ${at}`.replace(/^an dem/, 'am'));
  },
  'place.by-level': ({ level, rise }, { say, length }) =>
    `${length(Math.abs(rise))} ${rise > 0 ? 'über' : 'unter'} der Höhenlinie „${say(level)}“`,
  'place.on-body': 'auf dem Körper',
  'tube.alone':
    'Nur der Probeschlauch. Nähen, stopfen, messen und seine Umfänge eintragen: Dann werden die Bahnen für diesen Stoff zugeschnitten. Erst danach drucken.',
  'tube.measured': ({ growth }, tongue) =>
    `Probeschlauch: erledigt. Dieser Stoff gibt um ${percent(growth, tongue)} nach, und um so viel kleiner sind die Teile.`,
  'tube.skipped': ({ levels }, tongue) =>
    `ZUERST DEN PROBESCHLAUCH: Für diese Teile wurde keiner gemessen, darum ist nur geschätzt, wie weit der Stoff nachgibt. Gefüllt können Umfänge anders ausfallen: ${levels.map((one) => saySpread(one, tongue)).join('; ')}. Den Schlauch allein drucken und messen, dann dies hier neu drucken.`,
  'verdict.sound': ({ strain }, tongue) =>
    `Lässt sich so nähen: 95 % des Stoffs sind um weniger als ${percent(strain, tongue)} verformt.`,
  'verdict.wrinkles': ({ places }) =>
    `Lässt sich nähen, aber der Stoff wird ${sayPlaces(places)} Falten werfen.`,
  'verdict.pulls': ({ places }) => `Lässt sich nähen, aber der Stoff wird ${sayPlaces(places)} spannen.`,
  'verdict.cannot': ({ reason }, { say }) => `Lässt sich so nicht nähen. ${say(reason)}`,
  'verdict.folds': 'Dieses Teil schlägt über sich selbst, wenn es flach gelegt wird.',
  'verdict.partners': ({ letter, gap }, { fixed }) =>
    `Die beiden Seiten von Naht ${letter} treffen nicht aufeinander: Ihre Passzeichen liegen bis zu ${fixed(gap, 1)} mm auseinander.`,
  'verdict.at': ({ panel, place }, { say }) => `${say(panel)}, ${say(place)}`,
};

function saySpread({ level, less, more }: LevelSpread, { say, fixed }: Tongue): string {
  return `${say(level)} bis zu ${fixed(less, 0)} mm weniger oder ${fixed(more, 0)} mm mehr`;
}

function sayPlaces(count: number): string {
  return count === 1 ? 'an einer Stelle' : `an ${count} Stellen`;
}

function percent(fraction: number, { fixed }: Tongue): string {
  return `${fixed(100 * fraction, 1)} %`;
}

function sayArea(mm2: number, { fixed }: Tongue): string {
  return `${fixed(Math.max(1, mm2 / 100), 0)} cm²`;
}
