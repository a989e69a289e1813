import { mmPerInch } from '../base/index.ts';

/** Edges that are handled otherwise than a plain seam, and so need cloth of their own beyond the sew line. */
export const ALLOWANCE_KINDS = [
  'shoulder',
  'side',
  'closing',
  'armhole',
  'neck',
  'base',
  'wrist',
  'web',
  'tie',
  'cover',
] as const;

/**
 * `closing`: the seam that closes the form, usually the centre back. `web`: where webs and throat webs are sewn on. `tie`: the
 * ends of ties and straps. `cover`: what a plate's cover is turned over its edge.
 */
export type AllowanceKind = (typeof ALLOWANCE_KINDS)[number];

/** In which lengths a maker's ruler and machine are marked. */
export type RulerUnit = 'cm' | 'in';

/** By kind: mm, and inches in the fractions rulers have. Common practice of dressmaking and upholstery, no source. */
const USUAL: Readonly<Record<AllowanceKind, readonly [mm: number, inches: number]>> = {
  // Fitted on the shell; what is let out must be there.
  shoulder: [15, 5 / 8],
  side: [20, 3 / 4],
  // Sewn last, by hand or packed: both layers are held and pulled.
  closing: [25, 1],
  // Turned in and laced to a plate.
  armhole: [20, 3 / 4],
  neck: [20, 3 / 4],
  base: [25, 1],
  wrist: [20, 3 / 4],
  // Two rows of stitching, 3 and 8 mm from the edge.
  web: [12, 1 / 2],
  tie: [15, 5 / 8],
  cover: [30, 1 + 1 / 4],
};

/**
 * Cloth beyond an edge of that kind where nothing was typed for it, mm: exact millimetres or exact fractions of an inch. Never
 * less than the `general` allowance, which somebody chose for cloth that frays.
 */
export function usualAllowance(kind: AllowanceKind, unit: RulerUnit, general: number): number {
  const [mm, inches] = USUAL[kind];
  return Math.max(general, unit === 'in' ? inches * mmPerInch : mm);
}
