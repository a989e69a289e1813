import type { PreparedDisk } from './prepare-disk.ts';

/**
 * Symmetric Dirichlet energy of a flat layout, Σ A (σ1² + σ2² + σ1⁻² + σ2⁻²), σ = stretch from body to flat.
 * Written in J's invariants: I (1 + 1/d²), I = |J|², d = det J. mm²; Infinity when a triangle is flipped.
 * `flat`: #V × 2 mm. Source: Smith and Schaefer, "Bijective parameterization with free boundaries",
 * ACM TOG 34 (2015).
 */
export function measureDirichlet(disk: PreparedDisk, flat: Float64Array): number {
  const { corners, gradients, areas, triangleCount } = disk;
  let energy = 0;
  for (let f = 0; f < triangleCount; f++) {
    const a = 2 * corners[3 * f];
    const b = 2 * corners[3 * f + 1];
    const c = 2 * corners[3 * f + 2];
    const gbx = gradients[6 * f + 2];
    const gby = gradients[6 * f + 3];
    const gcx = gradients[6 * f + 4];
    const gcy = gradients[6 * f + 5];
    // Gradients of the three hats sum to zero, so two edges are enough.
    const ux = flat[b] - flat[a];
    const uy = flat[b + 1] - flat[a + 1];
    const vx = flat[c] - flat[a];
    const vy = flat[c + 1] - flat[a + 1];
    const j00 = ux * gbx + vx * gcx;
    const j01 = ux * gby + vx * gcy;
    const j10 = uy * gbx + vy * gcx;
    const j11 = uy * gby + vy * gcy;
    const d = j00 * j11 - j01 * j10;
    if (!(d > 0)) return Infinity;
    energy += areas[f] * (j00 * j00 + j01 * j01 + j10 * j10 + j11 * j11) * (1 + 1 / (d * d));
  }
  return energy;
}

/**
 * Adds gradient (into `gradient`, 2 #V) and Hessian (into `values`, four per slot, unless undefined) of the energy.
 * The Hessian is exact; with `isProjected` each element's only possibly negative eigenvalue (the twist) is
 * lifted to zero, which makes the sum positive semidefinite. Returns the energy.
 * In J-space the second derivative is c1 Id + c2 (J⊗C + C⊗J) + c3 C⊗C + c4 ∂C/∂J with C the cofactor of J; the
 * twist is the polar rotation turned by 90°, with eigenvalue (f′1 + f′2)/(σ1 + σ2) = 2 − 2 (s² − 3d)/d³, s = σ1 + σ2.
 * Source: Smith, de Goes and Kim, "Analytic eigensystems for isotropic distortion energies", ACM TOG 38 (2019).
 */
