import { describe, expect, it } from 'vitest';
import { bridgeHollows } from '../../src/core/seams/index.ts';
import { surfaceOf, TOP, torso } from './sample-forms.ts';

/** An oval tube, dented at the centre front by up to 25 mm and at the centre back by up to 6 mm, most at v = 300. */
const dented = surfaceOf([0, TOP], true, (u, v) => {
  const x = 160 * Math.cos(u);
  const height = Math.exp(-(((v - 300) / 90) ** 2));
  const dent = height * Math.exp(-((x / 35) ** 2)) * (u > 0 && u < Math.PI ? 25 : -6);
  return [x, 110 * Math.sin(u) - dent, v];
});

function rowOf(surface: typeof dented, v: number, count = 720): { x: number; y: number }[] {
  const chart = Float64Array.from({ length: 2 * count }, (_, i) =>
    i % 2 === 0 ? -Math.PI / 2 + (i / 2) * ((2 * Math.PI) / count) : v,
  );
  const p = surface.evaluate(chart);
  return Array.from({ length: count }, (_, i) => ({ x: p[3 * i], y: p[3 * i + 1] }));
}

/** Taut length round points, by gift wrapping. */
function tapeRound(points: readonly { x: number; y: number }[]): number {
  let from = points.reduce((best, q) => (q.x < best.x ? q : best));
  const first = from;
  let length = 0;
  do {
    let to = points[0] === from ? points[1] : points[0];
    for (const q of points) {
      if ((to.x - from.x) * (q.y - from.y) - (to.y - from.y) * (q.x - from.x) < 0) to = q;
    }
    length += Math.hypot(to.x - from.x, to.y - from.y);
    from = to;
  } while (from !== first);
  return length;
}

describe('bridging hollows', () => {
  const bridged = bridgeHollows(dented, torso.form, 0.9);

  it('changes no taut girth', () => {
    for (const v of [150, 212, 260, 300, 347, 390, 520]) {
      expect(Math.abs(tapeRound(rowOf(bridged, v)) - tapeRound(rowOf(dented, v)))).toBeLessThan(0.05);
    }
  });

  // By hand: by symmetry the taut line over the front lies level at the dented row's greatest y.
  it('fills the front hollow nine tenths of the way to the taut line', () => {
    for (const v of [260, 300, 347]) {
      const before = rowOf(dented, v);
      const taut = Math.max(...before.map((q) => q.y));
      const middle = (points: typeof before): number => points[360].y;
      expect(middle(before)).toBeLessThan(taut - 10);
      expect(taut - middle(rowOf(bridged, v))).toBeCloseTo(0.1 * (taut - middle(before)), 1);
    }
  });

  it('moves nothing sideways, up or elsewhere, and stays smooth', () => {
    const before = rowOf(dented, 300);
    const after = rowOf(bridged, 300);
    before.forEach((q, i) => {
      expect(after[i].x).toBe(q.x);
      if (Math.abs(q.x) > 80) expect(Math.abs(after[i].y - q.y)).toBeLessThan(0.02);
    });
    // Second differences of the shift along the row: no kink above what a 25 mm hollow over 70 mm has of itself.
    const shift = after.map((q, i) => q.y - before[i].y);
    for (let i = 1; i + 1 < shift.length; i++) {
      expect(Math.abs(shift[i - 1] - 2 * shift[i] + shift[i + 1])).toBeLessThan(0.2);
    }
    // Above the levels and their fading out nothing moves at all.
    expect(rowOf(bridged, 600)).toEqual(rowOf(dented, 600));
  });

  it('is the surface itself without a share, and mirror symmetric with one', () => {
    expect(bridgeHollows(dented, torso.form, 0)).toBe(dented);
    const [a, b] = [
      bridged.evaluate(Float64Array.of(1.3, 310)),
      bridged.evaluate(Float64Array.of(Math.PI - 1.3, 310)),
    ];
    expect(a[0]).toBeCloseTo(-b[0], 9);
    expect(a[1]).toBeCloseTo(b[1], 9);
  });
});
