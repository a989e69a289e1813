import { describe, expect, it } from 'vitest';
import {
  capBoundaryLoops,
  eulerCharacteristic,
  findBoundaryLoops,
  findNeighbours,
  findTwins,
  type Mesh,
  measureAlongFlatPath,
  measureAlongPath,
  measureAngleDefects,
  measureArea,
  measureCornerCotangents,
  measureFlatPath,
  measurePath,
  measureSmallestAngles,
  measureTotalCurvature,
  measureTriangleNormals,
  measureVertexAreas,
  measureVertexNormals,
  measureVolume,
  mergeMeshes,
  nextHalfedge,
  previousHalfedge,
  validateMesh,
} from '../../src/core/mesh/index.ts';
import { buildCylinder, buildSphere, buildTorus } from './sample-meshes.ts';

const R = 90;
const H = 240;
const N = 48;
/** Inscribed regular N-gon: closed forms of elementary geometry. */
const CHORD = 2 * R * Math.sin(Math.PI / N);
const GON_AREA = 0.5 * N * R * R * Math.sin((2 * Math.PI) / N);

describe('lengths, areas and volumes against closed forms', () => {
  const cylinder = buildCylinder(R, H, N, 7);

  it('gives the side of a prism: perimeter times height', () => {
    expect(measureArea(cylinder)).toBeCloseTo(N * CHORD * H, 6);
    const parts = measureVertexAreas(cylinder).reduce((sum, area) => sum + area, 0);
    expect(parts).toBeCloseTo(N * CHORD * H, 6);
  });

  it('sums a path of many equal chords (root of summed squares would give √N times less)', () => {
    const row = Uint32Array.from({ length: N }, (_, i) => i);
    expect(measurePath(cylinder, row, true)).toBeCloseTo(N * CHORD, 9);
    expect(measurePath(cylinder, row)).toBeCloseTo((N - 1) * CHORD, 9);
    const along = measureAlongPath(cylinder, row);
    expect(along[0]).toBe(0);
    expect(along[10]).toBeCloseTo(10 * CHORD, 9);
  });

  it('gives the volume of the capped prism, wherever it stands', () => {
    const closed = capBoundaryLoops(cylinder, findBoundaryLoops(cylinder));
    expect(measureVolume(closed)).toBeCloseTo(GON_AREA * H, 4);
    const moved = { ...closed, positions: closed.positions.map((value) => value + 1e6) };
    expect(Math.abs(measureVolume(moved) / (GON_AREA * H) - 1)).toBeLessThan(1e-8);
  });

  it('tends to the sphere: area 4πR², volume 4/3 πR³, both from below', () => {
    const sphere = buildSphere(R, 5);
    const area = measureArea(sphere) / (4 * Math.PI * R * R);
    const volume = measureVolume(sphere) / ((4 / 3) * Math.PI * R ** 3);
    expect(area).toBeGreaterThan(0.998);
    expect(area).toBeLessThan(1);
    expect(volume).toBeGreaterThan(0.997);
    expect(volume).toBeLessThan(1);
  });

  it('tends to the torus by Pappus: area 4π²Rr, volume 2π²Rr²', () => {
    const torus = buildTorus(100, 30, 200, 100);
    expect(measureArea(torus) / (4 * Math.PI ** 2 * 100 * 30)).toBeCloseTo(1, 2);
    expect(measureVolume(torus) / (2 * Math.PI ** 2 * 100 * 30 ** 2)).toBeCloseTo(1, 2);
  });
});

