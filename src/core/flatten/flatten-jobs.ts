import { failure, type Issue, type Result, success } from '../base/index.ts';
import type { Mesh } from '../mesh/index.ts';
import { findSelfCrossings } from './find-self-crossings.ts';
import { describeFailure } from './flatten-free.ts';
import { createFlattenMemory, type FlattenMemory, type JobResult, remember } from './flatten-memory.ts';
import { makeLengthRules } from './length-rules.ts';
import { orientFlat } from './orient-flat.ts';
import { makeOutlineBending } from './outline-bending.ts';
import { phrase } from './phrases.ts';
import { preferStretch } from './prefer-stretch.ts';
import { type PreparedDisk, prepareDisk } from './prepare-disk.ts';
import { type LayoutOptions, solveLayout } from './solve-layout.ts';
import { startLayout } from './start-layout.ts';

/** Alone, a panel only has to show which lengths it likes; together, it must settle. */
const toleranceAlone = 1e-6;
const toleranceTogether = 1e-10;

/**
 * One disk to be solved, apart from all others: plain data that survives postMessage, so that jobs can be shared out
 * among workers. First every disk `alone`; then, with the seams' lengths chosen from all of them, each `together`.
 */
export type FlattenJob = AloneJob | TogetherJob;

interface JobBase {
  /** Index of the disk in the problem. */
  readonly disk: number;
  readonly mesh: Mesh;
  /** Edges (vertex pairs) whose flat lengths sum to a target, mm. */
  readonly rules: readonly { readonly edges: ArrayLike<number>; readonly target: number }[];
  readonly wrinkleAversion: number;
}

export interface AloneJob extends JobBase {
  readonly kind: 'alone';
}

export interface TogetherJob extends JobBase {
  readonly kind: 'together';
  /** Layout of the disk alone: start and the outline's rest shape. */
  readonly alone: Float64Array;
  /** Per boundary place, whether the outline is stiff there. */
  readonly isStiff: Uint8Array;
}

/** Solves one job. Same job, same numbers, with memory or without. */
export function runFlattenJob(
  job: FlattenJob,
  memory: FlattenMemory = createFlattenMemory(),
  trace?: LayoutOptions['trace'],
): Result<JobResult> {
  const path = `disks.${job.disk}`;
  const { meshKey, key } = keysOf(job);
  const solved = remember(memory.layouts, key, () => {
    const prepared = remember(memory.disks, meshKey, () => prepareDisk(job.mesh, path));
    if (!prepared.ok) return prepared;
    return job.kind === 'alone'
      ? solveAlone(prepared.value, job, path, trace)
      : solveTogether(prepared.value, job, path, trace);
  });
  if (!solved.ok) return solved;
  const { flat, forces, yields } = solved.value;
  return success({ flat: flat.slice(), forces: forces.slice(), yields: yields.slice() });
}

/** What a memory holds of a job, or undefined. */
export function recallJob(job: FlattenJob, memory: FlattenMemory): JobResult | undefined {
  return memory.layouts.get(keysOf(job).key);
}

/** Puts a job's result, solved elsewhere, into a memory. */
export function keepJob(job: FlattenJob, result: JobResult, memory: FlattenMemory): void {
  remember(memory.layouts, keysOf(job).key, () => success(result));
}

/** Everything a job depends on, in short. */
function keysOf(job: FlattenJob): { meshKey: string; key: string } {
  const meshKey = hashBytes([job.mesh.positions, job.mesh.triangles]);
  const parts: ArrayBufferView[] = job.rules.flatMap(({ edges, target }) => [
    Int32Array.from(edges),
    Float64Array.of(target),
  ]);
  parts.push(Float64Array.of(job.wrinkleAversion));
  if (job.kind === 'together') parts.push(job.alone, job.isStiff);
  return { meshKey, key: `${job.kind}:${meshKey}:${hashBytes(parts)}` };
}

function solveAlone(
  disk: PreparedDisk,
  job: AloneJob,
  path: string,
  trace: LayoutOptions['trace'],
): Result<JobResult> {
  const flat = startLayout(disk);
  const rules = makeLengthRules(disk, job.rules);
  const solution = solveLayout(preferStretch(disk, job.wrinkleAversion), flat, {
    rules,
    tolerance: toleranceAlone,
    lengthTolerance: 1e-2,
    ...(trace ? { trace } : {}),
  });
  return solution.isConverged
    ? success({ flat, forces: rules.multipliers, yields: rules.yields })
    : failure([describeFailure(solution, path, toleranceAlone)]);
}

function solveTogether(
  disk: PreparedDisk,
  job: TogetherJob,
  path: string,
  trace: LayoutOptions['trace'],
): Result<JobResult> {
  const flat = job.alone.slice();
  const issues: Issue[] = [];
  const rules = makeLengthRules(disk, job.rules);
  const solution = solveLayout(preferStretch(disk, job.wrinkleAversion), flat, {
    rules,
    bending: makeOutlineBending(disk, flat, job.isStiff),
    tolerance: toleranceTogether,
    ...(trace ? { trace } : {}),
  });
  if (!solution.isConverged) issues.push(describeFailure(solution, path, toleranceTogether));
  orientFlat(disk, flat);
  const crossings = findSelfCrossings(flat, disk.boundary).length / 2;
  if (crossings > 0) {
    issues.push({
      code: 'flatten-outline-crosses',
      path,
      message: phrase('flatten.outline-crosses', { places: crossings }),
      severity: 'error',
      measured: crossings,
      limit: 0,
    });
  }
  if (issues.length > 0) return failure(issues);
  return success({ flat, forces: rules.multipliers, yields: rules.yields });
}

/**
 * Two 32-bit FNV-1a sums with different bases over 4-byte words, and the length. Source: Fowler, Noll and Vo, FNV hash,
 * IETF draft-eastlake-fnv.
 */
function hashBytes(parts: readonly ArrayBufferView[]): string {
  let a = 0x811c9dc5;
  let b = 0x01234567;
  let length = 0;
  for (const part of parts) {
    const bytes = new Uint8Array(part.buffer, part.byteOffset, part.byteLength);
    const whole = part.byteOffset % 4 === 0 ? Math.floor(part.byteLength / 4) : 0;
    const words = whole > 0 ? new Uint32Array(part.buffer, part.byteOffset, whole) : new Uint32Array(0);
    for (let i = 0; i < words.length; i++) {
      a = Math.imul(a ^ words[i], 0x01000193);
      a ^= a >>> 15;
      b = Math.imul(b ^ words[i], 0x5bd1e995);
      b ^= b >>> 13;
    }
    for (let i = 4 * whole; i < bytes.length; i++) {
      a = Math.imul(a ^ bytes[i], 0x01000193);
      b = Math.imul(b ^ bytes[i], 0x5bd1e995);
    }
    length += part.byteLength;
  }
  return `${a >>> 0}-${b >>> 0}-${length}`;
}
