import type { Phrase } from '../base/index.ts';
import { clamp } from '../math/index.ts';
import { phrase } from './phrases.ts';

/** Who looks on while stages run. */
export interface Watch<Id extends string> {
  /** `fraction` of the whole work, 0 to 1, never falling; `what` in plain words. */
  readonly onProgress?: (fraction: number, stage: Id, what: Phrase) => void;
  /** Asked between steps and between solves; true ends with the issue `cancelled`. */
  readonly isCancelled?: () => boolean;
  /** Milliseconds clock, passed in because core has none. */
  readonly now?: () => number;
}

interface Share<Id extends string> {
  readonly id: Id;
  readonly what: Phrase;
  readonly share: number;
}

/** Progress and time of each stage; time is 0 without a clock. */
export function followProgress<Id extends string>(stages: readonly Share<Id>[], watch: Watch<Id>) {
  const now = watch.now ?? (() => 0);
  const total = stages.reduce((sum, { share }) => sum + share, 0);
  const timingsMs: Record<string, number> = {};
  let present: Share<Id> = stages[0];
  let passed = 0;
  let told = 0;
  let since = now();
  const tell = (fraction: number, what: Phrase) => {
    told = Math.max(told, Math.min(1, fraction));
    watch.onProgress?.(told, present.id, what);
  };
  const stop = () => {
    timingsMs[present.id] = now() - since;
    since = now();
  };
  return {
    enter(next: Share<Id>) {
      if (next.id !== present.id) {
        stop();
        passed += present.share;
      }
      present = next;
      tell(passed / total, next.what);
    },
    /** `fraction` of the present stage. */
    tellPart(fraction: number, what: Phrase) {
      const [start, end] = [passed / total, (passed + present.share) / total];
      tell(start + (end - start) * clamp(fraction, 0, 1), what);
    },
    isCancelled: () => watch.isCancelled?.() ?? false,
    finish() {
      stop();
      tell(1, phrase('pipeline.done'));
      return timingsMs;
    },
  };
}
