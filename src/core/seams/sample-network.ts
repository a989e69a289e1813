import type { ChartSurface } from '../mesh/index.ts';
import type { Network, Stretch } from './build-network.ts';
import { CHART_RADIUS } from './fair-curve.ts';

/** A stretch with its points: vertex ids from `from` to `to`, both nodes included. */
export interface SampledStretch extends Stretch {
  readonly vertices: Uint32Array;
}

export interface SampledNetwork {
  readonly stretches: readonly SampledStretch[];
  /** #V × 2; the nodes come first, with their own numbers. */
  readonly chart: Float64Array;
}

/**
 * Puts points on every stretch at equal steps of about `spacing` mm along the body, at least one step each.
 * Arc length is read from chords of a four times finer sampling. Cost: one batch of about 4 · total length / spacing
 * evaluations.
 */
export function sampleNetwork(network: Network, surface: ChartSurface, spacing: number): SampledNetwork {
  const starts: number[] = [0];
  for (const stretch of network.stretches)
    starts.push(starts[starts.length - 1] + fineSteps(stretch, spacing) + 1);
  const fine = new Float64Array(2 * starts[starts.length - 1]);
  network.stretches.forEach((stretch, s) => {
    const steps = starts[s + 1] - starts[s] - 1;
    for (let i = 0; i <= steps; i++) {
      const t = stretch.tFrom + ((stretch.tTo - stretch.tFrom) * i) / steps;
      fine.set(stretch.curve.at(t), 2 * (starts[s] + i));
    }
  });
  const positions = surface.evaluate(fine);
  const chart: number[] = network.nodes.flat();
  const stretches = network.stretches.map((stretch, s) => {
    const vertices = [stretch.from];
    for (const t of placeAlong(stretch, positions.subarray(3 * starts[s], 3 * starts[s + 1]), spacing)) {
      vertices.push(chart.length / 2);
      chart.push(...stretch.curve.at(t));
    }
    vertices.push(stretch.to);
    return { ...stretch, vertices: Uint32Array.from(vertices) };
  });
  return { stretches, chart: Float64Array.from(chart) };
}

function fineSteps(stretch: Stretch, spacing: number): number {
  // Chart length by nine samples; the chart's scale is near the body's.
  let length = 0;
  for (let i = 0; i < 8; i++) {
    const a = stretch.curve.at(stretch.tFrom + ((stretch.tTo - stretch.tFrom) * i) / 8);
    const b = stretch.curve.at(stretch.tFrom + ((stretch.tTo - stretch.tFrom) * (i + 1)) / 8);
    length += Math.hypot(CHART_RADIUS * (b[0] - a[0]), b[1] - a[1]);
  }
  return Math.max(8, Math.ceil((4 * length) / spacing));
}

/** Curve parameters of the inner points at equal steps of arc length. */
function placeAlong(stretch: Stretch, positions: Float64Array, spacing: number): number[] {
  const count = positions.length / 3;
  const along = new Float64Array(count);
  for (let i = 1; i < count; i++) {
    const k = 3 * i;
    along[i] =
      along[i - 1] +
      Math.hypot(
        positions[k] - positions[k - 3],
        positions[k + 1] - positions[k - 2],
        positions[k + 2] - positions[k - 1],
      );
  }
  const total = along[count - 1];
  const steps = Math.max(1, Math.round(total / spacing));
  const out: number[] = [];
  let i = 0;
  for (let k = 1; k < steps; k++) {
    const wanted = (total * k) / steps;
    while (along[i + 1] < wanted) i++;
    const fraction = i + (wanted - along[i]) / (along[i + 1] - along[i]);
    out.push(stretch.tFrom + ((stretch.tTo - stretch.tFrom) * fraction) / (count - 1));
  }
  return out;
}