describe('curvature and topology', () => {
  const cases: [string, Mesh, number][] = [
    ['sphere', buildSphere(R, 3), 2],
    ['torus', buildTorus(100, 30, 24, 16), 0],
    ['open cylinder', buildCylinder(R, H, N, 5), 0],
    [
      'one triangle',
      { positions: Float64Array.of(0, 0, 0, 3, 0, 0, 0, 4, 0), triangles: Uint32Array.of(0, 1, 2) },
      1,
    ],
    ['two spheres', mergeMeshes([buildSphere(1, 1), buildSphere(2, 2)]), 4],
  ];
  it.each(cases)('%s: Euler characteristic, and Gauss–Bonnet Σ defects = 2πχ', (_, mesh, chi) => {
    expect(eulerCharacteristic(mesh)).toBe(chi);
    expect(measureTotalCurvature(mesh)).toBeCloseTo(2 * Math.PI * chi, 8);
  });

  it('finds no Gaussian curvature on a cylinder and 4π/8 at the corners of an octahedron', () => {
    for (const defect of measureAngleDefects(buildCylinder(R, H, N, 5))) expect(defect).toBeCloseTo(0, 9);
    // Four equilateral triangles meet: 2π − 4π/3.
    for (const defect of measureAngleDefects(buildSphere(1, 0)))
      expect(defect).toBeCloseTo((2 * Math.PI) / 3, 12);
  });

  it('finds the border loops with the surface on their left', () => {
    const loops = findBoundaryLoops(buildCylinder(R, H, N, 5));
    expect(loops.map((loop) => loop.length)).toEqual([N, N]);
    // Seen from outside with z up, the surface lies left of the lower rim when that runs counter-clockwise from above.
    expect(Array.from(loops[0].slice(0, 3))).toEqual([0, 1, 2]);
    expect(loops[1][1]).toBe(5 * N + N - 1);
    expect(findBoundaryLoops(buildTorus(100, 30, 24, 16))).toEqual([]);
  });
});

describe('halfedges', () => {
  it('pairs twins running opposite ways', () => {
    const mesh = buildTorus(100, 30, 7, 5);
    const twins = findTwins(mesh.triangles, 35);
    for (let e = 0; e < twins.length; e++) {
      expect(twins[twins[e]]).toBe(e);
      expect(mesh.triangles[twins[e]]).toBe(mesh.triangles[nextHalfedge(e)]);
      expect(nextHalfedge(previousHalfedge(e))).toBe(e);
    }
  });

  it('lists six neighbours inside and four on the rims of a cylinder grid', () => {
    const mesh = buildCylinder(R, H, 8, 3);
    const { starts, neighbours } = findNeighbours(mesh.triangles, findTwins(mesh.triangles, 32), 32);
    for (let v = 0; v < 32; v++) {
      const around = new Set(neighbours.subarray(starts[v], starts[v + 1]));
      expect(around.size).toBe(starts[v + 1] - starts[v]);
      expect(around.size).toBe(v < 8 || v >= 24 ? 4 : 6);
    }
  });

  it('throws on an edge of three triangles', () => {
    expect(() => findTwins(Uint32Array.of(0, 1, 2, 1, 0, 3, 0, 1, 4), 5)).toThrow(/two triangles/);
  });
});

describe('normals and shapes', () => {
  it('points away from the middle of a sphere', () => {
    const sphere = buildSphere(R, 3);
    const normals = measureVertexNormals(sphere);
    for (let i = 0; i < normals.length; i += 3) {
      const along =
        (normals[i] * sphere.positions[i] +
          normals[i + 1] * sphere.positions[i + 1] +
          normals[i + 2] * sphere.positions[i + 2]) /
        R;
      expect(along).toBeGreaterThan(0.995);
    }
  });

  it('knows the 3-4-5 triangle', () => {
    const mesh = {
      positions: Float64Array.of(0, 0, 0, 3, 0, 0, 0, 4, 0),
      triangles: Uint32Array.of(0, 1, 2),
    };
    expect(measureArea(mesh)).toBe(6);
    expect(Array.from(measureTriangleNormals(mesh))).toEqual([0, 0, 1]);
    expect(measureSmallestAngles(mesh)[0]).toBeCloseTo(Math.atan(3 / 4), 12);
    const cotangents = measureCornerCotangents(mesh);
    expect(cotangents[0]).toBeCloseTo(0, 12);
    expect(cotangents[1]).toBeCloseTo(3 / 4, 12);
    expect(cotangents[2]).toBeCloseTo(4 / 3, 12);
  });
});

