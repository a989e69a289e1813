import { assertInvariant } from '../base/index.ts';
import type { Mesh } from '../mesh/index.ts';

export interface ObjMesh {
  /** Becomes the object's name; blanks become underscores. */
  readonly name: string;
  readonly mesh: Mesh;
  /** Place of every vertex on the flat pattern, n × 2 mm, y up; written as texture coordinates in metres. */
  readonly flat?: Float64Array;
}

/**
 * Meshes as a Wavefront OBJ text, one object each, millimetres, z up, four decimals. With `flat` every corner also has its
 * place on the flat pattern as texture coordinate. O(vertices + triangles). Throws on numbers that are not finite.
 */
export function writeObj(meshes: readonly ObjMesh[]): string {
  const lines = ['# millimetres, z up; texture coordinates: place on the flat pattern in metres'];
  let firstVertex = 1;
  let firstFlat = 1;
  for (const { name, mesh, flat } of meshes) {
    const { positions, triangles } = mesh;
    lines.push(`o ${name.replace(/[\s\p{Cc}]+/gu, '_')}`);
    for (let i = 0; i < positions.length; i += 3)
      lines.push(`v ${format(positions[i])} ${format(positions[i + 1])} ${format(positions[i + 2])}`);
    if (flat) {
      const needed = (2 * positions.length) / 3;
      assertInvariant(
        flat.length === needed,
        'export',
        `flat places of ${name} are ${needed} numbers`,
        flat.length,
      );
      for (let i = 0; i < flat.length; i += 2)
        lines.push(`vt ${format(flat[i] / 1000, 6)} ${format(flat[i + 1] / 1000, 6)}`);
    }
    const corner = (vertex: number): string =>
      flat ? `${firstVertex + vertex}/${firstFlat + vertex}` : `${firstVertex + vertex}`;
    for (let t = 0; t < triangles.length; t += 3)
      lines.push(`f ${corner(triangles[t])} ${corner(triangles[t + 1])} ${corner(triangles[t + 2])}`);
    firstVertex += positions.length / 3;
    if (flat) firstFlat += flat.length / 2;
  }
  return `${lines.join('\n')}\n`;
}

function format(value: number, decimals = 4): string {
  assertInvariant(Number.isFinite(value), 'export', 'every position of a mesh is finite', value);
  return value
    .toFixed(decimals)
    .replace(/\.?0+$/, '')
    .replace(/^-0$/, '0');
}
