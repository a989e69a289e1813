import { failure, type Result, success } from '../base/index.ts';
import { distanceInSpace, measurePolygonArea, reversePolyline } from '../math/index.ts';
import type { ChartSurface, Mesh } from '../mesh/index.ts';
import { checkRegion, unwindLoop } from './check-region.ts';
import { meshCell } from './mesh-cell.ts';
import { sampleSurfaceGrid } from './surface-grid.ts';
import type { SeamForm } from './types.ts';

/** A disk cut out of the body along a loop. */
export interface CutRegion {
  readonly mesh: Mesh;
  /** #V × 2 (u, v); the border's vertices come first, counter-clockwise seen from outside. */
  readonly chart: Float64Array;
  /** Number of border vertices. */
  readonly borderCount: number;
}

/** Points of a drawn loop nearer to the last one kept than this part of the spacing are left out. */
const NEAREST = 0.4;

/**
 * Cuts a freely drawn region out of a body. `loop`: n × 2 (u, v) in either direction, closed by its first point, joined
 * straight in the chart, u the shorter way round, so that it may be given modulo a turn. Triangles have sides of about `spacing` mm; drawn points nearer to
 * each other than 0.4 of it are left out. Issues of `checkRegion`. Cost: about 3,500 surface evaluations, 2 more per vertex.
 */
export function cutRegion(
  surface: ChartSurface,
  form: SeamForm,
  loop: ArrayLike<number>,
  spacing: number,
): Result<CutRegion> {
  // 1. The loop as drawn, then thinned: either may be faulty.
  const drawn = unwindLoop(loop);
  const issues = checkRegion(drawn, surface, form);
  if (issues.length > 0) return failure(issues);
  const kept = thinLoop(drawn, surface, NEAREST * spacing);
  const keptIssues = checkRegion(kept, surface, form);
  if (keptIssues.length > 0) return failure(keptIssues);
  // 2. Counter-clockwise, with points along its sides.
  const border = fillSides(measurePolygonArea(kept) > 0 ? kept : reversePolyline(kept), surface, spacing);
  // 3. Meshed in a chart of half a turn round the region, which is what meshing a cell works in.
  const { turned, toTurned, fromTurned } = turnChart(surface, border);
  const vertices = Uint32Array.from({ length: border.length / 2 }, (_, i) => i);
  const cell = meshCell(vertices, toTurned(border), turned, sampleSurfaceGrid(turned), spacing);
  const chart = fromTurned(cell.chart);
  return success({
    mesh: { positions: surface.evaluate(chart), triangles: cell.triangles },
    chart,
    borderCount: vertices.length,
  });
}

function thinLoop(loop: Float64Array, surface: ChartSurface, nearest: number): Float64Array {
  const p = surface.evaluate(loop);
  const n = loop.length / 2;
  const gap = (a: number, b: number): number => distanceInSpace(p, a, b);
  const kept = [0];
  for (let i = 1; i < n; i++) {
    if (gap(i, kept[kept.length - 1]) >= nearest && gap(i, 0) >= nearest) kept.push(i);
  }
  return Float64Array.from(kept.flatMap((i) => [loop[2 * i], loop[2 * i + 1]]));
}

/** Every side in steps of about `spacing` mm, equal in the chart. */
function fillSides(loop: Float64Array, surface: ChartSurface, spacing: number): Float64Array {
  const probes = 8;
  const out: number[] = [];
  for (let i = 0; i < loop.length; i += 2) {
    const j = (i + 2) % loop.length;
    const at = (t: number): [number, number] => [
      loop[i] + t * (loop[j] - loop[i]),
      loop[i + 1] + t * (loop[j + 1] - loop[i + 1]),
    ];
    const chart = Array.from({ length: probes + 1 }, (_, k) => at(k / probes)).flat();
    const p = surface.evaluate(Float64Array.from(chart));
    let length = 0;
    for (let k = 0; k < probes; k++) length += distanceInSpace(p, k, k + 1);
    const steps = Math.max(1, Math.round(length / spacing));
    for (let k = 0; k < steps; k++) out.push(...at(k / steps));
  }
  return Float64Array.from(out);
}

/** The surface with u turned, and squeezed if need be, so that the region lies within half a turn about u = 0. */
function turnChart(surface: ChartSurface, border: Float64Array) {
  let [least, most] = [border[0], border[0]];
  for (let i = 2; i < border.length; i += 2) {
    least = Math.min(least, border[i]);
    most = Math.max(most, border[i]);
  }
  const centre = (least + most) / 2;
  const squeeze = Math.max(1, (1.05 * (most - least)) / Math.PI);
  const toTurned = (chart: Float64Array): Float64Array =>
    chart.map((x, i) => (i % 2 === 0 ? (x - centre) / squeeze : x));
  const fromTurned = (chart: Float64Array): Float64Array =>
    chart.map((x, i) => (i % 2 === 0 ? centre + squeeze * x : x));
  const turned: ChartSurface = {
    vRange: surface.vRange,
    isMirrorSymmetric: false,
    evaluate: (chart, out) => surface.evaluate(fromTurned(chart), out),
  };
  return { turned, toTurned, fromTurned };
}
