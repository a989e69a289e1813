import type { Mesh } from '../../src/core/mesh/index.ts';

/** Open cylinder round z, n columns, m rows of quads: border loops at both ends, outward. */
export function buildCylinder(radius: number, height: number, n: number, m: number): Mesh {
  const positions: number[] = [];
  for (let j = 0; j <= m; j++) {
    for (let i = 0; i < n; i++) {
      const a = (2 * Math.PI * i) / n;
      positions.push(radius * Math.cos(a), radius * Math.sin(a), (height * j) / m);
    }
  }
  const triangles: number[] = [];
  for (let j = 0; j < m; j++) {
    for (let i = 0; i < n; i++) {
      const k = (i + 1) % n;
      triangles.push(j * n + i, j * n + k, (j + 1) * n + k, j * n + i, (j + 1) * n + k, (j + 1) * n + i);
    }
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

/** Closed torus, tube radius r about a circle of radius R, n × m. */
export function buildTorus(R: number, r: number, n: number, m: number): Mesh {
  const positions: number[] = [];
  const triangles: number[] = [];
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < m; j++) {
      const a = (2 * Math.PI * i) / n;
      const b = (2 * Math.PI * j) / m;
      const d = R + r * Math.cos(b);
      positions.push(d * Math.cos(a), d * Math.sin(a), r * Math.sin(b));
      const [i1, j1] = [(i + 1) % n, (j + 1) % m];
      triangles.push(i * m + j, i1 * m + j, i1 * m + j1, i * m + j, i1 * m + j1, i * m + j1);
    }
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

/** Sphere by splitting an octahedron `depth` times. */
export function buildSphere(radius: number, depth: number): Mesh {
  const points: number[][] = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
    [-1, 0, 0],
    [0, -1, 0],
    [0, 0, -1],
  ];
  let faces = [
    [0, 1, 2],
    [1, 3, 2],
    [3, 4, 2],
    [4, 0, 2],
    [1, 0, 5],
    [3, 1, 5],
    [4, 3, 5],
    [0, 4, 5],
  ];
  for (let k = 0; k < depth; k++) {
    const middles = new Map<string, number>();
    const middle = (a: number, b: number): number => {
      const key = a < b ? `${a},${b}` : `${b},${a}`;
      const known = middles.get(key);
      if (known !== undefined) return known;
      const sum = points[a].map((value, d) => value + points[b][d]);
      const size = Math.hypot(...sum);
      points.push(sum.map((value) => value / size));
      middles.set(key, points.length - 1);
      return points.length - 1;
    };
    faces = faces.flatMap(([a, b, c]) => {
      const [ab, bc, ca] = [middle(a, b), middle(b, c), middle(c, a)];
      return [
        [a, ab, ca],
        [ab, b, bc],
        [ca, bc, c],
        [ab, bc, ca],
      ];
    });
  }
  return {
    positions: Float64Array.from(points.flat(), (value) => radius * value),
    triangles: Uint32Array.from(faces.flat()),
  };
}
