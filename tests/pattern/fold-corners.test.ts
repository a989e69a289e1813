import { describe, expect, it } from 'vitest';
import { draftPiece, type PieceEdge, type PieceInput } from '../../src/core/pattern/index.ts';
import { inEnglish } from '../in-english.ts';
import { distanceTo, sample } from './brute-force.ts';
import { edge, LABEL, piece, samplePanels, straight } from './synthetic-panels.ts';

/** mm. */
const TOLERANCE = 0.01;

function cutLineOf(input: PieceInput, allowanceByEdge: Record<string, number> = {}): Float64Array {
  const drafted = draftPiece(input, LABEL, { allowanceByEdge });
  if (!drafted.ok)
    throw new Error(
      drafted.issues
        .map(({ message }) => message)
        .map(inEnglish)
        .join('\n'),
    );
  return drafted.value.cutLine;
}

/** A quadrilateral with its lower right corner at the origin: base along x, sewn or open, then a side at the angle. */
function cornerPiece(degrees: number, base: 'seam' | 'opening', order: [number, number]): PieceInput {
  const turn = Math.PI - (degrees * Math.PI) / 180;
  const top: [number, number] = [200 * Math.cos(turn), 200 * Math.sin(turn)];
  const sides: [string, [number, number][]][] = [
    [
      'base',
      [
        [-300, 0],
        [0, 0],
      ],
    ],
    ['side', [[0, 0], top]],
    ['top', [top, [-300, top[1]]]],
    [
      'far',
      [
        [-300, top[1]],
        [-300, 0],
      ],
    ],
  ];
  const edges = sides.map(([id, points], i): PieceEdge => {
    const letter = id === 'base' && base === 'opening' ? '' : 'ABCD'[i];
    const place = id === 'base' ? order[0] : id === 'side' ? order[1] : undefined;
    return { ...edge(id, letter, straight(points)), ...(place === undefined ? {} : { sewn: place }) };
  });
  return piece('corner', 'Corner', edges);
}

/**
 * Distance from a place to the side's cut line, that is, to the parallel at `allowance` to the side through the origin,
 * extended both ways. Signed: positive beyond it, outside the piece.
 */
function beyondSide(degrees: number, allowance: number, x: number, y: number): number {
  const turn = Math.PI - (degrees * Math.PI) / 180;
  return x * Math.sin(turn) - y * Math.cos(turn) - allowance;
}

describe.each([50, 60, 75, 90, 105, 120, 130])('a corner of %i° turned over its base', (degrees) => {
  it.each([
    ['opening', 10, 10],
    ['opening', 20, 10],
    ['opening', 10, 15],
    ['seam', 10, 10],
  ] as const)('%s, %i mm over %i mm: reflected, its end lies on the neighbour’s cut line', (base, a, b) => {
    const cut = cutLineOf(cornerPiece(degrees, base, [0, 1]), { base: a, side: b });
    // A deep allowance at a sharp corner is kept whole up to the corner, though its tip then stands out.
    const isWhole = a * Math.cos((degrees * Math.PI) / 180) <= b;
    let onLine = 0;
    for (const [x, y] of sample(cut, true, 0.5)) {
      if (x > -250 && x < 0 && y < 0) expect(y).toBeLessThan(-a + TOLERANCE);
      if (y > -0.01 || x < 0 || !isWhole) continue;
      // Turned over the base (the x axis), y changes its sign. No part may stick out beyond the side's cut line …
      const sticksOut = beyondSide(degrees, b, x, -y);
      expect(sticksOut).toBeLessThan(TOLERANCE);
      // … and the whole end lies on it: everything but the base's own cut line, up to the limit.
      if (y < -a + 0.01 || x > Math.sqrt((2.5 * Math.max(a, b)) ** 2 - a * a) - 0.01) continue;
      onLine++;
      expect(Math.abs(sticksOut)).toBeLessThan(TOLERANCE);
    }
    if (isWhole) expect(onLine).toBeGreaterThan(5);
    // The base's own allowance is whole right up to the corner.
    expect(distanceTo(cut, true, -0.05, -a)).toBeLessThan(TOLERANCE);
  });
});

