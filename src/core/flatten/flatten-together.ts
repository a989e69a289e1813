import { failure, type Issue, type Result, success } from '../base/index.ts';
import { checkSewing } from './check-sewing.ts';
import { findSelfCrossings } from './find-self-crossings.ts';
import { describeFailure } from './flatten-free.ts';
import { collectKeptLengths, type KeptLength } from './kept-lengths.ts';
import { makeLengthRules } from './length-rules.ts';
import { measureStrain } from './measure-strain.ts';
import { checkMirror, mirrorFlat } from './mirror-disks.ts';
import { orientFlat } from './orient-flat.ts';
import { makeOutlineBending } from './outline-bending.ts';
import { preferStretch } from './prefer-stretch.ts';
import { type PreparedDisk, prepareDisk } from './prepare-disk.ts';
import { chooseSeamTargets } from './seam-targets.ts';
import { findStiffPlaces, rulesAlone, rulesTogether } from './sewing-rules.ts';
import { groupSewnEdges, type SewnEdges, sourceOf } from './sewn-edges.ts';
import { type LayoutOptions, solveLayout } from './solve-layout.ts';
import { startLayout } from './start-layout.ts';
import type { FlatDisk, FlattenOptions, FlattenProblem } from './types.ts';

/** Alone, a panel only has to show which lengths it likes; together, it must settle. */
const toleranceAlone = 1e-6;
const toleranceTogether = 1e-10;
/** Share of the time spent before the seams are matched. */
const aloneShare = 0.5;

/** A disk that is really solved, its index in the problem, and its layout so far. */
interface OpenDisk {
  readonly index: number;
  readonly disk: PreparedDisk;
  readonly flat: Float64Array;
}

interface Sewing {
  readonly problem: FlattenProblem;
  readonly sewn: SewnEdges;
  readonly kept: readonly KeptLength[];
  readonly tracing: Pick<LayoutOptions, 'trace'>;
  readonly wrinkleAversion: number;
}

/**
 * Unrolls all disks so that they can be sewn together: least strain under the joins' and kept paths' lengths.
 * 1. Every disk alone with its kept paths as only rules; 2. one length per sewn edge, shared by its sides;
 * 3. every disk again with all lengths held and the outline stiff. Mirror images are copied.
 * Issues: unfit disks, lengths that contradict each other, no convergence, outlines crossing themselves, and any
 * length missed in the result, all with numbers; paths are `disks.N`, `joins.N`, `keptPaths.N`.
 * Cost: about 25 ms per 1000 triangles that are not mirror images (warm, one core; 300 ms for eight panels of 20 000
 * triangles, half of them mirror images).
 */
export function flattenTogether(problem: FlattenProblem, options: FlattenOptions = {}): Result<FlatDisk[]> {
  const progress = options.onProgress ?? (() => {});
  const isCancelled = options.isCancelled ?? (() => false);
  const issues: Issue[] = [];

  // 1. Prepare.
  const prepared = prepareAll(problem, issues);
  if (issues.length > 0) return failure(issues);
  const sewn = groupSewnEdges(problem);
  for (const id of sewn.conflicts) {
    issues.push({
      code: 'flatten-ease-conflict',
      path: `joins.${problem.joins.findIndex((join) => join.id === id)}`,
      message: `Seam ${id} cannot take the ease asked for: both its sides are the same edge, mirrored, or tied by another seam.`,
      severity: 'error',
    });
  }
  if (issues.length > 0) return failure(issues);
  const kept = collectKeptLengths(problem, sewn);
  const tracing = options.trace ? { trace: options.trace } : {};
  const sewing: Sewing = { problem, sewn, kept, tracing, wrinkleAversion: options.wrinkleAversion ?? 0 };

  // 2. Alone, with kept totals.
  const open: OpenDisk[] = [];
  for (const { index, disk } of prepared) {
    if (isCancelled()) return failure([cancelled]);
    progress((aloneShare * open.length) / prepared.length, 'Unrolling each panel');
    const one = { index, disk, flat: startLayout(disk) };
    solveAlone(sewing, one, issues);
    open.push(one);
  }
  if (issues.length > 0) return failure(issues);

  // 3. Shared lengths, then together.
  const layouts = new Map(open.map(({ index, flat }) => [index, flat]));
  const { targets, issues: conflicts } = chooseSeamTargets(
    problem,
    sewn,
    kept,
    layouts,
    options.seamLengthBlend ?? 0,
  );
  if (conflicts.length > 0) return failure(conflicts);
  for (const [k, one] of open.entries()) {
    if (isCancelled()) return failure([cancelled]);
    progress(aloneShare + ((1 - aloneShare) * k) / open.length, 'Matching the seams');
    solveTogether(sewing, one, targets, issues);
  }

  // 4. Mirror images and checks.
  const all = problem.disks.map((_, d) => {
    const flat = layouts.get(sourceOf(problem, d)) as Float64Array;
    return sourceOf(problem, d) === d ? flat : mirrorFlat(flat);
  });
  issues.push(...checkSewing(problem, all, sewn));
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

function prepareAll(problem: FlattenProblem, issues: Issue[]): { index: number; disk: PreparedDisk }[] {
  const ready: { index: number; disk: PreparedDisk }[] = [];
  for (const [index, mesh] of problem.disks.entries()) {
    if (sourceOf(problem, index) !== index) {
      checkMirror(problem, index);
      continue;
    }
    const prepared = prepareDisk(mesh, `disks.${index}`);
    issues.push(...prepared.issues);
    if (prepared.ok) ready.push({ index, disk: prepared.value });
  }
  return ready;
}

function solveAlone(sewing: Sewing, { index, disk, flat }: OpenDisk, issues: Issue[]): void {
  const solution = solveLayout(preferStretch(disk, sewing.wrinkleAversion), flat, {
    rules: makeLengthRules(disk, rulesAlone(index, sewing.kept)),
    tolerance: toleranceAlone,
    lengthTolerance: 1e-2,
    ...sewing.tracing,
  });
  if (!solution.isConverged) issues.push(describeFailure(solution, `disks.${index}`, toleranceAlone));
}

function solveTogether(
  sewing: Sewing,
  { index, disk, flat }: OpenDisk,
  targets: Float64Array,
  issues: Issue[],
): void {
  const { problem, sewn, kept, tracing, wrinkleAversion } = sewing;
  const rules = makeLengthRules(disk, rulesTogether(index, sewn, targets, kept));
  const bending = makeOutlineBending(disk, flat, findStiffPlaces(problem, disk, index, sewn));
  const solution = solveLayout(preferStretch(disk, wrinkleAversion), flat, {
    rules,
    bending,
    tolerance: toleranceTogether,
    ...tracing,
  });
  if (!solution.isConverged) issues.push(describeFailure(solution, `disks.${index}`, toleranceTogether));
  orientFlat(disk, flat);
  const crossings = findSelfCrossings(flat, disk.boundary).length / 2;
  if (crossings === 0) return;
  issues.push({
    code: 'flatten-outline-crosses',
    path: `disks.${index}`,
    message: `The flat outline crosses itself in ${crossings} place${crossings > 1 ? 's' : ''}: the panel cannot be cut in one piece.`,
    severity: 'error',
    measured: crossings,
    limit: 0,
  });
}
