import type { Project } from '../../core/project/index.ts';
import type { Quality } from './answers.ts';

// biome-ignore lint/suspicious/noExplicitAny: any function at all; `never` parameters would lose the tuple.
export type AnyCall = (...args: any[]) => unknown;

/** What a call is asked and answers. Types only: nothing stands here while the program runs. */
export interface Signature<Call> {
  readonly signature?: Call;
}

/** How a call is carried to a worker. */
export interface CallRules<Answer = unknown> {
  /**
   * Which of the two workers is asked: the one of rough forms, which is soon free; the one of full forms, so that typing
   * is never kept waiting; or either, which whoever asks chooses.
   */
  readonly worker: Quality | 'either';
  /** The answer when what the worker does throws, or the worker breaks or is ended. */
  readonly onDefect: (error: unknown) => Answer;
  /** While one is being answered only the latest of those asked waits; those it overtook are answered `null`. */
  readonly isLatestOnly?: true;
  /**
   * Stopping raises a flag the worker is given as a last argument: one Int32 in shared memory, non-zero = stop. The call
   * then comes to its own answer soon, or is dropped: answered `null` at once. Where the page may not share memory the
   * flag is null, and to drop a call the worker is ended.
   */
  readonly whenStopped?: 'answers' | 'isDropped';
  /** It needs the filled form: it waits for the filling under way, while others break that off to be answered soon. */
  readonly needsFilled?: true;
  /** While it is under way no worker is ended for the sake of another call. */
  readonly keepsWorker?: true;
  /** What it makes holds words: the worker is told the page's language, as an argument after the others. */
  readonly isWorded?: true;
  /** The views ask it of the project being worked on, which is its first argument. */
  readonly isOfPresentProject?: true;
}

type Fitting<Call extends AnyCall> = CallRules<ReturnType<Call>> &
  (Parameters<Call> extends [Project, ...unknown[]] ? unknown : { readonly isOfPresentProject?: never });

/** Rules misspelt would be no rules at all. */
type Exact<Rules> = Rules & Readonly<Record<Exclude<keyof Rules, keyof CallRules>, never>>;

export const signature = <Call extends AnyCall>(): Signature<Call> => ({});

/** One entry of the table of calls. Arguments and answers are cloned on their way, functions among the arguments call back. */
export function describeCall<Call extends AnyCall, const Rules extends Fitting<Call>>(
  _signature: Signature<Call>,
  rules: Exact<Rules>,
): Rules & Signature<Call> {
  return rules;
}
