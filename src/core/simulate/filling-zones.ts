import type { Phrase } from '../base/index.ts';
import type { FillMass, PoleFit } from '../inside/index.ts';
import { type Mesh, measureVolumeWithin } from '../mesh/index.ts';
import { phrase } from './phrases.ts';

/** A part of the form between two levels, in the order of filling: from the shoulders to the base. */
export interface FillZone {
  readonly id: string;
  readonly name: Phrase;
  /** Levels at its upper and lower end; none at shoulders and base. */
  readonly upper?: string;
  readonly lower?: string;
  /** Litres of filling, pole and plates taken off. */
  readonly volumeL: number;
  /** Part of it in front of the pole. */
  readonly frontShare: number;
  /** Firm filling, kg. */
  readonly low: number;
  readonly high: number;
}

/**
 * Zones between neighbouring levels, from the top down, with the filling each takes: the volume of the closed form there,
 * less the pole and what else is not filled (plates and block, taken off at the two ends), at the density of
 * `fill`. The masses add up to those of `fill`. Cost: one pass over the mesh a zone and half.
 */
export function divideFill(
  closedMesh: Mesh,
  levels: readonly { readonly id: string; readonly name: Phrase; readonly z: number }[],
  pole: PoleFit,
  fill: FillMass,
): FillZone[] {
  const up = levels.toSorted((a, b) => b.z - a.z);
  const bounds = [undefined, ...up, undefined];
  const zones = bounds.slice(1).map((lower, k) => {
    const upper = bounds[k];
    const slab = { ...(upper && { zMax: upper.z }), ...(lower && { zMin: lower.z }) };
    const whole = measureVolumeWithin(closedMesh, slab) / 1e6;
    const front = measureVolumeWithin(closedMesh, { ...slab, yMin: pole.y }) / 1e6;
    const top = Math.min(pole.zTop, upper?.z ?? pole.zTop);
    const bottom = Math.max(pole.zBottom, lower?.z ?? pole.zBottom);
    const tube = (Math.PI * pole.radius ** 2 * Math.max(0, top - bottom)) / 1e6;
    return { upper, lower, volume: whole - tube, frontShare: front / whole };
  });
  // Plates and neck block lie at the two ends; they are taken off there by the ends' volumes.
  const unfilled = zones.reduce((sum, { volume }) => sum + volume, 0) - fill.volumeL;
  const ends = [zones[0], zones[zones.length - 1]];
  const endVolume = ends.reduce((sum, { volume }) => sum + volume, 0);
  return zones.map((zone) => {
    const { upper, lower, frontShare } = zone;
    const volumeL = ends.includes(zone) ? zone.volume * (1 - unfilled / endVolume) : zone.volume;
    const share = volumeL / fill.volumeL;
    return {
      id: `${upper?.id ?? 'top'}-${lower?.id ?? 'base'}`,
      name: nameZone(upper?.name, lower?.name),
      ...(upper && { upper: upper.id }),
      ...(lower && { lower: lower.id }),
      volumeL,
      frontShare,
      low: fill.low * share,
      high: fill.high * share,
    };
  });
}

function nameZone(upper: Phrase | undefined, lower: Phrase | undefined): Phrase {
  const down = lower && { lower };
  return upper ? phrase('zone.between', { upper, ...down }) : phrase('zone.from-top', { ...down });
}
