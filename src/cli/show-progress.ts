import type { MakeOptions } from '../core/pipeline/index.ts';
import type { Reader } from './create-reader.ts';

type OnProgress = NonNullable<MakeOptions['onProgress']>;

interface ProgressStream {
  write(text: string): unknown;
  readonly isTTY?: boolean;
  readonly columns?: number;
}

/**
 * Progress for people on stderr: one line rewritten in place on a terminal, one line per new stage elsewhere.
 * `end` clears the line.
 */
export function showProgress(
  stream: ProgressStream,
  { say, words }: Reader,
): { onProgress: OnProgress; end: () => void } {
  let shown = '';
  const onTerminal: OnProgress = (fraction, _stage, what) => {
    const line = `${String(Math.floor(fraction * 100)).padStart(3)} %  ${say(what)}`.slice(
      0,
      (stream.columns ?? 80) - 1,
    );
    if (line === shown) return;
    shown = line;
    stream.write(`\r\u001b[2K${line}`);
  };
  const onLog: OnProgress = (_fraction, stage, what) => {
    if (stage === shown) return;
    shown = stage;
    stream.write(`${words.stages[stage]}: ${say(what)}\n`);
  };
  return {
    onProgress: stream.isTTY === true ? onTerminal : onLog,
    end: () => {
      if (stream.isTTY === true && shown !== '') stream.write('\r\u001b[2K');
      shown = '';
    },
  };
}
