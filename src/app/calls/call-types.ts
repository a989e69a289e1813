import type { Project } from '../../core/project/index.ts';
import type { Quality, Voice } from './answers.ts';
import type { AnyCall, CallRules, Signature } from './describe-call.ts';
import { workerCalls } from './worker-calls.ts';

/** What follows from the table of calls, for each who has to do with them. */

type Table = typeof workerCalls;
export type CallName = keyof Table;

/** One Int32 in shared memory, non-zero = stop; null where the page may not share memory. */
export type StopFlag = Int32Array | null;

type Names<Rules> = { [Name in CallName]: Table[Name] extends Rules ? Name : never }[CallName];
type SignatureOf<Name extends CallName> =
  Table[Name] extends Signature<infer Call extends AnyCall> ? Call : never;

type MayBeUnanswered = Names<{ readonly isLatestOnly: true } | { readonly whenStopped: 'isDropped' }>;
type Answer<Name extends CallName> =
  | ReturnType<SignatureOf<Name>>
  | (Name extends MayBeUnanswered ? null : never);

/** Every call as the page asks it. None is ever refused: a defect is told as the table says. */
export type AskedCalls = {
  readonly [Name in CallName]: (...args: Parameters<SignatureOf<Name>>) => Promise<Answer<Name>>;
};

/** Calls that have one worker to go to. */
export type PageCallName = Names<{ readonly worker: Quality }>;
export type PageCalls = Pick<AskedCalls, PageCallName>;

/** Calls that come to an early answer when they are stopped. */
export type StoppableCallName = Extract<PageCallName, Names<{ readonly whenStopped: 'answers' }>>;

/** Every call as the worker does it. */
export type ImplementedCalls = {
  readonly [Name in CallName]: (
    ...args: [
      ...Parameters<SignatureOf<Name>>,
      ...(Name extends Names<{ readonly isWorded: true }> ? [voice: Voice] : []),
      ...(Name extends Names<{ readonly whenStopped: string }> ? [stopFlag: StopFlag] : []),
    ]
  ) => ReturnType<SignatureOf<Name>> | Promise<ReturnType<SignatureOf<Name>>>;
};

type WithoutProject<Args> = Args extends [Project, ...infer Rest] ? Rest : never;

/** Calls as the views ask them: those of the project being worked on go without it, and answer null while there is none. */
export type ViewCalls = {
  readonly [Name in PageCallName]: Name extends Names<{ readonly isOfPresentProject: true }>
    ? (...args: WithoutProject<Parameters<SignatureOf<Name>>>) => Promise<Answer<Name> | null>
    : AskedCalls[Name];
};

export function rulesOf(name: CallName): CallRules {
  return workerCalls[name];
}

export const callNames = Object.keys(workerCalls) as readonly CallName[];
export const pageCallNames = callNames.filter(
  (name): name is PageCallName => rulesOf(name).worker !== 'either',
);
