import { seamLetterOf } from '../base/index.ts';
import type { Body } from '../body/index.ts';
import type { FlatDisk } from '../flatten/index.ts';
import { tracerOfPanels } from '../flatten/index.ts';
import type { InsideForm, InsideLine, InsideSeam } from '../inside/index.ts';
import { distanceInPlane, distanceInSpace } from '../math/index.ts';
import {
  type ChartSurface,
  capBoundaryLoops,
  type Mesh,
  measureAlongFlatPath,
  measureArea,
  measureFlatPath,
  measureVolume,
} from '../mesh/index.ts';
import type { Seam, SeamedShell } from '../seams/index.ts';
import type { FlatArms } from './flatten-arms.ts';
import { waysIntoShell } from './ways-into-shell.ts';

/** A shell cut and unrolled, as the inner parts are designed for. */
export interface FlattenedShell {
  /** The shell's: bridged, if hollows were. */
  readonly surface: ChartSurface;
  readonly body: Body;
  readonly shell: SeamedShell;
  readonly flat: readonly FlatDisk[];
  /** What was unrolled: the panels' own meshes, or smaller in girth by what is taken off. */
  readonly disks: readonly Mesh[];
  readonly closedMesh: Mesh;
}

/** The shell as the inner parts need it: upright lines with their flat lengths, openings, levels. `waistHeight`: above the floor, mm. */
export function insideFormFromShell(
  made: FlattenedShell & { readonly arms: FlatArms },
  waistHeight: number,
  isWaistHeightAssumed = false,
): InsideForm {
  const { surface, body, shell, flat, disks, closedMesh, arms } = made;
  const { positions } = shell.mesh;
  const traceLine = tracerOfPanels(shell, flat);
  return {
    surface,
    levels: body.levels,
    lines: uprightLines(shell, flat),
    openings: shell.openings.map(({ id, vertices }) => ({
      id,
      points: Float64Array.from({ length: 3 * vertices.length }, (_, i) => {
        return positions[3 * vertices[Math.floor(i / 3)] + (i % 3)];
      }),
      excess: shell.panels.reduce((sum, { edges }, i) => {
        const own = edges.filter((edge) => edge.kind === 'opening' && edge.id === id);
        return own.reduce((all, edge) => all + excessAlong(edge.vertices, flat[i], disks[i]), sum);
      }, 0),
      into: waysIntoShell(shell.mesh, vertices),
    })),
    arms: body.arms.map(({ side, rows, columns, points }) => ({
      side,
      wrist: points.slice(3 * (rows - 1) * columns),
      volumeL: volumeOfTube(points, rows, columns),
      armholeLength: edgeOfArm(arms, side, 'armhole'),
      wristLength: edgeOfArm(arms, side, 'wrist'),
    })),
    waistHeight,
    isWaistHeightAssumed,
    neckBaseV: body.landmarks.neckFront.v,
    shoulderPointV: body.landmarks.shoulderPointRight.v,
    volumeL: measureVolume(closedMesh) / 1e6,
    area: measureArea(shell.mesh),
    letterCount: shell.seams.length,
    letterOf: seamLetterOf,
    measureOnPanels: (chart) => {
      const stretches = traceLine(chart);
      return (
        stretches && {
          lengths: Float64Array.from(stretches, ({ a, b }) => Math.hypot(b[0] - a[0], b[1] - a[1])),
          panels: stretches.map(({ panel }) => panel),
        }
      );
    },
  };
}

/** By how much a path is longer flat than as it was unrolled from, mm. */
function excessAlong(path: Uint32Array, { positions: flat }: FlatDisk, { positions: body }: Mesh): number {
  let excess = 0;
  for (let i = 1; i < path.length; i++) {
    const [a, b] = [path[i - 1], path[i]];
    excess += distanceInPlane(flat, a, b);
    excess -= distanceInSpace(body, a, b);
  }
  return excess;
}

