/**
 * Deterministic test panels of disk shape, counter-clockwise seen from outside, in cm unless scaled.
 * `n` is the aimed number of triangles.
 */
import type { Mesh } from '../../../src/core/mesh/index.ts';

type Point = readonly [number, number, number];
type Chart = (u: number, v: number) => Point;

const degrees = Math.PI / 180;

/** Small portable generator (Numerical Recipes' 32-bit constants), values in [−1, 1). */
function makeNoise(seed: number): () => number {
  let x = seed >>> 0;
  return () => {
    x = (Math.imul(1664525, x) + 1013904223) >>> 0;
    return x / 2147483648 - 1;
  };
}

function toMesh(points: readonly Point[], triangles: readonly (readonly [number, number, number])[]): Mesh {
  return { positions: Float64Array.from(points.flat()), triangles: Uint32Array.from(triangles.flat()) };
}

/** Columns and rows of a grid with about n triangles; columns are even. */
export function gridSize(n: number, aspect: number): [number, number] {
  const columns = Math.max(2, 2 * Math.round(Math.sqrt((n / 2) * aspect) / 2));
  return [columns, Math.max(2, Math.round(n / 2 / columns))];
}

/** Vertex i + j (columns + 1); diagonals alternate. `jitter` moves inner vertices, in cells. */
export function makeGrid(columns: number, rows: number, chart: Chart, jitter = 0, seed = 1): Mesh {
  const noise = makeNoise(seed);
  const points: Point[] = [];
  for (let j = 0; j <= rows; j++) {
    for (let i = 0; i <= columns; i++) {
      let u = i / columns;
      let v = j / rows;
      if (jitter > 0 && i > 0 && i < columns && j > 0 && j < rows) {
        u += (jitter * noise()) / columns;
        v += (jitter * noise()) / rows;
      }
      points.push(chart(u, v));
    }
  }
  const triangles: [number, number, number][] = [];
  const w = columns + 1;
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      const [a, b, c, d] = [i + j * w, i + 1 + j * w, i + 1 + (j + 1) * w, i + (j + 1) * w];
      if ((i + j) % 2) triangles.push([a, b, d], [b, c, d]);
      else triangles.push([a, b, c], [a, c, d]);
    }
  }
  return toMesh(points, triangles);
}

export function cylinderChart(radius = 15, angle = Math.PI / 2, height = 40): Chart {
  return (u, v) => [radius * Math.cos(angle * (u - 0.5)), radius * Math.sin(angle * (u - 0.5)), height * v];
}

/** Radius r1 below, r2 above. */
export function coneChart(r1 = 10, r2 = 16, height = 20, angle = Math.PI / 2): Chart {
  return (u, v) => {
    const r = r1 + (r2 - r1) * v;
    return [r * Math.cos(angle * (u - 0.5)), r * Math.sin(angle * (u - 0.5)), height * v];
  };
}

export function saddleChart(half = 10, curvature = 1 / 15): Chart {
  return (u, v) => {
    const [x, y] = [(2 * u - 1) * half, (2 * v - 1) * half];
    return [x, y, (curvature / 2) * (x * x - y * y)];
  };
}

export function torusChart(ring: number, tube: number, angle: number, from: number, to: number): Chart {
  return (u, v) => {
    const t = angle * (u - 0.5);
    const p = from + (to - from) * v;
    const r = ring + tube * Math.cos(p);
    return [r * Math.cos(t), r * Math.sin(t), tube * Math.sin(p)];
  };
}

/** A trunk of radius 13 with a Gaussian bump of height 6 and width 5 at angle 0, between two angles. */
export function bumpChart(from: number, to: number): Chart {
  return (u, v) => {
    const t = from + (to - from) * u;
    const z = 18 * (2 * v - 1);
    const s = 13 * t;
    const r = 13 + 6 * Math.exp(-(s * s + z * z) / 50);
    return [r * Math.cos(t), r * Math.sin(t), z];
  };
}

/** Strip of the sphere of radius 15 between two longitudes (degrees), latitudes ±80°. */
export function sphereStripChart(from: number, to: number): Chart {
  return (u, v) => {
    const t = (from + (to - from) * u) * degrees;
    const p = (160 * v - 80) * degrees;
    return [15 * Math.cos(p) * Math.cos(t), 15 * Math.cos(p) * Math.sin(t), 15 * Math.sin(p)];
  };
}

/** Lune of a sphere, pole to pole; poles are single vertices. */
export function makeGore(n: number, radius: number, width: number): Mesh {
  const [columns, rows] = gridSize(n, (((width / 2) * 0.64) / (Math.PI / 2)) * 1.3);
  const points: Point[] = [[0, 0, -radius]];
  const triangles: [number, number, number][] = [];
  const row = (j: number) => 1 + (j - 1) * (columns + 1);
  for (let j = 1; j < rows; j++) {
    const p = -Math.PI / 2 + (Math.PI * j) / rows;
    for (let i = 0; i <= columns; i++) {
      const t = width * (i / columns - 0.5);
      points.push([
        radius * Math.cos(p) * Math.cos(t),
        radius * Math.cos(p) * Math.sin(t),
        radius * Math.sin(p),
      ]);
    }
  }
  const top = points.length;
  points.push([0, 0, radius]);
  for (let i = 0; i < columns; i++) triangles.push([0, row(1) + i + 1, row(1) + i]);
  for (let j = 1; j < rows - 1; j++) {
    for (let i = 0; i < columns; i++) {
      const [a, b, c, d] = [row(j) + i, row(j) + i + 1, row(j + 1) + i + 1, row(j + 1) + i];
      if ((i + j) % 2) triangles.push([a, b, d], [b, c, d]);
      else triangles.push([a, b, c], [a, c, d]);
    }
  }
  for (let i = 0; i < columns; i++) triangles.push([row(rows - 1) + i, row(rows - 1) + i + 1, top]);
  return toMesh(points, triangles);
}

