import { CLOTHS, findCloth, measureClothStrain, measureGrain } from '../../../core/flatten/index.ts';
import type { Form } from '../../../core/form/index.ts';

/** What a grain asks of its cloth: most shrink and stretch as fractions, and the share of the limits used. */
export interface StrainAtTurn {
  readonly warp: readonly [number, number];
  readonly weft: readonly [number, number];
  readonly bias: readonly [number, number];
  readonly usage: number;
}

/**
 * Strain of a panel in the axes of its cloth with its grain at `turn`, radians from upright. Quick enough to follow a
 * pointer: O(#F) of the panel.
 */
export function strainAtTurn(form: Form, index: number, turn: number): StrainAtTurn {
  const { mesh, id } = form.shell.panels[index];
  const { strain } = form.flat[index];
  const cloth = findCloth(form.project.cloth.kind ?? '') ?? CLOTHS[0];
  // The flat panel lies with the grain it was made with upwards.
  const angle = Math.PI / 2 + turn - (form.project.cloth.grain?.[id] ?? 0);
  const { warp, weft, bias } = measureClothStrain(strain, angle, cloth);
  return {
    warp: rangeOf(warp),
    weft: rangeOf(weft),
    bias: rangeOf(bias),
    usage: measureGrain(mesh, strain, cloth, angle).usage,
  };
}

function rangeOf(values: Float64Array): [number, number] {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return [least, most];
}
