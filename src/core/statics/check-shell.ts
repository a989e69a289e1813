import { assertInvariant, type Issue, type Phrase } from '../base/index.ts';
import { volumeOfFaces } from './add-pressure.ts';
import { checkNumbers } from './check-numbers.ts';
import { findOpenEdges } from './find-open-edges.ts';
import { pointsOfEnd } from './link-ends.ts';
import { phrase } from './phrases.ts';
import { facesOf } from './prepare-shell.ts';
import type { EquilibriumOptions, ShellProblem } from './types.ts';

/**
 * What a maker's numbers can make of a shell that has no balance to find. How lists fit together is promised by whoever calls:
 * `assertShell`. O(size).
 */
export function checkShell(problem: ShellProblem, options: EquilibriumOptions): Issue[] {
  assertShell(problem);
  return [...checkNumbers(problem, options), ...checkLinks(problem), ...checkSurface(problem)];
}

function issue(path: string, message: Phrase, measured?: number): Issue {
  const code = message.id.replace('.', '-');
  return { code, path, message, severity: 'error', ...(measured === undefined ? {} : { measured }) };
}

/** Lists of fitting lengths, points that are there, each of one body at most, and held by cloth or by a body. */
function assertShell(problem: ShellProblem): void {
  const { start, membrane, closing = new Uint32Array(), pressure, bodies = [] } = problem;
  const pointCount = start.length / 3;
  const count = membrane.triangles.length / 3;
  assertInvariant(
    Number.isInteger(pointCount) && start.every(Number.isFinite),
    'statics',
    'points are finite',
    pointCount,
  );
  assertInvariant(count >= 1 && Number.isInteger(count), 'statics', 'a membrane has triangles', count);
  assertInvariant(
    membrane.restEdges.length === 4 * count,
    'statics',
    'every triangle has two edges',
    membrane.restEdges.length,
  );
  assertInvariant(membrane.restEdges.every(Number.isFinite), 'statics', 'edges are finite', 'restEdges');
  const cloths = membrane.clothOf ?? new Uint8Array(count);
  assertInvariant(cloths.length === count, 'statics', 'every triangle has a cloth', cloths.length);
  assertInvariant(
    cloths.every((cloth) => cloth < membrane.cloths.length),
    'statics',
    'cloths are there',
    membrane.cloths.length,
  );
  const faces = count + closing.length / 3;
  if (typeof pressure !== 'number')
    assertInvariant(pressure.length === faces, 'statics', 'all faces have a pressure', faces);
  const { corners, weights } = problem.places ?? { corners: new Uint32Array(), weights: new Float64Array() };
  assertInvariant(
    weights.length === corners.length && corners.length % 3 === 0 && weights.every(Number.isFinite),
    'statics',
    'places have three corners',
    corners.length,
  );
  const lists = [membrane.triangles, closing, corners, ...bodies.map(({ points }) => points)];
  for (const links of [problem.strands, problem.strips]) {
    if (!links) continue;
    const { ends, lengths, stiffness } = links;
    assertInvariant(ends.length === 2 * lengths.length, 'statics', 'links have two ends', ends.length);
    assertInvariant(
      stiffness.length === lengths.length,
      'statics',
      'links have a stiffness',
      stiffness.length,
    );
    const endCount = pointCount + corners.length / 3;
    assertInvariant(
      ends.every((end) => end < endCount),
      'statics',
      'ends are there',
      endCount,
    );
  }
  for (const list of lists) {
    assertInvariant(
      list.every((point) => point < pointCount),
      'statics',
      'points are there',
      pointCount,
    );
  }
  const holders = new Uint8Array(pointCount);
  for (const { points, motion } of bodies) {
    assertInvariant(points.length > 0, 'statics', 'bodies have points', points.length);
    assertInvariant(
      motion.kind !== 'slide' || Math.hypot(...motion.axis) > 0,
      'statics',
      'axes have a direction',
      motion.kind,
    );
    for (const point of points)
      assertInvariant(++holders[point] === 1, 'statics', 'a point is of one body', point);
  }
  for (const point of membrane.triangles) holders[point] = 1;
  assertInvariant(!holders.includes(0), 'statics', 'cloth or a body holds every point', holders.indexOf(0));
}

/** Strands and strips whose ends cannot move apart: one point, or both on one body, or both fixed. */
function checkLinks(problem: ShellProblem): Issue[] {
  const { bodies = [], strands, strips, start } = problem;
  const owner = new Int32Array(start.length / 3).fill(-1);
  bodies.forEach(({ points, motion }, b) => {
    // All fixed bodies are as one.
    for (const p of points) owner[p] = motion.kind === 'fixed' ? bodies.length : b;
  });
  const issues: Issue[] = [];
  for (const [name, links] of [['strands', strands] as const, ['strips', strips] as const]) {
    for (let k = 0; k < (links?.lengths.length ?? 0); k++) {
      const [a, b] = links!.ends.subarray(2 * k, 2 * k + 2);
      const held = [a, b].flatMap((end) => Array.from(pointsOfEnd(problem, end)));
      if (a === b || (owner[held[0]] >= 0 && held.every((p) => owner[p] === owner[held[0]])))
        issues.push(issue(`${name}.${k}`, phrase('statics.idle-link', { link: k })));
    }
  }
  return issues;
}

/**
 * Under pressure no edge may be open, except between points that are fixed: there the force on what is missing is taken up.
 * A closed shell must start the right way out.
 */
function checkSurface({ membrane, closing, bodies = [], start, pressure }: ShellProblem): Issue[] {
  if (pressure === 0) return [];
  const isFixed = new Uint8Array(start.length / 3);
  for (const { points, motion } of bodies)
    if (motion.kind === 'fixed') for (const p of points) isFixed[p] = 1;
  const faces = facesOf(membrane.triangles, closing);
  const open = findOpenEdges(faces);
  let edges = 0;
  for (let k = 0; k < open.length; k += 2) if (!isFixed[open[k]] || !isFixed[open[k + 1]]) edges++;
  if (edges > 0) return [issue('membrane', phrase('statics.not-closed', { edges }), edges)];
  const volume = volumeOfFaces(faces, start);
  return open.length > 0 || volume > 0
    ? []
    : [issue('start', phrase('statics.no-volume', { volume }), volume)];
}
