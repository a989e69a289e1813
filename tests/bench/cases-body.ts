import { readFileSync } from 'node:fs';
import { type Body, type BodyInput, fitBody, surfaceOfBody } from '../../src/core/body/index.ts';
import { inEnglish } from '../in-english.ts';
import type { BenchCase } from './types.ts';

function readAverage(): BodyInput {
  return JSON.parse(readFileSync('shared/demos/average.loftseam.json', 'utf8')).body;
}

function fitOnce(input: BodyInput, warmFrom?: Body): Body {
  const result = fitBody(input, warmFrom);
  if (!result.ok)
    throw new Error(
      result.issues
        .map((i) => i.message)
        .map(inEnglish)
        .join(' '),
    );
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

/**
 * A slider dragged: refit from the body before, then every vertex of the shown grid again. Parts: `cold` is the same
 * without a body to start from; `vertices-1k` is the time of a thousand vertices.
 */
function dragCase(vertices: number): BenchCase {
  let step = 0;
  return {
    name: `body/drag-refit-remesh-${vertices}`,
    prepare: () => ({ input: readAverage(), body: fitOnce(readAverage()), chart: chartOf(vertices) }),
    run: (({ input, body, chart }: { input: BodyInput; body: Body; chart: Float64Array }) => {
      const moved = { ...input, measures: { ...input.measures, bustGirth: 940 + 2 * (1 + (step++ % 5)) } };
      const start = performance.now();
      const cold = fitOnce(moved);
      const afterCold = performance.now();
      const warm = fitOnce(moved, body);
      const afterWarm = performance.now();
      const points = surfaceOfBody(warm).evaluate(chart);
      const remesh = performance.now() - afterWarm;
      const refit = afterWarm - afterCold;
      return {
        checksum: sumOf(points) + sumOf(cold.unknowns),
        partsMs: {
          cold: afterCold - start,
          'refit-and-remesh': refit + remesh,
          'warm-over-cold-%': (100 * refit) / (afterCold - start),
          'vertices-1k': (1000 * remesh) / vertices,
        },
      };
    }) as BenchCase['run'],
  };
}

function chartOf(points: number): Float64Array {
  return Float64Array.from({ length: 2 * points }, (_, i) =>
    i % 2 === 0 ? (i * 0.618) % 6.28 : -270 + ((i * 7.3) % 735),
  );
}

function surfaceCase(points: number): BenchCase {
  return {
    name: `body/evaluate-${points}-points`,
    prepare: () => ({
      surface: surfaceOfBody(fitOnce(readAverage())),
      chart: chartOf(points),
    }),
    run: (({ surface, chart }: { surface: ReturnType<typeof surfaceOfBody>; chart: Float64Array }) =>
      sumOf(surface.evaluate(chart))) as BenchCase['run'],
  };
}

export default [
  { name: 'body/fit-cold', run: () => sumOf(fitOnce(readAverage()).unknowns) } satisfies BenchCase,
  warm,
  dragCase(2_500),
  dragCase(10_000),
  dragCase(100_000),
  surfaceCase(10_000),
  surfaceCase(200_000),
];
