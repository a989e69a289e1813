import { describe, expect, it } from 'vitest';
import { type BodyInput, fitBody, surfaceOfBody } from '../../src/core/body/index.ts';
import { cauchyGirth, denseRow, extent, pointAt } from './measure-surface.ts';
import { DEMO_IDS, fitOrThrow, readDemo } from './read-demo.ts';

const GIRTH_LEVELS = {
  bustGirth: 'bust',
  waistGirth: 'waist',
  hipGirth: 'hip',
  upperChestGirth: 'upperChest',
  underbustGirth: 'underbust',
  highHipGirth: 'highHip',
} as const;

/** A level girth of the finished form may be this far off, mm. */
const GIRTH_TOLERANCE = 0.5;

const ROUGH_AND_FAIR = DEMO_IDS.flatMap((id) => [
  { id, fair: false },
  { id, fair: true },
]);

describe.each(ROUGH_AND_FAIR)('demo body $id, fair: $fair', ({ id, fair }) => {
  const input = readDemo(id);
  const body = fitOrThrow(input, { fair });
  const surface = surfaceOfBody(body);

  it('reads every typed level girth on the surface, by Cauchy’s mean-width formula', () => {
    let checked = 0;
    for (const [measure, levelId] of Object.entries(GIRTH_LEVELS)) {
      const typed = input.measures[measure];
      const level = body.levels.find((l) => l.id === levelId);
      if (typeof typed !== 'number' || !level) continue;
      expect(Math.abs(cauchyGirth(denseRow(surface, level.v)) - typed), measure).toBeLessThan(
        GIRTH_TOLERANCE,
      );
      checked++;
    }
    expect(checked).toBeGreaterThanOrEqual(3);
  });

  it('meets every typed tape, and marks the rest as estimates with a spread', () => {
    for (const tape of body.tapes) {
      const typed = input.measures[tape.id.split('.')[0]] !== undefined;
      expect(tape.status, tape.id).toBe(typed ? 'met' : 'estimated');
      if (typed) expect(Math.abs(tape.got - tape.target), tape.id).toBeLessThan(0.5);
      else expect(tape.spread, tape.id).toBeGreaterThan(0);
    }
  });

  it('is faired when asked', () => {
    expect(body.shape.net !== undefined).toBe(fair);
    expect(body.issues.map((issue) => issue.code)).not.toContain('not-faired');
  });

  it('keeps every level row level, rising from hip to upper chest', () => {
    let below = Number.NEGATIVE_INFINITY;
    for (const level of body.levels) {
      const row = denseRow(surface, level.v, 720);
      expect(extent(row, 2)).toBeLessThan(1e-9);
      expect(row[2]).toBeCloseTo(level.z, 9);
      expect(level.z).toBeGreaterThan(below + 20);
      below = level.z;
    }
  });

  it('has flat armhole edges and a flat neck plate', () => {
    for (const loop of [body.armholes.right, body.armholes.left]) {
      expect(planeDeviation(surface.evaluate(loop))).toBeLessThan(1e-6);
    }
    expect(planeDeviation(denseRow(surface, surface.vRange[1], 360))).toBeLessThan(1e-6);
  });

  it('mirrors exactly when no sided measure differs, and only then', () => {
    const right = pointAt(surface, 0.7, 100);
    const left = pointAt(surface, Math.PI - 0.7, 100);
    expect(body.shape.isMirrorSymmetric).toBe(id !== 'uneven-shoulders');
    if (!body.shape.isMirrorSymmetric) return;
    expect(left[0]).toBeCloseTo(-right[0], 9);
    expect(left[1]).toBeCloseTo(right[1], 9);
    expect(left[2]).toBeCloseTo(right[2], 9);
  });
});

/** Largest distance from the plane through three far points of the loop. */
function planeDeviation(points: Float64Array): number {
  const n = points.length / 3;
  const at = (i: number): [number, number, number] => [points[3 * i], points[3 * i + 1], points[3 * i + 2]];
  const [a, b, c] = [at(0), at(Math.floor(n / 3)), at(Math.floor((2 * n) / 3))];
  const e = b.map((x, k) => x - a[k]);
  const f = c.map((x, k) => x - a[k]);
  const normal = [e[1] * f[2] - e[2] * f[1], e[2] * f[0] - e[0] * f[2], e[0] * f[1] - e[1] * f[0]];
  const size = Math.hypot(...normal);
  let worst = 0;
  for (let i = 0; i < n; i++) {
    const p = at(i);
    const distance = normal.reduce((sum, x, k) => sum + x * (p[k] - a[k]), 0) / size;
    worst = Math.max(worst, Math.abs(distance));
  }
  return worst;
}

