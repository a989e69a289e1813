import { isInsidePolygon } from '../math/index.ts';
import { sliceMesh } from '../mesh/index.ts';
import type { GapGrid } from './gap-grid.ts';

/** Outside the grid there is nothing to pad. */
const NOTHING = -1e6;

/**
 * Loops (n × 2 (u, v)) round all of a half where the gap is larger than `level` mm; they close along the edges of the half. Holes in
 * them are left out: what lies in a hole is covered too. O(grid).
 */
export function contourLoops({ columns, rows, chart, thickness }: GapGrid, level: number): Float64Array[] {
  // One more vertex beyond every edge, at the same place.
  const [wide, tall] = [columns + 3, rows + 3];
  const positions = new Float64Array(3 * wide * tall);
  const triangles: number[] = [];
  const within = (i: number, most: number) => Math.min(most, Math.max(0, i - 1));
  for (let i = 0; i < tall; i++) {
    for (let j = 0; j < wide; j++) {
      const [row, column] = [within(i, rows), within(j, columns)];
      const at = row * (columns + 1) + column;
      const isBeyond = i === 0 || j === 0 || i === tall - 1 || j === wide - 1;
      positions.set(
        [chart[2 * at], chart[2 * at + 1], isBeyond ? NOTHING : thickness[at] - level],
        3 * (i * wide + j),
      );
      if (i + 1 === tall || j + 1 === wide) continue;
      const a = i * wide + j;
      triangles.push(a, a + 1, a + wide + 1, a, a + wide + 1, a + wide);
    }
  }
  const loops = sliceMesh({ positions, triangles: Uint32Array.from(triangles) }, 2, 0)
    .filter(({ closed }) => closed)
    .map(({ points }) => withoutCrowds(points))
    .filter(({ length }) => length >= 6);
  return loops.filter((loop) => {
    const around = loops.filter((other) => other !== loop && isInsidePolygon(other, loop[0], loop[1]));
    return around.length % 2 === 0;
  });
}

/** Points nearer to the one before than this are left out, mm of the chart: along the edges they come in pairs. */
const CROWDED = 1;
/** mm to a radian, roughly. */
const RADIUS = 110;

function withoutCrowds(loop: Float64Array): Float64Array {
  const kept = [loop[0], loop[1]];
  const isFar = (i: number, u: number, v: number) =>
    Math.hypot(RADIUS * (loop[i] - u), loop[i + 1] - v) > CROWDED;
  for (let i = 2; i < loop.length; i += 2) {
    const [u, v] = kept.slice(-2);
    if (isFar(i, u, v) && isFar(i, loop[0], loop[1])) kept.push(loop[i], loop[i + 1]);
  }
  return Float64Array.from(kept);
}
