import { addLinks } from './add-links.ts';
import { addMembrane, type RestTriangles, restTriangles } from './add-membrane.ts';
import { addClosingTangent, addPressure } from './add-pressure.ts';
import { type BodyFrames, frameBodies, type ShellShape } from './pose-bodies.ts';
import type { PreparedShell } from './prepare-shell.ts';
import { ShellSums } from './shell-sums.ts';
import type { ShellProblem } from './types.ts';

/** A problem with all its numbers laid ready, and room for its sums. */
export interface ShellState {
  readonly problem: ShellProblem;
  readonly shell: PreparedShell;
  readonly frames: BodyFrames;
  readonly rest: RestTriangles;
  /** Of every face, N/mm². */
  readonly pressure: Float64Array;
  readonly pushed: number;
  readonly sums: ShellSums;
}

export function readyShell(problem: ShellProblem, shell: PreparedShell, pushed: number): ShellState {
  const { pressure } = problem;
  const faceCount = shell.faces.length / 3;
  const frames = frameBodies(problem);
  return {
    problem,
    shell,
    frames,
    rest: restTriangles(problem.membrane),
    pressure: typeof pressure === 'number' ? new Float64Array(faceCount).fill(pressure) : pressure,
    pushed,
    sums: new ShellSums(shell, frames),
  };
}

export function startShape({ problem, frames }: ShellState): ShellShape {
  return { positions: problem.start.slice(), centres: frames.centres.slice() };
}

/**
 * Sums gradient (energy of cloth and links, less pressure's force) and, if asked, the tangent at a shape. Returns the energy of
 * cloth and links, N mm.
 */
export function sumShell(state: ShellState, shape: ShellShape, withTangent: boolean): number {
  const { problem, rest, pressure, pushed, sums } = state;
  sums.clear(withTangent);
  let energy = addMembrane(sums, rest, shape, pushed, pressure, withTangent);
  if (problem.strands) energy += addLinks(sums, problem, problem.strands, shape, true, withTangent);
  if (problem.strips) energy += addLinks(sums, problem, problem.strips, shape, false, withTangent);
  addPressure(sums, shape.positions, pressure);
  if (withTangent) addClosingTangent(sums, shape, pressure);
  sums.gather(shape, withTangent);
  return energy;
}

/** Pressure on the mean share a point has of the faces; without pressure, of a thousandth of stretch. N. */
export function usualForce({ rest, pressure, problem, shell }: ShellState): number {
  let area = 0;
  let force = 0;
  for (let t = 0; t < rest.areas.length; t++) {
    area += rest.areas[t];
    force += rest.areas[t] * pressure[t];
  }
  const points = Math.max(1, shell.nodeCount);
  const cloth = problem.membrane.cloths[0];
  return force > 0 ? force / points : 1e-3 * Math.min(cloth.warp, cloth.weft) * Math.sqrt(area / points);
}
