import { type Body, surfaceOfBody } from '../../core/body/index.ts';
import { cutIntoPanels, LAYOUTS } from '../../core/seams/index.ts';
import type { LayoutLines } from '../calls/index.ts';

/** Enough for a picture of thumb size. */
const SKETCH_TRIANGLES = 1_500;

/** Cuts a coarse shell by a layout and keeps the seams only; null when it does not fit the body. */
export function sketchLayout(body: Body, layoutId: string): LayoutLines | null {
  const layout = LAYOUTS.find(({ id }) => id === layoutId);
  if (!layout) return null;
  const shell = cutIntoPanels(surfaceOfBody(body), body, layout, { targetTriangles: SKETCH_TRIANGLES });
  if (!shell.ok) return null;
  const { positions } = shell.value.mesh;
  return shell.value.seams.map(({ points }) => {
    const line = new Float64Array(3 * points.length);
    points.forEach((vertex, i) => {
      line.set(positions.subarray(3 * vertex, 3 * vertex + 3), 3 * i);
    });
    return line;
  });
}
