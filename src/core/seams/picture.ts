import type { DrawingItem } from '../drawing/index.ts';
import { measureVertexNormals, pictureLine, pictureMesh, type View } from '../mesh/index.ts';
import type { SeamedShell } from './types.ts';

/** The shell from one side with its seams (strong) and level lines (thin), true size, mm. */
export function pictureShell(shell: SeamedShell, view: View): DrawingItem[] {
  const normals = measureVertexNormals(shell.mesh);
  const levels = shell.levels.flatMap((level) =>
    pictureLine(shell.mesh, closed(level.vertices), view, { stroke: '#3d5a80', strokeWidth: 0.6 }, normals),
  );
  const seams = shell.seams.flatMap((seam) =>
    pictureLine(shell.mesh, seam.points, view, { stroke: '#9b2226', strokeWidth: 1.4 }, normals),
  );
  return [...pictureMesh(shell.mesh, view), ...levels, ...seams];
}

function closed(loop: Uint32Array): Uint32Array {
  return Uint32Array.of(...loop, loop[0]);
}
