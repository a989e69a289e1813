import { describe, expect, it } from 'vitest';
import { type ClothStiffness, TAUT, WRINKLED } from '../../src/core/statics/index.ts';
import {
  CLOTH,
  makeDiscs,
  makeSections,
  makeSphere,
  makeSquare,
  makeTorus,
  makeTube,
  PRESSURE,
  restHere,
} from './sample-shells.ts';
import { solved } from './solved.ts';

const alike = (stiffness: number): ClothStiffness => ({
  warp: stiffness,
  weft: stiffness,
  shear: stiffness / 2.6,
  poisson: 0.3,
});
const share = (found: number, expected: number): number => Math.abs(found / expected - 1);

/** Points of a triangle and its middle. */
function middleOf(positions: Float64Array, triangles: Uint32Array, t: number): number[] {
  return [0, 1, 2].map((k) => {
    let sum = 0;
    for (let c = 0; c < 3; c++) sum += positions[3 * triangles[3 * t + c] + k];
    return sum / 3;
  });
}

function areaOf(positions: Float64Array, triangles: Uint32Array, t: number): number {
  const [a, b, c] = [0, 1, 2].map((k) => 3 * triangles[3 * t + k]);
  const u = [0, 1, 2].map((k) => positions[b + k] - positions[a + k]);
  const v = [0, 1, 2].map((k) => positions[c + k] - positions[a + k]);
  return Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]) / 2;
}

describe('a filled tube', () => {
  // Boiler formula: hoop p r, axial p r / 2 for the stretched radius r. With Green strain e = (λ² − 1) / 2 and no Poisson's ratio, per
  // width as it hangs: E e_hoop λ_hoop / λ_axial = p r, E e_axial λ_axial / λ_hoop = p r / 2, r = R λ_hoop.
  const radius = 100;
  let [hoop, axial] = [1, 1];
  for (let k = 0; k < 50; k++) {
    const load = (PRESSURE * radius) / CLOTH.warp;
    hoop = Math.sqrt(1 + 2 * load * axial);
    axial = Math.sqrt(1 + (load * hoop * hoop) / axial);
  }

  // Chords lie within the circle by (π/N)² / 2: 0.31 % at 40, 0.08 % at 80; rims are held round by boards.
  it.each([
    [40, 60],
    [80, 120],
  ])('grows and pulls as its formula says, %i around', (around, along) => {
    const tube = makeTube(radius, 600, around, along);
    const { positions, tensions, states, directions } = solved(tube);
    const chord = (Math.PI / around) ** 2 / 2;
    const point = (i: number, j: number): number[] => [
      ...positions.subarray(3 * (i + j * around), 3 * (i + j * around) + 3),
    ];
    const [x, y] = point(3, along / 2);
    expect(share(Math.hypot(x, y), radius * hoop)).toBeLessThan(chord / 2);
    // Growth itself, p R / E to the first order: 0.75 % and 0.375 %.
    expect(share(Math.hypot(x, y) / radius - 1, (PRESSURE * radius) / CLOTH.weft)).toBeLessThan(0.02);
    const stretched = point(0, along / 2 + along / 6)[2] - point(0, along / 2 - along / 6)[2];
    expect(share(stretched / 200, axial)).toBeLessThan(chord / 50);
    const middle = 2 * around * (along / 2);
    expect(share(tensions[2 * middle], PRESSURE * radius * hoop)).toBeLessThan(chord);
    expect(share(tensions[2 * middle + 1], (PRESSURE * radius * hoop) / 2)).toBeLessThan(chord);
    expect(Math.abs(directions[middle])).toBeCloseTo(Math.PI / 2, 2);
    expect(states[middle]).toBe(TAUT);
  });

  it('follows the pressure of its zones', () => {
    // Two zones of a long tube, both ends held: hoop p r in each, a board's width from where they meet.
    const tube = makeTube(radius, 800, 36, 64, CLOTH, { kind: 'fixed' });
    const { triangles } = tube.membrane;
    const isUpper = (t: number): boolean => middleOf(tube.start, triangles, t)[2] > 400;
    const faces = (triangles.length + tube.closing!.length) / 3;
    const pressure = Float64Array.from({ length: faces }, (_, t) =>
      t < triangles.length / 3 && isUpper(t) ? 0.002 : 0.004,
    );
    const { positions, tensions } = solved({ ...tube, pressure });
    for (const [z, p] of [
      [200, 0.004],
      [600, 0.002],
    ]) {
      const t =
        triangles.findIndex((_, k) => k % 3 === 0 && Math.abs(tube.start[3 * triangles[k] + 2] - z) < 7) / 3;
      const at = 3 * triangles[3 * t];
      const r = Math.hypot(positions[at], positions[at + 1]);
      expect(share(tensions[2 * t], p * r)).toBeLessThan(0.01);
    }
  });

  it('shares its axial pull with strips by stiffness', () => {
    // p π r² on the upper board is carried by cloth and 12 strips, stretched alike: e = p π r² / (2 π R E + 12 EA), small strains.
    const [around, along, ea] = [36, 40, 300];
    const tube = makeTube(radius, 600, around, along);
    const ends: number[] = [];
    const lengths: number[] = [];
    // Rows are staggered: a strip goes up straight over every other row.
    for (let i = 0; i < around; i += 3) {
      for (let j = 0; j < along; j += 2) {
        ends.push(i + j * around, i + (j + 2) * around);
        lengths.push(30);
      }
    }
    const strips = {
      ends: Uint32Array.from(ends),
      lengths: Float64Array.from(lengths),
      stiffness: Float64Array.from(lengths, (length) => ea / length),
    };
    const { stripForces } = solved({ ...tube, strips });
    const e = (PRESSURE * Math.PI * radius ** 2) / (2 * Math.PI * radius * CLOTH.warp + 12 * ea);
    // Second order in a strain of 0.3 %, and a radius 0.7 % larger.
    expect(share(stripForces[along / 4], ea * e)).toBeLessThan(0.025);
  });

  it('pushes nobody: forces on both its boards vanish', () => {
    // A closed vessel carries its own load.
    const tube = makeTube(radius, 300, 30, 20, CLOTH, { kind: 'free' });
    for (const load of solved(tube).bodyLoads) expect(Math.abs(load)).toBeLessThan(1e-3);
  });
});

