import { analyseLdlt, Ldlt } from '../math/index.ts';
import { measureDirichlet } from './dirichlet-energy.ts';
import { type PreparedDisk, SLOT_CORNERS } from './prepare-disk.ts';

/** Excess energy per mm² below which a layout is as good as unstrained: there is nothing to gain. */
const UNSTRAINED = 1e-7;

/** Rounds stop when one takes off less than this share of the excess energy. */
const LEAST_GAIN = 0.1;

const MOST_ROUNDS = 12;

/**
 * Brings `flat` (#V × 2 mm, no flipped triangle, `pinA` at the origin) nearer to an isometry, in place: alternately the
 * best rotation of every triangle and the best places for these rotations ("as rigid as possible"). To second order in
 * the strain its energy is a quarter of what symmetric Dirichlet adds to 4, so it ends close to that minimum. A round
 * costs two solves with a factor of one unknown per vertex. Keeps the last layout without flips.
 * Source: Liu, Zhang, Xu, Gotsman and Gortler, "A local/global approach to mesh parameterization", CGF 27 (2008).
 */
export function iterateLocalGlobal(disk: PreparedDisk, flat: Float64Array): void {
  let excess = measureDirichlet(disk, flat) - 4 * disk.totalArea;
  if (!(excess > UNSTRAINED * disk.totalArea)) return;
  const solver = factorLaplacian(disk);
  if (!solver) return;
  const right = [new Float64Array(disk.vertexCount), new Float64Array(disk.vertexCount)];
  const trial = new Float64Array(flat.length);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    gatherRotations(disk, flat, right[0], right[1]);
    const x = solver.solve(right[0]);
    const y = solver.solve(right[1]);
    for (let v = 0; v < disk.vertexCount; v++) {
      trial[2 * v] = x[v];
      trial[2 * v + 1] = y[v];
    }
    const left = measureDirichlet(disk, trial) - 4 * disk.totalArea;
    if (!(left < excess)) return;
    flat.set(trial);
    if (left > (1 - LEAST_GAIN) * excess) return;
    excess = left;
  }
}

/** Stiffness matrix ∫∇φi·∇φj with `pinA` held at 0, factored; undefined when it cannot be. */
function factorLaplacian(disk: PreparedDisk): Ldlt | undefined {
  const { gradients, areas, slots, pattern, pinA, solver } = disk;
  const values = new Float64Array(pattern.rowIndex.length);
  for (let f = 0; f < areas.length; f++) {
    for (let s = 0; s < 6; s++) {
      const i = 6 * f + 2 * SLOT_CORNERS[2 * s];
      const j = 6 * f + 2 * SLOT_CORNERS[2 * s + 1];
      values[slots[6 * f + s]] +=
        areas[f] * (gradients[i] * gradients[j] + gradients[i + 1] * gradients[j + 1]);
    }
  }
  for (let c = 0; c < pattern.size; c++) {
    for (let k = pattern.columnStart[c]; k < pattern.columnStart[c + 1]; k++) {
      if (c === pinA || pattern.rowIndex[k] === pinA) values[k] = c === pattern.rowIndex[k] ? 1 : 0;
    }
  }
  const laplacian = new Ldlt(analyseLdlt(pattern, 1, solver.symbolic.order));
  return laplacian.factor(values, { stopAtNegative: true }).isUsable ? laplacian : undefined;
}

/** Right sides Σ A R ∇φ with R the rotation nearest to each triangle's map; 0 at `pinA`. */
function gatherRotations(disk: PreparedDisk, flat: Float64Array, right0: Float64Array, right1: Float64Array) {
  const { gradients, areas, corners, triangleCount, pinA } = disk;
  right0.fill(0);
  right1.fill(0);
  for (let f = 0; f < triangleCount; f++) {
    const a = 2 * corners[3 * f];
    const b = 2 * corners[3 * f + 1];
    const c = 2 * corners[3 * f + 2];
    const g = 6 * f;
    const ux = flat[b] - flat[a];
    const uy = flat[b + 1] - flat[a + 1];
    const vx = flat[c] - flat[a];
    const vy = flat[c + 1] - flat[a + 1];
    // J00 + J11 and J10 − J01 are proportional to the cosine and sine of the polar rotation.
    const along =
      ux * gradients[g + 2] + vx * gradients[g + 4] + uy * gradients[g + 3] + vy * gradients[g + 5];
    const across =
      uy * gradients[g + 2] + vy * gradients[g + 4] - ux * gradients[g + 3] - vx * gradients[g + 5];
    const scale = areas[f] / Math.sqrt(along * along + across * across);
    const cos = scale * along;
    const sin = scale * across;
    for (let k = 0; k < 3; k++) {
      const v = corners[3 * f + k];
      const gx = gradients[g + 2 * k];
      const gy = gradients[g + 2 * k + 1];
      right0[v] += cos * gx - sin * gy;
      right1[v] += sin * gx + cos * gy;
    }
  }
  right0[pinA] = 0;
  right1[pinA] = 0;
}
