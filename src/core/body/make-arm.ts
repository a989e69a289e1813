import { add, cross, dot, normalise, scale, subtract } from '../math/index.ts';
import type { Mesh } from '../mesh/index.ts';
import {
  type ArmMeasures,
  type ArmRoot,
  CAP_ROWS,
  ELBOW_ROW,
  makeArmFrames,
  makeCapLine,
  pointOnSection,
  UPPER_ARM_ROW,
  WRIST_ROW,
} from './arm-frames.ts';

/**
 * A detachable arm: a tube of (rows × columns) points from the armhole's edge to the wrist. Column 0 is the outer line;
 * columns run to the back, seen on the wearer's right; rows run down. Outside is ∂column × ∂row on the right arm.
 */
export interface Arm {
  readonly side: 'right' | 'left';
  readonly rows: number;
  readonly columns: number;
  /** rows × columns × 3, mm. Row 0 lies in the armhole's plane. */
  readonly points: Float64Array;
  readonly upperArmRow: number;
  readonly elbowRow: number;
  readonly wristRow: number;
}

/**
 * The arm that meets the given armhole. `loop`: n × 3, in the armhole's plane, from the armpit through the front break,
 * shoulder point and back break (as a right armhole; mirror a left one first). Null when the upper arm is too short.
 */
export function makeRightArm(loop: Float64Array, measures: ArmMeasures): Arm | null {
  const root = rootOf(loop);
  const frames = makeArmFrames(root, measures);
  if (!frames) return null;
  const columns = loop.length / 3;
  const rows = CAP_ROWS + frames.length;
  const points = new Float64Array(rows * columns * 3);
  for (let column = 0; column < columns; column++) {
    const angle = (2 * Math.PI * column) / columns;
    const [x, y, z] = loop.subarray(3 * loopIndex(column, columns));
    const below = frames.slice(1).map((frame) => pointOnSection(frame, angle));
    [...makeCapLine(root, frames[0], [x, y, z], angle), ...below].forEach((point, row) => {
      points.set(point, 3 * (row * columns + column));
    });
  }
  return {
    side: 'right',
    rows,
    columns,
    points,
    upperArmRow: UPPER_ARM_ROW,
    elbowRow: ELBOW_ROW,
    wristRow: WRIST_ROW,
  };
}

/** The same arm in the mirror, x → −x; columns keep running outer line, back, inner line, front. */
export function mirrorArm(arm: Arm): Arm {
  const points = Float64Array.from(arm.points);
  for (let i = 0; i < points.length; i += 3) points[i] = -points[i];
  return { ...arm, side: arm.side === 'right' ? 'left' : 'right', points };
}

/** The tube as triangles, counter-clockwise from outside, open at armhole and wrist. */
export function meshOfArm(arm: Arm): Mesh {
  const { rows, columns } = arm;
  const triangles = new Uint32Array(6 * (rows - 1) * columns);
  let t = 0;
  for (let row = 0; row + 1 < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const a = row * columns + column;
      const b = row * columns + ((column + 1) % columns);
      const [c, d] = [b + columns, a + columns];
      triangles.set(arm.side === 'right' ? [a, b, c, a, c, d] : [a, c, b, a, d, c], t);
      t += 6;
    }
  }
  return { positions: arm.points, triangles };
}

/** Where the arm's tapes lie, n × 3; the girths are closed. */
export function traceArmTapes(arm: Arm): Readonly<Record<keyof ArmMeasures, Float64Array>> {
  const { columns, points } = arm;
  const ring = (row: number): Float64Array => points.slice(3 * row * columns, 3 * (row + 1) * columns);
  const outerLine = (from: number, to: number): Float64Array => {
    const line = new Float64Array(3 * (to - from + 1));
    for (let row = from; row <= to; row++) {
      line.set(points.subarray(3 * row * columns, 3 * row * columns + 3), 3 * (row - from));
    }
    return line;
  };
  return {
    upperArmGirth: ring(arm.upperArmRow),
    elbowGirth: ring(arm.elbowRow),
    wristGirth: ring(arm.wristRow),
    shoulderToElbow: outerLine(0, arm.elbowRow),
    elbowToWrist: outerLine(arm.elbowRow, arm.wristRow),
  };
}

/** Column 0 is the shoulder point, half-way round the loop; columns run to the back, as the loop does from there. */
function loopIndex(column: number, columns: number): number {
  return (column + columns / 2) % columns;
}

function rootOf(loop: Float64Array): ArmRoot {
  const n = loop.length / 3;
  const at = (i: number): [number, number, number] => [loop[3 * i], loop[3 * i + 1], loop[3 * i + 2]];
  const [armpit, front, shoulderPoint, back] = [0, n / 4, n / 2, (3 * n) / 4].map(at);
  const up = subtract(shoulderPoint, armpit);
  const forward = subtract(front, back);
  const normal = normalise(cross(forward, up));
  const middle = scale(add(front, back), 0.5);
  return {
    armpit,
    shoulderPoint,
    normal,
    ahead: dot(subtract(middle, armpit), normalise(cross(up, normal))),
  };
}