describe('Laplace’s law', () => {
  it.each([8, 16])('holds on a sphere of 8 · %i² triangles', (parts) => {
    // Pull p r / 2 all round; plane stress: p r / 2 = E / (1 − ν) · (λ² − 1) / 2, r = R λ.
    const cloth = alike(40);
    const radius = 120;
    let stretch = 1;
    for (let k = 0; k < 50; k++) stretch = Math.sqrt(1 + (0.7 * PRESSURE * radius * stretch) / 40);
    const sphere = makeSphere(radius, parts);
    const { positions, tensions } = solved(restHere(sphere, cloth));
    // Faces of edges e lie within the sphere by e² / 6 r² at the most; the longest, amid an octahedron's face, is √6 r / parts.
    const flat = 1 / parts ** 2;
    let mean = 0;
    for (let p = 0; p < positions.length; p += 3) mean += Math.hypot(...positions.subarray(p, p + 3));
    mean /= positions.length / 3;
    // It floats: radii are about the middle it started at, which balance keeps.
    expect(share(mean, radius * stretch)).toBeLessThan(flat / 50);
    let [pull, all] = [0, 0];
    for (let t = 0; t < tensions.length / 2; t++) {
      const area = areaOf(positions, sphere.triangles, t);
      pull += area * (tensions[2 * t] + tensions[2 * t + 1]);
      all += area;
    }
    expect(share(pull / (2 * all), (PRESSURE * radius * stretch) / 2)).toBeLessThan(flat);
  });

  it('holds on the caps of a torus', () => {
    // Along the tube's own circle p a (r + b) / 2 r at the distance r from the axis, round the axis p a / 2: Timoshenko and
    // Woinowsky-Krieger, Theory of Plates and Shells (1959), 105. Of stiff cloth, so that it keeps its shape.
    const [large, small] = [200, 80];
    const torus = makeTorus(large, small, 48, 96);
    const { positions, tensions, states } = solved(restHere(torus, alike(4000)), { tolerance: 1e-4 });
    const inRing = { outer: [0, 0, 0], inner: [0, 0, 0] };
    for (let t = 0; t < states.length; t++) {
      const [x, y, z] = middleOf(positions, torus.triangles, t);
      const r = Math.hypot(x, y);
      // The crown, where the linear law has a jump in shape, is left out.
      if (Math.abs(z) > 0.6 * small) continue;
      const ring = inRing[r > large ? 'outer' : 'inner'];
      const expected = (PRESSURE * small * (r + large)) / (2 * r);
      ring[0] += (tensions[2 * t] + tensions[2 * t + 1]) / (expected + (PRESSURE * small) / 2);
      ring[1]++;
    }
    for (const [sum, count] of Object.values(inRing)) {
      expect(count).toBeGreaterThan(1000);
      expect(Math.abs(sum / count - 1)).toBeLessThan(0.01);
    }
  });
});

describe('sewn discs', () => {
  // Paulsen, "What is the shape of a Mylar balloon?", Am. Math. Monthly 101 (1994): cloth that does not stretch takes 0.76276 of the
  // discs' radius and 0.91389 of it in thickness. Here it stretches by p a / E = 0.015 %, and nothing is kept of it where pushed.
  it.each([
    [24, 16],
    [48, 24],
  ])('take the shape of a balloon, %i × %i, within 0.002 of the radius', (around, rings) => {
    const radius = 100;
    const { problem, rim, poles } = makeDiscs(radius, around, rings, alike(2000));
    const { positions, states } = solved(problem, { pushed: 0 });
    const [top, bottom] = poles.map((p) => positions[3 * p + 2]);
    let mean = 0;
    for (const p of rim) mean += Math.hypot(positions[3 * p], positions[3 * p + 1]) / rim.length;
    expect(Math.abs(mean / radius - 0.76276)).toBeLessThan(0.002);
    expect(Math.abs((top - bottom) / radius - 0.91389)).toBeLessThan(0.002);
    // Wrinkled nearly everywhere.
    expect(states.filter((state) => state === WRINKLED).length).toBeGreaterThan(0.7 * states.length);
  });
});

