import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { measuresOfRow, readSurveyRows } from '../../src/cli/survey-columns.ts';
import { assembleEnergy, HALF_COLUMNS } from '../../src/core/body/fair-energy.ts';
import { type Body, type Figure, fitBody, surfaceOfBody } from '../../src/core/body/index.ts';
import { KNOT_IDS, RAIL } from '../../src/core/body/rails.ts';
import { sampleNet } from '../../src/core/body/sample-net.ts';
import { TrunkNetEvaluator } from '../../src/core/body/trunk-net.ts';
import { clampKnots, multiplyBanded } from '../../src/core/math/index.ts';
import { measureProfile, type Profile } from './measure-profile.ts';
import { cauchyGirth, denseRow } from './measure-surface.ts';
import { fitOrThrow, readDemo } from './read-demo.ts';

/** A point of one coordinate's cubic B-spline by de Boor's recursion, on plain arrays. */
function deBoor(knots: readonly number[], controls: readonly number[], t: number): number {
  let i = 3;
  while (i < controls.length - 1 && t >= knots[i + 1]) i++;
  const d = [0, 1, 2, 3].map((j) => controls[i - 3 + j]);
  for (let r = 1; r <= 3; r++) {
    for (let j = 3; j >= r; j--) {
      const [low, high] = [knots[i - 3 + j], knots[i + 1 + j - r]];
      const share = (t - low) / (high - low);
      d[j] = (1 - share) * d[j - 1] + share * d[j];
    }
  }
  return d[3];
}

describe('the net of a faired trunk', () => {
  const { net, knots } = fitOrThrow(readDemo('average'), { fair: true }).shape;
  const evaluator = new TrunkNetEvaluator(net!, knots);

  it('is the tensor product of B-splines, by de Boor’s recursion', () => {
    const columns = 24;
    const rows = net!.knots.length - 4;
    const step = (2 * Math.PI) / columns;
    // Unrolled: controls repeat round the body; each stands for its own angle.
    const round = Array.from({ length: columns + 3 }, (_, k) => k - 1);
    const roundKnots = Array.from({ length: columns + 7 }, (_, k) => (k - 3) * step);
    const out = new Float64Array(3);
    for (const [u, v] of [
      [0, -270],
      [0.4, -100],
      [1.9, 33],
      [3.3, 118],
      [4.71, 260],
      [6.2, 430],
      [2.5, 465],
    ]) {
      evaluator.point(u, v, out, 0);
      for (let axis = 0; axis < 3; axis++) {
        const along = round.map((column) =>
          deBoor(
            Array.from(net!.knots),
            Array.from(
              { length: rows },
              (_, row) => net!.controls[3 * (row * columns + ((column + columns) % columns)) + axis],
            ),
            evaluator.riseAt(v),
          ),
        );
        expect(out[axis]).toBeCloseTo(deBoor(roundKnots, along, u), 8);
      }
    }
  });

  it('is mirrored to the last bits of the sums', () => {
    const [a, b] = [new Float64Array(3), new Float64Array(3)];
    for (const [u, v] of [
      [0.3, 20],
      [1.1, 140],
      [-0.8, 300],
    ]) {
      evaluator.point(u, v, a, 0);
      evaluator.point(Math.PI - u, v, b, 0);
      expect(Math.abs(a[0] + b[0])).toBeLessThan(1e-10);
      expect(Math.abs(a[1] - b[1])).toBeLessThan(1e-10);
      expect(Math.abs(a[2] - b[2])).toBeLessThan(1e-10);
    }
  });
});

describe('the energy of a trunk', () => {
  const HEIGHT = 520;
  const knots = clampKnots(Float64Array.from({ length: 21 }, (_, i) => (HEIGHT * i) / 20));
  const rows = knots.length - 4;
  const { even } = assembleEnergy(knots, () => ({ hold: 0, smooth: 1, straight: 0 })).plan;

  /** Of y = cos k (u − π/2) on a cylinder: upright walls, so that only (y‴ + y′)² counts. */
  function energyOfWave(k: number): number {
    const y = new Float64Array(rows * HALF_COLUMNS);
    const half = Math.PI / (HALF_COLUMNS - 1);
    // Controls of a spline through a wave are the wave itself, higher by 6 / (4 + 2 cos of its step).
    const lift = 6 / (4 + 2 * Math.cos(k * half));
    for (let i = 0; i < y.length; i++) y[i] = lift * Math.cos(k * ((i % HALF_COLUMNS) * half - Math.PI));
    const force = new Float64Array(y.length);
    multiplyBanded(even.fair, y, force);
    return y.reduce((sum, value, i) => sum + value * force[i], 0);
  }

  it('is that of the closed form for waves round the body', () => {
    // λ (k³ − k)² π/2 a unit of τ; λ makes waves of 150 mm on a radius of 130 mm count as much as the hold.
    const lambda = (150 / (2 * Math.PI * 130)) ** 6;
    const wanted = (lambda * 6 ** 2 * (Math.PI / 2) * HEIGHT) / 130;
    expect(energyOfWave(2) / wanted).toBeGreaterThan(0.95);
    expect(energyOfWave(2) / wanted).toBeLessThan(1.05);
  });

  it('is nothing for an ellipse, beside that of a wave', () => {
    expect(energyOfWave(1) / energyOfWave(2)).toBeLessThan(1e-3);
  });
});

