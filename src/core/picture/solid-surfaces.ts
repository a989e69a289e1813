import { measureVertexNormals } from '../mesh/index.ts';
import type { Surface } from './types.ts';

/** Corners round a pole, sleeve or foot. */
const ROUND = 32;

/** Surfaces of the sheet with the given number in the scene; all in mm. */
export function makeSurface(positions: Float64Array, triangles: readonly number[], sheet: number): Surface {
  const faces = Uint32Array.from(triangles);
  return {
    positions,
    triangles: faces,
    normals: measureVertexNormals({ positions, triangles: faces }),
    sheetOf: new Uint16Array(faces.length / 3).fill(sheet),
  };
}

/** Rows of equally many points as a strip, or as a tube when the rows are rings; right side where columns × rows points. */
export function surfaceOfRows(
  rows: readonly (readonly number[])[],
  isRound: boolean,
  sheet: number,
): Surface {
  const columns = rows[0].length / 3;
  const triangles: number[] = [];
  for (let row = 0; row + 1 < rows.length; row++) {
    for (let k = 0; k < (isRound ? columns : columns - 1); k++) {
      const [a, b] = [row * columns + k, row * columns + ((k + 1) % columns)];
      triangles.push(a, b, b + columns, a, b + columns, a + columns);
    }
  }
  return makeSurface(Float64Array.from(rows.flat()), triangles, sheet);
}

/** An upright round tube about (0, y), open at both ends. */
export function surfaceOfTube(
  y: number,
  radius: number,
  zBottom: number,
  zTop: number,
  sheet: number,
): Surface {
  return surfaceOfRows([ringAt(y, radius, zBottom), ringAt(y, radius, zTop)], true, sheet);
}

/** A closed loop (n × 3, counter-clockwise seen from outside) filled with a fan about its middle. */
export function surfaceOfLoop(loop: Float64Array, sheet: number): Surface {
  const count = loop.length / 3;
  const positions = Float64Array.of(...loop, ...middleOf(loop));
  const triangles = Array.from({ length: count }, (_, i) => [i, (i + 1) % count, count]).flat();
  return makeSurface(positions, triangles, sheet);
}

const DOME_ROWS = 5;

/** A closed loop filled with a dome so many mm high: rings that draw in as a quarter of an ellipse does. */
export function surfaceOfDome(loop: Float64Array, height: number, sheet: number): Surface {
  const middle = middleOf(loop);
  const out = normalOf(loop, middle);
  const rows = Array.from({ length: DOME_ROWS + 1 }, (_, row) => {
    const angle = (Math.PI / 2) * (row / (DOME_ROWS + 0.5));
    return Array.from(loop, (value, i) => {
      const k = i % 3;
      return middle[k] + Math.cos(angle) * (value - middle[k]) + height * Math.sin(angle) * out[k];
    });
  });
  const wall = surfaceOfRows(rows, true, sheet);
  const count = loop.length / 3;
  const top = surfaceOfLoop(Float64Array.from(rows[DOME_ROWS]), sheet);
  const shift = DOME_ROWS * count;
  const positions = Float64Array.of(...wall.positions, ...top.positions.subarray(3 * count));
  return makeSurface(positions, [...wall.triangles, ...[...top.triangles].map((v) => v + shift)], sheet);
}

function ringAt(y: number, radius: number, z: number): number[] {
  return Array.from({ length: ROUND }, (_, k) => {
    const angle = (2 * Math.PI * k) / ROUND;
    return [radius * Math.cos(angle), y + radius * Math.sin(angle), z];
  }).flat();
}

function middleOf(loop: Float64Array): number[] {
  return [0, 1, 2].map((k) => {
    let sum = 0;
    for (let i = k; i < loop.length; i += 3) sum += loop[i];
    return (3 * sum) / loop.length;
  });
}

/** Unit normal of a loop, out of the side from which it runs counter-clockwise (Newell). */
function normalOf(loop: Float64Array, middle: readonly number[]): number[] {
  const normal = [0, 0, 0];
  for (let i = 0; i < loop.length; i += 3) {
    const j = (i + 3) % loop.length;
    for (let k = 0; k < 3; k++) {
      const [m, n] = [(k + 1) % 3, (k + 2) % 3];
      normal[k] +=
        (loop[i + m] - middle[m]) * (loop[j + n] - middle[n]) -
        (loop[i + n] - middle[n]) * (loop[j + m] - middle[m]);
    }
  }
  const length = Math.hypot(...normal);
  return normal.map((value) => value / length);
}
