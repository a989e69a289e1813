/** Regions of surfaces that unroll exactly, and loops that are none. Closed forms beside each. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { flattenJoined, flattenRegion } from '../../src/core/advice/index.ts';
import { fitBody, surfaceOfBody } from '../../src/core/body/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import type { SeamForm } from '../../src/core/seams/index.ts';
import { inEnglish } from '../in-english.ts';

const loopAt = (u: number, v: number, du: number, dv: number): Float64Array =>
  Float64Array.of(u - du, v - dv, u + du, v - dv, u + du, v + dv, u - du, v + dv);
/** Small loops at either side, as armholes. */
const form: SeamForm = {
  levels: [],
  landmarks: {},
  armholes: { right: loopAt(0, 300, 0.3, 40), left: loopAt(Math.PI, 300, 0.3, 40) },
};
/** Radius 100 at v = 0, growing by `slope` per mm. */
function coneOf(slope: number) {
  return {
    vRange: [0, 400] as const,
    isMirrorSymmetric: true,
    evaluate: (chart: Float64Array, out = new Float64Array((3 * chart.length) / 2)) => {
      for (let i = 0; i < chart.length / 2; i++) {
        const [u, v] = [chart[2 * i], chart[2 * i + 1]];
        const r = 100 + slope * v;
        out.set([r * Math.cos(u), r * Math.sin(u), v], 3 * i);
      }
      return out;
    },
  };
}

function unroll(slope: number, loop: ArrayLike<number>, spacing = 6) {
  const made = flattenRegion(coneOf(slope), form, loop, { spacing });
  if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
  return made.value;
}

const largestStrain = ({ flat }: ReturnType<typeof unroll>): number =>
  Math.max(flat.strain.summary.max, -flat.strain.summary.min);

/** Freely drawn: over the centre front, with a dent. */
const drawn = [1.1, 80, 2.2, 60, 2.4, 150, 1.7, 140, 1.6, 230, 1.0, 220];

describe('a region of a cylinder', () => {
  it('lies flat as the chart does, true in every distance', () => {
    const { chart, flat, borderCount, length3d, lengthFlat } = unroll(0, drawn, 4);
    // On a cylinder of radius 100 the plane (100 u, v) is the flat piece.
    for (let i = 0; i < borderCount; i += 7) {
      for (let j = 0; j < i; j += 11) {
        const expected = Math.hypot(100 * (chart[2 * i] - chart[2 * j]), chart[2 * i + 1] - chart[2 * j + 1]);
        const { positions } = flat;
        const found = Math.hypot(
          positions[2 * i] - positions[2 * j],
          positions[2 * i + 1] - positions[2 * j + 1],
        );
        expect(Math.abs(found - expected)).toBeLessThan(0.05);
      }
    }
    expect(Math.abs(lengthFlat - length3d)).toBeLessThan(0.05);
  });

  it('has no strain but that of its triangles’ flat sides, which falls with their square', () => {
    const [coarse, fine] = [unroll(0, drawn, 8), unroll(0, drawn, 4)];
    expect(largestStrain(coarse)).toBeLessThan(2e-3);
    expect(largestStrain(fine)).toBeLessThan(largestStrain(coarse) / 2.5);
  });

  it('does not mind the direction, the start, whole turns of u, or points drawn close together', () => {
    const one = unroll(0, drawn);
    const backwards = unroll(0, [1.0, 220, 1.6, 230, 1.7, 140, 2.4, 150, 2.2, 60, 1.1, 80]);
    const turned = unroll(
      0,
      drawn.map((x, i) => (i % 2 === 0 && i > 4 ? x - 2 * Math.PI : x)),
    );
    const dense = unroll(0, [...drawn.slice(0, 2), 1.1001, 80, ...drawn.slice(2)]);
    for (const { lengthFlat, flat } of [backwards, turned, dense]) {
      expect(lengthFlat).toBeCloseTo(one.lengthFlat, 1);
      expect(flat.strain.summary.areaFlat / one.flat.strain.summary.areaFlat).toBeCloseTo(1, 4);
    }
    // Shoelace in the plane (100 u, v).
    let area = 0;
    for (let i = 0; i < drawn.length; i += 2) {
      const j = (i + 2) % drawn.length;
      area += 50 * (drawn[i] * drawn[j + 1] - drawn[j] * drawn[i + 1]);
    }
    expect(one.flat.strain.summary.areaFlat / area).toBeCloseTo(1, 3);
  });

  it('may be wider than half the way round', () => {
    const wide = unroll(0, [-2, 20, 0, 20, 2.5, 20, 2.5, 90, 0, 90, -2, 90]);
    expect(wide.lengthFlat).toBeCloseTo(2 * (450 + 70), 0);
    expect(largestStrain(wide)).toBeLessThan(2e-3);
  });
});

