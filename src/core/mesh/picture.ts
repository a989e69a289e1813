import { type DrawingItem, type DrawingStyle, makePath } from '../drawing/index.ts';
import { measureTriangleNormals, measureVertexNormals } from './measure-normals.ts';
import type { Mesh } from './mesh.ts';

export type View = 'front' | 'side' | 'back';

/** Page x of a point as (x, y, z) weights; page y is −z. `toViewer` points from the body to the eye. */
const views: Readonly<
  Record<View, { readonly pageX: readonly [number, number]; readonly toViewer: readonly [number, number] }>
> = {
  // The wearer's right lies on the left of the page.
  front: { pageX: [-1, 0], toViewer: [0, 1] },
  // Seen from the wearer's right, the front is on the right of the page.
  side: { pageX: [0, 1], toViewer: [1, 0] },
  back: { pageX: [1, 0], toViewer: [0, -1] },
};

const darkest = 120;
const lightest = 244;

/**
 * A mesh as flat shaded triangles seen from one side, farthest first, at true size on the page (mm). Triangles turned
 * away are left out. `colourOf` gives the fill of a triangle instead of grey. O(#F log #F).
 */
export function pictureMesh(mesh: Mesh, view: View, colourOf?: (triangle: number) => string): DrawingItem[] {
  const normals = measureTriangleNormals(mesh);
  const { toViewer } = views[view];
  const facing = (f: number) => normals[3 * f] * toViewer[0] + normals[3 * f + 1] * toViewer[1];
  const depthOf = (f: number) => {
    let sum = 0;
    for (let k = 0; k < 3; k++) {
      const v = 3 * mesh.triangles[3 * f + k];
      sum += mesh.positions[v] * toViewer[0] + mesh.positions[v + 1] * toViewer[1];
    }
    return sum;
  };
  const shown = Array.from({ length: mesh.triangles.length / 3 }, (_, f) => f).filter((f) => facing(f) > 0);
  const depths = new Map(shown.map((f) => [f, depthOf(f)]));
  shown.sort((a, b) => depths.get(a)! - depths.get(b)!);
  return shown.map((f) => {
    const grey = Math.round(darkest + (lightest - darkest) * facing(f));
    const fill = colourOf?.(f) ?? `rgb(${grey} ${grey} ${grey})`;
    const style: DrawingStyle = { fill, stroke: fill, strokeWidth: 0.3 };
    return makePath(project(mesh.positions, mesh.triangles.subarray(3 * f, 3 * f + 3), view), {
      closed: true,
      style,
    });
  });
}

/**
 * The stretches of a line of mesh vertices that face the viewer, drawn over a picture of the mesh. A line behind
 * another part of the body is not hidden by it.
 */
export function pictureLine(
  mesh: Mesh,
  vertices: ArrayLike<number>,
  view: View,
  style: DrawingStyle,
  normals: Float64Array = measureVertexNormals(mesh),
): DrawingItem[] {
  const { toViewer } = views[view];
  const stretches: number[][] = [[]];
  for (let i = 0; i < vertices.length; i++) {
    const n = 3 * vertices[i];
    const isFacing = normals[n] * toViewer[0] + normals[n + 1] * toViewer[1] > 0;
    if (isFacing) stretches[stretches.length - 1].push(vertices[i]);
    else if (stretches[stretches.length - 1].length > 0) stretches.push([]);
  }
  return stretches
    .filter((stretch) => stretch.length > 1)
    .map((stretch) => makePath(project(mesh.positions, stretch, view), { style }));
}

/** A line in space (n × 3 mm), drawn whole, also where the mesh is in front of it. */
export function pictureCurve(points: Float64Array, view: View, style: DrawingStyle): DrawingItem {
  return makePath(
    project(
      points,
      Uint32Array.from({ length: points.length / 3 }, (_, i) => i),
      view,
    ),
    { style },
  );
}

function project(positions: Float64Array, vertices: ArrayLike<number>, view: View): Float64Array {
  const [wx, wy] = views[view].pageX;
  const points = new Float64Array(2 * vertices.length);
  for (let i = 0; i < vertices.length; i++) {
    const v = 3 * vertices[i];
    points[2 * i] = positions[v] * wx + positions[v + 1] * wy;
    points[2 * i + 1] = -positions[v + 2];
  }
  return points;
}
