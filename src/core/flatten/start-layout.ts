import { analyseLdlt, cross, distanceInSpace, findSlot, Ldlt, normalise } from '../math/index.ts';
import { nextHalfedge } from '../mesh/index.ts';
import { measureDirichlet } from './dirichlet-energy.ts';
import { iterateLocalGlobal } from './iterate-local-global.ts';
import { type PreparedDisk, SLOT_CORNERS } from './prepare-disk.ts';
import { applyPins, findPinnedEntries } from './solve-layout.ts';
import { turnToPins } from './turn-to-pins.ts';

/** A triangle of a projected panel is not narrowed to less than this share. */
const LEAST_PROJECTED = 0.2;

/** Excess energy per mm² above which a start from a projection counts as stuck. */
const STUCK = 0.5;

/**
 * First layout without flips, close to the least strain: the panel's view from in front made as rigid as it becomes in a
 * few rounds; where parts of it face away or the rounds get stuck, the least squares conformal map, and where that flips
 * a triangle, Tutte's, treated alike. #V × 2 mm, `pinA` at the origin, `pinB` on the +x axis.
 */
export function startLayout(disk: PreparedDisk): Float64Array {
  const seen = layProjected(disk);
  if (seen) {
    iterateLocalGlobal(disk, seen);
    if (measureDirichlet(disk, seen) < (4 + STUCK) * disk.totalArea)
      return turnToPins(seen, disk.pinA, disk.pinB);
  }
  const conformal = layConformal(disk);
  const isSound = Number.isFinite(measureDirichlet(disk, conformal));
  const flat = scaleToLeastEnergy(
    disk,
    isSound ? conformal : turnToPins(layTutte(disk), disk.pinA, disk.pinB),
  );
  iterateLocalGlobal(disk, flat);
  return turnToPins(flat, disk.pinA, disk.pinB);
}

/** Parallel projection along the mean normal, `pinA` at the origin; undefined when a triangle is seen too much aslant. */
function layProjected(disk: PreparedDisk): Float64Array | undefined {
  const { mesh, pinA, vertexCount, triangleCount } = disk;
  const p = mesh.positions;
  const normals = new Float64Array(3 * triangleCount);
  const mean = [0, 0, 0];
  for (let f = 0; f < triangleCount; f++) {
    const a = 3 * mesh.triangles[3 * f];
    const b = 3 * mesh.triangles[3 * f + 1];
    const c = 3 * mesh.triangles[3 * f + 2];
    for (let k = 0; k < 3; k++) {
      const i = (k + 1) % 3;
      const j = (k + 2) % 3;
      const n = (p[b + i] - p[a + i]) * (p[c + j] - p[a + j]) - (p[b + j] - p[a + j]) * (p[c + i] - p[a + i]);
      normals[3 * f + k] = n;
      mean[k] += n;
    }
  }
  const [x, y, z] = normalise(mean);
  for (let f = 0; f < triangleCount; f++) {
    const [i, j, k] = [normals[3 * f], normals[3 * f + 1], normals[3 * f + 2]];
    if (!(i * x + j * y + k * z > LEAST_PROJECTED * Math.hypot(i, j, k))) return undefined;
  }
  // Two axes square to the mean normal, seen counter-clockwise.
  const right = normalise(Math.abs(z) < 0.9 ? [-y, x, 0] : [0, -z, y]);
  const up = cross([x, y, z], right);
  const flat = new Float64Array(2 * vertexCount);
  for (let v = 0; v < vertexCount; v++) {
    for (let k = 0; k < 3; k++) {
      const d = p[3 * v + k] - p[3 * pinA + k];
      flat[2 * v] += right[k] * d;
      flat[2 * v + 1] += up[k] * d;
    }
  }
  return flat;
}

/**
 * Minimises Dirichlet energy minus area with two far pins: one factor.
 * Source: Lévy, Petitjean, Ray and Maillot, "Least squares conformal maps", ACM TOG 21 (2002), in the form of
 * Mullen, Tong, Alliez and Desbrun, "Spectral conformal parameterization" (2008).
 */
