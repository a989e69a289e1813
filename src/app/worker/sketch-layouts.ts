import { type Body, surfaceOfBody } from '../../core/body/index.ts';
import { cutIntoPanels, LAYOUTS } from '../../core/seams/index.ts';
import type { LayoutLines } from '../calls/index.ts';

/** Enough for a picture of thumb size. */
const SKETCH_TRIANGLES = 1_500;

/** Cuts a coarse shell by every layout and keeps the seams only. A layout that does not fit the body is left out. */
export function sketchLayouts(body: Body): LayoutLines {
  const surface = surfaceOfBody(body);
  const sketches: Record<string, Float64Array[]> = {};
  for (const layout of LAYOUTS) {
    const shell = cutIntoPanels(surface, body, layout, { targetTriangles: SKETCH_TRIANGLES });
    if (!shell.ok) continue;
    const { positions } = shell.value.mesh;
    sketches[layout.id] = shell.value.seams.map(({ points }) => {
      const line = new Float64Array(3 * points.length);
      points.forEach((vertex, i) => {
        line.set(positions.subarray(3 * vertex, 3 * vertex + 3), 3 * i);
      });
      return line;
    });
  }
  return sketches;
}