describe('a trunk that cannot be faired', () => {
  it('is left as it is when rows of the rough trunk are out of order', () => {
    const { shape } = fitOrThrow(readDemo('average'));
    const rails = shape.rails.slice();
    // The side's height at the bust put below the waist.
    rails[RAIL.zS * shape.knots.length + KNOT_IDS.indexOf('bust')] = -10;
    expect(sampleNet(shape)).not.toBeNull();
    expect(sampleNet({ ...shape, rails })).toBeNull();
  });

  it('keeps the rough surface and says so', () => {
    // Underbust and waist of different girth at nearly one height: the tape steps 40 mm in at once.
    const measures = {
      ...readDemo('average').measures,
      backWaistLength: 310,
      sideLength: 115,
      neckToBustPoint: 350,
      underbustGirth: 840,
    };
    const [rough, fair] = [false, true].map((wish) =>
      fitBody({ figure: 'bust', measures }, undefined, { fair: wish }),
    );
    expect(rough.ok && fair.ok && fair.value.shape.net).toBeUndefined();
    expect(fair.issues.filter((issue) => issue.code === 'not-faired').map((i) => i.severity)).toEqual([
      'warning',
    ]);
    expect(rough.ok && fair.ok && fair.value.tapes).toEqual(rough.ok && rough.value.tapes);
  });
});

const GIRTHS = {
  bustGirth: 'bust',
  waistGirth: 'waist',
  hipGirth: 'hip',
  underbustGirth: 'underbust',
} as const;
/** Survey people: public data, see shared/survey/SOURCE.md. Every sixth keeps the test short. */
const EVERY = 6;

describe.each([
  ['survey1988-women', 'bust'],
  ['survey1988-men', 'chest'],
] as const)('faired people of %s', (file, figure) => {
  const people = readSurveyRows(path.join('shared/survey', `${file}.csv`)).filter((_, i) => i % EVERY === 0);
  const bodies = people.flatMap((row) => bothOf(measuresOfRow(row, figure), figure));

  it('are faired, nearly all', () => {
    expect(bodies.length).toBeGreaterThan(0.9 * people.length - 1);
  });

  it('keep their girths, by Cauchy’s mean-width formula, and their lengths, by dense polylines', () => {
    for (const { measures, fair } of bodies) {
      const surface = surfaceOfBody(fair);
      for (const [measure, level] of Object.entries(GIRTHS)) {
        const { v } = fair.levels.find((one) => one.id === level)!;
        const [typed, tape] = [measures[measure], fair.tapes.find((one) => one.id === measure)!];
        if (tape.status !== 'met') continue;
        expect(Math.abs(cauchyGirth(denseRow(surface, v, 1440), 720) - Number(typed)), measure).toBeLessThan(
          0.5,
        );
      }
      const hip = fair.tapes.find((one) => one.id === 'waistToHip')!;
      if (hip.status === 'met') {
        expect(Math.abs(lengthOfSide(fair, -218, 0) - Number(measures.waistToHip))).toBeLessThan(0.5);
      }
    }
  });

  it('turn less often from hollow to full, and less sharply', () => {
    // The armhole's edge and the neck's are left out.
    const lines = {
      side: [0, -218, 178],
      front: [Math.PI / 2, -218, 395],
      back: [-Math.PI / 2, -218, 425],
    } as const;
    for (const [name, [u, from, to]] of Object.entries(lines)) {
      const of = (body: Body): Profile => measureProfile(surfaceOfBody(body), u, from, to);
      const before = bodies.map(({ rough }) => of(rough));
      const after = bodies.map(({ fair }) => of(fair));
      expect(mean(after.map((p) => p.turns)), name).toBeLessThan(mean(before.map((p) => p.turns)));
      expect(median(after.map((p) => p.radius)), name).toBeGreaterThan(median(before.map((p) => p.radius)));
      // A crease tighter than this would strain cloth (common practice, no source).
      expect(median(after.map((p) => p.radius)), name).toBeGreaterThan(15);
    }
  });
});

function bothOf(measures: Readonly<Record<string, number>>, figure: Figure) {
  const rough = fitBody({ figure, measures });
  const fair = fitBody({ figure, measures }, undefined, { fair: true });
  return rough.ok && fair.ok && fair.value.shape.net
    ? [{ measures, rough: rough.value, fair: fair.value }]
    : [];
}

function lengthOfSide(body: Body, from: number, to: number): number {
  const n = 2000;
  const chart = Float64Array.from({ length: 2 * n }, (_, i) =>
    i % 2 === 0 ? 0 : from + ((to - from) * (i >> 1)) / (n - 1),
  );
  const p = surfaceOfBody(body).evaluate(chart);
  let sum = 0;
  for (let i = 3; i < p.length; i += 3)
    sum += Math.hypot(p[i] - p[i - 3], p[i + 1] - p[i - 2], p[i + 2] - p[i - 1]);
  return sum;
}

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
