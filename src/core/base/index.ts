export type { Brand, Mm, Rad } from './brand.ts';
export { crc32 } from './crc32.ts';
export { assertInvariant, InvariantError } from './invariant-error.ts';
export {
  type AnyJobKind,
  createJobMemories,
  createJobRunner,
  type Job,
  type JobKind,
  type JobRound,
  type MemoryOf,
  type RoundJob,
  type RunJobsElsewhere,
} from './jobs.ts';
export type { DisplayUnit, LengthUnit } from './length-unit.ts';
export { letterOf } from './letter-of.ts';
export {
  isPhrase,
  type MakePhrase,
  type NoValues,
  type Phrase,
  type PhraseValues,
  phrasesOf,
  type Say,
  type Speaker,
} from './phrase.ts';
export { type BasePhrases, verbatim } from './phrases.ts';
export { type RememberLast, rememberLast } from './remember-last.ts';
export { failure, type Issue, type Result, type Severity, success } from './result.ts';
export { seamLetterOf } from './seam-letter-of.ts';
export { seededRandom } from './seeded-random.ts';
export {
  formatBoth,
  formatDifference,
  formatLength,
  kgPerPound,
  type LengthFormat,
  metresPerYard,
  mmPerInch,
  parseLength,
} from './units.ts';
export {
  type NumberOption,
  type Option,
  type OptionsOf,
  type OptionTable,
  type OptionValue,
  withUsual,
} from './with-usual.ts';
