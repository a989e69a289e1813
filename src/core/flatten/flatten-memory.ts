import { type Result, success } from '../base/index.ts';
import type { PreparedDisk } from './prepare-disk.ts';

/**
 * What is worth keeping between jobs of one worker: prepared disks (with their symbolic factors) and results, by the
 * bytes of what they depend on. Made by the caller, so that core keeps no state. Old entries are dropped past 64.
 */
export interface FlattenMemory {
  readonly disks: Map<string, PreparedDisk>;
  readonly layouts: Map<string, JobResult>;
}

/** What a job comes to; plain data. */
export interface JobResult {
  /** #V × 2 mm. */
  readonly flat: Float64Array;
  /** Per rule of the job: its multiplier (energy per mm), and mm it gives way per unit of force. */
  readonly forces: Float64Array;
  readonly yields: Float64Array;
}

/** Entries of each kind a memory holds. */
const MEMORY_SIZE = 64;

/** An empty memory. */
export function createFlattenMemory(): FlattenMemory {
  return { disks: new Map(), layouts: new Map() };
}

/** Looks a value up or makes it; only successes are kept, the oldest go first. */
export function remember<T>(store: Map<string, T>, key: string, make: () => Result<T>): Result<T> {
  const known = store.get(key);
  if (known !== undefined) {
    store.delete(key);
    store.set(key, known);
    return success(known);
  }
  const made = make();
  if (!made.ok) return made;
  store.set(key, made.value);
  for (const oldest of store.keys()) {
    if (store.size <= MEMORY_SIZE) break;
    store.delete(oldest);
  }
  return made;
}
