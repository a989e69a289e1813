import { readRound } from './read-round.ts';
import type { BodyShape } from './types.ts';

/** The armhole's outline in the chart: see `BodyShape.armhole`. */
export type ArmholeOval = Pick<BodyShape['armhole'], 'front' | 'back' | 'radii'>;

/** Outlines reach from one of these to the other, in half axes of the oval. */
export const [LEAST_RADIUS, MOST_RADIUS] = [0.5, 1.5];

/** Radius of the outline in half axes of its oval, in the direction (across, up); 1 while it is the oval itself. */
export function radiusTowards({ radii }: ArmholeOval, across: number, up: number): number {
  return radii ? readRound(radii, Math.atan2(up, across) / (2 * Math.PI)) : 1;
}

/** Half axes to the front of the oval's middle line, of a place `du` radians before the side line, `up` half heights up. */
export function acrossOval({ front, back }: ArmholeOval, du: number, up: number): number {
  return (du - 0.5 * (front - back) * (1 - up * up)) / (0.5 * (front + back));
}

/** The reverse of `acrossOval`. */
export function fromOval({ front, back }: ArmholeOval, across: number, up: number): number {
  return 0.5 * (front - back) * (1 - up * up) + 0.5 * (front + back) * across;
}