describe('capBoundaryLoops', () => {
  it('closes both ends whichever way the loops run, outward, and tells which triangles did', () => {
    const cylinder = buildCylinder(R, H, N, 5);
    const loops = findBoundaryLoops(cylinder);
    loops[1].reverse();
    const closed = capBoundaryLoops(cylinder, loops);
    expect(validateMesh(closed, { isClosed: true })).toEqual([]);
    expect(eulerCharacteristic(closed)).toBe(2);
    expect(closed.caps.map((cap) => cap.end - cap.start)).toEqual([N - 2, N - 2]);
    const normals = measureTriangleNormals(closed);
    for (let f = closed.caps[0].start; f < closed.caps[0].end; f++)
      expect(normals[3 * f + 2]).toBeCloseTo(-1, 9);
    for (let f = closed.caps[1].start; f < closed.caps[1].end; f++)
      expect(normals[3 * f + 2]).toBeCloseTo(1, 9);
  });

  it('leaves no slits along straight stretches of the outline', () => {
    // A box with points in the middle of its upper edges and lower edges.
    const ring = [0, 0, 50, 0, 100, 0, 100, 30, 100, 60, 50, 60, 0, 60, 0, 30];
    const n = ring.length / 2;
    const positions: number[] = [];
    for (const z of [0, 40]) for (let i = 0; i < n; i++) positions.push(ring[2 * i], ring[2 * i + 1], z);
    const triangles: number[] = [];
    for (let i = 0; i < n; i++) {
      const k = (i + 1) % n;
      triangles.push(i, k, n + k, i, n + k, n + i);
    }
    const box = { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
    const closed = capBoundaryLoops(box, findBoundaryLoops(box));
    expect(validateMesh(closed, { isClosed: true })).toEqual([]);
    expect(measureVolume(closed)).toBeCloseTo(100 * 60 * 40, 6);
  });

  it('refuses a loop that is not a whole border', () => {
    const cylinder = buildCylinder(R, H, 12, 2);
    expect(() => capBoundaryLoops(cylinder, [Uint32Array.of(0, 1, 2, 3)])).toThrow(/whole border/);
  });
});

describe('a path on a flat panel', () => {
  // Two sides of 3-4-5 triangles, the vertices out of order.
  const flat = Float64Array.of(9, 12, 100, 100, 0, 0, 3, 4);

  it('is as long as its edges', () => {
    expect(measureFlatPath(flat, [2, 3, 0])).toBe(15);
    expect(measureFlatPath(flat, [1])).toBe(0);
  });
  it('runs from vertex to vertex', () => {
    expect([...measureAlongFlatPath(flat, [2, 3, 0])]).toEqual([0, 5, 15]);
  });
});

describe('validateMesh', () => {
  const good = buildSphere(R, 1);
  const codesOf = (mesh: Mesh, isClosed = false): string[] =>
    validateMesh(mesh, { isClosed }).map((issue) => issue.code);

  it('finds nothing wrong with closed spheres and open cylinders', () => {
    expect(codesOf(good, true)).toEqual([]);
    expect(codesOf(buildCylinder(R, H, N, 2))).toEqual([]);
  });

  it('names each fault', () => {
    expect(codesOf(buildCylinder(R, H, N, 2), true)).toEqual(['mesh-open']);
    const turned = good.triangles.slice();
    [turned[0], turned[1]] = [turned[1], turned[0]];
    expect(codesOf({ ...good, triangles: turned }, true)).toContain('mesh-orientation');
    const doubled = Uint32Array.of(...good.triangles, ...good.triangles.slice(0, 3));
    expect(codesOf({ ...good, triangles: doubled }, true)).toContain('mesh-not-manifold');
    const stray = good.triangles.slice();
    stray[4] = 999;
    expect(codesOf({ ...good, triangles: stray })).toEqual(['mesh-index-range']);
    const holed = good.positions.slice();
    holed[5] = Number.NaN;
    expect(codesOf({ ...good, positions: holed })).toContain('mesh-not-a-number');
    const flat = good.positions.slice();
    flat.copyWithin(3 * good.triangles[0], 3 * good.triangles[1], 3 * good.triangles[1] + 3);
    expect(codesOf({ ...good, positions: flat })).toContain('mesh-degenerate');
    expect(codesOf({ ...good, positions: good.positions.slice(1) })).toEqual(['mesh-array-length']);
    const repeated = Uint32Array.of(...good.triangles, 0, 0, 1);
    expect(codesOf({ ...good, triangles: repeated })).toContain('mesh-repeated-corner');
  });

  it('finds two sheets that touch in one vertex', () => {
    const hourglass = {
      positions: Float64Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0, -1, 0, 0, 0, -1, 0),
      triangles: Uint32Array.of(0, 1, 2, 0, 3, 4),
    };
    expect(codesOf(hourglass)).toEqual(['mesh-pinched-vertex']);
  });
});
