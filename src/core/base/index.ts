export { assertInvariant, InvariantError } from './invariant-error.ts';
export { failure, type Issue, type Result, type Severity, success } from './result.ts';
