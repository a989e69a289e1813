import type { WorkInput } from './types.ts';

/** The form at one moment of the work. */
export interface SewingState {
  /** Parts that are there, and the flat pieces once they are cut. */
  readonly made: Set<string>;
  /** Pieces that went into a part, a joint or a place. */
  readonly used: Set<string>;
  readonly joined: Map<string, number>;
  /** Girths of openings as they are now, mm. */
  readonly gates: Map<string, number>;
  readonly inserted: Set<string>;
  /** Inserted parts that nothing holds yet. */
  readonly loose: Set<string>;
  readonly filled: Set<string>;
  readonly facts: Set<string>;
  readonly threaded: Set<string>;
  /** What is on the ends of parts: `pole/lower` holds the foot. */
  readonly ends: Map<string, string>;
  readonly contacts: Map<string, Set<string>>;
  readonly dangers: Set<string>;
}

export function startState(input: WorkInput): SewingState {
  return {
    made: new Set(),
    used: new Set(),
    joined: new Map(),
    gates: new Map(Object.entries(input.gates)),
    inserted: new Set(),
    loose: new Set(),
    filled: new Set(),
    facts: new Set(),
    threaded: new Set(),
    ends: new Map(),
    contacts: new Map(),
    dangers: new Set(),
  };
}