it('a region of a cone becomes part of a ring, without strain', () => {
  const region = unroll(0.3, [1, 50, 2.2, 50, 2.2, 250, 1, 250], 4);
  expect(largestStrain(region)).toBeLessThan(1e-3);
  // Slant per mm of height √(1 + 0.3²); a ring at height v turns by u · sin of the half angle.
  const k = Math.hypot(1, 0.3);
  const expected = 1.2 * (115 + 175) + 2 * 200 * k;
  expect(Math.abs(region.lengthFlat - expected)).toBeLessThan(0.1);
});

describe('a loop that cannot be cut out', () => {
  const codesOf = (loop: readonly number[]): string[] => {
    const made = flattenRegion(coneOf(0), form, loop);
    return made.ok ? [] : made.issues.map(({ code }) => code);
  };
  it.each([
    ['has two points', [1, 50, 2, 60], 'region-too-few-points'],
    ['crosses itself', [1, 50, 2, 150, 2, 50, 1, 150], 'region-crosses-itself'],
    ['goes back on itself', [1, 50, 2, 50, 1.5, 50, 1.5, 150], 'region-crosses-itself'],
    ['leaves the body', [1, 50, 2, 50, 2, 420, 1, 150], 'region-leaves-body'],
    ['holds no number', [1, 50, 2, Number.NaN, 2, 150], 'region-leaves-body'],
    ['runs over an armhole', [0.1, 250, 1.2, 250, 1.2, 350, 0.1, 350], 'region-over-armhole'],
    ['runs over the left armhole, a turn on', [-2.4, 250, -3.2, 250, -3.2, 350], 'region-over-armhole'],
    ['runs round an armhole', [-0.5, 200, 0.5, 200, 0.5, 380, -0.5, 380], 'region-over-armhole'],
    ['lies in an armhole', [-0.1, 290, 0.1, 290, 0.1, 310], 'region-over-armhole'],
    ['goes round the body', [0, 50, 2, 60, 4, 50, 6, 60], 'region-goes-round'],
  ])('%s', (_, loop, code) => {
    expect(codesOf(loop)).toContain(code);
  });
});

it('unrolls a region over the breast of the average body, with the strain a dome has', () => {
  const file = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  const body = fitBody(project.value.body);
  if (!body.ok) throw new Error(inEnglish(body.issues[0].message));
  const { u, v } = body.value.landmarks.bustPointRight;
  const made = flattenRegion(surfaceOfBody(body.value), body.value, loopAt(u, v, 0.35, 45));
  if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
  const { summary } = made.value.flat.strain;
  expect(summary.flipped).toBe(0);
  // A dome flattened freely stretches at the middle and shrinks at the rim: Gauss's theorem leaves no other way.
  expect(summary.max).toBeGreaterThan(0.005);
  expect(summary.min).toBeLessThan(-0.005);
});

describe('panels joined', () => {
  /** Cylinder of radius 100 over 1.2 radians, 160 mm high, and its border counter-clockwise. */
  const [columns, rows] = [24, 16];
  const at = (i: number, j: number): number => j * (columns + 1) + i;
  const positions = new Float64Array(3 * (columns + 1) * (rows + 1));
  const triangles: number[] = [];
  for (let j = 0; j <= rows; j++) {
    for (let i = 0; i <= columns; i++) {
      const u = (1.2 * i) / columns;
      positions.set([100 * Math.cos(u), 100 * Math.sin(u), 10 * j], 3 * at(i, j));
      if (i === columns || j === rows) continue;
      triangles.push(at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j), at(i + 1, j + 1), at(i, j + 1));
    }
  }
  const side = (i: number, j: number, [di, dj]: readonly [number, number], count: number) =>
    Uint32Array.from({ length: count + 1 }, (_, k) => at(i + k * di, j + k * dj));
  const edges = [
    side(0, 0, [1, 0], columns),
    side(columns, 0, [0, 1], rows),
    side(columns, rows, [-1, 0], columns),
    side(0, rows, [0, -1], rows),
  ].map((vertices, k) => ({ kind: 'seam' as const, id: `side${k}`, reversed: false, vertices }));

  it('lie flat as one rectangle, as long round as on the cylinder', () => {
    const made = flattenJoined({ mesh: { positions, triangles: Uint32Array.from(triangles) }, edges });
    if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
    // Chords of the arc, from the definition: 2 r sin(half the step).
    const chord = 2 * 100 * Math.sin(1.2 / columns / 2);
    const round = 2 * columns * chord + 2 * 160;
    expect(made.value.length3d).toBeCloseTo(round, 6);
    expect(made.value.lengthFlat).toBeCloseTo(round, 3);
    expect(made.value.border.length).toBe(2 * (columns + rows));
    expect(made.value.flat.strain.summary.areaFlat).toBeCloseTo(columns * chord * 160, 1);
  });
});