/** Spherical cap of angular radius `alpha` on rings of 6, 12, 18 … vertices. */
export function makeCap(n: number, radius: number, alpha: number): Mesh {
  const rings = Math.round(Math.sqrt(n / 6));
  const points: Point[] = [[0, 0, radius]];
  const start = [0];
  for (let k = 1; k <= rings; k++) {
    start.push(points.length);
    for (let i = 0; i < 6 * k; i++) {
      const r = (alpha * k) / rings;
      const t = (2 * Math.PI * i) / (6 * k);
      points.push([
        radius * Math.sin(r) * Math.cos(t),
        radius * Math.sin(r) * Math.sin(t),
        radius * Math.cos(r),
      ]);
    }
  }
  const triangles: [number, number, number][] = [];
  for (let k = 1; k <= rings; k++) {
    const outer = 6 * k;
    const inner = 6 * (k - 1);
    for (let s = 0; s < 6; s++) {
      for (let i = 0; i < k; i++) {
        const o0 = start[k] + ((s * k + i) % outer);
        const o1 = start[k] + ((s * k + i + 1) % outer);
        const i0 = start[k - 1] + (inner ? (s * (k - 1) + i) % inner : 0);
        triangles.push([o0, o1, i0]);
        if (i < k - 1) triangles.push([i0, o1, start[k - 1] + ((s * (k - 1) + i + 1) % inner)]);
      }
    }
  }
  return toMesh(points, triangles);
}

/** Cuts a grid mesh along its middle column from the bottom up to the middle row (rows must be even). */
export function cutSlit(mesh: Mesh, columns: number, rows: number): Mesh {
  const w = columns + 1;
  const middle = columns / 2;
  const positions = Array.from(mesh.positions);
  const copyOf = new Map<number, number>();
  for (let j = 0; j < rows / 2; j++) {
    const v = middle + j * w;
    copyOf.set(v, positions.length / 3);
    positions.push(mesh.positions[3 * v], mesh.positions[3 * v + 1], mesh.positions[3 * v + 2]);
  }
  const triangles = mesh.triangles.map((v, e) => {
    const column = Math.floor(e / 6) % columns;
    return column >= middle ? (copyOf.get(v) ?? v) : v;
  });
  return { positions: Float64Array.from(positions), triangles };
}

/** All panels by name at about n triangles. */
export function makePanels(n: number): Record<string, Mesh> {
  const grid = (aspect: number, chart: Chart, jitter = 0, seed = 1): Mesh => {
    const [columns, rows] = gridSize(n, aspect);
    return makeGrid(columns, rows, chart, jitter, seed);
  };
  const evenRows = (aspect: number): [number, number] => {
    const [columns, rows] = gridSize(n, aspect);
    return [columns, rows + (rows % 2)];
  };
  const bumpSize = evenRows(27 / 36);
  const bump = makeGrid(...bumpSize, bumpChart(-60 * degrees, 60 * degrees));
  return {
    cylinder: grid(23.56 / 40, cylinderChart()),
    cylinderJittered: grid(23.56 / 40, cylinderChart(), 0.3, 7),
    cone: grid(20.4 / 20.9, coneChart()),
    gore30: makeGore(n, 15, 30 * degrees),
    gore45: makeGore(n, 15, 45 * degrees),
    cap20: makeCap(n, 15, 20 * degrees),
    cap40: makeCap(n, 15, 40 * degrees),
    saddle: grid(1, saddleChart()),
    torusOuter: grid(20.9 / 16.8, torusChart(14, 6, 60 * degrees, -80 * degrees, 80 * degrees)),
    torusInner: grid(12 / 16.8, torusChart(18, 6, 60 * degrees, 100 * degrees, 260 * degrees)),
    bump,
    bumpSlit: cutSlit(bump, ...bumpSize),
    bumpHalf: makeGrid(...evenRows(14 / 36), bumpChart(0, 60 * degrees)),
  };
}

/** Two panels sharing one seam edge for edge: A's last column is B's first. About 5000 triangles each. */
export function makePair(
  kind: 'sphere' | 'bump',
  columns = 38,
  rows = 66,
): { a: Mesh; b: Mesh; seamA: Uint32Array; seamB: Uint32Array } {
  const [a, b] =
    kind === 'sphere'
      ? [makeGrid(columns, rows, sphereStripChart(-30, 0)), makeGrid(columns, rows, sphereStripChart(0, 60))]
      : [
          makeGrid(columns, rows, bumpChart(-60 * degrees, 10 * degrees)),
          makeGrid(columns, rows, bumpChart(10 * degrees, 60 * degrees)),
        ];
  const seamA = Uint32Array.from({ length: rows + 1 }, (_, j) => columns + j * (columns + 1));
  const seamB = Uint32Array.from({ length: rows + 1 }, (_, j) => j * (columns + 1));
  return { a, b, seamA, seamB };
}

/** Same shape in another unit (10 turns cm into mm). */
export function scaleMesh(mesh: Mesh, factor: number): Mesh {
  return { positions: mesh.positions.map((x) => x * factor), triangles: mesh.triangles };
}
