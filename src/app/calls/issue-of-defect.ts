import { type Issue, phrasesOf } from '../../core/base/index.ts';
import type { PipelinePhrases } from '../../core/pipeline/index.ts';

const phrase = phrasesOf<PipelinePhrases>();

/** A defect of ours told as an issue, so that the person sees something and can report it. */
export function issueOfDefect(error: unknown): Issue {
  const reason = error instanceof Error ? error.message : String(error);
  return {
    code: 'internal-fault',
    path: '',
    message: phrase('pipeline.defect', { reason }),
    severity: 'error',
  };
}
