import { describe, expect, it } from 'vitest';
import { MITRE_LIMIT } from '../../src/core/pattern/index.ts';
import { offsetOutline } from '../../src/core/pattern/offset-outline.ts';
import { verticesOfPiece } from '../../src/core/pattern/piece-outline.ts';
import type { PieceInput } from '../../src/core/pattern/types.ts';
import { createRandom, distanceTo, distanceToSegment, isInside, lengthOf, sample } from './brute-force.ts';
import { curve, edge, piece, polygonPiece, samplePanels, straight } from './synthetic-panels.ts';

/** mm: what a sewist could never see, and what the drafting promises. */
const TOLERANCE = 0.01;

function offset(input: PieceInput, allowances: readonly number[]): Float64Array {
  const { outer, holes } = offsetOutline(verticesOfPiece(input.edges, allowances));
  expect(holes).toHaveLength(0);
  return outer;
}

function areaOf(points: Float64Array): number {
  let twice = 0;
  for (let i = 0, j = points.length - 2; i < points.length; j = i, i += 2) {
    twice += points[j] * points[i + 1] - points[i] * points[j + 1];
  }
  return twice / 2;
}

/**
 * The allowance, measured: no cut point lies in the strip, one allowance wide, along the outer side of a segment; and every sew segment's own cut line is there, unless another segment's strip lies over it.
 */
function expectAllowances(input: PieceInput, allowances: readonly number[], cut: Float64Array): void {
  const strips = input.edges.flatMap(({ points }, e) =>
    Array.from({ length: points.length / 2 - 1 }, (_, i) => ({
      ax: points[2 * i],
      ay: points[2 * i + 1],
      bx: points[2 * i + 2],
      by: points[2 * i + 3],
      allowance: allowances[e],
    })),
  );
  let nearest = Number.POSITIVE_INFINITY;
  for (const [x, y] of sample(cut, true, 2)) {
    for (const { ax, ay, bx, by, allowance } of strips) {
      const { distance, t } = distanceToSegment(x, y, ax, ay, bx, by);
      const isOutside = (bx - ax) * (y - ay) - (by - ay) * (x - ax) < 0;
      // On a strip's square end (a step) the foot is the segment's end itself, give or take the grid.
      const fromEnd = Math.min(t, 1 - t) * Math.hypot(bx - ax, by - ay);
      if (isOutside && fromEnd > TOLERANCE) nearest = Math.min(nearest, distance - allowance);
    }
  }
  expect(nearest).toBeGreaterThan(-TOLERANCE);

  let farthest = 0;
  let covered = 0;
  for (const strip of strips) {
    const { ax, ay, bx, by, allowance } = strip;
    const length = Math.hypot(bx - ax, by - ay);
    const footX = (ax + bx) / 2 + (allowance * (by - ay)) / length;
    const footY = (ay + by) / 2 - (allowance * (bx - ax)) / length;
    const isCovered = strips.some((other) => {
      if (other === strip) return false;
      const { distance } = distanceToSegment(footX, footY, other.ax, other.ay, other.bx, other.by);
      return distance < other.allowance - 1e-3;
    });
    if (isCovered) covered++;
    else farthest = Math.max(farthest, distanceTo(cut, true, footX, footY));
  }
  expect(farthest).toBeLessThan(TOLERANCE);
  expect(covered).toBeLessThan(strips.length);
}

