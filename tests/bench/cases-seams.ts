import { cutIntoPanels, findLayout } from '../../src/core/seams/index.ts';
import { inEnglish } from '../in-english.ts';
import { torso } from '../seams/sample-forms.ts';
import type { BenchCase } from './types.ts';

function cutCase(layoutId: string, targetTriangles: number): BenchCase {
  const layout = findLayout(layoutId)!;
  return {
    name: `seams/cut-${layoutId}-${targetTriangles}`,
    run() {
      const result = cutIntoPanels(torso.surface, torso.form, layout, { targetTriangles });
      if (!result.ok)
        throw new Error(
          result.issues
            .map((issue) => issue.message)
            .map(inEnglish)
            .join(' '),
        );
      let sum = 0;
      for (const value of result.value.mesh.positions) sum += value;
      return sum + result.value.mesh.triangles.length;
    },
  };
}

export default [
  cutCase('upright8', 5000),
  cutCase('upright12Bust', 5000),
  cutCase('upright8', 20_000),
  cutCase('upright8', 80_000),
];
