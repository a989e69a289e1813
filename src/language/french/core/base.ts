import type { BasePhrases, LengthUnit } from '../../../core/base/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

/** Lengths as they are typed, and words that are nobody’s to translate. */
export const base: Entries<BasePhrases> = {
  verbatim: ({ text }) => text,
  'length.not-understood': ({ typed, unit }, tongue) =>
    `« ${typed} » n’est pas une longueur ; ${advise(unit, tongue)}`,
  'length.nothing-typed': ({ unit }, tongue) => `Rien n’a été saisi ; ${advise(unit, tongue)}`,
};

function advise(unit: LengthUnit, { fixed }: Tongue): string {
  const example = unit === 'in' ? '36 3/8' : unit === 'cm' ? fixed(92.5, 1) : '925';
  return `taper par exemple ${example}, ou avec une unité : ${fixed(92.5, 1)} cm, 925 mm, 36 3/8 in.`;
}
