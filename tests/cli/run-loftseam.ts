import { run } from '../../src/cli/run.ts';
import type { Pipeline } from '../../src/core/pipeline/index.ts';
import { sharedPipeline } from '../shared-pipeline.ts';

interface Told {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** One command with its exit code and all it wrote. What other tests have made already is not made again. */
export const loftseam = (...args: string[]): Promise<Told> => runWith(args, sharedPipeline);

/** The same with everything made from nothing, as on the command line. */
export const loftseamAnew = (...args: string[]): Promise<Told> => runWith(args);

async function runWith(args: readonly string[], pipeline?: Pipeline): Promise<Told> {
  let out = '';
  let err = '';
  const streams = {
    stdout: { write: (t: string) => (out += t) },
    stderr: { write: (t: string) => (err += t) },
  };
  const code = await run(args, streams, pipeline);
  return { code, out, err };
}
