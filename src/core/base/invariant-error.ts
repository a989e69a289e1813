/** A broken promise between rooms: a defect of ours, never something a person typed. */
export class InvariantError extends Error {
  constructor(
    readonly room: string,
    readonly requirement: string,
    readonly found: unknown,
  ) {
    super(`${room}: ${requirement} (found ${String(found)})`);
    this.name = 'InvariantError';
  }
}

/** Throws `InvariantError` unless `holds`. */
export function assertInvariant(
  holds: boolean,
  room: string,
  requirement: string,
  found: unknown,
): asserts holds {
  if (!holds) throw new InvariantError(room, requirement, found);
}
