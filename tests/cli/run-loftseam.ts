import { run } from '../../src/cli/run.ts';

/** One command with its exit code and all it wrote. */
export async function loftseam(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  let out = '';
  let err = '';
  const streams = {
    stdout: { write: (t: string) => (out += t) },
    stderr: { write: (t: string) => (err += t) },
  };
  const code = await run(args, streams);
  return { code, out, err };
}
