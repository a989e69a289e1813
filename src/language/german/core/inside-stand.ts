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
    const { fixed, plain, exact } = tongue;
    return `Ein Kleidungsstück von ${exact(mass)} kg, ${exact(offset)} mm vom Rohr entfernt, ist zu schwer für diesen Ständer: ${how(values, tongue)}. ${ballast(values, tongue)}, oder Beine von ${plain(values.legRadius, 0)} mm nehmen (in der Projektdatei inside.legRadius), oder nicht mehr als ${fixed(most, 1)} kg so anhängen.`;
  },
  'stand.tips-under-form': (values, tongue) =>
    `Die Form ist zu schwer für diesen Ständer, gleich was daran hängt: ${how(values, tongue)}. ${ballast(values, tongue)}, oder Beine von ${tongue.plain(values.legRadius, 0)} mm nehmen (in der Projektdatei inside.legRadius).`,
  'stand.pole-leans': ({ lean, mass, offset, most }, { fixed, plain, exact }) =>
    `Das Rohr neigt sich um ${fixed(lean, 0)} mm, wenn ${exact(mass)} kg im Abstand von ${exact(offset)} mm daran hängen; ${plain(most, 1)} mm sieht man kaum. Ein dickeres oder steiferes Rohr nehmen.`,
  'stand.form-too-low': ({ waist, base, leastBase, leastWaist }, { lengthAlone }) =>
    `Mit der Taille ${lengthAlone(waist)} über dem Boden käme die Bodenplatte auf ${lengthAlone(base)}, und der Fuß braucht ${lengthAlone(leastBase)}. Die Taille auf mindestens ${lengthAlone(leastWaist)} stellen.`,
  'stand.stem-too-thick': ({ stem, bore }, { exact, fixed }) =>
    `Eine Stange von ${exact(stem)} mm passt nicht in dieses Rohr, das innen ${fixed(bore, 1)} mm weit ist. Ein weiteres Rohr nehmen oder eine dünnere Stange.`,
  'stand.wall-too-thick': ({ wall, diameter, material, most }, { exact }) =>
    `Eine Wand von ${exact(wall)} mm ist mehr als die Hälfte des Rohrs von ${exact(diameter)} mm, darum gilt es als voller Stab aus ${BARS[material]}. Die Wand am Ende des Rohrs messen: höchstens ${exact(most)} mm.`,
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