describe('closed forms', () => {
  it('mitres a square: side + 2a', () => {
    const cut = offset(
      polygonPiece([
        [0, 0],
        [100, 0],
        [100, 100],
        [0, 100],
      ]),
      [10, 10, 10, 10],
    );
    expect(areaOf(cut)).toBeCloseTo(120 * 120, 2);
    expect(lengthOf(cut, true)).toBeCloseTo(480, 3);
  });

  it('keeps different allowances on all four sides', () => {
    const cut = offset(
      polygonPiece([
        [0, 0],
        [100, 0],
        [100, 60],
        [0, 60],
      ]),
      [20, 10, 6, 15],
    );
    const xs = cut.filter((_, i) => i % 2 === 0);
    const ys = cut.filter((_, i) => i % 2 === 1);
    expect([Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]).toEqual([-15, 110, -20, 66]);
    expect(areaOf(cut)).toBeCloseTo(125 * 86, 2);
  });

  it('draws a circle round a circle', () => {
    const n = 720;
    const circle = curve((t) => [100 * Math.cos(2 * Math.PI * t), 100 * Math.sin(2 * Math.PI * t)], n);
    circle.set(circle.subarray(0, 2), circle.length - 2);
    const cut = offset(piece('c', 'Circle', [edge('c', 'A', circle)]), [10]);
    let worst = 0;
    for (const [x, y] of sample(cut, true, 1)) worst = Math.max(worst, Math.abs(Math.hypot(x, y) - 110));
    expect(worst).toBeLessThan(TOLERANCE);
  });

  it('rounds a coarse curve within its edge: no cut point farther than the allowance', () => {
    const coarse = curve((t) => [100 * Math.cos(2 * Math.PI * t), 100 * Math.sin(2 * Math.PI * t)], 24);
    coarse.set(coarse.subarray(0, 2), coarse.length - 2);
    const input = piece('c', 'Circle', [edge('c', 'A', coarse)]);
    const cut = offset(input, [10]);
    const distances = sample(cut, true, 0.5).map(([x, y]) => distanceTo(coarse, true, x, y));
    expect(Math.min(...distances)).toBeGreaterThan(10 - TOLERANCE);
    // The one true corner of the list, where the edge meets itself, is mitred: 15° turn, 10/cos 7.5° = 10.086.
    expect(Math.max(...distances)).toBeLessThan(10 / Math.cos((7.5 * Math.PI) / 180) + TOLERANCE);
    expect(distances.filter((d) => d > 10 + TOLERANCE).length).toBeLessThan(distances.length / 24);
  });

  it('meets at the inside corner of an L', () => {
    const corners = [
      [0, 0],
      [100, 0],
      [100, 40],
      [40, 40],
      [40, 100],
      [0, 100],
    ] as const;
    const cut = offset(polygonPiece(corners), [10, 10, 10, 10, 10, 10]);
    // 120 × 120 less the hollow, 60 × 60, which moves but keeps its size.
    expect(areaOf(cut)).toBeCloseTo(120 * 120 - 60 * 60, 2);
    expect(distanceTo(cut, true, 50, 50)).toBeLessThan(1e-3);
  });

  // Mitre length from the corner: a / sin(half the angle between the sides) — SVG 1.1 §11.4 states the same ratio.
  it.each([60, 75, 90, 120, 150])('reaches a/sin(α/2) at a corner of %i°', (degrees) => {
    const half = (degrees * Math.PI) / 360;
    const input = polygonPiece([
      [-300 * Math.sin(half), 0],
      [300 * Math.sin(half), 0],
      [0, 300 * Math.cos(half)],
    ]);
    const cut = offset(input, [10, 10, 10]);
    const top = Math.max(...cut.filter((_, i) => i % 2 === 1));
    expect(top - 300 * Math.cos(half)).toBeCloseTo(10 / Math.sin(half), 3);
  });

  it.each([8, 20, 30, 45])('cuts the tip of a %i° corner square at the limit', (degrees) => {
    const half = (degrees * Math.PI) / 360;
    const tip = 600 * Math.cos(half);
    const input = polygonPiece([
      [-600 * Math.sin(half), 0],
      [600 * Math.sin(half), 0],
      [0, tip],
    ]);
    const cut = offset(input, [10, 10, 10]);
    const ys = cut.filter((_, i) => i % 2 === 1);
    expect(Math.max(...ys) - tip).toBeCloseTo(10 * MITRE_LIMIT, 3);
    const ends = [...ys.keys()].filter((i) => ys[i] > tip + 10 * MITRE_LIMIT - 0.001);
    // Square to the middle: both blunted corners at one height, as far apart as the offset lines are there.
    expect(ends).toHaveLength(2);
    const width = Math.abs(cut[2 * ends[0]] - cut[2 * ends[1]]);
    expect(width).toBeCloseTo(2 * (10 / Math.cos(half) - 10 * MITRE_LIMIT * Math.tan(half)), 2);
    expectAllowances(input, [10, 10, 10], cut);
  });
});

