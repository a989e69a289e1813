import { reversePolyline } from '../math/index.ts';
import { type Mesh, sliceMesh } from '../mesh/index.ts';
import { curveThrough } from './curve-through.ts';
import { moveOutwards } from './move-outwards.ts';

/**
 * Front or back of an open shell in its middle plane, `clearance` outside it: n × 2 (y, z) mm, front upwards and back downwards,
 * so that the form lies to the left of both. Null where the plane does not meet the shell from base to neck. O(triangles).
 */
export function outlineFromSide(shell: Mesh, side: 'front' | 'back', clearance: number): Float64Array | null {
  const lines = sliceMesh(shell, 0, 0)
    .filter(({ closed }) => !closed)
    .map(({ points }) => points)
    .toSorted((a, b) => riseOf(b) - riseOf(a))
    .slice(0, 2)
    .toSorted((a, b) => meanDepth(a) - meanDepth(b));
  if (lines.length < 2) return null;
  const line = side === 'front' ? lines[1] : lines[0];
  const risesAlong = line[line.length - 1] > line[1];
  const turned = risesAlong === (side === 'front') ? line : reversePolyline(line);
  const out = side === 'front' ? ([1, 0] as const) : ([-1, 0] as const);
  return moveOutwards(curveThrough(turned), clearance, { first: out, last: out });
}

function riseOf(line: Float64Array): number {
  return Math.abs(line[line.length - 1] - line[1]);
}

function meanDepth(line: Float64Array): number {
  return line.reduce((sum, value, i) => (i % 2 === 0 ? sum + value : sum), 0) / (line.length / 2);
}
