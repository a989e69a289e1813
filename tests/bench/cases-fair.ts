import { readFileSync } from 'node:fs';
import { type Body, type BodyInput, fitBody } from '../../src/core/body/index.ts';
import { inEnglish } from '../in-english.ts';
import type { BenchCase } from './types.ts';

function readDemo(id: string): BodyInput {
  return JSON.parse(readFileSync(`shared/demos/${id}.loftseam.json`, 'utf8')).body;
}

function fitFair(input: BodyInput, warmFrom?: Body): Body {
  const result = fitBody(input, warmFrom, { fair: true });
  if (!result.ok) throw new Error(inEnglish(result.issues[0].message));
  return result.value;
}

function sumOf(body: Body): number {
  return body.shape.net!.controls.reduce((a, b) => a + b, 0);
}

/** A body of a finished form: from nothing, and from the body before a measure changed. */
function fairCase(id: string): BenchCase {
  return {
    name: `fair/${id}`,
    prepare: () => ({ input: readDemo(id), before: fitFair(readDemo(id)) }),
    run: (({ input, before }: { input: BodyInput; before: Body }) => {
      const measures = { ...input.measures, waistGirth: Number(input.measures.waistGirth) + 4 };
      const start = performance.now();
      const cold = fitFair({ ...input, measures });
      const between = performance.now();
      const warm = fitFair({ ...input, measures }, before);
      return {
        checksum: sumOf(cold) + sumOf(warm),
        partsMs: { cold: between - start, warm: performance.now() - between },
      };
    }) as BenchCase['run'],
  };
}

export default ['average', 'large-bust', 'uneven-shoulders', 'broad-chest'].map(fairCase);
