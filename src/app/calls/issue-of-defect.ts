import { type Issue, plain } from '../../core/base/index.ts';

/** A defect of ours told as an issue, so that the person sees something and can report it. */
export function issueOfDefect(error: unknown): Issue {
  const reason = error instanceof Error ? error.message : String(error);
  return {
    code: 'internal-fault',
    path: '',
    message: plain(
      `Something went wrong inside the program, not in what you typed. Undo the last step to go on. (${reason})`,
    ),
    severity: 'error',
  };
}
