import { assertInvariant } from '../base/index.ts';
import type { FlatDisk } from '../flatten/index.ts';
import { measureAlongFlatPath } from '../mesh/index.ts';
import { type Seam, type SeamedShell, seamSides } from '../seams/index.ts';
import type { ReportSeam } from './types.ts';

/**
 * Every seam as it lies on the flat panels: both lengths, and the largest disagreement of the partners at any mark,
 * both in the way from the seam's start to the mark and in the way from one mark to the next. mm.
 */
export function measureSeams(shell: SeamedShell, flat: readonly FlatDisk[]): ReportSeam[] {
  return shell.seams.map((seam) => {
    const [a, b] = seamSides(shell, seam).map((side) =>
      measureAlongFlatPath(flat[side.panel].positions, side.vertices),
    );
    return {
      id: seam.id,
      letter: seam.letter,
      name: seam.name,
      panels: seam.panels,
      lengthsFlat: [a[a.length - 1], b[b.length - 1]],
      easeMm: seam.ease === undefined ? 0 : Math.abs(a[a.length - 1] - b[b.length - 1]),
      length3d: seam.length3d,
      maxMarkGap: largestMarkGap(seam, withoutEase(seam, 0, a), withoutEase(seam, 1, b)),
    };
  });
}

/** Lengths as they lie in the sewn seam. */
function withoutEase(seam: Seam, panel: 0 | 1, along: Float64Array): Float64Array {
  return seam.ease?.panel === panel ? along.map((x) => x / (1 + (seam.ease?.fraction ?? 0))) : along;
}

function largestMarkGap(seam: Seam, a: Float64Array, b: Float64Array): number {
  const stops = [0, ...seam.marks.map((mark) => mark.index), seam.points.length - 1].sort((i, j) => i - j);
  let gap = 0;
  for (let k = 1; k < stops.length; k++) {
    const here = a[stops[k]] - b[stops[k]];
    const before = a[stops[k - 1]] - b[stops[k - 1]];
    gap = Math.max(gap, Math.abs(here), Math.abs(here - before));
  }
  return gap;
}

/**
 * Every whole level line: its length on the body, and the sum of its stretches on the flat panels. Where a level line
 * is a seam it lies on two panels, and the mean of the two is taken. mm.
 */
export function measureLevels(
  shell: SeamedShell,
  flat: readonly FlatDisk[],
): { id: string; length3d: number; lengthFlat: number }[] {
  return shell.levels.map((level) => {
    const lengths = flatEdgesOfLevel(shell, flat, level.id);
    let lengthFlat = 0;
    for (let i = 0; i < level.vertices.length; i++) {
      const key = edgeKey(level.vertices[i], level.vertices[(i + 1) % level.vertices.length]);
      const found = lengths.get(key);
      assertInvariant(found !== undefined, 'pipeline', `level ${level.id} lies on the panels all round`, key);
      lengthFlat += found.reduce((sum, x) => sum + x, 0) / found.length;
    }
    return { id: level.id, length3d: level.length3d, lengthFlat };
  });
}

/** Flat lengths of the mesh edges of one level line, keyed by the shell edge; an edge on a seam has two. */
function flatEdgesOfLevel(
  shell: SeamedShell,
  flat: readonly FlatDisk[],
  levelId: string,
): Map<string, number[]> {
  const seamIds = new Set(shell.seams.filter((s) => s.alongLevel === levelId).map((s) => s.id));
  const lengths = new Map<string, number[]>();
  shell.panels.forEach((panel, index) => {
    const seen = new Set<string>();
    const inside = panel.levels.filter((level) => level.id === levelId);
    const sewn = panel.edges.filter((edge) => edge.kind === 'seam' && seamIds.has(edge.id));
    for (const { vertices } of [...inside, ...sewn]) {
      const along = measureAlongFlatPath(flat[index].positions, vertices);
      for (let i = 1; i < vertices.length; i++) {
        const key = edgeKey(panel.sourceVertex[vertices[i - 1]], panel.sourceVertex[vertices[i]]);
        if (seen.has(key)) continue;
        seen.add(key);
        lengths.set(key, [...(lengths.get(key) ?? []), along[i] - along[i - 1]]);
      }
    }
  });
  return lengths;
}

function edgeKey(a: number, b: number): string {
  return a < b ? `${a}-${b}` : `${b}-${a}`;
}
