import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

type Stand = {
  readonly [Id in keyof InsidePhrases as Id extends `stand.${string}` ? Id : never]: InsidePhrases[Id];
};

/** What would fall or lean. */
export const stand: Entries<Stand> = {
  'stand.tips-under-garment': (values, tongue) => {
    const { mass, offset, most } = values;
    const { fixed, exact } = tongue;
    return `A garment of ${exact(mass)} kg hung ${exact(offset)} mm off the pole is too heavy for this stand: ${tipping(values, tongue)}, or hang no more than ${fixed(most, 1)} kg so.`;
  },
  'stand.tips-under-form': (values, tongue) =>
    `The form is too heavy for this stand, whatever hangs on it: ${tipping(values, tongue)}.`,
  'stand.pole-leans': ({ lean, mass, offset, most }, { fixed, plain, exact }) =>
    `The pole leans ${fixed(lean, 0)} mm under ${exact(mass)} kg hung ${exact(offset)} mm off it; ${plain(most, 1)} mm are hardly seen. Take a thicker or stiffer one.`,
  'stand.form-too-low': ({ waist, base, leastBase, leastWaist }, { lengthAlone }) =>
    `With the waist ${lengthAlone(waist)} above the floor the base plate would come to ${lengthAlone(base)}, and the foot needs ${lengthAlone(leastBase)}. Set the waist at ${lengthAlone(leastWaist)} at least.`,
  'stand.stem-too-thick': ({ stem, bore }, { exact, fixed }) =>
    `A pole of ${exact(stem)} mm does not go into this tube, which is ${fixed(bore, 1)} mm wide inside. Take a wider tube or a thinner pole.`,
  'stand.wall-too-thick': ({ wall, diameter, material, most }, { exact }) =>
    `A wall of ${exact(wall)} mm is more than half of the pole’s ${exact(diameter)} mm, so it is taken as a solid ${material} bar. Measure the wall at the pole’s end: ${exact(most)} mm at most.`,
};

function tipping(values: Stand['stand.tips-under-form'], { fixed, plain }: Tongue): string {
  const { tipAngleDeg, leastAngleDeg, ballast, legRadius } = values;
  const how =
    tipAngleDeg > 0
      ? `it tips at ${fixed(tipAngleDeg, 1)}°, and our own criterion is ${leastAngleDeg}°`
      : `it falls over by itself, and our own criterion is a tilt of ${leastAngleDeg}°`;
  return `${how}. Put ${fixed(ballast, 1)} kg on the legs, take legs of ${plain(legRadius, 0)} mm (in the project file, inside.legRadius)`;
}
