import { describe, expect, it } from 'vitest';
import type { ChartSurface } from '../../src/core/mesh/index.ts';
import { gapBetween, layPads, offsetSurface, type Pad } from '../../src/core/refit/index.ts';

/** An upright egg on the chart: half axes a and b, smaller above and below; 400 mm high. */
function egg(a: number, b: number, bulge = 0): ChartSurface {
  return {
    vRange: [0, 400],
    isMirrorSymmetric: true,
    evaluate(chart, out = new Float64Array((chart.length / 2) * 3)) {
      for (let i = 0; i < chart.length / 2; i++) {
        const [u, v] = [chart[2 * i], chart[2 * i + 1]];
        const s = 1 - ((v - 200) / 600) ** 2;
        // A bump in front, as a belly.
        const belly = bulge * Math.exp(-(((u - Math.PI / 2) / 0.5) ** 2) - ((v - 170) / 60) ** 2);
        out.set([a * s * Math.cos(u), b * s * Math.sin(u) + belly * Math.sin(u), v], 3 * i);
      }
      return out;
    },
  };
}

const FAR = Float64Array.of(0.2, 1000, -0.2, 1000, 0, 1050);
/** Armholes far above: none is in the way. */
const FORM = { armholes: { right: FAR, left: FAR }, levels: [], landmarks: {} } as unknown as Parameters<
  typeof layPads
>[0]['form'];
const WAIST = { id: 'waist', name: { id: 'level.waist', values: {} }, v: 200 };

/** Length of the section at height v, by chords of a thousandth of a turn. */
function girthOf(surface: ChartSurface, v: number): number {
  const n = 4000;
  const chart = Float64Array.from({ length: 2 * n }, (_, i) => (i % 2 === 0 ? (Math.PI * i) / n : v));
  const p = surface.evaluate(chart);
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n;
    sum += Math.hypot(p[3 * j] - p[3 * i], p[3 * j + 1] - p[3 * i + 1]);
  }
  return sum;
}

/** Where a straight line from p along n meets the surface, by halving on triangles of a fine grid (Möller and Trumbore, 1997). */
function shoot(
  surface: ChartSurface,
  p: readonly number[],
  n: readonly number[],
  near: readonly number[],
): number {
  const [u0, v0] = near;
  const [count, du, dv] = [24, 0.02, 5];
  const at = (i: number, j: number) => {
    const q = surface.evaluate(Float64Array.of(u0 + (i - count / 2) * du, v0 + (j - count / 2) * dv));
    return [q[0], q[1], q[2]];
  };
  const grid = Array.from({ length: count + 1 }, (_, i) =>
    Array.from({ length: count + 1 }, (_, j) => at(i, j)),
  );
  const minus = (a: readonly number[], b: readonly number[]) => a.map((x, k) => x - b[k]);
  const cross = (a: readonly number[], b: readonly number[]) => [
    a[1] * b[2] - a[2] * b[1],
    a[2] * b[0] - a[0] * b[2],
    a[0] * b[1] - a[1] * b[0],
  ];
  const dot = (a: readonly number[], b: readonly number[]) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  let best = Number.NaN;
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < count; j++) {
      for (const [a, b, c] of [
        [grid[i][j], grid[i + 1][j], grid[i + 1][j + 1]],
        [grid[i][j], grid[i + 1][j + 1], grid[i][j + 1]],
      ]) {
        const [e1, e2] = [minus(b, a), minus(c, a)];
        const h = cross(n, e2);
        const det = dot(e1, h);
        const s = minus(p, a);
        const x = dot(s, h) / det;
        const q = cross(s, e1);
        const y = dot(n, q) / det;
        const t = dot(e2, q) / det;
        if (x < 0 || y < 0 || x + y > 1) continue;
        if (!(Math.abs(t) >= Math.abs(best))) best = t;
      }
    }
  }
  return best;
}

