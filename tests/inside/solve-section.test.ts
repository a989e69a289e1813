import { describe, expect, it } from 'vitest';
import {
  radiusOfFreeSleeve,
  type SectionBalance,
  type SectionTie,
  sampleSection,
  solveSection,
  solveSpanArc,
} from '../../src/core/inside/index.ts';

/**
 * Truth: an inextensible membrane under pressure p carries one hoop tension T between the points where it is held, and
 * Laplace's law T = p r makes every free stretch an arc of a circle. A stretch of length l over a chord c turns through
 * 2φ with l = 2rφ and c = 2r sin φ, so sin φ/φ = c/l. What the arcs enclose follows from plane geometry: the polygon of
 * the held points plus segments r²(φ − sin φ cos φ). Numbers below were found from these equations by bisection, apart
 * from the code (textbook statics; derivations beside each case).
 */
const P = 740;
const TOLERANCE = 1e-6;

function bisect(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  const sign = Math.sign(f(a));
  for (let i = 0; i < 200; i++) {
    const middle = 0.5 * (a + b);
    if (Math.sign(f(middle)) === sign) a = middle;
    else b = middle;
  }
  return 0.5 * (a + b);
}

function boundsOf(balance: SectionBalance, turn = 0): { width: number; depth: number } {
  const ring = sampleSection(balance, 4000);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const xs: number[] = [];
  const ys: number[] = [];
  for (let i = 0; i < ring.length; i += 2) {
    xs.push(cos * ring[i] + sin * ring[i + 1]);
    ys.push(cos * ring[i + 1] - sin * ring[i]);
  }
  const extent = (values: number[]) =>
    values.reduce((m, v) => Math.max(m, v), -1e9) - values.reduce((m, v) => Math.min(m, v), 1e9);
  return { width: extent(xs), depth: extent(ys) };
}

/** n points spread evenly over an oval, the first at angle `from`. */
function oval(count: number, from: number, a = 120, b = 90): Float64Array {
  const points = new Float64Array(2 * count);
  for (let i = 0; i < count; i++) {
    points[2 * i] = a * Math.cos(from + (2 * Math.PI * i) / count);
    points[2 * i + 1] = b * Math.sin(from + (2 * Math.PI * i) / count);
  }
  return points;
}

