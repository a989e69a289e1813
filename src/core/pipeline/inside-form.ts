import type { Body } from '../body/index.ts';
import type { FlatDisk } from '../flatten/index.ts';
import { type ChartSurface, capBoundaryLoops, type Mesh, measureArea, measureVolume } from '../mesh/index.ts';
import type { Seam, SeamedShell } from '../seams/index.ts';
import type { InsideForm, InsideLine, InsideSeam } from '../supports/index.ts';
import { tracerOfPanels } from './trace-on-panels.ts';

/** The shell as the inner parts need it: upright lines with their flat lengths, openings, levels. */
export function insideFormFromShell(made: {
  /** The shell's: bridged, if hollows were. */
  readonly surface: ChartSurface;
  readonly body: Body;
  readonly shell: SeamedShell;
  readonly flat: readonly FlatDisk[];
  readonly closedMesh: Mesh;
}): InsideForm {
  const { surface, body, shell, flat, closedMesh } = made;
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
    })),
    arms: body.arms.map(({ side, rows, columns, points }) => ({
      side,
      wrist: points.slice(3 * (rows - 1) * columns),
      volumeL: volumeOfTube(points, rows, columns),
    })),
    neckBaseV: body.landmarks.neckFront.v,
    shoulderPointV: body.landmarks.shoulderPointRight.v,
    volumeL: measureVolume(closedMesh) / 1e6,
    area: measureArea(shell.mesh),
    letterCount: shell.seams.length,
    letterOf,
    measureOnPanels: (chart) => {
      const stretches = traceLine(chart);
      return stretches && Float64Array.from(stretches, ({ a, b }) => Math.hypot(b[0] - a[0], b[1] - a[1]));
    },
  };
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

/** 0 → A, 25 → Z, 26 → AA. */
function letterOf(index: number): string {
  const rest = Math.floor(index / 26);
  return (rest > 0 ? letterOf(rest - 1) : '') + String.fromCharCode(65 + (index % 26));
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
  const along = new Float64Array(seam.points.length);
  if (!edge) return along;
  const vertices = edge.reversed ? edge.vertices.toReversed() : edge.vertices;
  const { positions } = flat[index];
  for (let i = 1; i < along.length; i++) {
    const [a, b] = [2 * vertices[i - 1], 2 * vertices[i]];
    along[i] = along[i - 1] + Math.hypot(positions[b] - positions[a], positions[b + 1] - positions[a + 1]);
  }
  return along;
}
