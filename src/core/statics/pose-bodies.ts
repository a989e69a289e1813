import type { PreparedShell } from './prepare-shell.ts';
import type { ShellProblem } from './types.ts';

/** Where the bodies' points lie about their centres, and how a step of the unknowns moves everything. */
export interface BodyFrames {
  /** #B × 3 centres of the points as they start. */
  readonly centres: Float64Array;
  /** #B: root of the mean square distance from it, mm. */
  readonly reaches: Float64Array;
  /** #B × 3 unit axis of a sliding body, else 0. */
  readonly axes: Float64Array;
}

export function frameBodies(problem: ShellProblem): BodyFrames {
  const bodies = problem.bodies ?? [];
  const centres = new Float64Array(3 * bodies.length);
  const reaches = new Float64Array(bodies.length);
  const axes = new Float64Array(3 * bodies.length);
  bodies.forEach(({ points, motion }, b) => {
    for (const p of points)
      for (let k = 0; k < 3; k++) centres[3 * b + k] += problem.start[3 * p + k] / points.length;
    let sum = 0;
    for (const p of points)
      for (let k = 0; k < 3; k++) sum += (problem.start[3 * p + k] - centres[3 * b + k]) ** 2;
    reaches[b] = Math.max(1, Math.sqrt(sum / points.length));
    if (motion.kind !== 'slide') return;
    const length = Math.hypot(...motion.axis);
    for (let k = 0; k < 3; k++) axes[3 * b + k] = motion.axis[k] / length;
  });
  return { centres, reaches, axes };
}

/** All points and body centres at one moment. */
export interface ShellShape {
  /** #P × 3. */
  readonly positions: Float64Array;
  /** #B × 3. */
  readonly centres: Float64Array;
}

/**
 * `to` = `from` moved by `share` of `step` (#nodes × 3): free points straight, bodies by their move and by the turn of the
 * rotation vector (Rodrigues).
 */
export function moveShape(
  shell: PreparedShell,
  frames: BodyFrames,
  from: ShellShape,
  step: Float64Array,
  share: number,
  to: ShellShape,
): void {
  const { nodeOf, moveOf, turnOf, pointCount } = shell;
  const turns = moveCentres(shell, frames, from, step, share, to);
  for (let p = 0; p < pointCount; p++) {
    const node = nodeOf[p];
    if (node >= 0) {
      for (let k = 0; k < 3; k++)
        to.positions[3 * p + k] = from.positions[3 * p + k] + share * step[3 * node + k];
      continue;
    }
    const b = -1 - node;
    if (moveOf[b] < 0) {
      for (let k = 0; k < 3; k++) to.positions[3 * p + k] = from.positions[3 * p + k];
      continue;
    }
    const x = from.positions[3 * p] - from.centres[3 * b];
    const y = from.positions[3 * p + 1] - from.centres[3 * b + 1];
    const z = from.positions[3 * p + 2] - from.centres[3 * b + 2];
    const r = 9 * b;
    const isTurned = turnOf[b] >= 0;
    for (let k = 0; k < 3; k++) {
      const turned = isTurned
        ? turns[r + 3 * k] * x + turns[r + 3 * k + 1] * y + turns[r + 3 * k + 2] * z
        : [x, y, z][k];
      to.positions[3 * p + k] = to.centres[3 * b + k] + turned;
    }
  }
}

/** Moves the centres; returns the turn of every body as a matrix, row by row. */
function moveCentres(
  { moveOf, turnOf }: PreparedShell,
  { reaches, axes }: BodyFrames,
  from: ShellShape,
  step: Float64Array,
  share: number,
  to: ShellShape,
): Float64Array {
  const turns = new Float64Array(9 * moveOf.length);
  for (let b = 0; b < moveOf.length; b++) {
    const move = [0, 0, 0];
    if (moveOf[b] >= 0) for (let k = 0; k < 3; k++) move[k] = share * step[3 * moveOf[b] + k];
    if (moveOf[b] >= 0 && turnOf[b] < 0) {
      const along = move[0] * axes[3 * b] + move[1] * axes[3 * b + 1] + move[2] * axes[3 * b + 2];
      for (let k = 0; k < 3; k++) move[k] = along * axes[3 * b + k];
    }
    for (let k = 0; k < 3; k++) to.centres[3 * b + k] = from.centres[3 * b + k] + move[k];
    if (turnOf[b] < 0) continue;
    const scale = share / reaches[b];
    const at = 3 * turnOf[b];
    turns.set(turnOf3(step[at] * scale, step[at + 1] * scale, step[at + 2] * scale), 9 * b);
  }
  return turns;
}

/** Matrix of the turn by a rotation vector. */
function turnOf3(x: number, y: number, z: number): number[] {
  const angle = Math.hypot(x, y, z);
  const a = angle < 1e-9 ? 1 : Math.sin(angle) / angle;
  const b = angle < 1e-4 ? 0.5 : (1 - Math.cos(angle)) / (angle * angle);
  return [
    1 - b * (y * y + z * z),
    b * x * y - a * z,
    b * x * z + a * y,
    b * x * y + a * z,
    1 - b * (x * x + z * z),
    b * y * z - a * x,
    b * x * z - a * y,
    b * y * z + a * x,
    1 - b * (x * x + y * y),
  ];
}