describe('a sleeve under pressure', () => {
  it('is a circle with nothing inside', () => {
    expect(radiusOfFreeSleeve(P)).toBeCloseTo(117.774658, 6);
    expect(Math.PI * radiusOfFreeSleeve(P) ** 2).toBeCloseTo(43576.623419, 5);
  });

  it('with one web of 196 is two equal arcs', () => {
    const balance = solveSection({
      spans: Float64Array.of(P / 2, P / 2),
      start: oval(2, Math.PI / 2),
      ties: [{ from: 0, to: 1, length: 196 }],
    });
    const phi = bisect((x) => Math.sin(x) / x - 196 / (P / 2), 0.1, 3);
    const r = P / 4 / phi;
    expect(phi).toBeCloseTo(1.826416, 6);
    expect(balance.converged).toBe(true);
    expect(balance.arcs[0].halfAngle).toBeCloseTo(phi, 9);
    expect(balance.arcs[0].radius).toBeCloseTo(101.291276, 6);
    expect(balance.arcs[0].radius).toBeCloseTo(r, 8);
    expect(Math.abs(boundsOf(balance).width - 253.804523)).toBeLessThan(1e-4);
    expect(2 * (r - r * Math.cos(phi))).toBeCloseTo(253.804523, 6);
    expect(balance.area).toBeCloseTo(42497.525227, 5);
    // The web carries both tensions: 2 T sin(φ − π/2) along it, T = p r.
    expect(balance.ties[0].pull).toBeCloseTo(-2 * r * Math.cos(phi), 6);
  });

  it('with six ties of 115 to the centre is six equal arcs', () => {
    const balance = solveSection({
      spans: new Float64Array(6).fill(P / 6),
      start: oval(6, 0.3, 118, 110),
      ties: Array.from({ length: 6 }, (_, from): SectionTie => ({ from, to: [0, 0], length: 115 })),
    });
    expect(balance.converged).toBe(true);
    for (const arc of balance.arcs) {
      expect(arc.halfAngle).toBeCloseTo(0.64334, 6);
      expect(arc.radius).toBeCloseTo(95.853902, 6);
    }
    const ring = sampleSection(balance, 100);
    let farthest = 0;
    for (let i = 0; i < ring.length; i += 2) farthest = Math.max(farthest, Math.hypot(ring[i], ring[i + 1]));
    expect(Math.abs(farthest - 118.754448)).toBeLessThan(TOLERANCE);
    expect(balance.area).toBeCloseTo(43366.631943, 5);
  });

  it('with two parallel webs of 190, 120 of cloth between them in front and behind', () => {
    const side = P / 2 - 120;
    const balance = solveSection({
      spans: Float64Array.of(120, side, 120, side),
      start: Float64Array.of(55, 90, -55, 90, -55, -90, 55, -90),
      ties: [
        { from: 0, to: 3, length: 190 },
        { from: 1, to: 2, length: 190 },
      ],
    });
    expect(balance.converged).toBe(true);
    // Sides: sin φ/φ = 190/250. A web only pulls along itself, so the pulls across it agree: r₁ cos φ₁ = r₂ sin φ₂.
    const phi = bisect((x) => Math.sin(x) / x - 190 / side, 0.1, 3);
    const r = side / 2 / phi;
    const middle = bisect((x) => (60 / x) * Math.cos(x) - r * Math.sin(phi), 0.01, 1.5);
    const rMiddle = 60 / middle;
    const width = 2 * rMiddle * Math.sin(middle) + 2 * r * (1 - Math.cos(phi));
    const depth = 190 + 2 * rMiddle * (1 - Math.cos(middle));
    const found = boundsOf(balance);
    expect(Math.abs(found.width - width)).toBeLessThan(1e-4);
    expect(Math.abs(found.depth - depth)).toBeLessThan(1e-4);
    expect([width, depth]).toEqual([expect.closeTo(250.976998, 5), expect.closeTo(221.692187, 5)]);
  });

  it('leaves a tie that is long enough slack, and then is a circle again', () => {
    const balance = solveSection({
      spans: Float64Array.of(120, P / 2 - 120, 120, P / 2 - 120),
      start: Float64Array.of(55, 90, -55, 90, -55, -90, 55, -90),
      ties: [{ from: 0, to: 2, length: 236 }],
    });
    expect(balance.ties[0].isTaut).toBe(false);
    expect(balance.ties[0].slack).toBeCloseTo(236 - P / Math.PI, 6);
    expect(balance.area).toBeCloseTo(P ** 2 / (4 * Math.PI), 5);
    expect(balance.residual).toBeLessThan(1e-9);
  });

  it('does not care where it stands or how it is turned', () => {
    const spans = Float64Array.of(100, 150, 190, 120, 180);
    const start = oval(5, 1);
    const ties: SectionTie[] = [
      { from: 0, to: 2, length: 160 },
      { from: 1, to: 3, length: 190 },
    ];
    const here = solveSection({ spans, start, ties });
    const moved = Float64Array.from(start, (_, i) => {
      const [x, y] = [start[i - (i % 2)], start[i - (i % 2) + 1]];
      return i % 2 === 0 ? 0.6 * x - 0.8 * y + 40 : 0.8 * x + 0.6 * y - 70;
    });
    const there = solveSection({ spans, start: moved, ties });
    expect(here.converged && there.converged).toBe(true);
    expect(there.area).toBeCloseTo(here.area, 6);
    there.arcs.forEach((arc, k) => {
      expect(arc.radius).toBeCloseTo(here.arcs[k].radius, 7);
    });
  });
});

describe('stretching cloth', () => {
  const stretch = 0.003 / 40;

  it('grows as a ring by pR/Et (Laplace and Hooke): r = R/(1 − pR/Et)', () => {
    const R = P / (2 * Math.PI);
    expect(radiusOfFreeSleeve(P, stretch)).toBeCloseTo(R / (1 - R * stretch), 9);
  });

  it('grows as arcs by the same law between ties', () => {
    const balance = solveSection({
      spans: Float64Array.of(P / 2, P / 2),
      start: oval(2, Math.PI / 2),
      ties: [{ from: 0, to: 1, length: 196 }],
      stretch,
    });
    // l (1 + stretch r) = 2rφ and 2r sin φ = 196.
    const r = bisect((x) => 2 * x * (Math.PI - Math.asin(98 / x)) - (P / 2) * (1 + stretch * x), 98.1, 300);
    expect(balance.converged).toBe(true);
    expect(balance.arcs[0].radius).toBeCloseTo(r, 7);
  });

  it('pulls as its potential says: slope and curvature by differences', () => {
    for (const [length, chord, k] of [
      [200, 150, 0],
      [200, 199.9, 0],
      [200, 20, stretch],
      [200, 201, stretch],
    ]) {
      const h = 1e-4 * Math.max(1e-2, Math.abs(length - chord));
      const potential = (c: number) => {
        const arc = solveSpanArc(length, c, k);
        return arc.energy - arc.area;
      };
      const arc = solveSpanArc(length, chord, k);
      const slope = (potential(chord + h) - potential(chord - h)) / (2 * h);
      expect(Math.abs(slope / arc.pull - 1)).toBeLessThan(1e-4);
      const bend =
        (solveSpanArc(length, chord + h, k).pull - solveSpanArc(length, chord - h, k).pull) / (2 * h);
      expect(Math.abs(bend / arc.stiffness - 1)).toBeLessThan(1e-4);
    }
  });
});
