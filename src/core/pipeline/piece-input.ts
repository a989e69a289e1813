import { assertInvariant } from '../base/index.ts';
import type { FlatDisk } from '../flatten/index.ts';
import type { PieceEdge, PieceInput, PieceLine, PieceMark } from '../pattern/index.ts';
import type { PanelEdge, Seam, SeamedShell, ShellPanel } from '../seams/index.ts';

/** A seam whose mean sine of the chart angle is above this counts as front; the side seam itself does. */
const frontThreshold = -0.05;

/** What drafting needs of every panel: boundary stretches with marks, and level lines, on the flat. Parallel to panels. */
export function pieceInputsFromShell(shell: SeamedShell, flat: readonly FlatDisk[]): PieceInput[] {
  const seams = new Map(shell.seams.map((seam) => [seam.id, seam]));
  const levelNames = new Map(shell.levels.map((level) => [level.id, level.name]));
  return shell.panels.map((panel, index) => ({
    id: panel.id,
    name: panel.name,
    side: panel.side,
    edges: panel.edges.map((edge) => pieceEdge(panel, edge, seams, flat[index].positions)),
    levelLines: panel.levels.map((level) => ({
      id: level.id,
      name: levelNames.get(level.id) ?? level.id,
      points: pointsOf(flat[index].positions, level.vertices),
    })) satisfies PieceLine[],
    material: 'shell',
  }));
}

function pieceEdge(
  panel: ShellPanel,
  edge: PanelEdge,
  seams: ReadonlyMap<string, Seam>,
  flat: Float64Array,
): PieceEdge {
  const points = pointsOf(flat, edge.vertices);
  const bodyHalf = meanSineOfAngle(panel, edge.vertices) > frontThreshold ? 'front' : 'back';
  if (edge.kind === 'opening')
    return { kind: 'opening', id: edge.id, letter: '', points, marks: [], bodyHalf };
  const seam = seams.get(edge.id);
  assertInvariant(seam !== undefined, 'pipeline', 'every sewn edge belongs to a seam', edge.id);
  return { kind: 'seam', id: edge.id, letter: seam.letter, points, marks: marksOnEdge(seam, edge), bodyHalf };
}

/** Marks between the seam's ends, numbered from 1 along the seam, so that partners carry the same numbers. */
function marksOnEdge(seam: Seam, edge: PanelEdge): PieceMark[] {
  const last = edge.vertices.length - 1;
  const inner = seam.marks
    .filter((mark) => mark.kind !== 'end' && mark.index > 0 && mark.index < seam.points.length - 1)
    .sort((a, b) => a.index - b.index);
  return inner.map((mark, k) => ({
    kind: mark.kind === 'level' ? 'level' : 'balance',
    index: edge.reversed ? last - mark.index : mark.index,
    number: k + 1,
    ...(mark.levelId === undefined ? {} : { levelId: mark.levelId }),
  }));
}

function meanSineOfAngle(panel: ShellPanel, vertices: Uint32Array): number {
  let sum = 0;
  for (const vertex of vertices) sum += Math.sin(panel.chart[2 * vertex]);
  return sum / vertices.length;
}

function pointsOf(flat: Float64Array, vertices: Uint32Array): Float64Array {
  const points = new Float64Array(2 * vertices.length);
  vertices.forEach((vertex, i) => {
    points[2 * i] = flat[2 * vertex];
    points[2 * i + 1] = flat[2 * vertex + 1];
  });
  return points;
}
