import { assertInvariant, failure, type Issue, type Result, success } from '../base/index.ts';
import { checkSewing } from './check-sewing.ts';
import { findSelfCrossings } from './find-self-crossings.ts';
import { describeFailure } from './flatten-free.ts';
import { bodyLength, collectKeptLengths, type KeptLength } from './kept-lengths.ts';
import { type LengthRules, makeLengthRules } from './length-rules.ts';
import { measureStrain } from './measure-strain.ts';
import { orientFlat } from './orient-flat.ts';
import { makeOutlineBending } from './outline-bending.ts';
import { type PreparedDisk, prepareDisk } from './prepare-disk.ts';
import { chooseSeamTargets } from './seam-targets.ts';
import { groupSewnEdges, type SewnEdges, sourceOf } from './sewn-edges.ts';
import { solveLayout } from './solve-layout.ts';
import { startLayout } from './start-layout.ts';
import type { FlatDisk, FlattenOptions, FlattenProblem } from './types.ts';

/**
 * Unrolls all disks so that they can be sewn together: least strain under the joins' and kept paths' lengths.
 * 1. Every disk alone with its kept paths as only rules; 2. one length per sewn edge, shared by its sides;
 * 3. every disk again with all lengths held and the outline stiff. Mirror images are copied.
 * Issues: unfit disks, lengths that contradict each other, no convergence, outlines crossing themselves, and any
 * length missed in the result, all with numbers. Cost: about 60 ms per 1000 triangles that are not mirror images.
 */
export function flattenTogether(problem: FlattenProblem, options: FlattenOptions = {}): Result<FlatDisk[]> {
  const progress = options.onProgress ?? (() => {});
  const isCancelled = options.isCancelled ?? (() => false);
  const tracing = options.trace ? { trace: options.trace } : {};
  // 1. Prepare.
  const issues: Issue[] = [];
  const disks = problem.disks.map((mesh, d): PreparedDisk | null => {
    if (sourceOf(problem, d) !== d) {
      checkMirror(problem, d);
      return null;
    }
    const prepared = prepareDisk(mesh, `disks.${d}`);
    issues.push(...prepared.issues);
    return prepared.ok ? prepared.value : null;
  });
  if (issues.length > 0) return failure(issues);
  const sewn = groupSewnEdges(problem, disks);
  const kept = collectKeptLengths(problem, sewn);
  const solved = disks.filter((disk) => disk !== null).length;
  let done = 0;

  // 2. Alone, with kept totals.
  const rules = disks.map((disk, d) => disk && makeLengthRules(disk, keptRules(kept, d)));
  const flat: (Float64Array | null)[] = disks.map(() => null);
  for (let d = 0; d < disks.length; d++) {
    const disk = disks[d];
    if (!disk) continue;
    if (isCancelled()) return failure([cancelled]);
    progress((0.4 * done++) / solved, 'Unrolling each panel');
    const start = startLayout(disk);
    flat[d] = start;
    const solution = solveLayout(disk, start, {
      rules: rules[d] as LengthRules,
      tolerance: 1e-6,
      lengthTolerance: 1e-2,
      ...tracing,
    });
    if (!solution.isConverged) issues.push(describeFailure(solution, `disks.${d}`, 1e-6));
  }
  if (issues.length > 0) return failure(issues);

  // 3. Shared lengths, then together.
  const { targets, issues: conflicts } = chooseSeamTargets(
    problem,
    sewn,
    kept,
    flat,
    options.seamLengthBlend ?? 0,
  );
  if (conflicts.length > 0) return failure(conflicts);
  done = 0;
  for (let d = 0; d < disks.length; d++) {
    const disk = disks[d];
    if (!disk) continue;
    if (isCancelled()) return failure([cancelled]);
    progress(0.4 + (0.6 * done++) / solved, 'Matching the seams');
    solveSewn(problem, disk, d, sewn, targets, kept, flat[d] as Float64Array, issues, tracing);
    orientFlat(disk, flat[d] as Float64Array);
    const crossings = findSelfCrossings(flat[d] as Float64Array, disk.boundary);
    if (crossings.length > 0) issues.push(crossingIssue(d, crossings.length / 2));
  }

  // 4. Mirror images and checks.
  const all = flat.map((positions, d) => positions ?? mirrorFlat(flat[sourceOf(problem, d)] as Float64Array));
  issues.push(...checkSewing(problem, all));
  if (issues.length > 0) return failure(issues);
  progress(1, 'Matching the seams');
  return success(
    all.map((positions, d) => ({ positions, strain: measureStrain(problem.disks[d], positions) })),
  );
}

const cancelled: Issue = {
  code: 'cancelled',
  path: '',
  message: 'Unrolling was stopped.',
  severity: 'error',
};

