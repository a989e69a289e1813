import type { FilledGiven, FillingLoad } from '../../src/core/filled/index.ts';
import type { FlatDisk } from '../../src/core/flatten/index.ts';
import { makeTubeShell, tube } from '../form/tube-shell.ts';

export const AROUND = 2 * tube.columns;
export const CHORD = 2 * tube.radius * Math.sin(Math.PI / AROUND);
export const LOAD: FillingLoad = {
  pressure: 0.003,
  shell: { warp: 100, weft: 20, shear: 8, poisson: 0 },
  web: 40,
};

/** The tube, so many times as tall, with boards over both ends, its panels cut by these shares of their width and height. */
export function tubeCut(width: number, height: number, taller = 1): FilledGiven {
  const open = makeTubeShell();
  const { positions, triangles } = open.mesh;
  const ring = (row: number): Uint32Array => Uint32Array.from({ length: AROUND }, (_, c) => row * AROUND + c);
  const shell = {
    ...open,
    mesh: { positions: positions.map((x, k) => (k % 3 === 2 ? taller * x : x)), triangles },
    openings: [
      { id: 'base', vertices: ring(0).reverse() },
      { id: 'neck', vertices: ring(tube.rows) },
    ] as const,
  };
  // Unrolled by hand: along the columns chords, upwards the height. Seen from outside u runs to the right.
  const flat = shell.panels.map(({ sourceVertex }): FlatDisk => {
    const positions = Float64Array.from({ length: 2 * sourceVertex.length }, (_, i) => {
      const k = i >> 1;
      const [column, row] = [k % (tube.columns + 1), Math.floor(k / (tube.columns + 1))];
      return i % 2 === 0 ? width * CHORD * column : (height * taller * tube.height * row) / tube.rows;
    });
    return { positions, strain: {} as FlatDisk['strain'] };
  });
  return {
    shell,
    flat,
    inside: { pole: {} as FilledGiven['inside']['pole'], braces: [] },
    options: {},
  };
}

/**
 * Statics of a prism of N chords, which Laplace's p R nears as they grow many: T = p R cos(π / N) across upright lines, as two sides
 * bear half the pressure on both at their edge; p × area / girth across level ones. Cloth that pulls with
 * E (λ² − 1) / 2 per rest length and thread is stretched to λ by it; here the shares to cut so that it fills the boards.
 */
export function stretchOfTube({ pressure, shell }: FillingLoad) {
  const hoop = pressure * tube.radius * Math.cos(Math.PI / AROUND);
  const area = 0.5 * AROUND * tube.radius ** 2 * Math.sin((2 * Math.PI) / AROUND);
  const axial = (pressure * area) / (AROUND * CHORD);
  let [around, along] = [1, 1];
  for (let k = 0; k < 100; k++) {
    around = Math.sqrt(1 + (2 * hoop * along) / (around * shell.weft));
    along = Math.sqrt(1 + (2 * axial * around) / (along * shell.warp));
  }
  return { hoop, axial, around, along };
}
