import { describe, expect, it } from 'vitest';
import { drawForm, type Scene } from '../../src/core/picture/index.ts';
import { inEnglish } from '../in-english.ts';
import { linesOf, nearest, sampleLines } from './read-lines.ts';

const degrees = Math.PI / 180;

/** A grid over two angles as a closed surface, with normals by closed form. */
function sceneOf(
  columns: number,
  rows: number,
  isRound: boolean,
  at: (u: number, v: number) => { point: number[]; normal: number[] },
): Scene {
  const positions: number[] = [];
  const normals: number[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const { point, normal } = at(column / columns, isRound ? row / rows : row / (rows - 1));
      positions.push(...point);
      normals.push(...normal);
    }
  }
  const triangles: number[] = [];
  for (let row = 0; row < (isRound ? rows : rows - 1); row++) {
    for (let column = 0; column < columns; column++) {
      const [a, b] = [row * columns + column, row * columns + ((column + 1) % columns)];
      const [c, d] = [a, b].map((v) => (v + columns) % (rows * columns));
      triangles.push(a, b, d, a, d, c);
    }
  }
  return {
    sheets: [{ id: 'thing', kind: 'panel', half: 'front', side: 'centre' }],
    surfaces: [
      {
        positions: Float64Array.from(positions),
        normals: Float64Array.from(normals),
        triangles: Uint32Array.from(triangles),
        sheetOf: new Uint16Array(triangles.length / 3),
      },
    ],
    lines: [],
  };
}

function outlinesOf(scene: Scene, elevation: number) {
  const camera = { azimuth: 20 * degrees, elevation, scale: 0.1 };
  return linesOf(drawForm(scene, camera, { title: 'thing', say: inEnglish }), 'outline');
}

describe('the outline of a ball', () => {
  const radius = 150;
  // Its poles are cut off, so that no triangle is without area: the camera looks level, and sees the cuts on edge.
  const ball = sceneOf(48, 25, false, (s, t) => {
    const [u, v] = [2 * Math.PI * s, (t - 0.5) * 0.9 * Math.PI];
    const normal = [Math.cos(v) * Math.cos(u), Math.cos(v) * Math.sin(u), Math.sin(v)];
    return { normal, point: normal.map((value) => radius * value) };
  });

  it('is a circle of its radius', () => {
    const samples = sampleLines(outlinesOf(ball, 0), 0.5);
    // Where the drawing begins is not told: the circle's middle is that of its box.
    const xs = samples.map(([x]) => x);
    const middleX = (Math.min(...xs) + Math.max(...xs)) / 2;
    expect(Math.max(...xs) - middleX).toBeCloseTo(15, 1);
    const ys = samples.map(([, y]) => y);
    const middleY = (Math.min(...ys) + Math.max(...ys)) / 2;
    const atCap = 15 * Math.sin(0.45 * Math.PI);
    for (const [x, y] of samples) {
      if (Math.abs(y - middleY) > atCap - 0.7) continue;
      const off = Math.hypot(x - middleX, y - middleY) - 15;
      // Smoothing over 0.5 mm of paper takes 0.1 % off a circle of 15 mm; edges of 20 mm are bulged by their normals.
      expect(Math.abs(off)).toBeLessThan(0.1);
    }
  });
});

describe('the outline of a ring', () => {
  const [large, small] = [160, 60];
  const ring = sceneOf(120, 60, true, (s, t) => {
    const [u, v] = [2 * Math.PI * s, 2 * Math.PI * t];
    const normal = [Math.cos(v) * Math.cos(u), Math.cos(v) * Math.sin(u), Math.sin(v)];
    const r = large + small * Math.cos(v);
    return { normal, point: [r * Math.cos(u), r * Math.sin(u), small * Math.sin(v)] };
  });
  const elevation = 30 * degrees;

  /** Page place of the contour at an angle round the ring from the viewer's own: cos v cos a cos e + sin v sin e = 0. */
  function contourAt(a: number, isInner: boolean): number[] {
    const v = Math.atan2(-Math.cos(a) * Math.cos(elevation), Math.sin(elevation)) + (isInner ? Math.PI : 0);
    const r = large + small * Math.cos(v);
    // Right of the page is the viewer's right; y runs down.
    const x = r * Math.sin(a);
    const y = r * Math.cos(a) * Math.sin(elevation) - small * Math.sin(v) * Math.cos(elevation);
    return [0.1 * x, 0.1 * y];
  }
  const angles = Array.from({ length: 3600 }, (_, k) => (k / 1800) * Math.PI);
  const curves = [false, true].map((isInner) => angles.map((a) => contourAt(a, isInner)));
  const truth = curves.flat();
  /** Where the inner contour turns back on the page: it runs straight at the viewer there. */
  const cusps = curves[1].filter((here, k, all) => {
    const before = all[(k + all.length - 1) % all.length];
    const after = all[(k + 1) % all.length];
    const [ax, ay, bx, by] = [
      here[0] - before[0],
      here[1] - before[1],
      after[0] - here[0],
      after[1] - here[1],
    ];
    return ax * bx + ay * by < 0;
  });

  /** Where the inner contour crosses itself on the page. */
  const crossings = curves[1].filter(([x, y], k, all) =>
    all.some(
      ([ox, oy], m) => Math.abs(m - k) > 60 && Math.abs(m - k) < 3540 && Math.hypot(ox - x, oy - y) < 0.03,
    ),
  );

  it('lies on the contour by closed form, and ends where that has its cusps or goes behind the ring', () => {
    expect(cusps).toHaveLength(4);
    const lines = outlinesOf(ring, elevation).filter(({ points }) => points.length > 8);
    const samples = sampleLines(lines, 0.4);
    // The drawing is moved to the page's corner: by the outer contour's box, which the truth has too.
    const box = (points: readonly number[][], k: number) => Math.min(...points.map((p) => p[k]));
    const [dx, dy] = [box(truth, 0) - box(samples, 0), box(truth, 1) - box(samples, 1)];
    const offs = samples.map(([x, y]) => nearest(truth, x + dx, y + dy));
    expect(Math.max(...offs)).toBeLessThan(0.3);
    // Nothing hides the outer contour: all of it is drawn.
    const moved = samples.map(([x, y]) => [x + dx, y + dy]);
    expect(Math.max(...curves[0].map(([x, y]) => nearest(moved, x, y)))).toBeLessThan(0.4);
    const ends = lines
      .filter(({ closed }) => !closed)
      .flatMap(({ points }) => [points.slice(0, 2), points.slice(-2)])
      .map(([x, y]) => [x + dx, y + dy]);
    expect(ends.length).toBeGreaterThanOrEqual(2);
    // The far rim of the hole ends behind the near one, which goes on to its cusps: there a line ends in the midst of cloth.
    const toCuspAndCrossing = ends.map(([x, y]) => [nearest(cusps, x, y), nearest(crossings, x, y)]);
    expect(toCuspAndCrossing.filter(([cusp]) => cusp < 1.2)).toHaveLength(2);
    expect(toCuspAndCrossing.filter(([cusp, crossing]) => Math.min(cusp, crossing) > 1.2)).toEqual([]);
  });
});
