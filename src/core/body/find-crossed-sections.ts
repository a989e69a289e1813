import type { Issue } from '../base/index.ts';
import { phrase } from './phrases.ts';
import { sampleRow } from './tape-paths.ts';
import type { TapeContext } from './tape-rule.ts';
import type { BodyLevel } from './types.ts';

/**
 * True when a closed row (n × 3) runs once round its middle without turning back: then it cannot cross itself in plan.
 */
export function isStarShaped(row: Float64Array): boolean {
  const n = row.length / 3;
  let x = 0;
  let y = 0;
  for (let i = 0; i < row.length; i += 3) {
    x += row[i] / n;
    y += row[i + 1] / n;
  }
  for (let i = 0; i < n; i++) {
    const a = 3 * i;
    const b = 3 * ((i + 1) % n);
    const turn = (row[a] - x) * (row[b + 1] - y) - (row[a + 1] - y) * (row[b] - x);
    if (!(turn > 0)) return false;
  }
  return true;
}

/** Levels whose section would cross or fold onto itself; each is refused by name. */
export function findCrossedSections(context: TapeContext, levels: readonly BodyLevel[]): Issue[] {
  return levels
    .filter((level) => !isStarShaped(sampleRow(context.evaluator, level.v)))
    .map((level) => ({
      code: 'section-crosses-itself',
      path: `measures.${level.id}Girth`,
      severity: 'error',
      message: phrase('body.section-crosses', { level: level.name }),
    }));
}