export function layConformal(disk: PreparedDisk): Float64Array {
  const { gradients, areas, slots, values, mesh, pinA, pinB } = disk;
  values.fill(0);
  for (let f = 0; f < areas.length; f++) {
    for (let s = 0; s < 6; s++) {
      const i = 6 * f + 2 * SLOT_CORNERS[2 * s];
      const j = 6 * f + 2 * SLOT_CORNERS[2 * s + 1];
      const k = 4 * slots[6 * f + s];
      const dot = areas[f] * (gradients[i] * gradients[j] + gradients[i + 1] * gradients[j + 1]);
      const cross = areas[f] * (gradients[i] * gradients[j + 1] - gradients[i + 1] * gradients[j]);
      values[k] += dot;
      values[k + 1] -= cross;
      values[k + 2] += cross;
      values[k + 3] += dot;
    }
  }
  const flat = new Float64Array(2 * disk.vertexCount);
  flat[2 * pinB] = distanceInSpace(mesh.positions, pinA, pinB);
  const right = multiplyByUnknown(disk, 2 * pinB, -flat[2 * pinB]);
  const pins = findPinnedEntries(disk, [2 * pinA, 2 * pinA + 1, 2 * pinB, 2 * pinB + 1]);
  applyPins(pins, right, values);
  const report = disk.solver.factor(values, { stopAtNegative: true });
  if (!report.isUsable) return flat.fill(Number.NaN);
  disk.solver.solve(right, right);
  for (let i = 0; i < flat.length; i++) flat[i] += right[i];
  return flat;
}

/** factor × column `unknown` of the matrix in `disk.values`. */
function multiplyByUnknown(disk: PreparedDisk, unknown: number, factor: number): Float64Array {
  const { pattern, values } = disk;
  const out = new Float64Array(2 * disk.vertexCount);
  const v = unknown >> 1;
  const b = unknown & 1;
  for (let u = 0; u < pattern.size; u++) {
    const k = findSlot(pattern, u, v);
    if (k < 0) continue;
    for (let a = 0; a < 2; a++) {
      out[2 * u + a] = factor * (u >= v ? values[4 * k + 2 * a + b] : values[4 * k + 2 * b + a]);
    }
  }
  return out;
}

/**
 * Every inner vertex at the mean of its neighbours, boundary on a circle by arc length: never flips.
 * Source: Tutte, "How to draw a graph", Proc. London Math. Soc. 13 (1963).
 */
export function layTutte(disk: PreparedDisk): Float64Array {
  const { boundary, pattern, mesh, corners, vertexCount } = disk;
  const flat = new Float64Array(2 * vertexCount);
  // 1. Boundary on a circle of the boundary's length.
  const n = boundary.length;
  const at = new Float64Array(n + 1);
  for (let k = 0; k < n; k++) {
    at[k + 1] = at[k] + distanceInSpace(mesh.positions, boundary[k], boundary[(k + 1) % n]);
  }
  const radius = at[n] / (2 * Math.PI);
  const isHeld = new Uint8Array(vertexCount);
  for (let k = 0; k < n; k++) {
    const angle = at[k] / radius;
    isHeld[boundary[k]] = 1;
    flat[2 * boundary[k]] = radius * Math.cos(angle);
    flat[2 * boundary[k] + 1] = radius * Math.sin(angle);
  }
  // 2. Uniform Laplacian over the triangles' edges (an inner edge is met twice), held vertices as identity.
  const values = new Float64Array(pattern.rowIndex.length);
  const right = [new Float64Array(vertexCount), new Float64Array(vertexCount)];
  for (let v = 0; v < vertexCount; v++) {
    if (!isHeld[v]) continue;
    values[findSlot(pattern, v, v)] = 1;
    right[0][v] = flat[2 * v];
    right[1][v] = flat[2 * v + 1];
  }
  for (let e = 0; e < corners.length; e++) {
    const a = corners[e];
    const b = corners[nextHalfedge(e)];
    if (!isHeld[a] && !isHeld[b]) values[findSlot(pattern, a, b)] -= 1;
    for (const [from, to] of [
      [a, b],
      [b, a],
    ]) {
      if (isHeld[from]) continue;
      values[findSlot(pattern, from, from)] += 1;
      if (!isHeld[to]) continue;
      right[0][from] += flat[2 * to];
      right[1][from] += flat[2 * to + 1];
    }
  }
  const solver = new Ldlt(analyseLdlt(pattern, 1));
  solver.factor(values);
  const x = solver.solve(right[0]);
  const y = solver.solve(right[1]);
  for (let v = 0; v < vertexCount; v++) {
    flat[2 * v] = x[v];
    flat[2 * v + 1] = y[v];
  }
  return flat;
}

/** Uniform scale s of least energy: s⁴ = Σ A I / d² over Σ A I. */
function scaleToLeastEnergy(disk: PreparedDisk, flat: Float64Array): Float64Array {
  // E(s) = s² P + Q / s²; two evaluations tell P and Q apart.
  const at1 = measureDirichlet(disk, flat);
  const at2 = measureDirichlet(
    disk,
    flat.map((x) => 2 * x),
  );
  const p = (4 * at2 - at1) / 15;
  const q = at1 - p;
  const scale = (q / p) ** 0.25;
  for (let i = 0; i < flat.length; i++) flat[i] *= scale;
  return flat;
}
