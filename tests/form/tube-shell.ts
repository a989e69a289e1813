import { verbatim } from '../../src/core/base/index.ts';
import type { Seam, SeamedShell, ShellPanel } from '../../src/core/seams/index.ts';

/** Size of the tube: half-angle steps per panel, rows, mm. */
export const tube = { columns: 6, rows: 4, radius: 50, height: 80, levelRow: 2 } as const;

/**
 * A tube sewn from two half panels, built by hand: seam `right` at angle 0, seam `left` at π, one level line inside.
 * With `twoTiers` each half is cut at the level as well, so that the level line is a seam.
 */
export function makeTubeShell(twoTiers = false): SeamedShell {
  const { columns, rows, radius, height, levelRow } = tube;
  const around = 2 * columns;
  const positions = new Float64Array(3 * around * (rows + 1));
  const chart = new Float64Array(2 * around * (rows + 1));
  for (let r = 0; r <= rows; r++) {
    for (let c = 0; c < around; c++) {
      const u = (c * Math.PI) / columns;
      const v = (r * height) / rows;
      positions.set([radius * Math.cos(u), radius * Math.sin(u), v], 3 * (r * around + c));
      chart.set([u, v], 2 * (r * around + c));
    }
  }
  const at = (r: number, c: number) => r * around + (c % around);
  const triangles: number[] = [];
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < around; c++) {
      triangles.push(at(r, c), at(r, c + 1), at(r + 1, c + 1), at(r, c), at(r + 1, c + 1), at(r + 1, c));
    }
  }
  const tiers = twoTiers ? [[0, levelRow] as const, [levelRow, rows] as const] : [[0, rows] as const];
  const panels = tiers.flatMap(([low, high], tier) => [
    makePanel(`front${tier}`, 'right', 'left', 0, low, high, tier, twoTiers),
    makePanel(`back${tier}`, 'left', 'right', columns, low, high, tier, twoTiers),
  ]);
  const seams: Seam[] = tiers.flatMap(([low, high], tier) => [
    upright(`right${tier}`, 'A', at, 0, low, high, [`front${tier}`, `back${tier}`]),
    upright(`left${tier}`, 'B', at, columns, low, high, [`front${tier}`, `back${tier}`]),
  ]);
  if (twoTiers) {
    for (const [name, from] of [['front', 0] as const, ['back', columns] as const]) {
      seams.push({
        ...upright(`level-${name}`, 'C', at, 0, 0, 1, [`${name}0`, `${name}1`]),
        points: Uint32Array.from({ length: columns + 1 }, (_, i) => at(levelRow, from + i)),
        marks: [],
        alongLevel: 'waist',
        isLevel: true,
      });
    }
  }
  const chord = 2 * radius * Math.sin(Math.PI / around);
  return {
    mesh: { positions, triangles: Uint32Array.from(triangles) },
    chart,
    panels: panels.map((panel) => withMesh(panel, positions, chart)),
    seams,
    levels: [
      {
        id: 'waist',
        name: verbatim('Waist'),
        vertices: Uint32Array.from({ length: around }, (_, c) => at(levelRow, c)),
        length3d: around * chord,
      },
    ],
    openings: [],
  };
}

function upright(
  id: string,
  letter: string,
  at: (r: number, c: number) => number,
  column: number,
  low: number,
  high: number,
  panels: readonly [string, string],
): Seam {
  const points = Uint32Array.from({ length: high - low + 1 }, (_, i) => at(low + i, column));
  const marks =
    points.length > 3 ? [{ kind: 'level' as const, levelId: 'waist', index: tube.levelRow - low }] : [];
  const length3d = ((high - low) * tube.height) / tube.rows;
  return { id, letter, name: verbatim(id), lineId: id, panels, points, marks, length3d, isLevel: false };
}

interface PanelPlan extends Omit<ShellPanel, 'mesh' | 'chart'> {
  readonly triangles: Uint32Array;
}

function makePanel(
  id: string,
  startSeam: string,
  endSeam: string,
  from: number,
  low: number,
  high: number,
  tier: number,
  twoTiers: boolean,
): PanelPlan {
  const { columns, levelRow } = tube;
  const around = 2 * columns;
  const width = columns + 1;
  const count = high - low;
  const local = (r: number, c: number) => (r - low) * width + c;
  const row = (r: number) => Uint32Array.from({ length: width }, (_, c) => local(r, c));
  const column = (c: number) => Uint32Array.from({ length: count + 1 }, (_, i) => local(low + i, c));
  const triangles: number[] = [];
  for (let r = low; r < high; r++) {
    for (let c = 0; c < columns; c++) {
      triangles.push(local(r, c), local(r, c + 1), local(r + 1, c + 1));
      triangles.push(local(r, c), local(r + 1, c + 1), local(r + 1, c));
    }
  }
  const name = id.slice(0, -1);
  const bottom = twoTiers && tier === 1;
  const top = twoTiers && tier === 0;
  return {
    id,
    name: verbatim(id),
    side: 'centre',
    sourceVertex: Uint32Array.from({ length: width * (count + 1) }, (_, i) => {
      return (low + Math.floor(i / width)) * around + ((from + (i % width)) % around);
    }),
    triangles: Uint32Array.from(triangles),
    edges: [
      {
        kind: bottom ? 'seam' : 'opening',
        id: bottom ? `level-${name}` : 'base',
        vertices: row(low),
        reversed: false,
      },
      { kind: 'seam', id: `${endSeam}${tier}`, vertices: column(columns), reversed: false },
      {
        kind: top ? 'seam' : 'opening',
        id: top ? `level-${name}` : 'neck',
        vertices: row(high).reverse(),
        reversed: true,
      },
      { kind: 'seam', id: `${startSeam}${tier}`, vertices: column(0).reverse(), reversed: true },
    ],
    levels: [{ id: 'waist', vertices: row(levelRow) }],
  };
}

function withMesh(plan: PanelPlan, positions: Float64Array, chart: Float64Array): ShellPanel {
  const { triangles, ...panel } = plan;
  const own = (from: Float64Array, size: number) =>
    Float64Array.from({ length: size * panel.sourceVertex.length }, (_, i) => {
      return from[size * panel.sourceVertex[Math.floor(i / size)] + (i % size)];
    });
  return { ...panel, mesh: { positions: own(positions, 3), triangles }, chart: own(chart, 2) };
}
