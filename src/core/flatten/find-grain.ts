import { type Mesh, measureTriangleAreas } from '../mesh/index.ts';
import type { Cloth } from './cloths.ts';
import { shareOf } from './measure-cloth-strain.ts';
import type { StrainField } from './types.ts';

/** A grain direction and what it asks of the cloth. */
export interface GrainChoice {
  /** Direction of the warp in the flat piece, radians from +x, in [0, π). */
  readonly angle: number;
  /** Root of the mean square over the area of the share of the cloth's limits that is used. */
  readonly usage: number;
}

const COARSE_STEPS = 36;
/** Golden section steps; each keeps 0.618 of the bracket: ±5° shrink to 0.01°. */
const FINE_STEPS = 14;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The grain direction that asks least of the cloth: 36 directions, then golden section about the best to 0.01°.
 * `usageAt` of the straight grain tells what turning is worth. O(50 #F), no trigonometry per triangle.
 */
export function findGrain(mesh: Mesh, strain: StrainField, cloth: Cloth): GrainChoice {
  const stretches = measureStretches(mesh, strain);
  const cost = (angle: number): number => usageAt(stretches, cloth, angle);
  const step = Math.PI / COARSE_STEPS;
  let best = { angle: Math.PI / 2, usage: cost(Math.PI / 2) };
  for (let k = 0; k < COARSE_STEPS; k++) {
    const usage = cost(k * step);
    if (usage < best.usage) best = { angle: k * step, usage };
  }
  let [low, high] = [best.angle - step, best.angle + step];
  let [a, b] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [costA, costB] = [cost(a), cost(b)];
  for (let k = 0; k < FINE_STEPS; k++) {
    if (costA < costB) {
      [high, b, costB] = [b, a, costA];
      a = high - GOLDEN * (high - low);
      costA = cost(a);
    } else {
      [low, a, costA] = [a, b, costB];
      b = low + GOLDEN * (high - low);
      costB = cost(b);
    }
  }
  const angle = (low + high) / 2;
  return { angle: angle - Math.PI * Math.floor(angle / Math.PI), usage: cost(angle) };
}

/** What a grain direction asks of the cloth. */
export function measureGrain(mesh: Mesh, strain: StrainField, cloth: Cloth, angle: number): GrainChoice {
  return { angle, usage: usageAt(measureStretches(mesh, strain), cloth, angle) };
}

/** Per triangle: area, mean of the squared stretches, and half their difference as a vector in the doubled angle. */
interface Stretches {
  readonly areas: Float64Array;
  readonly mean: Float64Array;
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
}

function measureStretches(mesh: Mesh, strain: StrainField): Stretches {
  const areas = measureTriangleAreas(mesh);
  const [mean, cosine, sine] = [0, 1, 2].map(() => new Float64Array(areas.length));
  for (let f = 0; f < areas.length; f++) {
    const a = (1 + strain.major[f]) ** 2;
    const b = (1 + strain.minor[f]) ** 2;
    mean[f] = 0.5 * (a + b);
    cosine[f] = 0.5 * (a - b) * Math.cos(2 * strain.direction[f]);
    sine[f] = 0.5 * (a - b) * Math.sin(2 * strain.direction[f]);
  }
  return { areas, mean, cosine, sine };
}

/** Root mean square over the area of the greatest share of a limit; the strains are those of `measureClothStrain`. */
function usageAt({ areas, mean, cosine, sine }: Stretches, cloth: Cloth, angle: number): number {
  const c = Math.cos(2 * angle);
  const s = Math.sin(2 * angle);
  let squares = 0;
  let total = 0;
  for (let f = 0; f < areas.length; f++) {
    const along = c * cosine[f] + s * sine[f];
    const across = s * cosine[f] - c * sine[f];
    const usage = Math.max(
      shareOf(Math.sqrt(mean[f] + along) - 1, cloth.warp),
      shareOf(Math.sqrt(mean[f] - along) - 1, cloth.weft),
      shareOf(Math.sqrt(mean[f] + across) - 1, cloth.bias),
      shareOf(Math.sqrt(mean[f] - across) - 1, cloth.bias),
    );
    if (Number.isNaN(usage)) continue;
    squares += areas[f] * usage * usage;
    total += areas[f];
  }
  return Math.sqrt(squares / total);
}
