import type { Phrase } from '../base/index.ts';
import type { Mesh } from '../mesh/index.ts';
import type { SeamedShell } from '../seams/index.ts';

/** What gauges are held against: the form as it should come out, over its cloth. mm. */
export interface GaugedForm {
  /** Closed by its plates. */
  readonly closed: Mesh;
  /** Open at base, neck and armholes. */
  readonly shell: Mesh;
  /** Heights of the levels, and of the base edge. */
  readonly levels: readonly { readonly id: string; readonly name: Phrase; readonly z: number }[];
  readonly base: number;
  /** Of a cover that goes on later: until then the form is so much smaller on every side. */
  readonly cover: number;
}

/** Shell and plates of a form with the heights of its levels; where one tilts, its middle height. O(vertices of the levels). */
export function gaugedForm(shell: SeamedShell, closed: Mesh, cover: number): GaugedForm {
  const heightOf = (vertices: Uint32Array): number =>
    vertices.reduce((sum, v) => sum + shell.mesh.positions[3 * v + 2], 0) / vertices.length;
  const base = shell.openings.find(({ id }) => id === 'base')?.vertices ?? new Uint32Array();
  return {
    closed,
    shell: shell.mesh,
    levels: shell.levels.map(({ id, name, vertices }) => ({ id, name, z: heightOf(vertices) })),
    base: heightOf(base),
    cover,
  };
}
