import type { CommandWords } from '../english/command.ts';
import { help } from './command/help.ts';
import { refusals } from './command/refusals.ts';
import { results } from './command/results.ts';

/** Everything the command line says by itself, in French. */
export const commandWords: CommandWords = { help, refusals, ...results };
