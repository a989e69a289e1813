import { spawnSync } from 'node:child_process';

/** As somebody at a terminal has it: without what the runner of the tests tells its own children. */
const { NODE_ENV: _, VITEST: __, NODE_OPTIONS: ___, ...environment } = process.env;

/** Runs a program in a folder and returns what it wrote; throws all of it when the program fails. */
export function runProgram(folder: string, program: string, ...args: string[]): string {
  const { status, stdout, stderr, error } = spawnSync(program, args, {
    cwd: folder,
    env: environment,
    encoding: 'utf8',
  });
  if (status !== 0) throw error ?? new Error(`${program} ${args.join(' ')}\n${stdout}\n${stderr}`);
  return stdout;
}
