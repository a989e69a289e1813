import type { Issue, Phrase } from '../base/index.ts';
import { distanceInPlane } from '../math/index.ts';
import { bodyLength } from './kept-lengths.ts';
import { phrase } from './phrases.ts';
import { keptTolerance } from './seam-targets.ts';
import { type SewnEdges, sourceOf } from './sewn-edges.ts';
import type { FlattenProblem } from './types.ts';

/** mm by which the sides of a join may differ, measured from its start to any vertex. */
const joinTolerance = 0.01;

/**
 * Measures the finished flat disks against what was asked, ease taken off: sides of joins equal up to every vertex, joins that
 * keep their length and kept paths as long as on the body. `flat`: positions of every disk, mirror images
 * included. Issues carry mm; none means all is met.
 */
export function checkSewing(
  problem: FlattenProblem,
  flat: readonly Float64Array[],
  sewn: SewnEdges,
): Issue[] {
  const issues: Issue[] = [];
  const sewnLength = (disk: number, a: number, b: number): number =>
    distanceInPlane(flat[disk], a, b) / sewn.factorOf(sourceOf(problem, disk), a, b);
  problem.joins.forEach((join, index) => {
    let gap = 0;
    let along = [0, 0, 0];
    for (let k = 0; k + 1 < join.a.vertices.length; k++) {
      const [a0, a1] = [join.a.vertices[k], join.a.vertices[k + 1]];
      along = [
        along[0] + sewnLength(join.a.disk, a0, a1),
        along[1] + sewnLength(join.b.disk, join.b.vertices[k], join.b.vertices[k + 1]),
        along[2] + bodyLength(problem, join.a.disk, a0, a1),
      ];
      gap = Math.max(gap, Math.abs(along[0] - along[1]));
    }
    if (!(gap <= joinTolerance)) {
      issues.push(
        tell(
          'flatten-join-differs',
          `joins.${index}`,
          phrase('flatten.join-differs', { seam: join.id, gap, limit: joinTolerance }),
          gap,
          joinTolerance,
        ),
      );
    }
    const change = along[0] - along[2];
    if (join.keepsLength && !(Math.abs(change) <= keptTolerance)) {
      issues.push(
        tell(
          'flatten-join-length',
          `joins.${index}`,
          phrase('flatten.join-length', { seam: join.id, change, limit: keptTolerance }),
          change,
          keptTolerance,
        ),
      );
    }
  });
  const checkPath = (change: number, index: number): void => {
    if (Math.abs(change) <= keptTolerance) return;
    const message = phrase('flatten.path-length', { change, limit: keptTolerance });
    issues.push(tell('flatten-path-length', `keptPaths.${index}`, message, change, keptTolerance));
  };
  const sums = new Map<string, { change: number; index: number }>();
  problem.keptPaths.forEach((path, index) => {
    const { change: before } = sums.get(path.sum ?? '') ?? { change: 0 };
    let change = before;
    for (let k = 0; k + 1 < path.vertices.length; k++) {
      const [a, b] = [path.vertices[k], path.vertices[k + 1]];
      change += sewnLength(path.disk, a, b);
      if (path.length === undefined) change -= bodyLength(problem, path.disk, a, b);
    }
    change -= path.length ?? 0;
    if (path.sum === undefined) checkPath(change, index);
    else sums.set(path.sum, { change, index });
  });
  for (const { change, index } of sums.values()) checkPath(change, index);
  return issues;
}

function tell(code: string, path: string, message: Phrase, measured: number, limit: number): Issue {
  return { code, path, message, severity: 'error', measured, limit };
}