describe('fitBody', () => {
  const five = { bustGirth: 940, waistGirth: 765, hipGirth: 1010, backWaistLength: 402, neckBaseGirth: 366 };

  it('makes a body from the five first measures alone', () => {
    const body = fitOrThrow({ figure: 'bust', measures: five });
    const met = body.tapes.filter((t) => t.status === 'met').map((t) => t.id);
    expect(met.sort()).toEqual(Object.keys(five).sort());
  });

  it('lets a typed width and depth override the usual section', () => {
    const body = fitOrThrow({ figure: 'bust', measures: { ...five, waistWidth: 285, waistDepth: 196 } });
    const waist = body.levels.find((l) => l.id === 'waist')!;
    const row = denseRow(surfaceOfBody(body), waist.v);
    expect(Math.abs(extent(row, 0) - 285)).toBeLessThan(0.5);
    expect(Math.abs(extent(row, 1) - 196)).toBeLessThan(0.5);
    expect(Math.abs(cauchyGirth(row) - 765)).toBeLessThan(0.5);
  });

  it('sets one shoulder 20 mm lower when the drops say so', () => {
    const surface = surfaceOfBody(fitOrThrow(readDemo('uneven-shoulders')));
    const [right, left] = [285, 285].map((v, i) => pointAt(surface, i === 0 ? 0 : Math.PI, v));
    expect(Math.abs(right[2] - left[2] - 20)).toBeLessThan(0.5);
  });

  it('follows a section choice: deep is deeper than shallow at the same girth', () => {
    const depthOf = (choice: string): number => {
      const body = fitOrThrow({ figure: 'bust', measures: five, shape: { waistSection: choice } });
      const row = denseRow(surfaceOfBody(body), 0);
      expect(Math.abs(cauchyGirth(row) - 765)).toBeLessThan(0.5);
      return extent(row, 1);
    };
    expect(depthOf('deep')).toBeGreaterThan(depthOf('shallow') + 10);
  });

  it('names both tapes when a nape is measured higher than the back is long', () => {
    // The back cannot be shorter than the straight way up: 418 mm of height, 402 mm of tape.
    const input: BodyInput = { figure: 'bust', measures: { ...five, napeHeight: 1438, waistHeight: 1020 } };
    const result = fitBody(input);
    expect(result.ok).toBe(true);
    const conflicts = result.issues.filter((i) => i.code === 'tape-conflict').map((i) => i.path);
    expect(conflicts).toContain('measures.backWaistLength');
    expect(conflicts).toContain('measures.napeHeight');
    const gaps = result.issues.filter((i) => i.code === 'tape-conflict').map((i) => i.measured ?? 0);
    // Whatever way the blame falls, the gaps of the two must cover the 16 mm.
    expect(gaps.reduce((a, b) => a + b, 0)).toBeGreaterThan(15.5);
  });

  it('starts from a fitted body and ends at the same one', () => {
    const cold = fitOrThrow({ figure: 'bust', measures: { ...five, bustGirth: 950 } });
    const near = fitOrThrow({ figure: 'bust', measures: five });
    const warm = fitBody({ figure: 'bust', measures: { ...five, bustGirth: 950 } }, near);
    expect(warm.ok).toBe(true);
    if (!warm.ok) return;
    const a = denseRow(surfaceOfBody(cold), 118, 72);
    const b = denseRow(surfaceOfBody(warm.value), 118, 72);
    a.forEach((x, i) => {
      expect(Math.abs(x - b[i])).toBeLessThan(1);
    });
  });

  it('refuses bad input without fitting', () => {
    const result = fitBody({
      figure: 'bust',
      measures: { ...five, waistGirth: -1 },
      shape: { seat: 'huge' },
    });
    expect(result.ok).toBe(false);
    expect(result.issues.map((i) => i.path)).toEqual(
      expect.arrayContaining(['measures.waistGirth', 'shape.seat']),
    );
  });
});