describe('seam ends', () => {
  it('steps straight out where two allowances meet on one line', () => {
    const input = polygonPiece([
      [0, 0],
      [60, 0],
      [120, 0],
      [120, 80],
      [0, 80],
    ]);
    const allowances = [10, 20, 10, 10, 10];
    const cut = offset(input, allowances);
    expectAllowances(input, allowances, cut);
    // (120 + 20) × 100 for 10 mm all round, and 10 mm more under the second edge, to the outside of its corner.
    expect(areaOf(cut)).toBeCloseTo(140 * 100 + 10 * (60 + 10), 2);
    expect(distanceTo(cut, true, 60, -15)).toBeLessThan(1e-3);
  });

  it.each([
    [-4, 10, 20],
    [4, 10, 20],
    [4, 20, 10],
    [25, 6, 15],
    [80, 6, 15],
    [-60, 6, 15],
    [30, 0, 12],
    [-30, 0, 12],
  ])('keeps both allowances at a turn of %i° from %i to %i mm', (degrees, a, b) => {
    const turn = (degrees * Math.PI) / 180;
    const input = polygonPiece([
      [0, 0],
      [150, 0],
      [150 + 150 * Math.cos(turn), 150 * Math.sin(turn)],
      [150, 300],
      [0, 300],
    ]);
    const allowances = [a, b, 10, 10, 10];
    expectAllowances(input, allowances, offset(input, allowances));
  });
});

describe('measured everywhere', () => {
  it.each(samplePanels().map((input) => [input.id, input] as const))('on %s', (_, input) => {
    const allowances = input.edges.map(() => 10);
    expectAllowances(input, allowances, offset(input, allowances));
    const mixed = input.edges.map(({ kind }) => (kind === 'opening' ? 18 : 9));
    expectAllowances(input, mixed, offset(input, mixed));
  });

  it('on random star-shaped polygons', () => {
    let whole = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const random = createRandom(seed);
      const count = 5 + Math.floor(random() * 12);
      const corners = Array.from({ length: count }, (_, i): [number, number] => {
        const angle = ((i + 0.6 * random()) / count) * 2 * Math.PI;
        const radius = 80 + 160 * random();
        return [radius * Math.cos(angle), radius * Math.sin(angle)];
      });
      const input = polygonPiece(corners, 10);
      const allowances = input.edges.map(() => (seed % 2 ? 10 : 4 + Math.round(random() * 16)));
      const { outer, holes } = offsetOutline(verticesOfPiece(input.edges, allowances));
      expect(areaOf(outer), `seed ${seed}`).toBeGreaterThan(0);
      for (const [x, y] of corners) expect(isInside(outer, x, y), `seed ${seed}`).toBe(true);
      if (holes.length > 0) continue;
      whole++;
      expectAllowances(input, allowances, outer);
    }
    expect(whole).toBeGreaterThan(30);
  });

  it('reports a hollow closed by the allowance as a hole', () => {
    // A pocket 60 wide behind a mouth 16 wide: 10 mm from either side close the mouth.
    const input = polygonPiece([
      [0, 0],
      [200, 0],
      [200, 150],
      [108, 150],
      [108, 110],
      [130, 110],
      [130, 50],
      [70, 50],
      [70, 110],
      [92, 110],
      [92, 150],
      [0, 150],
    ]);
    const { holes } = offsetOutline(
      verticesOfPiece(
        input.edges,
        input.edges.map(() => 10),
      ),
    );
    expect(holes).toHaveLength(1);
    expect(areaOf(holes[0])).toBeCloseTo(-40 * 40, 2);
  });
});

it('leaves its input alone and repeats itself', () => {
  const points = straight([
    [0, 0],
    [90, 0],
    [45, 80],
    [0, 0],
  ]);
  const before = points.slice();
  const input = piece('t', 'T', [edge('t', 'A', points)]);
  const first = offset(input, [10]);
  expect(points).toEqual(before);
  expect(offset(input, [10])).toEqual(first);
});
