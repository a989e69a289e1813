import { cubicSpanPolynomials, findSplineInterval } from '../math/index.ts';
import { makeChartRise } from './chart-rise.ts';
import type { TrunkNet } from './types.ts';

/** Controls round the body; even in number and a multiple of four, so that the centres and sides are among them. */
export const NET_COLUMNS = 24;
export const COLUMN_STEP = (2 * Math.PI) / NET_COLUMNS;

/** Numbers a row of controls. */
const ROW_STRIDE = 3 * NET_COLUMNS;

/** Evaluates the faired trunk; make it once per net. */
export class TrunkNetEvaluator {
  /** Rises where spans begin and end. */
  private readonly breaks: Float64Array;
  /** 16 coefficients a span. */
  private readonly polynomials: Float64Array;
  private readonly riseOf: (v: number) => number;
  private readonly along = new Float64Array(4);
  private readonly round = new Float64Array(4);
  private row = -1;
  private rowV = Number.NaN;

  /** `chartKnots`: the chart heights that belong to the net's rises. */
  constructor(
    private readonly net: TrunkNet,
    chartKnots: Float64Array,
  ) {
    this.riseOf = makeChartRise(chartKnots, net.rises);
    const { knots } = net;
    this.breaks = knots.slice(3, -3);
    this.polynomials = new Float64Array(16 * (this.breaks.length - 1));
    for (let i = 0; i < this.breaks.length - 1; i++) {
      this.polynomials.set(cubicSpanPolynomials(knots, i + 3), 16 * i);
    }
  }

  /** The rise of a chart height. */
  riseAt(v: number): number {
    return this.riseOf(v);
  }

  /** First row of controls that the chart height v reads; their four weights go to `weights`. */
  weightsAlong(v: number, weights: Float64Array): number {
    const t = this.riseOf(v);
    const span = findSplineInterval(this.breaks, t);
    const s = (t - this.breaks[span]) / (this.breaks[span + 1] - this.breaks[span]);
    const p = this.polynomials;
    for (let b = 0, k = 16 * span; b < 4; b++, k += 4) {
      weights[b] = p[k] + s * (p[k + 1] + s * (p[k + 2] + s * p[k + 3]));
    }
    return span;
  }

  /** The point at (u, v), written to out[offset…offset + 2]. */
  point(u: number, v: number, out: Float64Array, offset: number): void {
    if (v !== this.rowV) {
      this.row = this.weightsAlong(v, this.along);
      this.rowV = v;
    }
    const { controls } = this.net;
    const { along, round } = this;
    let column = weightsRound(u, round);
    let x = 0;
    let y = 0;
    let z = 0;
    for (let a = 0; a < 4; a++) {
      let k = this.row * ROW_STRIDE + 3 * column;
      const w = round[a];
      for (let b = 0; b < 4; b++, k += ROW_STRIDE) {
        const weight = w * along[b];
        x += weight * controls[k];
        y += weight * controls[k + 1];
        z += weight * controls[k + 2];
      }
      if (++column === NET_COLUMNS) column = 0;
    }
    out[offset] = x;
    out[offset + 1] = y;
    out[offset + 2] = z;
  }
}

/** First column that u reads (the next three follow, round and round); their four weights go to `weights`. */
export function weightsRound(u: number, weights: Float64Array): number {
  const at = u / COLUMN_STEP;
  const cell = Math.floor(at);
  const f = at - cell;
  const g = 1 - f;
  weights[0] = (g * g * g) / 6;
  weights[1] = (4 - f * f * (6 - 3 * f)) / 6;
  weights[2] = (4 - g * g * (6 - 3 * g)) / 6;
  weights[3] = (f * f * f) / 6;
  const first = (cell - 1) % NET_COLUMNS;
  return first < 0 ? first + NET_COLUMNS : first;
}
