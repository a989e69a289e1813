import type { Mesh } from './mesh.ts';

/** The meshes side by side in one, nothing welded. `vertexStarts` and `triangleStarts` have one entry more than meshes. */
export interface MergedMesh extends Mesh {
  readonly vertexStarts: Uint32Array;
  readonly triangleStarts: Uint32Array;
}

export function mergeMeshes(meshes: readonly Mesh[]): MergedMesh {
  const vertexStarts = new Uint32Array(meshes.length + 1);
  const triangleStarts = new Uint32Array(meshes.length + 1);
  meshes.forEach((mesh, i) => {
    vertexStarts[i + 1] = vertexStarts[i] + mesh.positions.length / 3;
    triangleStarts[i + 1] = triangleStarts[i] + mesh.triangles.length / 3;
  });
  const positions = new Float64Array(3 * vertexStarts[meshes.length]);
  const triangles = new Uint32Array(3 * triangleStarts[meshes.length]);
  meshes.forEach((mesh, i) => {
    positions.set(mesh.positions, 3 * vertexStarts[i]);
    const start = 3 * triangleStarts[i];
    for (let e = 0; e < mesh.triangles.length; e++)
      triangles[start + e] = mesh.triangles[e] + vertexStarts[i];
  });
  return { positions, triangles, vertexStarts, triangleStarts };
}
