import { readFileSync } from 'node:fs';
import {
  type NestItem,
  type NestPlan,
  type NestProblem,
  type NestTurn,
  nest,
} from '../../src/core/nesting/index.ts';

export const UPRIGHT: NestTurn = { angle: 0, mirrored: false };
export const TURNED: NestTurn = { angle: Math.PI, mirrored: false };

/** An instance of `shared/nesting`, in the form SOURCE.md there tells. */
export function readInstance(name: string, budget: number): NestProblem & { readonly width: number } {
  const { stripWidth, pieces } = JSON.parse(readFileSync(`shared/nesting/${name}.json`, 'utf8')) as {
    stripWidth: number;
    pieces: { count: number; rotations: number[]; outline: [number, number][] }[];
  };
  const items = pieces.flatMap(({ count, rotations, outline }, k) =>
    Array.from({ length: count }, (_, n) => ({
      id: `${k}.${n}`,
      outline: Float64Array.from(outline.flat()),
      turns: rotations.map((degrees) => ({ angle: (degrees * Math.PI) / 180, mirrored: false })),
    })),
  );
  return { items, gap: 0, width: stripWidth, budget, seed: 1 };
}

export function rectangle(id: string, width: number, height: number, more: Partial<NestItem> = {}): NestItem {
  return {
    id,
    outline: Float64Array.of(0, 0, width, 0, width, height, 0, height),
    turns: [UPRIGHT],
    ...more,
  };
}

/** A problem of these items, with what is not usual. */
export function problemOf(items: readonly NestItem[], more: Partial<NestProblem>): NestProblem {
  return { items, gap: 0, budget: 20_000, seed: 1, ...more };
}

/** The last plan; throws where there is none. */
export function planOf(problem: NestProblem): NestPlan {
  const work = nest(problem);
  for (;;) {
    const step = work.next();
    if (!step.done) continue;
    if (!step.value.ok) throw new Error(step.value.issues.map(({ code }) => code).join());
    return step.value.value;
  }
}
