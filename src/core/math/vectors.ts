/** A point or direction in space: x, y, z. */
export type Vector = readonly [number, number, number];

/** a + b. */
export function add(a: ArrayLike<number>, b: ArrayLike<number>): [number, number, number] {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

/** a − b. */
export function subtract(a: ArrayLike<number>, b: ArrayLike<number>): [number, number, number] {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

/** k · a. */
export function scale(a: ArrayLike<number>, k: number): [number, number, number] {
  return [k * a[0], k * a[1], k * a[2]];
}

/** Scalar product. */
export function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Vector product: square to both, right-handed, as long as the area between them. */
export function cross(a: ArrayLike<number>, b: ArrayLike<number>): [number, number, number] {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** The same direction with length 1; not a number for a vector without length. */
export function normalise(a: ArrayLike<number>): [number, number, number] {
  const length = Math.hypot(a[0], a[1], a[2]);
  return [a[0] / length, a[1] / length, a[2] / length];
}
