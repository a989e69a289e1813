import type { CommandWords } from '../language/english/command.ts';

/** What the process ends with; scripts rely on these. */
export const exitCodes = {
  fine: 0,
  /** The project was read, but what it asks for cannot be made as it stands. */
  errorsInProject: 1,
  /** The command itself was not understood. */
  usage: 2,
  /** A file or folder cannot be read or written. */
  cannotReadOrWrite: 3,
  /** A defect of the program. */
  internal: 4,
} as const;

/** Ends a command early with a message for stderr, said in the reader's words, and an exit code. */
export class CommandFailure extends Error {
  constructor(
    readonly exitCode: number,
    readonly tell: (words: CommandWords) => string,
  ) {
    super(`ended with ${exitCode}`);
    this.name = 'CommandFailure';
  }
}
