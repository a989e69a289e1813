import type { FlatDisk } from './types.ts';

/** A flat piece turned about its origin, radians counter-clockwise as seen from outside; its strain turns with it. O(#V + #F). */
export function turnFlat({ positions, strain }: FlatDisk, angle: number): FlatDisk {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const turned = new Float64Array(positions.length);
  for (let i = 0; i < positions.length; i += 2) {
    turned[i] = c * positions[i] - s * positions[i + 1];
    turned[i + 1] = s * positions[i] + c * positions[i + 1];
  }
  // A direction and its opposite are one: kept within a quarter turn either way of +x.
  const direction = strain.direction.map((d) => d + angle - Math.PI * Math.round((d + angle) / Math.PI));
  return { positions: turned, strain: { ...strain, direction } };
}