describe('a webbed section', () => {
  // Two arcs of radius r and half angle α > π/2 over a tie: pull p r in the cloth, 2 p r |cos α| in the tie, its length 2 r sin α. From balance
  // of one arc (p · tie = 2 p r sin α) and of the knot.
  it.each([
    [110, 1.9],
    [90, 2.3],
  ])('is two arcs of %f mm, %f rad to each side', (radius, half) => {
    const { problem, arcs, tie } = makeSections(radius, half, 60, CLOTH.weft);
    const { positions, strandForces } = solved(problem);
    // Polygons for arcs: sides of angle a pull p r cos(a / 2) at most a²/8 less.
    const side = (2 * half) / 60;
    for (const { point, x, y } of arcs) {
      expect(Math.abs(positions[3 * point] - x)).toBeLessThan(0.01);
      expect(Math.abs(positions[3 * point + 1] - y)).toBeLessThan(0.01);
    }
    for (const force of strandForces) expect(share(force, tie.force)).toBeLessThan(side ** 2 / 4);
  });
});

describe('a sheared square', () => {
  // Simple shear γ of a square held at its border: Green strain (0, γ²/2, γ/2). Of cloth alike in all directions it wrinkles; pull
  // E e1 along the larger principal strain e1 (Pipkin, 1986; Reissner's tension field, 1938), as it hangs E e1 (1 + 2 e1), as shear keeps areas.
  it.each([0.02, 0.1, 0.3])('pulls along its wrinkles, by %f', (shear) => {
    const problem = makeSquare(100, 10, shear, alike(40));
    const { positions, tensions, directions, states } = solved(problem, { pushed: 1e-5, tolerance: 1e-9 });
    const [e22, e12] = [shear ** 2 / 2, shear / 2];
    const e1 = e22 / 2 + Math.hypot(e22 / 2, e12);
    const direction = Math.atan2(2 * e12, -e22) / 2;
    for (let t = 0; t < states.length; t++) {
      expect(states[t]).toBe(WRINKLED);
      expect(share(tensions[2 * t], 40 * e1 * (1 + 2 * e1))).toBeLessThan(1e-4);
      expect(tensions[2 * t + 1]).toBe(0);
      expect(Math.abs(directions[t] - direction)).toBeLessThan(1e-4);
    }
    for (let p = 0; p < positions.length; p += 3) expect(Math.abs(positions[p + 2])).toBeLessThan(1e-9);
  });
});

describe('virtual work', () => {
  it('of swelling by a share: 3 p V is what cloth and strands take up', () => {
    // Every length grows by one share: pressure does p · 3 V, cloth (T1 + T2) · area, a strand force · length.
    const sphere = makeSphere(120, 12);
    const count = sphere.positions.length / 3;
    // Three ties through the middle, from each corner of the octahedron to the one across.
    const corners = Array.from({ length: count }, (_, p) => p).filter(
      (p) => sphere.positions.subarray(3 * p, 3 * p + 3).filter((x) => Math.abs(x) > 1e-9).length === 1,
    );
    expect(corners.length).toBe(6);
    const ends = [0, 1, 2].flatMap((k) => corners.filter((p) => Math.abs(sphere.positions[3 * p + k]) > 1));
    const strands = {
      ends: Uint32Array.from(ends),
      lengths: Float64Array.of(225, 230, 235),
      stiffness: Float64Array.of(2, 2, 2),
    };
    const problem = { ...restHere(sphere, alike(40)), strands };
    const { positions, tensions, strandForces } = solved(problem, { pushed: 0, tolerance: 1e-9 });
    let taken = 0;
    let volume = 0;
    for (let t = 0; t < sphere.triangles.length / 3; t++) {
      const [a, b, c] = [0, 1, 2].map((k) => {
        const p = 3 * sphere.triangles[3 * t + k];
        return [...positions.subarray(p, p + 3)];
      });
      const u = b.map((x, k) => x - a[k]);
      const v = c.map((x, k) => x - a[k]);
      const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
      taken += ((tensions[2 * t] + tensions[2 * t + 1]) * Math.hypot(...n)) / 2;
      volume += (a[0] * n[0] + a[1] * n[1] + a[2] * n[2]) / 6;
    }
    for (let k = 0; k < 3; k++) {
      const [p, q] = [3 * ends[2 * k], 3 * ends[2 * k + 1]];
      const length = Math.hypot(...[0, 1, 2].map((i) => positions[p + i] - positions[q + i]));
      expect(strandForces[k]).toBeCloseTo(2 * (length - strands.lengths[k]), 9);
      expect(strandForces[k]).toBeGreaterThan(1);
      taken += strandForces[k] * length;
    }
    expect(share(taken, 3 * PRESSURE * volume)).toBeLessThan(1e-8);
  });
});
