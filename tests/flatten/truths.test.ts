/** Free flattening against closed forms, an ordinary differential equation, and theorems. Meshes in cm × 10 = mm. */
import { describe, expect, it } from 'vitest';
import { flattenFree, type StrainField } from '../../src/core/flatten/index.ts';
import type { Mesh } from '../../src/core/mesh/index.ts';
import { inEnglish } from '../in-english.ts';
import {
  coneChart,
  cylinderChart,
  makeCap,
  makeGore,
  makeGrid,
  makePanels,
  scaleMesh,
} from './cases/disk-meshes.ts';

const degrees = Math.PI / 180;

function flatten(mesh: Mesh, tolerance = 1e-10) {
  const result = flattenFree(mesh, { tolerance });
  if (!result.ok)
    throw new Error(
      result.issues
        .map((issue) => issue.message)
        .map(inEnglish)
        .join(),
    );
  return result.value;
}

function distance(flat: Float64Array, a: number, b: number): number {
  return Math.hypot(flat[2 * b] - flat[2 * a], flat[2 * b + 1] - flat[2 * a + 1]);
}

/** Area-weighted means of body → flat: energy σ1² + σ2² + σ1⁻² + σ2⁻² and √mean((σ1 − 1)² + (σ2 − 1)²). */
function meansOfStretch(mesh: Mesh, strain: StrainField): { energy: number; rms: number } {
  const p = mesh.positions;
  let [area, energy, square] = [0, 0, 0];
  for (let f = 0; f < strain.major.length; f++) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * mesh.triangles[3 * f + k]);
    const u = [0, 1, 2].map((k) => p[b + k] - p[a + k]);
    const v = [0, 1, 2].map((k) => p[c + k] - p[a + k]);
    const weight =
      Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]) / 2;
    const [s1, s2] = [1 / (1 + strain.minor[f]), 1 / (1 + strain.major[f])];
    area += weight;
    energy += weight * (s1 * s1 + s2 * s2 + 1 / (s1 * s1) + 1 / (s2 * s2));
    square += weight * ((s1 - 1) ** 2 + (s2 - 1) ** 2);
  }
  return { energy: energy / area, rms: Math.sqrt(square / area) };
}

/** Limit of a quantity with error ∝ 1/n from n and 4n triangles (Richardson). */
function refine(coarse: number, fine: number): number {
  return (4 * fine - coarse) / 3;
}

describe('developable panels unroll exactly', () => {
  it('cylinder: width of the polygon, n · 2R sin(θ/2n), and height', () => {
    const [columns, rows] = [38, 66];
    const { positions, strain } = flatten(makeGrid(columns, rows, cylinderChart(150, Math.PI / 2, 400)));
    // 235.60267399411902 mm for R = 150, 90°, 38 columns.
    const width = columns * 300 * Math.sin(Math.PI / 4 / columns);
    expect(width).toBeCloseTo(235.60267399411902, 10);
    for (const j of [0, 20, rows]) {
      const first = j * (columns + 1);
      expect(Math.abs(distance(positions, first, first + columns) / width - 1)).toBeLessThan(1e-11);
    }
    expect(Math.abs(distance(positions, 5, 5 + rows * (columns + 1)) / 400 - 1)).toBeLessThan(1e-11);
    expect(Math.max(Math.abs(strain.summary.min), Math.abs(strain.summary.max))).toBeLessThan(1e-11);
    // Up on the body is +y, right side out: the column stands upright, columns run to the right.
    expect(positions[2 * rows * (columns + 1)] - positions[0]).toBeCloseTo(0, 8);
    expect(positions[2 * columns] - positions[0]).toBeCloseTo(width, 8);
  });

  it('cylinder of 200°, which no view from in front shows whole: the same width', () => {
    const [columns, rows] = [60, 40];
    const angle = (200 * Math.PI) / 180;
    const { positions, strain } = flatten(makeGrid(columns, rows, cylinderChart(150, angle, 350)));
    const width = columns * 300 * Math.sin(angle / 2 / columns);
    expect(Math.abs(distance(positions, 0, columns) / width - 1)).toBeLessThan(1e-10);
    expect(Math.max(Math.abs(strain.summary.min), Math.abs(strain.summary.max))).toBeLessThan(1e-10);
  });

  it('cone: sector of the polygon, chord across the top 2ρ sin(nφ/2), φ = 2 asin(s sin(θ/2n))', () => {
    const n = 50;
    const { positions, strain } = flatten(makeGrid(n, n, coneChart(100, 160, 200)));
    const slant = Math.hypot(60, 200);
    const s = 60 / slant;
    const facet = 2 * Math.asin(s * Math.sin(Math.PI / 4 / n));
    const chord = 2 * (160 / s) * Math.sin((n * facet) / 2);
    expect(chord).toBeCloseTo(249.1901378571777, 9);
    const top = n * (n + 1);
    expect(Math.abs(distance(positions, top, top + n) / chord - 1)).toBeLessThan(1e-11);
    expect(Math.abs(distance(positions, 0, top) / slant - 1)).toBeLessThan(1e-11);
    expect(Math.max(Math.abs(strain.summary.min), Math.abs(strain.summary.max))).toBeLessThan(1e-11);
  });
});