/** Length of an arm's open edge, front and back sewn together, mm. */
function edgeOfArm({ panels, flat }: FlatArms, side: 'right' | 'left', edge: 'armhole' | 'wrist'): number {
  return panels.reduce((sum, panel, i) => {
    if (panel.side !== side) return sum;
    return sum + measureFlatPath(flat[i].positions, panel[edge]);
  }, 0);
}

/** Litres in a tube of rows of points about the middles of its ends, whichever way its rows turn. */
function volumeOfTube(points: Float64Array, rows: number, columns: number): number {
  const triangles: number[] = [];
  for (let row = 0; row + 1 < rows; row++) {
    for (let k = 0; k < columns; k++) {
      const [a, b] = [row * columns + k, row * columns + ((k + 1) % columns)];
      triangles.push(a, b, b + columns, a, b + columns, a + columns);
    }
  }
  const ends = [0, (rows - 1) * columns].map((first) =>
    Uint32Array.from({ length: columns }, (_, k) => first + k),
  );
  const tube: Mesh = { positions: points, triangles: Uint32Array.from(triangles) };
  return Math.abs(measureVolume(capBoundaryLoops(tube, ends))) / 1e6;
}

function uprightLines(shell: SeamedShell, flat: readonly FlatDisk[]): InsideLine[] {
  const lines = new Map<string, { line: Omit<InsideLine, 'seams'>; seams: InsideSeam[] }>();
  for (const seam of shell.seams) {
    const own = insideSeam(shell, flat, seam);
    if (!own) continue;
    const middle = seam.points[seam.points.length >> 1];
    const u = shell.chart[2 * middle];
    const side = Math.abs(Math.cos(u)) < 1e-6 ? 'centre' : Math.cos(u) > 0 ? 'right' : 'left';
    const half = Math.abs(Math.sin(u)) < 0.1 ? 'side' : Math.sin(u) > 0 ? 'front' : 'back';
    const key = `${seam.lineId}/${side}`;
    const known = lines.get(key) ?? { line: { id: seam.lineId, name: seam.name, side, half }, seams: [] };
    known.seams.push(own);
    lines.set(key, known);
  }
  return [...lines.values()].map(({ line, seams }) => ({
    ...line,
    seams: seams.sort((a, b) => a.v[0] - b.v[0]),
  }));
}

/** Null for a seam that does not climb all the way. */
function insideSeam(shell: SeamedShell, flat: readonly FlatDisk[], seam: Seam): InsideSeam | null {
  const count = seam.points.length;
  const u = Float64Array.from(seam.points, (vertex) => shell.chart[2 * vertex]);
  const v = Float64Array.from(seam.points, (vertex) => shell.chart[2 * vertex + 1]);
  for (let i = 1; i < count; i++) {
    if (!(v[i] > v[i - 1])) return null;
    u[i] += 2 * Math.PI * Math.round((u[i - 1] - u[i]) / (2 * Math.PI));
  }
  const along = flatAlongSeam(shell, flat, seam);
  const inner = seam.marks.filter((mark) => mark.kind !== 'end' && mark.index > 0 && mark.index < count - 1);
  const marks = inner
    .toSorted((a, b) => a.index - b.index)
    .map((mark, k) => ({
      kind: mark.kind === 'level' ? ('level' as const) : ('balance' as const),
      index: mark.index,
      number: k + 1,
      ...(mark.levelId === undefined ? {} : { levelId: mark.levelId }),
    }));
  return { id: seam.id, letter: seam.letter, u, v, along, marks };
}

/** Running length on the first of the seam's two flat panels, upwards. */
function flatAlongSeam(shell: SeamedShell, flat: readonly FlatDisk[], seam: Seam): Float64Array {
  const index = shell.panels.findIndex(({ id }) => id === seam.panels[0]);
  const edge = shell.panels[index].edges.find(({ kind, id }) => kind === 'seam' && id === seam.id);
  if (!edge) return new Float64Array(seam.points.length);
  const vertices = edge.reversed ? edge.vertices.toReversed() : edge.vertices;
  return measureAlongFlatPath(flat[index].positions, vertices);
}
