import type { Phrase } from '../base/index.ts';
import type { Arm } from '../body/index.ts';
import type { Mesh } from '../mesh/index.ts';
import { phrase } from './phrases.ts';

/** One half of an arm's tube, a disk. Vertices: rows × (columns / 2 + 1), row by row from the armhole down. */
export interface ArmPanel {
  readonly id: string;
  readonly name: Phrase;
  readonly side: 'right' | 'left';
  readonly half: 'front' | 'back';
  readonly mesh: Mesh;
  /** The long seams' vertices, from the armhole to the wrist. */
  readonly outer: Uint32Array;
  readonly inner: Uint32Array;
  /** The edges that stay open, from the outer to the inner line. */
  readonly armhole: Uint32Array;
  readonly wrist: Uint32Array;
  /** Where a tape was laid round the arm, from the outer to the inner line. */
  readonly girths: readonly ArmGirth[];
}

export interface ArmGirth {
  readonly id: 'upperArm' | 'elbow' | 'wrist';
  readonly name: Phrase;
  readonly row: number;
  readonly vertices: Uint32Array;
}

/** Cuts the tube along its outer and inner line into back and front. O(points). */
export function cutArm(arm: Arm): readonly [back: ArmPanel, front: ArmPanel] {
  return [cutHalf(arm, 'back'), cutHalf(arm, 'front')];
}

function cutHalf(arm: Arm, half: 'back' | 'front'): ArmPanel {
  const { rows, columns, side } = arm;
  const last = columns / 2;
  const width = last + 1;
  // Columns run outer line, back, inner line, front.
  const first = half === 'back' ? 0 : last;
  const positions = new Float64Array(3 * rows * width);
  for (let row = 0; row < rows; row++) {
    for (let k = 0; k < width; k++) {
      const from = 3 * (row * columns + ((first + k) % columns));
      positions.set(arm.points.subarray(from, from + 3), 3 * (row * width + k));
    }
  }
  const [outerColumn, innerColumn] = half === 'back' ? [0, last] : [last, 0];
  const down = (column: number) => Uint32Array.from({ length: rows }, (_, row) => row * width + column);
  const across = (row: number) =>
    Uint32Array.from({ length: width }, (_, k) => row * width + (half === 'back' ? k : last - k));
  const girth = (id: ArmGirth['id'], row: number): ArmGirth => {
    return { id, name: phrase(`arm.${id}`), row, vertices: across(row) };
  };
  return {
    id: `arm-${half}-${side}`,
    name: phrase('arm.half', { half, side }),
    side,
    half,
    mesh: { positions, triangles: trianglesOfGrid(rows, width, side === 'left') },
    outer: down(outerColumn),
    inner: down(innerColumn),
    armhole: across(0),
    wrist: across(rows - 1),
    girths: [girth('upperArm', arm.upperArmRow), girth('elbow', arm.elbowRow), girth('wrist', arm.wristRow)],
  };
}

/** Counter-clockwise from outside; a mirrored arm's are turned over. */
function trianglesOfGrid(rows: number, width: number, isMirrored: boolean): Uint32Array {
  const triangles = new Uint32Array(6 * (rows - 1) * (width - 1));
  let t = 0;
  for (let row = 0; row + 1 < rows; row++) {
    for (let k = 0; k + 1 < width; k++) {
      const a = row * width + k;
      const [b, c, d] = [a + 1, a + width + 1, a + width];
      triangles.set(isMirrored ? [a, c, b, a, d, c] : [a, b, c, a, c, d], t);
      t += 6;
    }
  }
  return triangles;
}
