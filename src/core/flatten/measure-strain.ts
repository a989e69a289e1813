import { assertInvariant } from '../base/index.ts';
import { weightedPercentiles } from '../math/index.ts';
import type { Mesh } from '../mesh/index.ts';
import type { StrainField, StrainSummary } from './types.ts';

/**
 * What the cloth feels going from the flat piece onto the body, per triangle and in sum.
 * `flat`: #V × 2 mm. Principal stretches are the singular values of the flat → body map; strain = stretch − 1.
 * O(#F). A flipped or collapsed triangle counts in `flipped` and not in the rest.
 */
export function measureStrain(mesh: Mesh, flat: Float64Array): StrainField {
  const { positions: p, triangles } = mesh;
  assertInvariant(
    flat.length * 3 === p.length * 2,
    'flatten',
    'two flat coordinates per vertex',
    flat.length,
  );
  const count = triangles.length / 3;
  const major = new Float64Array(count);
  const minor = new Float64Array(count);
  const direction = new Float64Array(count);
  const areas = new Float64Array(count);
  let flipped = 0;
  let areaFlat = 0;
  for (let f = 0; f < count; f++) {
    const a = triangles[3 * f];
    const b = triangles[3 * f + 1];
    const c = triangles[3 * f + 2];
    const ux = flat[2 * b] - flat[2 * a];
    const uy = flat[2 * b + 1] - flat[2 * a + 1];
    const vx = flat[2 * c] - flat[2 * a];
    const vy = flat[2 * c + 1] - flat[2 * a + 1];
    const double = ux * vy - uy * vx;
    // Body edges and their metric.
    const x1 = p[3 * b] - p[3 * a];
    const y1 = p[3 * b + 1] - p[3 * a + 1];
    const z1 = p[3 * b + 2] - p[3 * a + 2];
    const x2 = p[3 * c] - p[3 * a];
    const y2 = p[3 * c + 1] - p[3 * a + 1];
    const z2 = p[3 * c + 2] - p[3 * a + 2];
    const e = x1 * x1 + y1 * y1 + z1 * z1;
    const m = x1 * x2 + y1 * y2 + z1 * z2;
    const g = x2 * x2 + y2 * y2 + z2 * z2;
    const nx = y1 * z2 - z1 * y2;
    const ny = z1 * x2 - x1 * z2;
    const nz = x1 * y2 - y1 * x2;
    areas[f] = 0.5 * Math.sqrt(nx * nx + ny * ny + nz * nz);
    areaFlat += double / 2;
    if (!(double > 0)) {
      flipped++;
      major[f] = Number.NaN;
      minor[f] = Number.NaN;
      direction[f] = Number.NaN;
      continue;
    }
    // JᵀJ in flat coordinates: J d maps flat edges to body edges.
    const i00 = vy / double;
    const i01 = -vx / double;
    const i10 = -uy / double;
    const i11 = ux / double;
    const c00 = e * i00 * i00 + 2 * m * i00 * i10 + g * i10 * i10;
    const c01 = e * i00 * i01 + m * (i00 * i11 + i01 * i10) + g * i10 * i11;
    const c11 = e * i01 * i01 + 2 * m * i01 * i11 + g * i11 * i11;
    const mean = 0.5 * (c00 + c11);
    const deviation = Math.sqrt(0.25 * (c00 - c11) ** 2 + c01 * c01);
    const determinant = (2 * areas[f]) / double;
    const largest = Math.sqrt(mean + deviation);
    major[f] = largest - 1;
    minor[f] = determinant / largest - 1; // not √(mean − deviation): that cancels
    direction[f] = 0.5 * Math.atan2(2 * c01, c00 - c11);
  }
  return { major, minor, direction, summary: summarise(major, minor, areas, flipped, areaFlat) };
}

function summarise(
  major: Float64Array,
  minor: Float64Array,
  areas: Float64Array,
  flipped: number,
  areaFlat: number,
): StrainSummary {
  let area3d = 0;
  let counted = 0;
  let squares = 0;
  let min = Infinity;
  let max = -Infinity;
  for (let f = 0; f < areas.length; f++) {
    area3d += areas[f];
    if (Number.isNaN(major[f])) continue;
    counted += areas[f];
    squares += areas[f] * (major[f] * major[f] + minor[f] * minor[f]);
    min = Math.min(min, minor[f]);
    max = Math.max(max, major[f]);
  }
  const sizes = Float64Array.from({ length: 2 * areas.length }, (_, i) =>
    Math.abs(i < areas.length ? major[i] : minor[i - areas.length]),
  );
  const weights = new Float64Array(sizes.length);
  weights.set(areas);
  weights.set(areas, areas.length);
  const [p95, p99] = weightedPercentiles(sizes, weights, [0.95, 0.99]);
  return { rms: Math.sqrt(squares / (2 * counted)), p95, p99, min, max, flipped, area3d, areaFlat };
}