describe('which edge is turned', () => {
  // At 120° the mitre's tip leans in by 10/√3 at the base's cut line, a turned end out: x = (10 ± 10·cos 60°)/sin 60°.
  const overBase = 15 / Math.sin(Math.PI / 3);
  const mitred = 5 / Math.sin(Math.PI / 3);
  const endOfBase = (input: PieceInput): number =>
    Math.max(...sample(cutLineOf(input), true, 0.1).flatMap(([x, y]) => (y < -9.99 ? [x] : [])));

  it('the earlier of two seams, else none', () => {
    expect(endOfBase(cornerPiece(120, 'seam', [0, 1]))).toBeCloseTo(overBase, 2);
    expect(endOfBase(cornerPiece(120, 'seam', [1, 0]))).toBeLessThan(mitred + 0.01);
    const plain = cornerPiece(120, 'seam', [0, 1]);
    const unordered = { ...plain, edges: plain.edges.map(({ sewn: _, ...rest }) => rest) };
    expect(endOfBase(unordered)).toBeCloseTo(10 / Math.tan(Math.PI / 3), 2);
  });

  it('the opening’s allowance, whichever comes first round the piece', () => {
    const input = cornerPiece(120, 'opening', [0, 1]);
    expect(endOfBase(input)).toBeCloseTo(overBase, 2);
    const flipped = {
      ...input,
      edges: input.edges.toReversed().map((e) => {
        const points = e.points.map((_, k) => e.points[e.points.length - 2 - 2 * (k >> 1) + (k & 1)]);
        return { ...e, points: points.map((v, k) => (k % 2 === 0 ? -v : v)) };
      }),
    };
    const [there, back] = [cutLineOf(input), cutLineOf(flipped)];
    for (const [x, y] of sample(there, true, 1)) expect(distanceTo(back, true, -x, y)).toBeLessThan(0.001);
  });
});

it.each([
  ['nearly straight', 155],
  ['too sharp', 20],
])('leaves a corner alone that is %s (%i°)', (_, degrees) => {
  const input = cornerPiece(degrees, 'seam', [0, 1]);
  const unordered = { ...input, edges: input.edges.map(({ sewn: _, ...rest }) => rest) };
  expect(cutLineOf(input)).toEqual(cutLineOf(unordered));
});

it.each(samplePanels().map((input) => [input.id, input] as const))(
  'keeps the allowance of 10 mm everywhere on %s, and the cut line beyond corners as it was',
  (_, input) => {
    const ordered = { ...input, edges: input.edges.map((e, k) => ({ ...e, sewn: k })) };
    const allOpen = { ...input, edges: input.edges.map((e) => ({ ...e, kind: 'opening' as const })) };
    const [folded, mitred] = [cutLineOf(ordered), cutLineOf(allOpen)];
    const corners = input.edges.map(({ points }) => [points[0], points[1]] as const);
    const awayFromCorners = (ring: Float64Array) =>
      sample(ring, true, 2).filter(([x, y]) => corners.every(([cx, cy]) => Math.hypot(x - cx, y - cy) > 26));
    for (const [x, y] of awayFromCorners(folded)) expect(distanceTo(mitred, true, x, y)).toBeLessThan(1e-6);
    for (const [x, y] of awayFromCorners(mitred)) expect(distanceTo(folded, true, x, y)).toBeLessThan(1e-6);
    const ring = Float64Array.from(input.edges.flatMap(({ points }) => [...points.subarray(0, -2)]));
    const distances = sample(folded, true, 1).map(([x, y]) => distanceTo(ring, true, x, y));
    expect(Math.min(...distances)).toBeGreaterThan(10 - TOLERANCE);
  },
);
