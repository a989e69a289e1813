import { assertInvariant, verbatim } from '../base/index.ts';
import type { FlatDisk } from '../flatten/index.ts';
import { type PanelStretch, tracerOfPanels } from '../flatten/index.ts';
import type { InsideShape } from '../inside/index.ts';
import type { AllowanceKind, NamedLine, PieceEdge, PieceInput, PieceMark } from '../pattern/index.ts';
import type { PanelEdge, Seam, SeamedShell, ShellPanel } from '../seams/index.ts';
import { allowanceKindsOfSeams } from './allowance-kinds-of-seams.ts';
import { phrase } from './draft-phrases.ts';
import type { OrderedSeam } from './order-seams.ts';

/** A seam whose mean sine of the chart angle is above this counts as front; the side seam itself does. */
const frontThreshold = -0.05;
/** Below this the whole seam lies in the middle of the back. */
const centreBackThreshold = -0.9999;

/**
 * What drafting needs of every panel: boundary stretches with marks, and level lines, on the flat. Parallel to panels.
 * `order`: the seams as they are sewn.
 */
export function pieceInputsFromShell(
  shell: SeamedShell,
  flat: readonly FlatDisk[],
  insideLines: InsideShape['panelLines'] = [],
  order: readonly OrderedSeam[] = [],
): PieceInput[] {
  const drawn = linesOnPanels(shell, flat, insideLines);
  const seams = new Map(shell.seams.map((seam) => [seam.id, seam]));
  const sewn = new Map(order.map(({ seam }, place) => [seam.id, place]));
  const kinds = allowanceKindsOfSeams(order);
  const levelNames = new Map(shell.levels.map((level) => [level.id, level.name]));
  return shell.panels.map((panel, index) => ({
    id: panel.id,
    name: panel.name,
    side: panel.side,
    edges: panel.edges.map((edge) => pieceEdge(panel, edge, { seams, sewn, kinds }, flat[index].positions)),
    levelLines: [
      ...panel.levels.map((level) => ({
        id: level.id,
        name: levelNames.get(level.id) ?? verbatim(level.id),
        points: pointsOf(flat[index].positions, level.vertices),
      })),
      ...drawn[index],
    ] satisfies NamedLine[],
    material: 'shell',
  }));
}

interface SeamFacts {
  readonly seams: ReadonlyMap<string, Seam>;
  /** Place of a seam in the order of sewing. */
  readonly sewn: ReadonlyMap<string, number>;
  readonly kinds: ReadonlyMap<string, AllowanceKind>;
}

const OPENING_KINDS: Readonly<Record<string, AllowanceKind>> = {
  base: 'base',
  neck: 'neck',
  armholeRight: 'armhole',
  armholeLeft: 'armhole',
};

function pieceEdge(
  panel: ShellPanel,
  edge: PanelEdge,
  { seams, sewn, kinds }: SeamFacts,
  flat: Float64Array,
): PieceEdge {
  const points = pointsOf(flat, edge.vertices);
  const sine = meanSineOfAngle(panel, edge.vertices);
  const bodyHalf = sine > frontThreshold ? 'front' : sine > centreBackThreshold ? 'back' : 'centre-back';
  if (edge.kind === 'opening') {
    const allowanceKind = OPENING_KINDS[edge.id];
    return {
      ...{ kind: 'opening', id: edge.id, letter: '', points, marks: [], bodyHalf },
      ...(allowanceKind && { allowanceKind }),
    };
  }
  const seam = seams.get(edge.id);
  assertInvariant(seam !== undefined, 'pipeline', 'every sewn edge belongs to a seam', edge.id);
  const place = sewn.get(edge.id);
  const allowanceKind = kinds.get(edge.id);
  return {
    kind: 'seam',
    id: edge.id,
    letter: seam.letter,
    points,
    marks: marksOnEdge(seam, edge),
    bodyHalf,
    ...(place === undefined ? {} : { sewn: place }),
    ...(allowanceKind && { allowanceKind }),
  };
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

/** Per panel: the lines to which webs and straps are sewn inside it, by letter and name. */
function linesOnPanels(
  shell: SeamedShell,
  flat: readonly FlatDisk[],
  lines: InsideShape['panelLines'],
): NamedLine[][] {
  const perPanel: NamedLine[][] = shell.panels.map(() => []);
  const traceLine = tracerOfPanels(shell, flat);
  for (const { id, letter, name, chart, marks = [] } of lines) {
    const stretches = traceLine(chart) ?? [];
    for (const panel of new Set(stretches.map((stretch) => stretch.panel))) {
      const own = stretches.filter((stretch) => stretch.panel === panel);
      const points = Float64Array.from([...own[0].a, ...own.flatMap(({ b }) => b)]);
      perPanel[panel].push({ id, name: phrase('piece.lettered-line', { letter, line: name }), points });
    }
    for (const { index, number } of stretches.length > 0 ? marks : []) {
      const stretch = stretches[index - 1];
      const points = tickAcross(stretch);
      perPanel[stretch.panel].push({ id: `${id}/${number}`, name: verbatim(''), points });
    }
  }
  return perPanel;
}

/** Half a tick, mm. */
const TICK = 4;

/** A short line across a stretch at its end. */
function tickAcross({ a, b }: PanelStretch): Float64Array {
  const scale = TICK / Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [dx, dy] = [scale * (a[1] - b[1]), scale * (b[0] - a[0])];
  return Float64Array.of(b[0] - dx, b[1] - dy, b[0] + dx, b[1] + dy);
}
