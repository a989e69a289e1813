import { failure, type Issue, type Result, success } from '../base/index.ts';
import type { Drawing, DrawingItem, DrawingLayer } from '../drawing/index.ts';
import { phrase } from './phrases.ts';

/** Lengths of bars a maker may have measured: the long bars of the first page and its square, mm. */
export const BAR_LENGTHS: readonly number[] = [200, 180, 150, 100];
/** More than this is no printer's error but scaling to fit, which no correction should hide. */
const LARGEST_ERROR = 0.04;

/** Factors by which a drawing is stretched so that an inexact printer puts it out true. */
export interface PrintCorrection {
  readonly x: number;
  readonly y: number;
}

export interface MeasuredBars {
  /** What the bar across the page and the bar up the page measure on paper, mm. */
  readonly x: number;
  readonly y: number;
  /** Length both bars should have; absent = the printed bar each is nearest to. */
  readonly bar?: number;
}

/** Nominal ÷ measured in both directions. Fails when a bar is off by more than 4 %: then the printer scaled to fit. */
export function correctionFromBars({ x, y, bar }: MeasuredBars): Result<PrintCorrection> {
  const issues: Issue[] = [];
  const factorOf = (measured: number, path: string): number => {
    const nominal = bar ?? nearestBar(measured);
    const error = measured / nominal - 1;
    if (Math.abs(error) <= LARGEST_ERROR) return nominal / measured;
    issues.push({
      code: 'print-far-off',
      path,
      message: phrase('print.far-off', { bar: nominal, measured, off: error, largest: LARGEST_ERROR }),
      severity: 'error',
      measured,
      limit: nominal * (1 + Math.sign(error) * LARGEST_ERROR),
    });
    return 1;
  };
  const correction = { x: factorOf(x, 'measured-x'), y: factorOf(y, 'measured-y') };
  return issues.length > 0 ? failure(issues) : success(correction);
}

function nearestBar(measured: number): number {
  const off = (bar: number): number => Math.abs(Math.log(measured / bar));
  return BAR_LENGTHS.reduce((best, bar) => (off(bar) < off(best) ? bar : best));
}

/** The page with everything stretched about its middle; the size of letters stays. */
export function correctPage(page: Drawing, { x: sx, y: sy }: PrintCorrection): Drawing {
  if (sx === 1 && sy === 1) return page;
  const [cx, cy] = [page.width / 2, page.height / 2];
  const correct = (item: DrawingItem): DrawingItem =>
    item.kind === 'path'
      ? {
          ...item,
          points: Float64Array.from(item.points, (v, i) =>
            i % 2 === 0 ? cx + sx * (v - cx) : cy + sy * (v - cy),
          ),
        }
      : { ...item, x: cx + sx * (item.x - cx), y: cy + sy * (item.y - cy) };
  const layers = page.layers.map(({ name, items, lettersWithin }): DrawingLayer => {
    const corrected = { name, items: items.map(correct) };
    if (!lettersWithin) return corrected;
    const [minX, maxX] = [lettersWithin.minX, lettersWithin.maxX].map((x) => cx + sx * (x - cx));
    const [minY, maxY] = [lettersWithin.minY, lettersWithin.maxY].map((y) => cy + sy * (y - cy));
    return { ...corrected, lettersWithin: { minX, minY, maxX, maxY } };
  });
  return { ...page, layers };
}