export function addDirichlet(
  disk: PreparedDisk,
  flat: Float64Array,
  gradient: Float64Array,
  values: Float64Array | undefined,
  isProjected: boolean,
): number {
  const { corners, gradients, areas, triangleCount, slots } = disk;
  let energy = 0;
  for (let f = 0; f < triangleCount; f++) {
    const area = areas[f];
    const ia = 2 * corners[3 * f];
    const ib = 2 * corners[3 * f + 1];
    const ic = 2 * corners[3 * f + 2];
    const gax = gradients[6 * f];
    const gay = gradients[6 * f + 1];
    const gbx = gradients[6 * f + 2];
    const gby = gradients[6 * f + 3];
    const gcx = gradients[6 * f + 4];
    const gcy = gradients[6 * f + 5];
    // 1. J and its invariants.
    const ux = flat[ib] - flat[ia];
    const uy = flat[ib + 1] - flat[ia + 1];
    const vx = flat[ic] - flat[ia];
    const vy = flat[ic + 1] - flat[ia + 1];
    const j00 = ux * gbx + vx * gcx;
    const j01 = ux * gby + vx * gcy;
    const j10 = uy * gbx + vy * gcx;
    const j11 = uy * gby + vy * gcy;
    const d = j00 * j11 - j01 * j10;
    const square = j00 * j00 + j01 * j01 + j10 * j10 + j11 * j11;
    const i2 = 1 / (d * d);
    const i3 = i2 / d;
    energy += d > 0 ? area * square * (1 + i2) : Infinity;
    // 2. p = J g, q = C g per corner; the gradient is c1 p + (−2 I/d³) q.
    const pax = j00 * gax + j01 * gay;
    const pay = j10 * gax + j11 * gay;
    const pbx = j00 * gbx + j01 * gby;
    const pby = j10 * gbx + j11 * gby;
    const pcx = -pax - pbx;
    const pcy = -pay - pby;
    const qax = j11 * gax - j10 * gay;
    const qay = j00 * gay - j01 * gax;
    const qbx = j11 * gbx - j10 * gby;
    const qby = j00 * gby - j01 * gbx;
    const qcx = -qax - qbx;
    const qcy = -qay - qby;
    const c1 = 2 * area * (1 + i2);
    const c4 = -2 * area * square * i3;
    gradient[ia] += c1 * pax + c4 * qax;
    gradient[ia + 1] += c1 * pay + c4 * qay;
    gradient[ib] += c1 * pbx + c4 * qbx;
    gradient[ib + 1] += c1 * pby + c4 * qby;
    gradient[ic] += c1 * pcx + c4 * qcx;
    gradient[ic + 1] += c1 * pcy + c4 * qcy;
    if (!values) continue;
    // 3. Blocks. r = c2 p + c3/2 q makes c2 (p qᵀ + q pᵀ) + c3 q qᵀ = r qᵀ + q rᵀ.
    const c2 = -4 * area * i3;
    const halfC3 = 3 * area * square * i2 * i2;
    const rax = c2 * pax + halfC3 * qax;
    const ray = c2 * pay + halfC3 * qay;
    const rbx = c2 * pbx + halfC3 * qbx;
    const rby = c2 * pby + halfC3 * qby;
    const rcx = -rax - rbx;
    const rcy = -ray - rby;
    // The three corners' cross products are equal up to sign: g_b × g_a etc. = ∓1/(2A) in size.
    const cross = c4 * (gbx * gay - gby * gax);
    const daa = c1 * (gax * gax + gay * gay);
    const dbb = c1 * (gbx * gbx + gby * gby);
    const dcc = c1 * (gcx * gcx + gcy * gcy);
    const dba = c1 * (gax * gbx + gay * gby);
    const dca = c1 * (gax * gcx + gay * gcy);
    const dcb = c1 * (gbx * gcx + gby * gcy);
    // Lifting the twist adds t tᵀ with t = √(−twist) T g.
    let tax = 0;
    let tay = 0;
    let tbx = 0;
    let tby = 0;
    if (isProjected) {
      const s2 = square + 2 * d;
      const twist = 2 - 2 * (s2 - 3 * d) * i3;
      if (twist < 0) {
        const k = Math.sqrt((-twist * area) / (2 * s2));
        const cos = k * (j00 + j11);
        const sin = k * (j10 - j01);
        tax = -sin * gax - cos * gay;
        tay = cos * gax - sin * gay;
        tbx = -sin * gbx - cos * gby;
        tby = cos * gbx - sin * gby;
      }
    }
    const tcx = -tax - tbx;
    const tcy = -tay - tby;
    let k = 4 * slots[6 * f];
    let xy = rax * qay + qax * ray + tax * tay;
    values[k] += daa + 2 * rax * qax + tax * tax;
    values[k + 1] += xy;
    values[k + 2] += xy;
    values[k + 3] += daa + 2 * ray * qay + tay * tay;
    k = 4 * slots[6 * f + 1];
    xy = rbx * qby + qbx * rby + tbx * tby;
    values[k] += dbb + 2 * rbx * qbx + tbx * tbx;
    values[k + 1] += xy;
    values[k + 2] += xy;
    values[k + 3] += dbb + 2 * rby * qby + tby * tby;
    k = 4 * slots[6 * f + 2];
    xy = rcx * qcy + qcx * rcy + tcx * tcy;
    values[k] += dcc + 2 * rcx * qcx + tcx * tcx;
    values[k + 1] += xy;
    values[k + 2] += xy;
    values[k + 3] += dcc + 2 * rcy * qcy + tcy * tcy;
    k = 4 * slots[6 * f + 3];
    values[k] += dba + rbx * qax + qbx * rax + tbx * tax;
    values[k + 1] += cross + rbx * qay + qbx * ray + tbx * tay;
    values[k + 2] += -cross + rby * qax + qby * rax + tby * tax;
    values[k + 3] += dba + rby * qay + qby * ray + tby * tay;
    k = 4 * slots[6 * f + 4];
    values[k] += dca + rcx * qax + qcx * rax + tcx * tax;
    values[k + 1] += -cross + rcx * qay + qcx * ray + tcx * tay;
    values[k + 2] += cross + rcy * qax + qcy * rax + tcy * tax;
    values[k + 3] += dca + rcy * qay + qcy * ray + tcy * tay;
    k = 4 * slots[6 * f + 5];
    values[k] += dcb + rcx * qbx + qcx * rbx + tcx * tbx;
    values[k + 1] += cross + rcx * qby + qcx * rby + tcx * tby;
    values[k + 2] += -cross + rcy * qbx + qcy * rbx + tcy * tbx;
    values[k + 3] += dcb + rcy * qby + qcy * rby + tcy * tby;
  }
  return energy;
}

/**
 * Largest t ≤ 1 / 0.9 such that no triangle of flat + t · step reaches zero area, times 0.9 (so at most 1).
 * Each signed area is a quadratic in t; its first positive root counts. Never flips a triangle.
 */
export function limitStep(disk: PreparedDisk, flat: Float64Array, step: Float64Array): number {
  const { corners, triangleCount } = disk;
  let limit = 1 / 0.9;
  for (let f = 0; f < triangleCount; f++) {
    const a = 2 * corners[3 * f];
    const b = 2 * corners[3 * f + 1];
    const c = 2 * corners[3 * f + 2];
    const ux = flat[b] - flat[a];
    const uy = flat[b + 1] - flat[a + 1];
    const vx = flat[c] - flat[a];
    const vy = flat[c + 1] - flat[a + 1];
    const dux = step[b] - step[a];
    const duy = step[b + 1] - step[a + 1];
    const dvx = step[c] - step[a];
    const dvy = step[c + 1] - step[a + 1];
    let constant = ux * vy - uy * vx;
    let linear = ux * dvy - uy * dvx + dux * vy - duy * vx;
    let quadratic = dux * dvy - duy * dvx;
    if (constant < 0) {
      // Corners are sorted by index, so half of the triangles are seen clockwise.
      constant = -constant;
      linear = -linear;
      quadratic = -quadratic;
    }
    // Concave and positive at both ends: no root between.
    if (quadratic <= 0 && constant + limit * (linear + limit * quadratic) > 0) continue;
    const discriminant = linear * linear - 4 * quadratic * constant;
    if (discriminant < 0) continue;
    const root = Math.sqrt(discriminant);
    // Smaller positive root without cancellation: 2c / (−b + √) when b < 0.
    const t =
      linear < 0
        ? (2 * constant) / (-linear + root)
        : quadratic < 0
          ? (-linear - root) / (2 * quadratic)
          : Infinity;
    if (t > 0 && t < limit) limit = t;
  }
  return Math.min(1, 0.9 * limit);
}
