import { assertInvariant } from '../base/index.ts';
import type { PanelEdge, Seam, SeamedShell } from '../seams/index.ts';

export interface Gluing {
  /** Sews one seam. `isFlat`: every part is still a disk, so that it can lie flat. `closesRing`: this seam makes a ring. */
  readonly glue: (seam: Seam) => { readonly isFlat: boolean; readonly closesRing: boolean };
}

/**
 * The panels as disks that are joined seam by seam. Euler's count of what is sewn so far: every panel 1, every sewn seam
 * +1 for its two lines becoming one, −1 for every two corners that become one; it equals the number of parts exactly as long
 * as each of them is a disk. Cost of `glue`: about constant.
 */
export function createGluing(shell: SeamedShell): Gluing {
  const panels = new Map(shell.panels.map((panel, i) => [panel.id, { panel, i }]));
  const corners = makeUnion();
  const parts = makeUnion();
  let count = shell.panels.length;
  let partCount = shell.panels.length;
  return {
    glue(seam) {
      const rings = partCount - count;
      const [a, b] = endsOfSeam(seam, panels);
      count++;
      for (const k of [0, 1]) if (corners.join(a[k], b[k])) count--;
      if (parts.join(seam.panels[0], seam.panels[1])) partCount--;
      return { isFlat: count === partCount, closesRing: partCount - count > rings };
    },
  };
}

/** The two copies of the seam's ends, one per panel, named so that equal names are one corner of one panel. */
function endsOfSeam(
  seam: Seam,
  panels: ReadonlyMap<string, { readonly panel: SeamedShell['panels'][number] }>,
): [string[], string[]] {
  const copies = [...new Set(seam.panels)].flatMap((id) => {
    const edges = panels.get(id)?.panel.edges ?? [];
    return edges
      .filter((edge) => edge.kind === 'seam' && edge.id === seam.id)
      .map((edge) => endsOf(id, edge));
  });
  assertInvariant(copies.length === 2, 'pipeline', 'a seam joins two edges', seam.id);
  return [copies[0], copies[1]];
}

function endsOf(panelId: string, { vertices, reversed }: PanelEdge): string[] {
  const ends = [vertices[0], vertices[vertices.length - 1]].map((v) => `${panelId}/${v}`);
  return reversed ? ends.reverse() : ends;
}

/** Sets of names that grow together; `join` tells whether they were apart. */
function makeUnion() {
  const parent = new Map<string, string>();
  const rootOf = (name: string): string => {
    let root = name;
    while (parent.has(root)) root = parent.get(root) as string;
    return root;
  };
  return {
    join(a: string, b: string): boolean {
      const [x, y] = [rootOf(a), rootOf(b)];
      if (x === y) return false;
      parent.set(x, y);
      return true;
    },
  };
}
