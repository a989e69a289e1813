import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';
import { believeBody } from '../../src/core/body/believe-body.ts';
import { fitBody, surfaceOfBody, uncertaintyOfBody } from '../../src/core/body/index.ts';
import { suggestMeasures } from '../../src/core/body/suggest-measures.ts';
import { DEMO_IDS, fitOrThrow, readDemo } from './read-demo.ts';

const FIVE = ['bustGirth', 'waistGirth', 'hipGirth', 'backWaistLength', 'neckBaseGirth'];

function onlyFive(id: (typeof DEMO_IDS)[number]) {
  const demo = readDemo(id);
  return {
    figure: demo.figure,
    measures: Object.fromEntries(FIVE.map((measure) => [measure, demo.measures[measure]])),
  };
}

/** A normal deviate by Box and Muller. */
function normals(seed: number): () => number {
  const random = seededRandom(seed);
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

describe('suggestMeasures', () => {
  it('agrees with simulated people of a linear Gaussian world', () => {
    // Three unknowns x ~ N(0, C), two places y = S x, one reading g·x + noise. The best guess after the reading misses by
    // what least squares over the simulated people themselves leaves: no covariance formula enters.
    const mix = [
      [3, 0, 0],
      [1, 2, 0],
      [-1, 0.5, 1.5],
    ];
    const covariance = Float64Array.from(
      mix.flatMap((a) => mix.map((b) => a.reduce((sum, x, k) => sum + x * b[k], 0))),
    );
    const sensitivity = Float64Array.from([1, 0.5, -0.3, 0.2, -1, 1]);
    const gradient = Float64Array.from([0.7, 1, 0.4]);
    const error = 2;
    const weights = Float64Array.from([0.25, 0.75]);
    const { spread, suggestions } = suggestMeasures(
      { figure: 'bust' },
      {
        count: 3,
        covariance,
        sensitivity,
        candidates: new Map([['waistWidth', { gradient, error }]]),
        grid: { around: 2, rows: 1, weights },
      },
    );
    const normal = normals(5);
    const people = Array.from({ length: 200_000 }, () => {
      const z = [normal(), normal(), normal()];
      const x = mix.map((row) => row.reduce((sum, a, k) => sum + a * z[k], 0));
      const places = [0, 1].map((i) => x.reduce((sum, v, k) => sum + sensitivity[3 * i + k] * v, 0));
      return { places, read: x.reduce((sum, v, k) => sum + gradient[k] * v, 0) + error * normal() };
    });
    const sum = (of: (p: (typeof people)[number]) => number) => people.reduce((total, p) => total + of(p), 0);
    const readSquare = sum(({ read }) => read * read);
    let [before, after] = [0, 0];
    for (const i of [0, 1]) {
      const slope = sum(({ read, places }) => read * places[i]) / readSquare;
      before += (weights[i] * sum(({ places }) => places[i] ** 2)) / people.length;
      after += (weights[i] * sum(({ read, places }) => (places[i] - slope * read) ** 2)) / people.length;
    }
    // 200 000 people: a mean square is good to about 0.4 %, its root to half of that.
    expect(spread / Math.sqrt(before)).toBeCloseTo(1, 2);
    expect(suggestions[0].after / Math.sqrt(after)).toBeCloseTo(1, 2);
    expect(after).toBeLessThan(0.95 * before);
  });
});

describe('uncertaintyOfBody', () => {
  it.each(DEMO_IDS)(
    '%s: every measure helps, none that was typed is asked for, the best goes first',
    (id) => {
      const input = onlyFive(id);
      const { spread, suggestions } = uncertaintyOfBody(input, fitOrThrow(input));
      expect(suggestions.length).toBeGreaterThan(15);
      suggestions.forEach(({ id: measure, before, after }, i) => {
        expect(input.measures[measure]).toBeUndefined();
        expect(before).toBe(spread);
        expect(after).toBeLessThanOrEqual(before);
        if (i > 0) expect(after).toBeGreaterThanOrEqual(suggestions[i - 1].after);
      });
      expect(suggestions[0].after).toBeLessThan(0.99 * spread);
    },
  );

  it('is less when what it asked for was measured, by about what it promised', () => {
    const input = onlyFive('average');
    const body = fitOrThrow(input);
    const { suggestions } = uncertaintyOfBody(input, body);
    const [{ id, before, after }] = suggestions;
    // The person is as foretold, so the shape stays and only knowledge comes in.
    const reading = body.tapes.find((tape) => tape.id === id)!.got;
    const told = { ...input, measures: { ...input.measures, [id]: reading } };
    const { spread } = uncertaintyOfBody(told, fitOrThrow(told));
    expect(spread).toBeLessThan(before);
    // What follows from it for other estimates, which the promise leaves out, may make it better still.
    expect(spread).toBeLessThan(after + 0.25 * (before - after));
  });

  it('has a veil alike on both sides of a body alike, that is thin where tapes lie', () => {
    const input = onlyFive('average');
    const body = fitOrThrow(input);
    const { veil } = uncertaintyOfBody(input, body);
    expect(veil.spreads).toHaveLength(veil.around * veil.rows);
    const at = (row: number, k: number) =>
      veil.spreads[row * veil.around + ((k + veil.around) % veil.around)];
    for (let row = 0; row < veil.rows; row++) {
      for (let k = 0; k < veil.around; k++) {
        expect(at(row, k)).toBeGreaterThan(0);
        expect(at(row, k)).toBeLessThan(40);
        expect(at(row, veil.around / 2 - k)).toBeCloseTo(at(row, k), 6);
      }
    }
  });

  it('moves its places as the surface does', () => {
    // The surface itself, evaluated at a body a step away: the oracle is the difference of two surfaces.
    const input = onlyFive('average');
    const body = fitOrThrow(input);
    const wider = fitOrThrow({ ...input, measures: { ...input.measures, hipGirth: 1020 } });
    const believed = believeBody(input, body);
    const { around, rows } = believed.grid;
    const step = wider.unknowns.map((x, i) => x - body.unknowns[i]);
    const [low, high] = body.shape.vRange;
    let checked = 0;
    for (let row = 2; row < 8; row++) {
      for (const k of [0, 2, 22]) {
        const chart = Float64Array.from([
          (2 * Math.PI * k) / around,
          low + ((high - low) * row) / (rows - 1),
        ]);
        const before = surfaceOfBody(body).evaluate(chart);
        const after = surfaceOfBody(wider).evaluate(chart);
        const moved = Math.hypot(...after.map((x, i) => x - before[i]));
        const place = row * around + k;
        const across = step.reduce(
          (sum, dx, j) => sum + dx * believed.sensitivity[place * believed.count + j],
          0,
        );
        // Across the surface never further than in all.
        expect(Math.abs(across)).toBeLessThan(moved + 0.05);
        checked++;
      }
    }
    expect(checked).toBe(18);
  });

  it('refuses nothing: an unlike body has its veil too', () => {
    const input = readDemo('uneven-shoulders');
    const fitted = fitBody(input);
    expect(fitted.ok).toBe(true);
    if (fitted.ok) expect(uncertaintyOfBody(input, fitted.value).suggestions.length).toBeGreaterThan(5);
  });
});
