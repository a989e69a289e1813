import type { FormPhrases, PlaceMark } from '../../../core/form/index.ts';
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
  'zone.seam-nearby': ({ letter, seam, distance }, { say, small }) =>
    `Eine Naht näher an dieser Stelle kann helfen; die nächste, ${letter}, ${say(seam)}, ist ${small(distance)} entfernt.`,
  'zone.no-seam': 'Eine Naht an dieser Stelle kann helfen.',
  'place.by-mark': ({ mark, rise, out }, { small }) => {
    const { name, at } = MARKS[mark];
    const above = rise && `${small(Math.abs(rise))} ${rise > 0 ? 'über' : 'unter'} ${at}`;
    const beside = out && `${small(Math.abs(out))} weiter ${out > 0 ? 'außen' : 'innen'}`;
    if (above && beside) return `${above} und ${beside}`;
    return above || (beside ? `${beside} als ${name}` : `an ${at}`.replace(/^an dem/, 'am'));
  },
  'place.by-level': ({ level, rise }, { say, small }) =>
    `${small(Math.abs(rise))} ${rise > 0 ? 'über' : 'unter'} der Höhenlinie „${say(level)}“`,
  'place.on-body': 'auf dem Körper',
};

function percent(fraction: number, { fixed }: Tongue): string {
  return `${fixed(100 * fraction, 1)} %`;
}

function sayArea(mm2: number, { fixed }: Tongue): string {
  return `${fixed(Math.max(1, mm2 / 100), 0)} cm²`;
}
