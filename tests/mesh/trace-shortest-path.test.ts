import { describe, expect, it } from 'vitest';
import {
  locateOnMesh,
  type Mesh,
  positionOnMesh,
  type SurfacePoint,
  traceShortestPath,
} from '../../src/core/mesh/index.ts';
import { buildCylinder, buildSphere, buildTorus } from './sample-meshes.ts';

const at = (mesh: Mesh, ...point: number[]): SurfacePoint => locateOnMesh(mesh, point)!;

function lengthBetween(mesh: Mesh, from: SurfacePoint, to: SurfacePoint): number {
  const path = traceShortestPath(mesh, from, to)!;
  let sum = 0;
  for (let i = 3; i < path.points.length; i += 3) {
    sum += Math.hypot(...[0, 1, 2].map((k) => path.points[i + k] - path.points[i + k - 3]));
  }
  // What is drawn is as long as what is told.
  expect(sum).toBeCloseTo(path.length, 8);
  return path.length;
}

describe('the shortest way over a mesh', () => {
  it('is a straight line on an unrolled prism, to rounding', () => {
    // Closed form: a prism of n chords unrolls into a rectangle; c = 2R sin(π/n).
    const [R, H, n] = [90, 240, 48];
    const mesh = buildCylinder(R, H, n, 17);
    const chord = 2 * R * Math.sin(Math.PI / n);
    for (const [k, z1, z2] of [
      [1, 60, 200],
      [7, 20, 220],
      [19, 130, 30],
      [24, 10, 230],
      [40, 100, 104],
    ]) {
      const angle = (2 * Math.PI * k) / n;
      const from = at(mesh, R, 0, z1);
      const to = at(mesh, R * Math.cos(angle), R * Math.sin(angle), z2);
      const columns = Math.min(k, n - k);
      expect(lengthBetween(mesh, from, to)).toBeCloseTo(Math.hypot(columns * chord, z2 - z1), 8);
    }
  });

  it('is √5 between opposite corners of a cube of 1', () => {
    // Classical: unfold two faces into a rectangle of 1 × 2.
    const mesh = buildCube(8);
    const length = lengthBetween(mesh, at(mesh, 0, 0, 0), at(mesh, 1, 1, 1));
    expect(length).toBeCloseTo(Math.sqrt(5), 9);
  });

  it('follows the great circle on a sphere, the closer the finer the mesh', () => {
    // Great-circle distance R·θ; an inscribed mesh of edge h is short by O(h²).
    const R = 100;
    const errors = [3, 4, 5].map((depth) => {
      const mesh = buildSphere(R, depth);
      let worst = 0;
      for (const theta of [0.3, 1.1, 2.0, 2.9]) {
        for (const turn of [0.1, 0.7, 1.3]) {
          const direction = [
            Math.sin(theta) * Math.cos(turn),
            Math.sin(theta) * Math.sin(turn),
            Math.cos(theta),
          ].map((x) => R * x);
          const length = lengthBetween(mesh, at(mesh, 0, 0, R), at(mesh, ...direction));
          worst = Math.max(worst, Math.abs(length / (R * theta) - 1));
        }
      }
      return worst;
    });
    expect(errors[0]).toBeLessThan(0.01);
    expect(errors[2]).toBeLessThan(0.001);
    expect(errors[1]).toBeLessThan(errors[0] / 2.5);
    expect(errors[2]).toBeLessThan(errors[1] / 2.5);
  });

  it('is as long back as forth, and no shorter than the straight distance', () => {
    const mesh = buildTorus(120, 40, 60, 30);
    for (let seed = 1; seed < 12; seed++) {
      const pick = (k: number): SurfacePoint => ({
        triangle: (seed * 7919 * k) % (mesh.triangles.length / 3),
        weights: [0.2, 0.5, 0.3],
      });
      const [from, to] = [pick(1), pick(3)];
      const length = lengthBetween(mesh, from, to);
      const [p, q] = [positionOnMesh(mesh, from), positionOnMesh(mesh, to)];
      expect(length).toBeGreaterThanOrEqual(Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]) - 1e-9);
      // Ways of nearly the same length on both sides of the hole may be taken one for the other.
      expect(Math.abs(lengthBetween(mesh, to, from) - length)).toBeLessThan(0.01 * length);
    }
  });

  it('says when two points do not hang together', () => {
    const one = buildSphere(10, 1);
    const far = one.positions.map((x, i) => (i % 3 === 0 ? x + 100 : x));
    const count = one.positions.length / 3;
    const mesh: Mesh = {
      positions: Float64Array.from([...one.positions, ...far]),
      triangles: Uint32Array.from([...one.triangles, ...one.triangles.map((v) => v + count)]),
    };
    expect(traceShortestPath(mesh, at(mesh, 10, 0, 0), at(mesh, 90, 0, 0))).toBeNull();
  });
});

/** Unit cube, each face n × n squares; corners shared. */
function buildCube(n: number): Mesh {
  const ids = new Map<string, number>();
  const positions: number[] = [];
  const triangles: number[] = [];
  const vertex = (x: number, y: number, z: number): number => {
    const key = `${x} ${y} ${z}`;
    const known = ids.get(key);
    if (known !== undefined) return known;
    ids.set(key, ids.size);
    positions.push(x / n, y / n, z / n);
    return ids.size - 1;
  };
  for (let axis = 0; axis < 3; axis++) {
    for (const level of [0, n]) {
      for (let u = 0; u < n; u++) {
        for (let v = 0; v < n; v++) {
          const corner = (du: number, dv: number) => {
            const place = [0, 0, 0];
            place[axis] = level;
            place[(axis + 1) % 3] = u + du;
            place[(axis + 2) % 3] = v + dv;
            return vertex(place[0], place[1], place[2]);
          };
          const [a, b, c, d] = [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)];
          if (level === n) triangles.push(a, b, c, a, c, d);
          else triangles.push(a, c, b, a, d, c);
        }
      }
    }
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}
