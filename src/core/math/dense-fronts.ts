import { factorPanel, updateRest } from './factor-front.ts';

/** Numbers a sparse factor keeps, and what is largest of its fronts. */
export interface FrontSizes {
  readonly panels: number;
  readonly stack: number;
  readonly front: number;
  readonly width: number;
}

/** Memory of a sparse factor and the dense work on it; see `factor-front.ts` for what the two functions do. */
export interface DenseFronts {
  readonly panels: Float64Array;
  readonly stack: Float64Array;
  factorPanel(at: number, rows: number, width: number, stopEarly: boolean): number;
  /** `stride`: from one row of the remainder to the next. */
  updateRest(at: number, rows: number, width: number, restAt: number, stride: number): void;
}

/** In plain loops. */
export function plainFronts(sizes: FrontSizes): DenseFronts {
  const panels = new Float64Array(sizes.panels);
  const stack = new Float64Array(sizes.stack);
  const scaled = new Float64Array(sizes.front * sizes.width);
  const inversePivots = new Float64Array(sizes.width);
  return {
    panels,
    stack,
    factorPanel: (at, rows, width, stopEarly) =>
      factorPanel(panels, at, rows, width, scaled, inversePivots, stopEarly),
    updateRest: (at, rows, width, restAt, stride) =>
      updateRest(panels, at, rows, width, scaled, stack, restAt, stride),
  };
}
