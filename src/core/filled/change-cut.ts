import type { SeamedShell } from '../seams/index.ts';
import type { ShellProblem } from '../statics/index.ts';
import { type CutUnknowns, changesOfRungs, movesOfPanel } from './cut-unknowns.ts';
import type { FilledGiven, FilledShell } from './types.ts';

/** A shell with its panels as they lie upright, and how far each is turned to lie along its grain, radians counter-clockwise. */
export interface CutGiven extends FilledGiven {
  readonly upright: readonly Float64Array[];
  /** Parallel to the panels. */
  readonly grain: readonly number[];
}

/** What amounts of the unknowns change; in proportion to them. */
export interface CutChange {
  /** Parallel to the panels: #V × 2 mm, upright. */
  readonly panels: readonly Float64Array[];
  /** As those of the membrane. */
  readonly restEdges: Float64Array;
  /** As those of the strands. */
  readonly strandLengths: Float64Array;
}

/** Panels, rest edges and threads as amounts of the unknowns change them. O(points × unknowns). */
export function changeOfCut(
  { shell, upright, grain }: CutGiven,
  { problem, braces }: FilledShell,
  unknowns: CutUnknowns,
  amounts: ArrayLike<number>,
): CutChange {
  const panels = upright.map((flat, p) => movesOfPanel(unknowns, shell.panels, flat, p, amounts));
  const strandLengths = new Float64Array(problem.strands?.lengths.length ?? 0);
  for (const { brace, first } of braces) strandLengths.set(changesOfRungs(unknowns, brace, amounts), first);
  return { panels, restEdges: edgeChanges(shell, panels, grain), strandLengths };
}

/** Warp upwards, weft to the left, as the panels' own edges. */
function edgeChanges(
  { panels }: SeamedShell,
  moves: readonly Float64Array[],
  grain: readonly number[],
): Float64Array {
  const out = new Float64Array(panels.reduce((sum, { mesh }) => sum + (4 * mesh.triangles.length) / 3, 0));
  let at = 0;
  panels.forEach(({ mesh: { triangles } }, p) => {
    const [cos, sin] = [Math.cos(grain[p]), Math.sin(grain[p])];
    const own = moves[p];
    for (let t = 0; t < triangles.length; t += 3) {
      for (const corner of [1, 2]) {
        const [a, b] = [2 * triangles[t], 2 * triangles[t + corner]];
        const [x, y] = [own[b] - own[a], own[b + 1] - own[a + 1]];
        // Turned back by the grain.
        out[at++] = cos * y - sin * x;
        out[at++] = -cos * x - sin * y;
      }
    }
  });
  return out;
}

/** The problem with a changed cut, to be started from `start`. A longer thread of the same cloth is so much less stiff. */
export function changedProblem(
  { problem }: FilledShell,
  change: CutChange,
  start: Float64Array,
): ShellProblem {
  const { membrane, strands } = problem;
  const restEdges = membrane.restEdges.map((x, k) => x + change.restEdges[k]);
  if (!strands) return { ...problem, start, membrane: { ...membrane, restEdges } };
  const lengths = strands.lengths.map((x, k) => x + change.strandLengths[k]);
  const stiffness = strands.stiffness.map((x, k) => (x * strands.lengths[k]) / lengths[k]);
  return {
    ...problem,
    start,
    membrane: { ...membrane, restEdges },
    strands: { ...strands, lengths, stiffness },
  };
}
