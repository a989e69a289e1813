import type { DrawingItem } from '../drawing/index.ts';
import { cross } from '../math/index.ts';
import { measureVertexNormals, pictureLine, pictureMesh, type View } from '../mesh/index.ts';
import { measureBend } from './measure-bend.ts';
import type { SeamedShell } from './types.ts';

/** mm of tooth for a line that turns with a radius of one mm: 25 mm at a radius of 100 mm. */
const TOOTH_SCALE = 2500;

/**
 * The shell from one side with a comb on every seam: a tooth at each point, as long as the line turns sharply there, on
 * the side away from which it turns, and a line over the tips. A fair line has a smooth comb. True size, mm.
 */
export function pictureBend(shell: SeamedShell, view: View): DrawingItem[] {
  const { mesh, seams } = shell;
  const normals = measureVertexNormals(mesh);
  const items: DrawingItem[] = [...pictureMesh(mesh, view)];
  for (const { points } of seams) {
    items.push(...pictureLine(mesh, points, view, { stroke: '#9b2226', strokeWidth: 1.2 }, normals));
    const bend = measureBend(mesh.positions, normals, points);
    const comb = combOf(mesh.positions, normals, points, bend);
    const style = { stroke: '#1f5f8b', strokeWidth: 0.5 };
    const count = points.length;
    for (let i = 1; i + 1 < count; i++)
      items.push(...pictureLine(comb.mesh, [i, count + i], view, style, comb.normals));
    const tips = points.map((_, i) => count + i);
    items.push(...pictureLine(comb.mesh, tips, view, { ...style, strokeWidth: 0.8 }, comb.normals));
  }
  return items;
}

/** Feet of the teeth, then their tips, as loose vertices with the normals of the feet. */
function combOf(positions: Float64Array, normals: Float64Array, points: Uint32Array, bend: Float64Array) {
  const count = points.length;
  const out = new Float64Array(6 * count);
  const outNormals = new Float64Array(6 * count);
  for (let i = 0; i < count; i++) {
    const v = 3 * points[i];
    const [from, to] = [3 * points[Math.max(0, i - 1)], 3 * points[Math.min(count - 1, i + 1)]];
    const normal = normals.subarray(v, v + 3);
    const left = cross(
      normal,
      [0, 1, 2].map((k) => positions[to + k] - positions[from + k]),
    );
    const length = Math.hypot(...left);
    for (let k = 0; k < 3; k++) {
      out[3 * i + k] = positions[v + k];
      out[3 * (count + i) + k] = positions[v + k] - (TOOTH_SCALE * bend[i] * left[k]) / length;
      outNormals[3 * i + k] = normal[k];
      outNormals[3 * (count + i) + k] = normal[k];
    }
  }
  return { mesh: { positions: out, triangles: new Uint32Array(0) }, normals: outNormals };
}
