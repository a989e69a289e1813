import { readFileSync } from 'node:fs';
import { type Body, type BodyInput, fitBody, surfaceOfBody } from '../../src/core/body/index.ts';
import type { BenchCase } from './types.ts';

function readAverage(): BodyInput {
  return JSON.parse(readFileSync('shared/demos/average.loftseam.json', 'utf8')).body;
}

function fitOnce(input: BodyInput, warmFrom?: Body): Body {
  const result = fitBody(input, warmFrom);
  if (!result.ok) throw new Error(result.issues.map((i) => i.message).join(' '));
  return result.value;
}

function sumOf(values: Float64Array): number {
  return values.reduce((a, b) => a + b, 0);
}

/** A slider dragged over the bust girth: each step starts from the one before. */
const warm: BenchCase = {
  name: 'body/fit-warm-10-steps-of-2-mm',
  prepare: () => ({ input: readAverage(), body: fitOnce(readAverage()) }),
  run: (({ input, body }: { input: BodyInput; body: Body }) => {
    let now = body;
    for (let i = 1; i <= 10; i++) {
      now = fitOnce({ ...input, measures: { ...input.measures, bustGirth: 940 + 2 * i } }, now);
    }
    return sumOf(now.unknowns);
  }) as BenchCase['run'],
};

function surfaceCase(points: number): BenchCase {
  return {
    name: `body/evaluate-${points}-points`,
    prepare: () => ({
      surface: surfaceOfBody(fitOnce(readAverage())),
      chart: Float64Array.from({ length: 2 * points }, (_, i) =>
        i % 2 === 0 ? (i * 0.618) % 6.28 : -270 + ((i * 7.3) % 735),
      ),
    }),
    run: (({ surface, chart }: { surface: ReturnType<typeof surfaceOfBody>; chart: Float64Array }) =>
      sumOf(surface.evaluate(chart))) as BenchCase['run'],
  };
}

export default [
  { name: 'body/fit-cold', run: () => sumOf(fitOnce(readAverage()).unknowns) } satisfies BenchCase,
  warm,
  surfaceCase(10_000),
  surfaceCase(200_000),
];
