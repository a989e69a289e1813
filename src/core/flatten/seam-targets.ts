import type { Issue } from '../base/index.ts';
import { distanceInPlane } from '../math/index.ts';
import { bodyLength, type KeptLength } from './kept-lengths.ts';
import { phrase } from './phrases.ts';
import type { SewnEdges } from './sewn-edges.ts';
import type { FlattenProblem } from './types.ts';

/** mm by which a whole kept path may miss its length before it is reported. */
export const keptTolerance = 0.2;

/**
 * One flat length per sewn group, shared by all its sides: between the mean of the free lengths (blend 0) and
 * the length on the body (blend 1); groups of level seams keep the body's length. Then every kept path
 * that runs wholly along sewn edges is met by scaling its edges evenly, round after round while paths share
 * edges. A path whose edges all keep other lengths cannot be met: an issue tells by how much.
 * `free`: flat positions by index of the solved disk.
 */
export function chooseSeamTargets(
  problem: FlattenProblem,
  sewn: SewnEdges,
  kept: readonly KeptLength[],
  free: ReadonlyMap<number, Float64Array>,
  blend: number,
): { targets: Float64Array; issues: Issue[] } {
  const targets = new Float64Array(sewn.groups.length);
  sewn.groups.forEach((group, g) => {
    let flatSum = 0;
    let bodySum = 0;
    for (const [disk, a, b, factor] of group.members) {
      const flat = free.get(disk) as Float64Array;
      flatSum += distanceInPlane(flat, a, b) / factor;
      bodySum += bodyLength(problem, disk, a, b);
    }
    const share = group.keepsLength ? 1 : blend;
    targets[g] = ((1 - share) * flatSum + share * bodySum) / group.members.length;
  });
  const paths = kept.map((path) => describePath(path, sewn)).filter((path) => path !== null);
  for (let round = 0; round < 500; round++) {
    let worst = 0;
    for (const path of paths) worst = Math.max(worst, scalePath(path, targets));
    if (worst < 1e-9) break;
  }
  const issues: Issue[] = [];
  for (const path of paths) {
    const total = sumOf(path.fixed, targets) + sumOf(path.movable, targets);
    if (Math.abs(total - path.length3d) <= keptTolerance) continue;
    issues.push({
      code: 'flatten-kept-length-conflict',
      path: `keptPaths.${path.pathIndex}`,
      message: phrase('flatten.kept-length', { wanted: path.length3d, got: total }),
      severity: 'error',
      measured: total - path.length3d,
      limit: keptTolerance,
    });
  }
  return { targets, issues };
}

interface SewnPath {
  readonly pathIndex: number;
  readonly length3d: number;
  readonly fixed: readonly number[];
  readonly movable: readonly number[];
}

/** Null when some edge is not sewn: then the solver itself holds the total. */
function describePath(path: KeptLength, sewn: SewnEdges): SewnPath | null {
  const fixed: number[] = [];
  const movable: number[] = [];
  for (let k = 0; k < path.edges.length; k += 2) {
    const group = sewn.groupOf(path.disk, path.edges[k], path.edges[k + 1]);
    if (group < 0) return null;
    (sewn.groups[group].keepsLength ? fixed : movable).push(group);
  }
  return { pathIndex: path.pathIndex, length3d: path.length3d, fixed, movable };
}

function sumOf(groups: readonly number[], targets: Float64Array): number {
  let sum = 0;
  for (const g of groups) sum += targets[g];
  return sum;
}

/** Scales a path's free edges to its length; returns the relative change made. */
function scalePath(path: SewnPath, targets: Float64Array): number {
  const wanted = path.length3d - sumOf(path.fixed, targets);
  const now = sumOf(path.movable, targets);
  if (path.movable.length === 0 || !(wanted > 0)) return 0;
  const factor = wanted / now;
  // A path that holds an edge and its mirror image names their group twice.
  for (const g of new Set(path.movable)) targets[g] *= factor;
  return Math.abs(factor - 1);
}