describe('a surface with wadding on it', () => {
  it.each([4, 8, 24])('is 2π × %s mm longer round where it is upright and convex (Steiner)', (thickness) => {
    const body = egg(150, 110);
    // At its widest height the egg's wall stands upright.
    const grown = girthOf(offsetSurface(body, thickness), 200) - girthOf(body, 200);
    expect(Math.abs(grown - 2 * Math.PI * thickness)).toBeLessThan(0.05);
  });

  it('lies its thickness away, measured back', () => {
    const body = egg(150, 110);
    const chart = Float64Array.of(0.3, 120, 1.4, 250, 3.9, 300, 5.5, 40);
    for (const gap of gapBetween(body, offsetSurface(body, 13), chart)) expect(gap).toBeCloseTo(13, 2);
  });
});

describe('pads', () => {
  const [body, target] = [egg(150, 110), egg(158, 119, 18)];
  const laid = layPads({ surface: body, form: FORM, levels: [WAIST] }, target, { wadding: 8 });
  if (!laid.ok) throw new Error('pads');
  const { pads } = laid.value;
  const isIn = ({ loop }: Pad, u: number, v: number): boolean => {
    let inside = false;
    for (let i = 0, j = loop.length - 2; i < loop.length; j = i, i += 2) {
      if (loop[i + 1] > v === loop[j + 1] > v) continue;
      const at = loop[i] + ((v - loop[i + 1]) / (loop[j + 1] - loop[i + 1])) * (loop[j] - loop[i]);
      if (u < at) inside = !inside;
    }
    return inside;
  };

  it('are together as thick as the gap, to half a layer, at places all over the body', () => {
    let [checked, thickest] = [0, 0];
    for (let u = 0.07; u < 2 * Math.PI; u += 0.31) {
      for (const v of [33, 110, 171, 230, 290, 366]) {
        const eps = 1e-3;
        const p = body.evaluate(Float64Array.of(u, v, u + eps, v, u, v + eps));
        const [a, b] = [1, 2].map((k) => [0, 1, 2].map((axis) => (p[3 * k + axis] - p[axis]) / eps));
        const n = [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
        const size = Math.hypot(...n);
        const gap = shoot(
          target,
          [...p.slice(0, 3)],
          n.map((x) => x / size),
          [u, v],
        );
        if (Number.isNaN(gap)) continue;
        const layers = pads.filter((pad) => isIn(pad, u, v)).length;
        expect(Math.abs(8 * layers - gap)).toBeLessThan(4 + 0.8);
        checked++;
        thickest = Math.max(thickest, layers);
      }
    }
    expect(checked).toBeGreaterThan(80);
    // 9 mm and a belly of 18. A fourth layer would be smaller than a hand.
    expect(thickest).toBe(3);
  });

  it('are smaller the higher they lie, each on one below, and pieces as large as what they cover', () => {
    for (const pad of pads) {
      const under = pads.find(({ number }) => number === pad.liesOn);
      expect(under === undefined).toBe(pad.layer === 1);
      if (under) expect(pad.area).toBeLessThan(under.area);
    }
    // The first front layer goes half round the egg: from side to side along the middle of its height.
    const front = pads.find(({ half, layer }) => half === 'front' && layer === 1);
    const level = front?.input.levelLines.find(({ id }) => id === 'waist-1');
    if (!level) throw new Error('waist');
    let length = 0;
    for (let i = 2; i < level.points.length; i += 2)
      length += Math.hypot(level.points[i] - level.points[i - 2], level.points[i + 1] - level.points[i - 1]);
    expect(Math.abs(length - girthOf(body, 200) / 2) / length).toBeLessThan(0.01);
  });

  it('are none where the gap is less than half a layer, and refused of wadding that cannot be had', () => {
    const near = layPads({ surface: body, form: FORM, levels: [] }, egg(153, 112), { wadding: 8 });
    expect(near.ok && near.value.pads).toEqual([]);
    const thin = layPads({ surface: body, form: FORM, levels: [] }, target, { wadding: 1 });
    expect(thin.issues.map(({ path, measured, limit }) => [path, measured, limit])).toEqual([
      ['wadding', 1, 3],
    ]);
  });
});
