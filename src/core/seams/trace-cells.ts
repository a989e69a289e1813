import { assertInvariant } from '../base/index.ts';
import { CHART_RADIUS } from './fair-curve.ts';
import type { SampledNetwork } from './sample-network.ts';

/** A region of the right half bounded by stretches, counter-clockwise in the chart. */
export interface Cell {
  /** Border vertices in order; a vertex on a slit comes twice. */
  readonly border: Uint32Array;
  /** Stretches along the border, with direction. */
  readonly sides: readonly { readonly stretch: number; readonly isForward: boolean }[];
}

/**
 * The regions of a planar network: each directed stretch is followed by the next one clockwise from its reverse at its
 * end (a walk with the region on the left). The walk round everything and the armhole's inside are left out.
 * O(S log S). Precondition: stretches meet in nodes only.
 */
export function traceCells(network: SampledNetwork): Cell[] {
  const { stretches, chart } = network;
  // Dart 2s runs along stretch s, dart 2s + 1 against it.
  const fans = new Map<number, { dart: number; angle: number }[]>();
  const originOf = (dart: number): number => {
    const { vertices } = stretches[dart >> 1];
    return (dart & 1) === 0 ? vertices[0] : vertices[vertices.length - 1];
  };
  for (let dart = 0; dart < 2 * stretches.length; dart++) {
    const { vertices } = stretches[dart >> 1];
    const a = originOf(dart);
    const b = (dart & 1) === 0 ? vertices[1] : vertices[vertices.length - 2];
    const angle = Math.atan2(
      chart[2 * b + 1] - chart[2 * a + 1],
      CHART_RADIUS * (chart[2 * b] - chart[2 * a]),
    );
    const fan = fans.get(a) ?? [];
    fan.push({ dart, angle });
    fans.set(a, fan);
  }
  const following = new Int32Array(2 * stretches.length);
  for (const fan of fans.values()) {
    fan.sort((a, b) => a.angle - b.angle);
    fan.forEach(({ dart }, i) => {
      following[dart ^ 1] = fan[(i + fan.length - 1) % fan.length].dart;
    });
  }
  const isSeen = new Uint8Array(2 * stretches.length);
  const cells: Cell[] = [];
  for (let start = 0; start < isSeen.length; start++) {
    if (isSeen[start]) continue;
    const darts: number[] = [];
    for (let dart = start; !isSeen[dart]; dart = following[dart]) {
      isSeen[dart] = 1;
      darts.push(dart);
    }
    const border = darts.flatMap((dart) => {
      const { vertices } = stretches[dart >> 1];
      return Array.from((dart & 1) === 0 ? vertices.subarray(0, -1) : vertices.subarray(1).toReversed());
    });
    const isHole = darts.every((dart) => stretches[dart >> 1].kind === 'armhole');
    if (isHole || measureTwiceArea(border, chart) <= 0) continue;
    cells.push({
      border: Uint32Array.from(border),
      sides: darts.map((dart) => ({ stretch: dart >> 1, isForward: (dart & 1) === 0 })),
    });
  }
  assertInvariant(cells.length > 0, 'seams', 'a network has at least one region', cells.length);
  return cells;
}

function measureTwiceArea(border: readonly number[], chart: Float64Array): number {
  let sum = 0;
  border.forEach((a, i) => {
    const b = border[(i + 1) % border.length];
    sum += chart[2 * a] * chart[2 * b + 1] - chart[2 * b] * chart[2 * a + 1];
  });
  return sum;
}
