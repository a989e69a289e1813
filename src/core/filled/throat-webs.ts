import type { BraceRung } from '../inside/index.ts';
import { depthOfShell } from '../inside/index.ts';
import { add, normalise, scale, subtract } from '../math/index.ts';
import { finderOnMesh, type Mesh, measureVertexNormals } from '../mesh/index.ts';
import type { FilledGiven, StrandedBrace } from './types.ts';

/** Where they are stitched on in front, mm beside the middle. */
const BESIDE = 30;
/** Threads are this far apart along the shell, mm, the first so far above the front tie. */
const RUNG_GAP = 12;

/**
 * A trial, not yet a piece: one pair of webs in the throat, where a hollow cannot stand under pressure. Each is stitched to
 * the front along an upright line beside the middle, from above the end of the front tie to where the neck begins and the body
 * is no longer less deep, and goes to the sleeve with threads that lie half way between level and square to the cloth, as
 * long as the body is deep there. Empty without a front tie. O(#F).
 */
export function throatWebs(given: FilledGiven): StrandedBrace[] {
  const tie = given.inside.braces.find(({ id }) => id === 'tie-front');
  const bottom = tie?.rungs[tie.rungs.length - 1].from[2];
  if (bottom === undefined) return [];
  return ([1, -1] as const).map((sign) => ({
    id: sign > 0 ? 'throat-right' : 'throat-left',
    isAcross: false,
    rungs: rungsBeside(given, sign * BESIDE, bottom),
  }));
}

function rungsBeside(
  { shell, inside: { pole }, options }: FilledGiven,
  x: number,
  bottom: number,
): BraceRung[] {
  const { mesh, chart } = shell;
  const find = finderOnMesh(mesh);
  const normals = measureVertexNormals(mesh);
  const edge = everyGap(
    sectionAt(mesh, x).filter(([, y, z]) => y > pole.y && z > bottom),
    RUNG_GAP,
  );
  const rungs = edge.map((from): BraceRung => {
    const { triangle, weights } = find(from);
    const corners = mesh.triangles.subarray(3 * triangle, 3 * triangle + 3);
    let inwards = [0, 0, 0];
    let v = 0;
    weights.forEach((weight, k) => {
      inwards = add(inwards, scale(normals.subarray(3 * corners[k], 3 * corners[k] + 3), -weight));
      v += weight * chart[2 * corners[k] + 1];
    });
    // On the front of the sleeve, turned a little to the side.
    const sleeve = [(Math.sign(x) * pole.reach) / 2, pole.y + (Math.sqrt(3) / 2) * pole.reach];
    const level = [sleeve[0] - from[0], sleeve[1] - from[1], 0];
    const way = add(normalise(level), normalise(inwards));
    const fall = (Math.hypot(...level) * way[2]) / Math.hypot(way[0], way[1]);
    const to = [sleeve[0], sleeve[1], from[2] + fall] as const;
    const length = Math.hypot(...subtract(to, from)) - depthOfShell(options);
    return { v, z: from[2], from, to, length };
  });
  const neck = rungs.findIndex(({ length }, k) => k > 0 && length > rungs[k - 1].length);
  return neck < 0 ? rungs : rungs.slice(0, neck);
}

/** Points of a mesh at x, upwards. */
function sectionAt({ positions, triangles }: Mesh, x: number): [number, number, number][] {
  const points: [number, number, number][] = [];
  for (let e = 0; e < triangles.length; e++) {
    const [a, b] = [3 * triangles[e], 3 * triangles[e % 3 === 2 ? e - 2 : e + 1]];
    const [left, right] = [positions[a] - x, positions[b] - x];
    // Each edge that two triangles share is met once in either direction.
    if (!(left < 0 && right >= 0)) continue;
    const t = left / (left - right);
    const at = (axis: number): number =>
      positions[a + axis] + t * (positions[b + axis] - positions[a + axis]);
    points.push([x, at(1), at(2)]);
  }
  return points.sort((p, q) => p[2] - q[2]);
}

/** Places along a line of points every `gap` mm, the first after one. */
function everyGap(
  line: readonly (readonly [number, number, number])[],
  gap: number,
): [number, number, number][] {
  const out: [number, number, number][] = [];
  let left = gap;
  for (let i = 1; i < line.length; i++) {
    const step = subtract(line[i], line[i - 1]);
    const length = Math.hypot(...step);
    let gone = 0;
    for (; length - gone >= left; left = gap) {
      gone += left;
      out.push(add(line[i - 1], scale(step, gone / length)));
    }
    left -= length - gone;
  }
  return out;
}
