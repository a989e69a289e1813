import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

type Stand = {
  readonly [Id in keyof InsidePhrases as Id extends `stand.${string}` ? Id : never]: InsidePhrases[Id];
};

const BARS = { steel: 'Stahl', aluminium: 'Aluminium', beech: 'Buche', pvc: 'PVC' } as const;

/** What would fall or lean. */
export const stand: Entries<Stand> = {
  'stand.tips-under-garment': (values, tongue) => {
    const { mass, offset, most } = values;
    const { fixed, plain, exact, exactLength } = tongue;
    return `Ein Kleidungsstück von ${exact(mass)} kg, ${exactLength(offset)} vom Rohr entfernt, ist zu schwer für diesen Ständer: ${how(values, tongue)}. ${ballast(values, tongue)}, oder Beine von ${exactLength(values.legRadius)} nehmen (in der Projektdatei inside.legRadius: ${plain(values.legRadius, 0)}), oder nicht mehr als ${fixed(most, 1)} kg so anhängen.`;
  },
  'stand.tips-under-form': (values, tongue) =>
    `Die Form ist zu schwer für diesen Ständer, gleich was daran hängt: ${how(values, tongue)}. ${ballast(values, tongue)}, oder Beine von ${tongue.exactLength(values.legRadius)} nehmen (in der Projektdatei inside.legRadius: ${tongue.plain(values.legRadius, 0)}).`,
  'stand.pole-leans': ({ lean, mass, offset, most }, { exact, small, exactLength }) =>
    `Das Rohr neigt sich um ${small(lean)}, wenn ${exact(mass)} kg im Abstand von ${exactLength(offset)} daran hängen; ${exactLength(most)} sieht man kaum. Ein dickeres oder steiferes Rohr nehmen.`,
  'stand.form-too-low': ({ waist, base, leastBase, leastWaist }, { lengthAlone }) =>
    `Mit der Taille ${lengthAlone(waist)} über dem Boden käme die Bodenplatte auf ${lengthAlone(base)}, und der Fuß braucht ${lengthAlone(leastBase)}. Die Taille auf mindestens ${lengthAlone(leastWaist)} stellen.`,
  'stand.stem-too-thick': ({ stem, bore }, { small, exactLength }) =>
    `Eine Stange von ${exactLength(stem)} passt nicht in dieses Rohr, das innen ${small(bore)} weit ist. Ein weiteres Rohr nehmen oder eine dünnere Stange.`,
  'stand.wall-too-thick': ({ wall, diameter, material, most }, { exactLength }) =>
    `Eine Wand von ${exactLength(wall)} ist mehr als die Hälfte des Rohrs von ${exactLength(diameter)}, darum gilt es als voller Stab aus ${BARS[material]}. Die Wand am Ende des Rohrs messen: höchstens ${exactLength(most)}.`,
};

type Tipping = Stand['stand.tips-under-form'];

function how({ tipAngleDeg, leastAngleDeg }: Tipping, { fixed }: Tongue): string {
  return tipAngleDeg > 0
    ? `Er kippt bei ${fixed(tipAngleDeg, 1)}°, und unser eigenes Maß sind ${leastAngleDeg}°`
    : `Er fällt von selbst um, und unser eigenes Maß ist eine Neigung von ${leastAngleDeg}°`;
}

function ballast(values: Tipping, { fixed }: Tongue): string {
  return `${fixed(values.ballast, 1)} kg auf die Beine legen`;
}
