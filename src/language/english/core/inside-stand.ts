import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

type Stand = {
  readonly [Id in keyof InsidePhrases as Id extends `stand.${string}` ? Id : never]: InsidePhrases[Id];
};

/** What would fall or lean. */
export const stand: Entries<Stand> = {
  'stand.tips-under-garment': (values, tongue) => {
    const { mass, offset, most } = values;
    const { fixed, exact, exactLength } = tongue;
    return `A garment of ${exact(mass)} kg hung ${exactLength(offset)} off the pole is too heavy for this stand: ${tipping(values, tongue)}, or hang no more than ${fixed(most, 1)} kg so.`;
  },
  'stand.tips-under-form': (values, tongue) =>
    `The form is too heavy for this stand, whatever hangs on it: ${tipping(values, tongue)}.`,
  'stand.pole-leans': ({ lean, mass, offset, most }, { exact, small, exactLength }) =>
    `The pole leans ${small(lean)} under ${exact(mass)} kg hung ${exactLength(offset)} off it; ${exactLength(most)} are hardly seen. Take a thicker or stiffer one.`,
  'stand.form-too-low': ({ waist, base, leastBase, leastWaist }, { lengthAlone }) =>
    `With the waist ${lengthAlone(waist)} above the floor the base plate would come to ${lengthAlone(base)}, and the foot needs ${lengthAlone(leastBase)}. Set the waist at ${lengthAlone(leastWaist)} at least.`,
  'stand.stem-too-thick': ({ stem, bore }, { small, exactLength }) =>
    `A pole of ${exactLength(stem)} does not go into this tube, which is ${small(bore)} wide inside. Take a wider tube or a thinner pole.`,
  'stand.wall-too-thick': ({ wall, diameter, material, most }, { exactLength }) =>
    `A wall of ${exactLength(wall)} is more than half of the pole’s ${exactLength(diameter)}, so it is taken as a solid ${material} bar. Measure the wall at the pole’s end: ${exactLength(most)} at most.`,
};

function tipping(values: Stand['stand.tips-under-form'], { fixed, plain, exactLength }: Tongue): string {
  const { tipAngleDeg, leastAngleDeg, ballast, legRadius } = values;
  const how =
    tipAngleDeg > 0
      ? `it tips at ${fixed(tipAngleDeg, 1)}°, and our own criterion is ${leastAngleDeg}°`
      : `it falls over by itself, and our own criterion is a tilt of ${leastAngleDeg}°`;
  return `${how}. Put ${fixed(ballast, 1)} kg on the legs, take legs of ${exactLength(legRadius)} (in the project file, inside.legRadius: ${plain(legRadius, 0)})`;
}
