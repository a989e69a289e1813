import { type Mesh, measureTriangleAreas } from '../mesh/index.ts';
import type { Cloth } from './cloths.ts';
import { measureClothStrain } from './measure-cloth-strain.ts';
import type { StrainField } from './types.ts';

/** A grain direction and what it asks of the cloth. */
export interface GrainChoice {
  /** Direction of the warp in the flat piece, radians from +x, in [0, π). */
  readonly angle: number;
  /** Root of the mean square over the area of the share of the cloth's limits that is used. */
  readonly usage: number;
}

const COARSE_STEPS = 36;
const FINE_STEPS = 24;

/**
 * The grain direction that asks least of the cloth: 36 directions, then golden section about the best to 0.01°.
 * `usageAt` of the straight grain tells what turning is worth. O(60 #F).
 */
export function findGrain(mesh: Mesh, strain: StrainField, cloth: Cloth): GrainChoice {
  const areas = measureTriangleAreas(mesh);
  const cost = (angle: number): number => usageAt(areas, strain, cloth, angle);
  const step = Math.PI / COARSE_STEPS;
  let best = Math.PI / 2;
  for (let k = 0; k < COARSE_STEPS; k++) if (cost(k * step) < cost(best)) best = k * step;
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [best - step, best + step];
  for (let k = 0; k < FINE_STEPS; k++) {
    const [a, b] = [high - ratio * (high - low), low + ratio * (high - low)];
    if (cost(a) < cost(b)) high = b;
    else low = a;
  }
  const angle = (low + high) / 2;
  return { angle: angle - Math.PI * Math.floor(angle / Math.PI), usage: cost(angle) };
}

/** What a grain direction asks of the cloth. */
export function measureGrain(mesh: Mesh, strain: StrainField, cloth: Cloth, angle: number): GrainChoice {
  return { angle, usage: usageAt(measureTriangleAreas(mesh), strain, cloth, angle) };
}

function usageAt(areas: Float64Array, strain: StrainField, cloth: Cloth, angle: number): number {
  const { usage } = measureClothStrain(strain, angle, cloth);
  let squares = 0;
  let total = 0;
  for (let f = 0; f < areas.length; f++) {
    if (Number.isNaN(usage[f])) continue;
    squares += areas[f] * usage[f] * usage[f];
    total += areas[f];
  }
  return Math.sqrt(squares / total);
}
