import { factorPanel, updateRest } from './factor-front.ts';

/** Numbers a sparse factor keeps, and what is largest of its fronts. */
export interface FrontSizes {
  readonly panels: number;
  readonly stack: number;
  readonly front: number;
  readonly width: number;
  /** Of the whole system. */
  readonly unknowns: number;
}

/** Four right sides in work at once: four numbers together for each unknown, and for each row below a front's own columns. */
export interface FourRights {
  /** #unknowns × 4, in elimination order. */
  readonly own: Float64Array;
  /** #rows below × 4. */
  readonly below: Float64Array;
  /** below −= L of the rows below · own of the front's columns from `first` on. */
  pushDown(at: number, rows: number, width: number, first: number): void;
  /** own of the front's columns −= (L of the rows below)ᵀ · below. */
  pullUp(at: number, rows: number, width: number, first: number): void;
}

/** Memory of a sparse factor and the dense work on it; see `factor-front.ts` for what the two functions do. */
export interface DenseFronts {
  readonly panels: Float64Array;
  readonly stack: Float64Array;
  factorPanel(at: number, rows: number, width: number, stopEarly: boolean): number;
  /** `stride`: from one row of the remainder to the next. */
  updateRest(at: number, rows: number, width: number, restAt: number, stride: number): void;
  /** Where four solves at once pay; same bits as one by one. */
  readonly four?: FourRights;
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
