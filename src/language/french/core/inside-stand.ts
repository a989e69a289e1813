import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

type Stand = {
  readonly [Id in keyof InsidePhrases as Id extends `stand.${string}` ? Id : never]: InsidePhrases[Id];
};

/** With “de”. */
const BARS = {
  steel: 'd’acier',
  aluminium: 'd’aluminium',
  beech: 'de hêtre',
  pvc: 'de PVC',
} as const;

/** What would fall or lean. */
export const stand: Entries<Stand> = {
  'stand.tips-under-garment': (values, tongue) => {
    const { mass, offset, most } = values;
    const { fixed, exact, exactLength } = tongue;
    return `Un vêtement de ${exact(mass)} kg suspendu à ${exactLength(offset)} du tube est trop lourd pour ce pied\u00a0: ${tipping(values, tongue)}, ou ne pas suspendre ainsi plus de ${fixed(most, 1)} kg.`;
  },
  'stand.tips-under-form': (values, tongue) =>
    `Le mannequin est trop lourd pour ce pied, quoi qu’on y suspende\u00a0: ${tipping(values, tongue)}.`,
  'stand.pole-leans': ({ lean, mass, offset, most }, { exact, small, exactLength }) =>
    `Le tube penche de ${small(lean)} avec ${exact(mass)} kg suspendus à ${exactLength(offset)} de lui\u202f; ${exactLength(most)} se voient à peine. En prendre un plus gros ou plus raide.`,
  'stand.form-too-low': ({ waist, base, leastBase, leastWaist }, { lengthAlone }) =>
    `Avec la taille à ${lengthAlone(waist)} du sol, la plaque de base viendrait à ${lengthAlone(base)}, et le pied demande ${lengthAlone(leastBase)}. Mettre la taille à ${lengthAlone(leastWaist)} au moins.`,
  'stand.stem-too-thick': ({ stem, bore }, { small, exactLength }) =>
    `Une tige de ${exactLength(stem)} n’entre pas dans ce tube, qui mesure ${small(bore)} à l’intérieur. Prendre un tube plus large ou une tige plus fine.`,
  'stand.wall-too-thick': ({ wall, diameter, material, most }, { exactLength }) =>
    `Une paroi de ${exactLength(wall)} dépasse la moitié des ${exactLength(diameter)} du tube, il est donc compté comme une barre pleine ${BARS[material]}. Mesurer la paroi au bout du tube\u00a0: ${exactLength(most)} au plus.`,
};

function tipping(values: Stand['stand.tips-under-form'], { fixed, plain, exactLength }: Tongue): string {
  const { tipAngleDeg, leastAngleDeg, ballast, legRadius } = values;
  const how =
    tipAngleDeg > 0
      ? `il bascule à ${fixed(tipAngleDeg, 1)}°, et notre propre critère est de ${leastAngleDeg}°`
      : `il tombe tout seul, et notre propre critère est une inclinaison de ${leastAngleDeg}°`;
  return `${how}. Mettre ${fixed(ballast, 1)} kg sur les branches, prendre des branches de ${exactLength(legRadius)} (dans le fichier du projet, inside.legRadius\u00a0: ${plain(legRadius, 0)})`;
}