function keptRules(kept: readonly KeptLength[], disk: number): { edges: Int32Array; target: number }[] {
  return kept
    .filter((path) => path.disk === disk)
    .map((path) => ({ edges: path.edges, target: path.length3d }));
}

function solveSewn(
  problem: FlattenProblem,
  disk: PreparedDisk,
  d: number,
  sewn: SewnEdges,
  targets: Float64Array,
  kept: readonly KeptLength[],
  flat: Float64Array,
  issues: Issue[],
  tracing: Pick<FlattenOptions, 'trace'>,
): void {
  const rules = makeLengthRules(disk, [...sewnRules(d, sewn, targets), ...openRules(d, sewn, targets, kept)]);
  const bending = makeOutlineBending(disk, flat, findStiffPlaces(problem, disk, d, sewn));
  const solution = solveLayout(disk, flat, { rules, bending, ...tracing });
  if (!solution.isConverged) issues.push(describeFailure(solution, `disks.${d}`, 1e-10));
}

function sewnRules(
  disk: number,
  sewn: SewnEdges,
  targets: Float64Array,
): { edges: number[]; target: number }[] {
  const rules: { edges: number[]; target: number }[] = [];
  sewn.groups.forEach((group, g) => {
    for (const [owner, a, b] of group.members) {
      if (owner === disk) rules.push({ edges: [a, b], target: targets[g] });
    }
  });
  return rules;
}

/** Kept paths with edges that are not sewn: what is left for those edges after the sewn ones have theirs. */
function openRules(
  disk: number,
  sewn: SewnEdges,
  targets: Float64Array,
  kept: readonly KeptLength[],
): { edges: number[]; target: number }[] {
  const rules: { edges: number[]; target: number }[] = [];
  for (const path of kept) {
    if (path.disk !== disk) continue;
    const edges: number[] = [];
    let target = path.length3d;
    for (let k = 0; k < path.edges.length; k += 2) {
      const group = sewn.groupOf(disk, path.edges[k], path.edges[k + 1]);
      if (group < 0) edges.push(path.edges[k], path.edges[k + 1]);
      else target -= targets[group];
    }
    if (edges.length > 0) rules.push({ edges, target });
  }
  return rules;
}

/** Boundary places with sewn edges on both sides that are not the end of a join. */
function findStiffPlaces(
  problem: FlattenProblem,
  disk: PreparedDisk,
  d: number,
  sewn: SewnEdges,
): Uint8Array {
  const isEnd = new Uint8Array(disk.vertexCount);
  for (const join of problem.joins) {
    for (const side of [join.a, join.b]) {
      if (sourceOf(problem, side.disk) !== d) continue;
      isEnd[side.vertices[0]] = 1;
      isEnd[side.vertices[side.vertices.length - 1]] = 1;
    }
  }
  const { boundary } = disk;
  const n = boundary.length;
  return Uint8Array.from(boundary, (v, k) => {
    const before = sewn.groupOf(d, boundary[(k + n - 1) % n], v);
    const after = sewn.groupOf(d, v, boundary[(k + 1) % n]);
    return before >= 0 && after >= 0 && !isEnd[v] ? 1 : 0;
  });
}

function crossingIssue(disk: number, count: number): Issue {
  return {
    code: 'flatten-outline-crosses',
    path: `disks.${disk}`,
    message: `The flat outline crosses itself in ${count} place${count > 1 ? 's' : ''}: the panel cannot be cut in one piece.`,
    severity: 'error',
    measured: count,
    limit: 0,
  };
}

/** Mirror images are taken at their word, but not blindly. */
function checkMirror(problem: FlattenProblem, d: number): void {
  const source = sourceOf(problem, d);
  const [image, original] = [problem.disks[d], problem.disks[source]];
  assertInvariant(
    problem.mirrorOf[source] < 0,
    'flatten',
    'a mirror image names a disk that is none itself',
    source,
  );
  assertInvariant(
    image.positions.length === original.positions.length &&
      image.triangles.length === original.triangles.length,
    'flatten',
    `disk ${d} has as many vertices and triangles as disk ${source}`,
    image.positions.length,
  );
  for (let f = 0; f < original.triangles.length; f += 3) {
    const [a, b] = [original.triangles[f], original.triangles[f + 1]];
    const length = bodyLength(problem, source, a, b);
    assertInvariant(
      Math.abs(bodyLength(problem, d, a, b) - length) <= 1e-6 * (1 + length),
      'flatten',
      `disk ${d} mirrors disk ${source} vertex by vertex`,
      `edge ${a}–${b}`,
    );
  }
}

function mirrorFlat(flat: Float64Array): Float64Array {
  return flat.map((x, i) => (i % 2 === 0 ? -x : x));
}
