import { help } from './command/help.ts';
import { refusals } from './command/refusals.ts';
import { results } from './command/results.ts';

/** Everything the command line says by itself. Its shape is what every other language must have. */
export const commandWords = { help, refusals, ...results };

export type CommandWords = typeof commandWords;
