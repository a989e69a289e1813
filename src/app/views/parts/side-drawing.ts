import { clamp } from '../../../core/math/index.ts';

/** Straight-on line drawings of the body from its points, for small pictures. x right, y down, mm. */

export type Side = 'front' | 'back';

/** Closed outline path seen from the front, or from the wearer's right side. */
export function outlineOf(positions: Float64Array, from: 'front' | 'side'): string {
  const turned =
    from === 'front'
      ? positions
      : positions.map((_, i) => [-positions[i + 1], positions[i - 1], positions[i]][i % 3]);
  return viewFromSide(turned, 'front').outline;
}

/** The body's outline from one side, and what is needed to tell front from back at each height. */
export interface SideView {
  readonly side: Side;
  /** Closed path. */
  readonly outline: string;
  readonly viewBox: string;
  readonly middleAt: (z: number) => number;
}

const ROW = 9;
const MARGIN = 14;

/** `positions`: points all over the body, n × 3. */
export function viewFromSide(positions: Float64Array, side: Side): SideView {
  const [low, high] = rangeOf(positions, 2);
  const rowCount = Math.max(2, Math.ceil((high - low) / ROW));
  const rows = Array.from({ length: rowCount }, () => [Infinity, -Infinity, Infinity, -Infinity]);
  const rowAt = (z: number) => clamp(Math.floor((z - low) / ROW), 0, rowCount - 1);
  for (let i = 0; i < positions.length; i += 3) {
    const row = rows[rowAt(positions[i + 2])];
    row[0] = Math.min(row[0], positions[i]);
    row[1] = Math.max(row[1], positions[i]);
    row[2] = Math.min(row[2], positions[i + 1]);
    row[3] = Math.max(row[3], positions[i + 1]);
  }
  const filled = rows
    .map((row, k) => ({ row, z: low + (k + 0.5) * ROW }))
    .filter(({ row }) => row[0] <= row[1]);
  const sign = side === 'front' ? -1 : 1;
  const edge = (column: 0 | 1) =>
    filled.map(({ row, z }) => `${(sign * row[column]).toFixed(1)} ${(-z).toFixed(1)}`);
  const reach = Math.max(...filled.map(({ row }) => Math.max(-row[0], row[1]))) + MARGIN;
  return {
    side,
    outline: `M${[...edge(0), ...edge(1).reverse()].join('L')}Z`,
    viewBox: `${-reach} ${-high - MARGIN} ${2 * reach} ${high - low + 2 * MARGIN}`,
    middleAt: (z) => (rows[rowAt(z)][2] + rows[rowAt(z)][3]) / 2,
  };
}

/** SVG path of the stretches of a line (n × 3) that lie on the side looked at. */
export function pathSeen(points: Float64Array, view: SideView): string {
  const facing = view.side === 'front' ? 1 : -1;
  let d = '';
  let isDown = false;
  for (let i = 0; i < points.length; i += 3) {
    const isSeen = (points[i + 1] - view.middleAt(points[i + 2])) * facing > -1;
    if (isSeen)
      d += `${isDown ? 'L' : 'M'}${(-facing * points[i]).toFixed(1)} ${(-points[i + 2]).toFixed(1)}`;
    isDown = isSeen;
  }
  return d;
}

/** Coordinates of a path of vertices, closed when asked. */
export function pointsOfPath(vertices: Uint32Array, positions: Float64Array, isClosed = false): Float64Array {
  const count = vertices.length + (isClosed ? 1 : 0);
  const points = new Float64Array(3 * count);
  for (let i = 0; i < count; i++) {
    const v = 3 * vertices[i % vertices.length];
    points.set(positions.subarray(v, v + 3), 3 * i);
  }
  return points;
}

/** Least and greatest of one coordinate. */
export function rangeOf(positions: Float64Array, axis: 0 | 1 | 2): [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (let i = axis; i < positions.length; i += 3) {
    low = Math.min(low, positions[i]);
    high = Math.max(high, positions[i]);
  }
  return [low, high];
}