describe('spherical caps', () => {
  // Radially symmetric optimum of the symmetric Dirichlet energy on a cap of angular radius α: boundary value problem
  // d/dr (sin r W′(ρ′)) = W′(ρ / sin r), ρ(0) = 0, ρ′(α) = 1, solved to 1e-12 by shooting (scipy DOP853).
  const truths = [
    { alpha: 20, energy: 4.000310358574692, radius: 0.3473030216016073, rms: 0.008838773155349202 },
    { alpha: 40, energy: 4.005039489949099, radius: 0.6842456155679143, rms: 0.03592619482041419 },
  ];
  for (const { alpha, energy, radius, rms } of truths) {
    it(`${alpha}°: energy, flat radius and rms tend to the solution of the differential equation`, () => {
      const [coarse, fine] = [2000, 8000].map((n) => {
        const mesh = makeCap(n, 150, alpha * degrees);
        const { positions, strain } = flatten(mesh);
        let outermost = 0;
        for (let v = 1; v < positions.length / 2; v++) {
          outermost = Math.max(outermost, distance(positions, 0, v));
        }
        return { ...meansOfStretch(mesh, strain), radius: outermost / 150 };
      });
      expect(Math.abs(refine(coarse.energy, fine.energy) - energy)).toBeLessThan(2e-6);
      expect(Math.abs(refine(coarse.radius, fine.radius) - radius)).toBeLessThan(3e-6);
      expect(Math.abs(refine(coarse.rms, fine.rms) / rms - 1)).toBeLessThan(2e-3);
      // Near isometry the energy is 4 + 4 rms² to leading order.
      expect(Math.abs((fine.energy - 4) / (4 * fine.rms ** 2) - 1)).toBeLessThan(0.05);
    });
  }

  // Milnor, A problem in cartography, Am. Math. Monthly 76 (1969): largest over smallest stretch ≥ α / sin α.
  it("never beats Milnor's bound", () => {
    for (const alpha of [20 * degrees, 40 * degrees]) {
      const { max, min } = flatten(makeCap(2000, 150, alpha)).strain.summary;
      expect((1 + max) / (1 + min)).toBeGreaterThan(alpha / Math.sin(alpha));
    }
  });

  it('cloth shrinks round the rim and stretches in the middle of a dome', () => {
    const { positions, strain } = flatten(makeCap(500, 150, 40 * degrees));
    // Optimal flat rim is longer than the rim on the body: (σθ − 1 = +6.4 %), so from flat to body it shrinks.
    expect(strain.summary.min).toBeLessThan(-0.055);
    // The middle of the flat is smaller than the body's (σ = 0.9707 in the limit): it stretches both ways.
    expect(strain.major[0]).toBeCloseTo(1 / 0.9706556661667977 - 1, 2);
    expect(strain.minor[0]).toBeGreaterThan(0);
    // The rim's strong direction, outward, is radial in the flat: major there is the unstrained radius.
    const f = strain.major.length - 1;
    const v = positions.length / 2 - 1;
    const radial = Math.atan2(positions[2 * v + 1], positions[2 * v]);
    expect(Math.abs(Math.sin(strain.direction[f] - radial))).toBeLessThan(0.2);
  });
});

describe('gores of a sphere', () => {
  // Slender gore of width λ = 2k: rms = k² √(8/675), derived by expanding in k; numerical optima lie 0.5–1.3 % below.
  for (const [width, tolerance] of [
    [30, 0.01],
    [45, 0.02],
  ]) {
    it(`${width}°: rms tends to the slender optimum`, () => {
      const [coarse, fine] = [2000, 8000].map((n) => {
        const mesh = makeGore(n, 150, width * degrees);
        return meansOfStretch(mesh, flatten(mesh).strain);
      });
      const k = (width / 2) * degrees;
      const slender = k * k * Math.sqrt(8 / 675);
      expect(Math.abs(refine(coarse.rms, fine.rms) / slender - 1)).toBeLessThan(tolerance);
    });
  }
});

describe('hard panels', () => {
  it('all settle without a flipped triangle', () => {
    for (const [name, mesh] of Object.entries(makePanels(1500))) {
      const { strain } = flatten(scaleMesh(mesh, 10));
      expect(strain.summary.flipped, name).toBe(0);
      expect(strain.summary.min, name).toBeGreaterThan(-0.25);
    }
  });

  // Independent optima of the same energy at 5000 triangles (other solvers, C++): 9.53 % bump, 2.19 % half bump,
  // 3.10 % saddle, as √mean((σ1 − 1)² + (σ2 − 1)²) of body → flat.
  it('agrees with the optimum other solvers find', () => {
    const panels = makePanels(5000);
    for (const [name, rms] of [
      ['bump', 0.0953],
      ['bumpHalf', 0.0219],
      ['saddle', 0.031],
    ] as const) {
      const mesh = scaleMesh(panels[name], 10);
      expect(Math.abs(meansOfStretch(mesh, flatten(mesh).strain).rms / rms - 1), name).toBeLessThan(0.02);
    }
  });
});
