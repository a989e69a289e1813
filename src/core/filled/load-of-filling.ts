import { withUsual } from '../base/index.ts';
import { INSIDE_OPTIONS, type InsideOptions, measuredGrowthOf, TEST_TUBE_DIAMETER } from '../inside/index.ts';
import type { FillingLoad } from './types.ts';

/** Stiffness of a fused cotton on the bias over that along its threads (usual, no source). */
const SHEAR_SHARE = 0.2;

/**
 * Pressure and stiffness of a filling. Where the test tube tells by what share it grew, that is how stiff the cloth is under the
 * pressure, by Laplace and Hooke: Et = p R / (growth / (1 + growth)). Warp and weft are taken alike, and webs as of the same cloth.
 */
export function loadOfFilling(options: InsideOptions): FillingLoad {
  const { pressure: kilopascals, clothStiffness } = withUsual(INSIDE_OPTIONS, options);
  const pressure = 0.001 * kilopascals;
  const measured = measuredGrowthOf(options);
  const isMeasured = measured !== undefined && measured > 0;
  const stiffness = isMeasured
    ? (pressure * (TEST_TUBE_DIAMETER / 2) * (1 + measured)) / measured
    : clothStiffness;
  return {
    pressure,
    shell: { warp: stiffness, weft: stiffness, shear: SHEAR_SHARE * stiffness, poisson: 0 },
    web: stiffness,
  };
}
